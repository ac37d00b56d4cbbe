import type { BookText } from '../app/production.js';
import { bookFile } from './file-names.js';
import { readInput } from './read-input.js';
import type { Session } from './session.js';

/** The production book that the user named, or the one beside the script when there is one; null when there is none. */
export async function findBook(
  script: string,
  named: string | undefined,
  session: Session,
): Promise<BookText | null | 'unreadable'> {
  const file = named ?? bookFile(script);
  if (file === null || (named === undefined && !(await session.host.exists(file)))) return null;
  const input = await readInput(file, session);
  return input ? { text: input.text, file: input.name } : 'unreadable';
}
