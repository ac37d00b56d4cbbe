import type { Command } from 'commander';
import { analyse, readLexicon } from '../app/analyse.js';
import type { Diagnostic } from '../base/diagnostic.js';
import { FileTrouble } from '../host/types.js';
import { sayCommand } from '../messages/command.js';
import { exitCodes } from './exit-codes.js';
import { bookFile } from './file-names.js';
import { findBook } from './read-book-file.js';
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
    .addHelpText('after', '\nNothing that stands in the book is changed: no comment, no blank line, no order.\n')
    .action((file: string, options: { readonly book?: string }) => runBook(file, options.book, session));
}

async function runBook(file: string, named: string | undefined, session: Session): Promise<void> {
  const { host } = session;
  const target = named ?? bookFile(file) ?? 'script.book.yaml';
  const input = await readInput(file, session);
  if (!input) return;
  const book = (await host.exists(target)) ? await findBook(file, target, session) : null;
  if (book === 'unreadable') return;
  const { analysis, messages } = analyse(input.bytes, input.name, readLexicon(host));
  const show = (shown: readonly Diagnostic[]) => {
    const texts = { [input.name]: input.text, [target]: book?.text ?? '' };
    host.error(reportMessages(shown, { texts, file: input.name, colour: host.colour.error }));
  };
  if (!analysis || hasErrors(messages)) {
    show(messages);
    return session.exit(exitCodes.scriptErrors);
  }
  const { addToBook } = await import('../book/add-to-book.js');
  const result = addToBook(book?.text ?? null, analysis.breakdown, target);
  show(result.messages);
  if (hasErrors(result.messages)) return session.exit(exitCodes.scriptErrors);
  if (result.text === book?.text) return host.out(`${target}: nothing new.\n`);
  await save(target, result, session);
}

async function save(target: string, result: { text: string; added: string[] }, session: Session): Promise<void> {
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

/** Where the first line of a book sends an editor for the names that the book knows. */
function schemaBeside(book: string): string {
  return book.replace(/[^/\\]*$/, 'book.schema.json');
}

function hasErrors(messages: readonly Diagnostic[]): boolean {
  return messages.some((message) => message.severity === 'error');
}
