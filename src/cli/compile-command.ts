import type { Command } from 'commander';
import { type Compiled, compile } from '../app/compile.js';
import type { Diagnostic } from '../base/diagnostic.js';
import { FileTrouble } from '../host/types.js';
import { sayCommand } from '../messages/command.js';
import { chooseOutputs, describeOutputs, outputList } from './choose-outputs.js';
import { exitCodes } from './exit-codes.js';
import { outputFolder } from './file-names.js';
import { findBook } from './read-book-file.js';
import { readEarlier } from './read-earlier.js';
import { type Input, readInput } from './read-input.js';
import { reportMessages } from './report.js';
import type { Session } from './session.js';
import { summarize } from './summary.js';
import { chooseToday } from './today.js';

interface CompileOptions {
  readonly out?: string;
  readonly only?: string;
  readonly book?: string;
  readonly today?: string;
  readonly since?: string;
  readonly strict?: boolean;
  readonly quiet?: boolean;
}

/** Adds `compile FILE`. */
export function addCompileCommand(program: Command, session: Session): void {
  program
    .command('compile')
    .description('break a script down and write its sheets and lists into a folder')
    .argument('<file>', 'the script; - reads standard input')
    .option('-o, --out <folder>', 'where to write (default: NAME-breakdown beside the script)')
    .option('--only <outputs>', `write only these, with commas: ${outputList}`)
    .option('--book <file>', 'the production book (default: NAME.book.yaml beside the script, when it is there)')
    .option('--today <date>', 'the day to plan from, as YYYY-MM-DD (default: today); only with a book')
    .option('--since <file>', 'the breakdown.json to compare with (default: the draft before, as kept in the folder)')
    .option('--strict', 'warnings count as errors')
    .option('-q, --quiet', 'print nothing but errors and warnings')
    .addHelpText('after', describeOutputs())
    .action((file: string, options: CompileOptions) => runCompile(file, options, session));
}

async function runCompile(file: string, options: CompileOptions, session: Session): Promise<void> {
  const input = await readInput(file, session);
  if (!input) return;
  const book = await findBook(file, options.book, session);
  if (book === 'unreadable') return;
  const outputs = chooseOutputs(options.only, book !== null);
  if ('code' in outputs) return fail(session, exitCodes.usage, outputs);
  const today = chooseToday(options.today, session.host);
  if (typeof today !== 'string') return fail(session, exitCodes.usage, today);
  const earlier = await readEarlier(outputFolder(file, options.out), options.since, session);
  if (!earlier) return;
  const request = { bytes: input.bytes, file: input.name, outputs, book, today, earlier };
  const compiled = await compile(request, session.host);
  await answer(compiled, { file, input, options, bookText: book ? { [book.file]: book.text } : {} }, session);
}

interface Asked {
  readonly file: string;
  readonly input: Input;
  readonly options: CompileOptions;
  readonly bookText: Readonly<Record<string, string>>;
}

/** Says what was odd, then writes everything, or says why nothing was written. */
async function answer(compiled: Compiled, { file, input, options, bookText }: Asked, session: Session): Promise<void> {
  const { host } = session;
  const { messages } = compiled;
  const shown = options.quiet ? messages.filter((message) => message.severity !== 'info') : messages;
  const texts = { [input.name]: input.text, ...bookText };
  host.error(reportMessages(shown, { texts, file: input.name, colour: host.colour.error }));
  if (!compiled.breakdown || messages.some((message) => blocks(message, options.strict))) {
    host.error('Nothing was written; the files from before are as they were.\n');
    return session.exit(exitCodes.scriptErrors);
  }
  const folder = outputFolder(file, options.out);
  try {
    await host.writeAll(folder, compiled.files);
  } catch (error) {
    if (!(error instanceof FileTrouble)) throw error;
    return fail(session, exitCodes.files, sayCommand('output-not-written', { path: folder, why: error.message }));
  }
  if (!options.quiet) host.out(summarize(compiled.breakdown, compiled.files, folder, host.colour.out));
}

function blocks(message: Diagnostic, strict = false): boolean {
  return message.severity === 'error' || (strict && message.severity === 'warning');
}

function fail(session: Session, code: number, message: Diagnostic): void {
  session.host.error(reportMessages([message], { texts: {}, file: '', colour: session.host.colour.error }));
  session.exit(code);
}
