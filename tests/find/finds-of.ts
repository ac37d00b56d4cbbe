import { readFileSync } from 'node:fs';
import { findElements } from '../../src/find/find-elements.js';
import { type Lexicon, openLexicon } from '../../src/find/lexicon.js';
import type { Find, Finds } from '../../src/find/types.js';
import { readScript } from '../../src/script/read-script.js';
import type { Script } from '../../src/script/types.js';

/** The lexicon that ships with the package. */
export const lexicon: Lexicon = openLexicon(readFileSync(new URL('../../src/find/data/lexicon.bin', import.meta.url)));

/** Reads a script from its text; a text without a heading is one interior scene. */
export function scriptOf(text: string, cast: readonly string[] = ['NORA', 'FELIX']): Script {
  const front = `---\ntitle: Test\ncast:\n${cast.map((name) => `  ${JSON.stringify(name)}: {}`).join('\n')}\n---\n\n`;
  const body = /^(?:##|INT|EXT)/m.test(text) ? text : `## 1 INT. ROOM - DAY\n\n${text}\n`;
  const { script } = readScript(new TextEncoder().encode(front + body), 'test.md');
  if (!script) throw new Error('the text of a test must be readable');
  return script;
}

/** All that the finder reads in a text. */
export const findsOf = (text: string, cast?: readonly string[]): Finds =>
  findElements(scriptOf(text, cast), lexicon).finds;

/** The found elements of a text. */
export const foundIn = (text: string, cast?: readonly string[]): Find[] =>
  findsOf(text, cast).elements.filter((one) => one.known === 'found');

/** `name (category)` of the found elements of a text, in order, each once. */
export const listOf = (text: string, cast?: readonly string[]): string[] => [
  ...new Set(foundIn(text, cast).map((one) => `${one.name} (${one.category})`)),
];
