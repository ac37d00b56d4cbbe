import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { compileLexicon } from './compile-lexicon.js';
import { readWordNet } from './wordnet.js';

const data = fileURLToPath(new URL('../../../src/find/data/', import.meta.url));

/** Reads every list of `src/find/data/lists` under its file name. */
export function readLists(): Map<string, string> {
  const names = readdirSync(`${data}lists`).sort();
  return new Map(names.map((name) => [name.replace('.txt', ''), readFileSync(`${data}lists/${name}`, 'utf8')]));
}

/** The text of the lexicon, made from WordNet and the lists. */
export function buildLexicon(): string {
  const roots = readFileSync(new URL('wordnet-roots.txt', import.meta.url), 'utf8');
  return compileLexicon(readWordNet(), roots, readLists());
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const text = buildLexicon();
  writeFileSync(`${data}lexicon.bin`, text);
  console.log(`lexicon.bin: ${text.split('\n').length} words, ${text.length} characters`);
}
