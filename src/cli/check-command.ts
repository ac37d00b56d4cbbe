import type { Command } from 'commander';
import { check } from '../app/check.js';
import type { Diagnostic } from '../base/diagnostic.js';
import { exitCodes } from './exit-codes.js';
import { outputFolder } from './file-names.js';
import { findBook } from './read-book-file.js';
import { readEarlier } from './read-earlier.js';
import { readInput } from './read-input.js';
import { reportMessages } from './report.js';
import type { Session } from './session.js';
import { chooseToday } from './today.js';

interface CheckOptions {
  readonly json?: boolean;
  readonly strict?: boolean;
  readonly book?: string;
  readonly out?: string;
  readonly today?: string;
}

/** Adds `check FILE`. */
export function addCheckCommand(program: Command, session: Session): void {
  program
    .command('check')
    .description('say what is odd in a script and in its production book; write nothing')
    .argument('<file>', 'the script; - reads standard input')
    .option('--book <file>', 'the production book (default: NAME.book.yaml beside the script, when it is there)')
    .option('-o, --out <folder>', 'where the papers of the last run are (default: NAME-breakdown beside the script)')
    .option('--today <date>', 'the day to plan from, as YYYY-MM-DD (default: today); only with a book')
    .option('--json', 'the messages as JSON on standard output')
    .option('--strict', 'warnings count as errors')
    .addHelpText('after', '\nExamples:\n  prepwright check my-film.md\n  prepwright check - --json < my-film.md\n')
    .action((file: string, options: CheckOptions) => runCheck(file, options, session));
}

async function runCheck(file: string, options: CheckOptions, session: Session): Promise<void> {
  const { host } = session;
  const input = await readInput(file, session);
  if (!input) return;
  const book = await findBook(file, options.book, session);
  if (book === 'unreadable') return;
  const today = chooseToday(options.today, host);
  if (typeof today !== 'string') {
    host.error(reportMessages([today], { texts: {}, file: '', colour: host.colour.error }));
    return session.exit(exitCodes.usage);
  }
  const earlier = book && (await readEarlier(outputFolder(file, options.out), undefined, session));
  if (book && !earlier) return;
  const messages = await check(input.bytes, input.name, host, book && earlier ? { book, today, earlier } : null);
  if (options.json)
    host.out(
      `${JSON.stringify(
        messages.map((message) => asRecord(message, input.name)),
        null,
        2,
      )}\n`,
    );
  else if (messages.length === 0) host.out(`${input.name}${book ? ` and ${book.file}` : ''}: nothing odd.\n`);
  else {
    const texts = { [input.name]: input.text, ...(book ? { [book.file]: book.text } : {}) };
    host.error(reportMessages(messages, { texts, file: input.name, colour: host.colour.error }));
  }
  const bad = messages.some((m) => m.severity === 'error' || (options.strict && m.severity === 'warning'));
  session.exit(bad ? exitCodes.scriptErrors : exitCodes.fine);
}

/** One message as a flat record, as editors and linters read them; lines and columns are 1-based. */
function asRecord(message: Diagnostic, file: string) {
  return {
    file: message.file ?? file,
    line: message.place?.start.line ?? null,
    column: message.place?.start.column ?? null,
    endLine: message.place?.end.line ?? null,
    endColumn: message.place?.end.column ?? null,
    severity: message.severity,
    code: message.code,
    reason: message.reason,
    hint: message.hint ?? null,
  };
}
