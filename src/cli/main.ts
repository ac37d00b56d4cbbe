import { Command, CommanderError } from 'commander';
import type { Host } from '../host/types.js';
import { addBookCommand } from './book-command.js';
import { addCheckCommand } from './check-command.js';
import { addCompileCommand } from './compile-command.js';
import { exitCodes } from './exit-codes.js';
import { addExplainCommand } from './explain-command.js';
import { packageVersion } from './package-version.js';
import { addReviewCommand } from './review-command.js';
import type { Session } from './session.js';

/** Runs one command line and gives the exit code. Never exits the process and never throws. */
export async function main(args: readonly string[], host: Host): Promise<number> {
  let code: number = exitCodes.fine;
  const program = createProgram({
    host,
    exit: (next) => {
      code = next;
    },
  });
  try {
    await program.parseAsync([...args], { from: 'user' });
    return code;
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? exitCodes.fine : exitCodes.usage;
    host.error(describeBug(error));
    return exitCodes.bug;
  }
}

function createProgram(session: Session): Command {
  const { host } = session;
  const program = new Command('prepwright');
  program
    .description(
      'Compiles a screenplay in plain Markdown into its breakdown:\nscene sheets, prop and costume lists, indexes and what to get.',
    )
    .version(packageVersion(host), '-V, --version', 'print the version')
    .helpOption('-h, --help', 'print this help')
    .helpCommand('help [command]', 'print the help of a command')
    .showHelpAfterError('(prepwright --help shows what can be typed)')
    .showSuggestionAfterError()
    .exitOverride()
    .configureOutput({
      writeOut: host.out,
      writeErr: host.error,
      getOutHelpWidth: () => host.columns,
      getErrHelpWidth: () => host.columns,
      getOutHasColors: () => host.colour.out,
      getErrHasColors: () => host.colour.error,
    })
    .addHelpText('after', examples);
  addCompileCommand(program, session);
  addCheckCommand(program, session);
  addReviewCommand(program, session);
  addExplainCommand(program, session);
  addBookCommand(program, session);
  return program;
}

const examples = `
Examples:
  prepwright compile my-film.md                     all sheets, into my-film-breakdown/
  prepwright compile my-film.md --only sheets,props only these two
  prepwright check my-film.md                       what is odd in the script, nothing written
  prepwright review my-film.md                      answer what is open, once
  prepwright explain my-film.md storm lantern       where a thing on a sheet comes from
  prepwright book my-film.md                        begin or extend the production book

Exit codes: 0 fine, 1 errors in the script, 2 wrong usage, 3 a file cannot be read or written, 70 our bug.
`;

function describeBug(error: unknown): string {
  const detail = error instanceof Error ? (error.stack ?? error.message) : String(error);
  return `This is a bug in Prepwright, not in your script. No file was changed. Please report these lines:\n${detail}\n`;
}
