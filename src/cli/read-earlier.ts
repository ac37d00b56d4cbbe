import type { EarlierFile, EarlierFiles } from '../compare/choose-baseline.js';
import { readInput } from './read-input.js';
import type { Session } from './session.js';

/** What earlier runs left in the output folder, and the file that `--since` names; on trouble says so and gives null. */
export async function readEarlier(
  folder: string,
  since: string | undefined,
  session: Session,
): Promise<EarlierFiles | null> {
  const read = async (file: string): Promise<EarlierFile | null> => {
    const input = await readInput(file, session);
    return input && { text: input.text, file: input.name };
  };
  const left = async (name: string) => {
    const file = `${folder}/${name}`;
    return (await session.host.exists(file)) ? { there: true, file: await read(file) } : { there: false, file: null };
  };
  const [written, previous] = [await left('breakdown.json'), await left('previous.json')];
  const named = since === undefined ? null : await read(since);
  const isMissing = [written, previous].some((one) => one.there && !one.file) || (since !== undefined && !named);
  return isMissing ? null : { written: written.file, previous: previous.file, since: named };
}
