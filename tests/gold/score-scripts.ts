import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { findElements } from '../../src/find/find-elements.js';
import type { Lexicon } from '../../src/find/lexicon.js';
import { readScript } from '../../src/script/read-script.js';
import type { GoldElement } from './gold-script.js';
import { newTally, type Said, type Tally, tallyItem } from './score.js';

interface GoldScene {
  readonly number?: string;
  readonly elements: readonly GoldElement[];
  readonly extras?: readonly { readonly name: string; readonly count?: number }[];
}

const folder = fileURLToPath(new URL('scripts/', import.meta.url));

/** Names of the whole scripts with gold. */
export function goldScripts(): string[] {
  return readdirSync(folder)
    .filter((name) => name.endsWith('.json'))
    .map((name) => name.replace('.json', ''));
}

/** Scores the finder on a whole unmarked script, scene by scene. */
export function scoreScript(name: string, lexicon: Lexicon, tally: Tally = newTally()): Tally {
  const gold = JSON.parse(readFileSync(`${folder}${name}.json`, 'utf8')) as { scenes: GoldScene[] };
  const { script } = readScript(readFileSync(`${folder}${name}.md`), `${name}.md`);
  if (!script || script.scenes.length !== gold.scenes.length) throw new Error(`${name}: scenes do not agree with the gold`);
  const { finds } = findElements(script, lexicon);
  gold.scenes.forEach((scene, index) => {
    const things = finds.elements.filter((one) => one.scene === index && one.known === 'found');
    const people = finds.people.filter((one) => one.scene === index && one.kind === 'extras');
    const said = unique([...things, ...people.map((one) => ({ name: one.name, category: 'extras', by: null, words: one.words }))]);
    const extras = (scene.extras ?? []).map((one) => ({ name: one.name, category: 'extras' }));
    tallyItem(tally, `${name}:${index + 1}`, script.scenes[index]?.heading.text ?? '', [...scene.elements, ...extras], said);
  });
  return tally;
}

/** One line a scene for each element, as a sheet has it: the first mention with a person wins. */
function unique(said: readonly Said[]): Said[] {
  const known = new Map<string, Said>();
  for (const one of said) {
    const before = known.get(one.name);
    if (!before || (before.by === null && one.by !== null)) known.set(one.name, one);
  }
  return [...known.values()];
}
