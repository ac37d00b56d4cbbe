import { foldName } from '../base/slug.js';
import { readToldAges } from '../find/implied/age-words.js';
import { readAgeOfCue } from '../find/implied/ages.js';
import type { Ground } from './ground.js';

/**
 * Ages that the script tells of the people it names, by folded name, as written: of "little TOM FORD, nine," under
 * "tom ford" and, where nobody else is called so, under "tom" and "ford". The first age counts.
 */
export function readAges(ground: Ground): ReadonlyMap<string, string> {
  const ages = new Map<string, string>();
  const parts = new Map<string, string>();
  const add = (name: string, age: string) => {
    const folded = foldName(name);
    if (!ages.has(folded)) ages.set(folded, age);
    const words = folded.split(' ');
    for (const part of words.flatMap((word, at) => [word, words.slice(at).join(' ')]))
      if (!parts.has(part) && !isTitle(part)) parts.set(part, age);
  };
  for (const { actions, scene } of ground.scenes) {
    for (const block of scene.blocks) {
      const age = block.kind === 'speech' ? readAgeOfCue(block.cue.extensions) : null;
      if (block.kind === 'speech' && age) add(block.cue.name, age);
    }
    for (const { text } of actions)
      for (const { name, age } of readToldAges(text)) if (name !== null && /^\p{Lu}/u.test(name)) add(name, age);
  }
  return new Map([...parts, ...ages]);
}

/** Words that stand before many names are no part to know anybody by. */
function isTitle(word: string): boolean {
  return /^(?:mrs?|ms|miss|dr|sir|old|young|little|big|baby|aunt|uncle|the)\.?$/.test(word);
}
