import type { Command } from 'commander';
import { analyse, readLexicon } from '../app/analyse.js';
import type { Diagnostic } from '../base/diagnostic.js';
import { FileTrouble } from '../host/types.js';
import { sayCommand } from '../messages/command.js';
import type { Script } from '../script/types.js';
import { exitCodes } from './exit-codes.js';
import { bookFile, outputFolder } from './file-names.js';
import { findBook } from './read-book-file.js';
import { readEarlier } from './read-earlier.js';
import { readInput } from './read-input.js';
import { reportMessages } from './report.js';
import type { Session } from './session.js';

/** Adds `book FILE`. */
export function addBookCommand(program: Command, session: Session): void {
  program
    .command('book')
    .description('begin the production book of a script, or add to it what is new in the script')
    .argument('<file>', 'the script')
    .option('--book <file>', 'the production book (default: NAME.book.yaml beside the script)')
    .option('-o, --out <folder>', 'where the papers of the last run are (default: NAME-breakdown beside the script)')
    .addHelpText(
      'after',
      `
Nothing that stands in the book is changed: no comment, no blank line, no order. Only an entry whose scene or place
got a new heading since the papers of the last run takes the new name, and notes the old one under "was".
`,
    )
    .action((file: string, options: BookOptions) => runBook(file, options, session));
}

interface BookOptions {
  readonly book?: string;
  readonly out?: string;
}

async function runBook(file: string, { book: named, out }: BookOptions, session: Session): Promise<void> {
  const { host } = session;
  const target = named ?? bookFile(file) ?? 'script.book.yaml';
  const input = await readInput(file, session);
  if (!input) return;
  const book = (await host.exists(target)) ? await findBook(file, target, session) : null;
  if (book === 'unreadable') return;
  const { analysis, messages } = analyse(input.bytes, input.name, readLexicon(host));
  const show = (shown: readonly Diagnostic[], bookText = '') => {
    const texts = { [input.name]: input.text, [target]: bookText };
    host.error(reportMessages(shown, { texts, file: input.name, colour: host.colour.error }));
  };
  if (!analysis || hasErrors(messages)) {
    show(messages);
    return session.exit(exitCodes.scriptErrors);
  }
  const earlier = await readEarlier(outputFolder(file, out), undefined, session);
  if (!earlier) return;
  const { extendBook } = await import('../app/extend-book.js');
  const extended = extendBook(book, target, analysis.breakdown, earlier);
  const advice = book === null ? adviseNumbers(analysis.script) : [];
  const result = { ...extended, messages: [...extended.messages, ...advice] };
  show(result.messages, result.text);
  if (hasErrors(result.messages)) return session.exit(exitCodes.scriptErrors);
  if (result.text === book?.text) return host.out(`${target}: nothing new.\n`);
  await save(target, result, session);
}

async function save(
  target: string,
  result: { readonly text: string; readonly added: readonly string[] },
  session: Session,
): Promise<void> {
  try {
    await session.host.writeFile(target, result.text);
    const { printBookSchema } = await import('../book/book-schema.js');
    await session.host.writeFile(schemaBeside(target), printBookSchema());
    session.host.out(`${target}: ${result.added.length} added.\n${result.added.map((one) => `  ${one}\n`).join('')}`);
  } catch (error) {
    if (!(error instanceof FileTrouble)) throw error;
    const message = sayCommand('file-not-written', { path: target, why: error.message });
    session.host.error(reportMessages([message], { texts: {}, file: '', colour: session.host.colour.error }));
    session.exit(exitCodes.files);
  }
}

/** A book finds scenes by their numbers only where these are there, and stay. */
function adviseNumbers({ front, scenes }: Script): Diagnostic[] {
  const first = scenes.find((scene) => scene.heading.number === null) ?? scenes[0];
  if (front.numbers === 'locked' || first === undefined) return [];
  const without = scenes.filter((scene) => scene.heading.number === null).length;
  const heading = first.heading.text;
  return [sayCommand('book-scenes-unnumbered', { without, of: scenes.length, heading })];
}

/** Where the first line of a book sends an editor for the names that the book knows. */
function schemaBeside(book: string): string {
  return book.replace(/[^/\\]*$/, 'book.schema.json');
}

function hasErrors(messages: readonly Diagnostic[]): boolean {
  return messages.some((message) => message.severity === 'error');
}
