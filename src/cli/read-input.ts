import { FileTrouble } from '../host/types.js';
import { sayCommand } from '../messages/command.js';
import { exitCodes } from './exit-codes.js';
import { reportMessages } from './report.js';
import type { Session } from './session.js';

export interface Input {
  readonly bytes: Uint8Array;
  /** For showing source lines under messages. */
  readonly text: string;
  /** As messages call it. */
  readonly name: string;
}

/** Reads a file that the user named; on trouble says so, sets the exit code and gives null. */
export async function readInput(file: string, session: Session): Promise<Input | null> {
  const { host } = session;
  try {
    const bytes = await host.readFile(file);
    return {
      bytes,
      text: new TextDecoder().decode(bytes),
      name: file === '-' ? 'standard input' : file.replaceAll('\\', '/'),
    };
  } catch (error) {
    if (!(error instanceof FileTrouble)) throw error;
    const message = sayCommand('file-not-read', { path: file, why: error.message });
    host.error(reportMessages([message], { texts: {}, file: '', colour: host.colour.error }));
    session.exit(exitCodes.files);
    return null;
  }
}
