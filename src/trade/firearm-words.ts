import { wordGroups } from './implications/word-groups.js';

const words: ReadonlySet<string> = new Set([
  ...(wordGroups.WEAPON as string).split(' '),
  'cartridge',
  'ammunition',
  'holster',
]);

/** True for a name with a word that means a firearm or what belongs to one, toy or not; false for blades. */
export function namesFirearm(name: string): boolean {
  return name
    .toLowerCase()
    .split(/[^\p{L}-]+/u)
    .some((word) => words.has(word) || words.has(word.replace(/s$/, '')));
}
