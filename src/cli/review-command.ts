import type { Command } from 'commander';
import { analyse, readLexicon } from '../app/analyse.js';
import {
  listReview,
  notesFor,
  type ReviewAnswer,
  type ReviewItem,
  readAnswer,
  sayWanted,
  sayWritten,
  writeAnswer,
} from '../app/review.js';
import { type SettledByBook, settleByBook } from '../app/review-book.js';
import { type Insertion, insertInto } from '../app/text-edits.js';
import type { Diagnostic } from '../base/diagnostic.js';
import { labelScenes, type SceneLabels } from '../breakdown/scene-label.js';
import { FileTrouble } from '../host/types.js';
import { sayCommand } from '../messages/command.js';
import { exitCodes } from './exit-codes.js';
import { outputFolder } from './file-names.js';
import { findBook } from './read-book-file.js';
import { readEarlier } from './read-earlier.js';
import { type Input, readInput } from './read-input.js';
import { reportMessages } from './report.js';
import type { Session } from './session.js';

/** Adds `review FILE`. */
export function addReviewCommand(program: Command, session: Session): void {
  program
    .command('review')
    .description('go through the open questions and write the answers into the script')
    .argument('<file>', 'the script')
    .option('--book <file>', 'the production book (default: NAME.book.yaml beside the script, when it is there)')
    .addHelpText(
      'after',
      `
Each answer becomes a mark or a note in your own text; no other character changes, and what is written is shown.
What does not settle a question is asked for again and never written. The file is saved once, at the end or after s.
A note of the list of questions may be typed as an answer too: > NORA: wears coat, hat
What the production book answers or refuses is not asked again.
`,
    )
    .action((file: string, options: { readonly book?: string }) => runReview(file, options.book, session));
}

async function runReview(file: string, named: string | undefined, session: Session): Promise<void> {
  const { host } = session;
  if (file === '-') return refuse(sayCommand('review-needs-file', undefined), exitCodes.usage, session);
  const input = await readInput(file, session);
  if (!input) return;
  const { analysis, messages } = analyse(input.bytes, input.name, readLexicon(host));
  if (!analysis || messages.some((message) => message.severity === 'error')) {
    host.error(
      reportMessages(messages, { texts: { [input.name]: input.text }, file: input.name, colour: host.colour.error }),
    );
    return session.exit(exitCodes.scriptErrors);
  }
  const book = await findBook(file, named, session);
  if (book === 'unreadable') return;
  const earlier = book && (await readEarlier(outputFolder(file, undefined), undefined, session));
  if (book && !earlier) return;
  const settled = await settleByBook(analysis.breakdown, book, host.today(), earlier ?? undefined);
  if ('unreadable' in settled) {
    host.error(
      reportMessages(settled.unreadable, {
        texts: { [book?.file ?? '']: book?.text ?? '' },
        file: input.name,
        colour: host.colour.error,
      }),
    );
    return session.exit(exitCodes.scriptErrors);
  }
  const items = listReview(settled.breakdown, analysis.script);
  host.out(bookWords(settled, book?.file ?? null));
  if (items.length === 0) return host.out('Nothing is open.\n');
  const labels = labelScenes(settled.breakdown.scenes);
  const write = (item: ReviewItem, answer: ReviewAnswer) => writeAnswer(item, answer, analysis.script);
  const answered = await askAll(items, labels, write, session);
  const insertions = answered.flatMap((one) => one.insertions);
  if (insertions.length > 0 && !(await save(file, input, insertions, session))) return;
  host.out(`${answered.length} of ${items.length} settled${answered.length > 0 ? ` in ${file}` : ''}.\n`);
}

/** What the book has settled, and what only the book can settle. */
function bookWords({ answered, forTheBook }: SettledByBook, file: string | null): string {
  if (file === null) return '';
  const done = answered > 0 ? `${answered} answered or refused in ${file}.\n` : '';
  if (forTheBook.length === 0) return done;
  return `${done}To be answered in ${file}, under elements:\n${forTheBook.map((one) => `  ${one}\n`).join('')}`;
}

interface Answered {
  readonly item: ReviewItem;
  readonly insertions: readonly Insertion[];
}

/** Asks one after the other until all are asked, the input ends or the user stops; says what each answer writes. */
async function askAll(
  items: readonly ReviewItem[],
  labels: SceneLabels,
  write: (item: ReviewItem, answer: ReviewAnswer) => readonly Insertion[],
  session: Session,
): Promise<Answered[]> {
  const { host } = session;
  host.out(`${items.length} open. Enter leaves one for later, s stops; nothing is saved before the end.\n`);
  const answered: Answered[] = [];
  for (const [index, item] of items.entries()) {
    const { scene, question, context } = item;
    const place = `scene ${labels.get(scene.id)}, line ${question.line}`;
    host.out(`\n${index + 1} of ${items.length}, ${place}\n  | ${context}\n`);
    const answer = await askOne(item, session);
    if (answer === 'stop') break;
    if (answer === 'later') continue;
    const insertions = write(item, answer);
    host.out(`  writes ${sayWritten(item, insertions)}\n`);
    answered.push({ item, insertions });
  }
  return answered;
}

const tries = 3;

/** Asks until what is typed settles the question; after some vain tries it stays for later. */
async function askOne({ question }: ReviewItem, { host }: Session): Promise<ReviewAnswer | 'later' | 'stop'> {
  const wanted = sayWanted(question);
  for (let left = tries; left > 0; left--) {
    host.out(`${question.text} (${wanted})\n`);
    const typed = (await host.ask('> '))?.replace(/\s+/g, ' ').trim() ?? null;
    if (typed === null || /^(s|stop)$/i.test(typed)) return 'stop';
    if (typed === '') return 'later';
    const answer = readAnswer(question, typed);
    if (answer) return answer;
    const [note] = question.wants === 'yes or no' && question.element === null ? notesFor(question) : [];
    const other = note ? `, or a note such as > ${note}` : '';
    host.out(`“${typed}” does not settle it. Type ${wanted}${other}; Enter leaves it open.\n`);
  }
  return 'later';
}

async function save(file: string, input: Input, insertions: readonly Insertion[], session: Session): Promise<boolean> {
  const text = new TextDecoder('utf-8', { ignoreBOM: true }).decode(input.bytes);
  try {
    await session.host.writeFile(file, insertInto(text, insertions));
    return true;
  } catch (error) {
    if (!(error instanceof FileTrouble)) throw error;
    refuse(sayCommand('file-not-written', { path: file, why: error.message }), exitCodes.files, session);
    return false;
  }
}

function refuse(message: Diagnostic, code: number, { host, exit }: Session): void {
  host.error(reportMessages([message], { texts: {}, file: '', colour: host.colour.error }));
  exit(code);
}
