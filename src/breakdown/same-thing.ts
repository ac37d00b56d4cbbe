import { foldName, foldThing } from '../base/slug.js';
import { measureWords } from '../trade/measure-words.js';
import { singularWord } from '../trade/plural-words.js';

/** A name taken apart: what the thing is, and the words that tell it from others of its kind. */
interface NameParts {
  /** Folded, without an article. */
  readonly core: string;
  readonly head: string;
  readonly modifiers: readonly string[];
  /** What a measure or a vessel holds: the brandy of `bottle of plum brandy`; null when it is no such thing. */
  readonly content: string | null;
}

const articles = /^(?:the|a|an|his|her|their|its|my|our|your|this|that|these|those|some|another) /;

/** A name without its article, folded: what finds and refusals are compared by. */
export function coreName(name: string): string {
  return partsOf(name).core;
}

/** One word in the singular, as far as English endings tell. */
export function singular(word: string): string {
  return singularWord(word);
}

/** Takes a name apart: in `old coil of rope` the head is `coil`. */
export function partsOf(name: string): NameParts {
  const known = remembered.get(name);
  if (known) return known;
  const core = foldName(name).replace(articles, '');
  const [front = ''] = core.split(/ (?:of|with|in|from|for|on|at) /);
  const words = front.split(' ');
  // A number at the end tells things of a kind apart: `calendar 1998` is a calendar.
  const lastWord = words.findLastIndex((word) => !/^#?\d+$/.test(word));
  const headAt = Math.max(0, lastWord);
  const modifiers = words.filter((_, index) => index !== headAt);
  const parts = { core, head: singular(words[headAt] ?? ''), modifiers, content: contentOf(core) };
  if (remembered.size >= rememberAtMost) remembered.clear();
  remembered.set(name, parts);
  return parts;
}

function contentOf(core: string): string | null {
  const [, vessel = '', content] = /^(?:.* )?(\S+) of (?:the |a |an )?(.+)$/.exec(core) ?? [];
  return content !== undefined && measureWords.has(singular(vessel)) ? content : null;
}

// The same few names are compared with each other over and over; what a name falls into never changes.
const remembered = new Map<string, NameParts>();
const rememberAtMost = 4096;

/** The head of a name in the singular: `lantern` of `two storm lanterns`. */
export function headOf(name: string): string {
  return partsOf(name).head;
}

/**
 * True when two names can mean one thing within one scene: equal heads, and one has no word that the other lacks
 * (`lantern` and `storm lantern`; never `brass key` and `iron key`). A measure or a vessel counts as what it holds.
 */
export function sameThing(a: string, b: string): boolean {
  if (isSame(a, b)) return true;
  const [left, right] = [partsOf(a).content, partsOf(b).content];
  return (left !== null && isSame(left, b)) || (right !== null && isSame(a, right));
}

function isSame(a: string, b: string): boolean {
  const left = partsOf(a);
  const right = partsOf(b);
  if (left.head !== right.head) return false;
  const [fewer, more] = left.modifiers.length <= right.modifiers.length ? [left, right] : [right, left];
  return fewer.modifiers.every((word) => more.modifiers.includes(word));
}

/** True when a refused name strikes an element: equal but for number, or, for a single word, the same head. */
export function isStruckBy(element: string, refused: string): boolean {
  const name = coreName(refused);
  if (singular(coreName(element)) === singular(name)) return true;
  return !name.includes(' ') && headOf(element) === singular(name);
}

/** True for an entry that says what is not worn: `no scarf`, `without tie`. */
export function isAbsence(name: string): boolean {
  return /^(?:without|no)\s+\S/i.test(name);
}

/** True when a name is one of several, but for case, spaces, quotes and an article. */
export function isNamed(names: readonly string[], name: string): boolean {
  const folded = foldThing(name);
  return names.some((one) => foldThing(one) === folded);
}

/** Where a name stands in a text as whole words, case aside; -1 when it does not. */
export function indexOfWords(text: string, name: string): number {
  const lower = text.toLowerCase();
  const wanted = name.toLowerCase();
  for (let at = lower.indexOf(wanted); at >= 0; at = lower.indexOf(wanted, at + 1)) {
    const around = `${lower[at - 1] ?? ' '}${lower[at + wanted.length] ?? ' '}`;
    if (!/[\p{L}\p{N}]/u.test(around)) return at;
  }
  return -1;
}
