import type { Command } from 'commander';
import { compile } from '../app/compile.js';
import type { Diagnostic } from '../base/diagnostic.js';
import { findNearest } from '../base/nearest.js';
import { FileTrouble } from '../host/types.js';
import { sayCommand } from '../messages/command.js';
import { outputNames, renderers } from '../render/renderers.js';
import type { OutputFile, OutputName } from '../render/types.js';
import { exitCodes } from './exit-codes.js';
import { outputFolder } from './output-folder.js';
import { readInput } from './read-input.js';
import { reportMessages } from './report.js';
import type { Session } from './session.js';
import { summarize } from './summary.js';

interface CompileOptions {
  readonly out?: string;
  readonly only?: string;
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
    .option('--only <outputs>', `write only these, with commas: ${outputNames.join(', ')}`)
    .option('--strict', 'warnings count as errors')
    .option('-q, --quiet', 'print nothing but errors and warnings')
    .addHelpText('after', describeOutputs())
    .action((file: string, options: CompileOptions) => runCompile(file, options, session));
}

async function runCompile(file: string, options: CompileOptions, session: Session): Promise<void> {
  const { host } = session;
  const outputs = chooseOutputs(options.only);
  if ('code' in outputs) return fail(session, exitCodes.usage, outputs);
  const input = await readInput(file, session);
  if (!input) return;
  const compiled = await compile({ bytes: input.bytes, file: input.name, outputs }, host);
  const blocking = compiled.messages.filter(
    (m) => m.severity === 'error' || (options.strict && m.severity === 'warning'),
  );
  const shown = options.quiet ? compiled.messages.filter((m) => m.severity !== 'info') : compiled.messages;
  host.error(reportMessages(shown, { source: input.text, file: input.name, colour: host.colour.error }));
  if (blocking.length > 0 || !compiled.breakdown) {
    host.error('Nothing was written; the files from before are as they were.\n');
    session.exit(exitCodes.scriptErrors);
    return;
  }
  const folder = outputFolder(file, options.out);
  if (!(await write(folder, compiled.files, session))) return;
  if (!options.quiet) host.out(summarize(compiled.breakdown, compiled.files, folder, host.colour.out));
}

async function write(folder: string, files: readonly OutputFile[], session: Session): Promise<boolean> {
  try {
    await session.host.writeAll(folder, files);
    return true;
  } catch (error) {
    if (!(error instanceof FileTrouble)) throw error;
    fail(session, exitCodes.files, sayCommand('output-not-written', { path: folder, why: error.message }));
    return false;
  }
}

function fail(session: Session, code: number, message: Diagnostic): void {
  session.host.error(reportMessages([message], { source: '', file: '', colour: session.host.colour.error }));
  session.exit(code);
}

/** The outputs that `--only` names, in their usual order; a message when one does not exist. */
function chooseOutputs(only: string | undefined): readonly OutputName[] | Diagnostic {
  if (only === undefined) return outputNames;
  const asked = only
    .split(',')
    .map((name) => name.trim().toLowerCase())
    .filter((name) => name !== '');
  const wrong = asked.find((name) => !outputNames.some((known) => known === name));
  if (wrong !== undefined || asked.length === 0) {
    const name = wrong ?? only;
    return sayCommand('output-unknown', { name, nearest: findNearest(name, outputNames), known: outputNames });
  }
  return outputNames.filter((name) => asked.includes(name));
}

function describeOutputs(): string {
  const rows = outputNames.map(
    (name) => `  ${name.padEnd(10)} ${renderers[name].title} (${renderers[name].files.join(', ')})`,
  );
  return `
Outputs:
${rows.join('\n')}

Examples:
  prepwright compile my-film.md
  prepwright compile my-film.md --out printed --only sheets,costumes
  prepwright compile - --only json --out model < my-film.md

All files of a run are written together or not at all. With an error in the script nothing is written.
`;
}
