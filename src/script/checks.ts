import type { Diagnostic } from '../base/diagnostic.js';
import { foldName } from '../base/slug.js';
import type { Range } from '../base/text-range.js';
import { sayScript } from '../messages/script.js';
import { foldPerson, groupByUntitled } from './people.js';
import { compareSceneNumbers } from './scene-number.js';
import type { Block, FrontMatter, Person, Scene } from './types.js';

/** A number of the script, on a scene or kept by an omitted one. */
interface Numbered {
  readonly number: string;
  readonly omitted: boolean;
  readonly at: Range;
}

/** Checks the numbers of a script: each once, in order, and none missing when they are locked. */
export function checkNumbers(
  scenes: readonly Pick<Scene, 'heading' | 'lead' | 'blocks'>[],
  blocks: Iterable<Block>,
  front: FrontMatter,
): Diagnostic[] {
  const numbers = gatherNumbers(scenes, blocks);
  const missing = front.numbers === 'locked' ? sayMissing(scenes) : [];
  return [...sayRepeated(numbers), ...sayDisorder(numbers), ...missing];
}

function gatherNumbers(scenes: readonly Pick<Scene, 'heading'>[], blocks: Iterable<Block>): Numbered[] {
  const numbers: Numbered[] = [];
  for (const { heading } of scenes) {
    if (heading.number !== null) numbers.push({ number: heading.number, omitted: false, at: heading.at });
  }
  for (const block of blocks) {
    if (block.kind === 'omitted') numbers.push({ number: block.number, omitted: true, at: block.at });
  }
  return numbers.sort((a, b) => a.at.start.offset - b.at.start.offset);
}

function sayRepeated(numbers: readonly Numbered[]): Diagnostic[] {
  const first = new Map<string, Numbered>();
  const messages: Diagnostic[] = [];
  for (const one of numbers) {
    const earlier = first.get(one.number);
    if (!earlier) {
      first.set(one.number, one);
      continue;
    }
    const code = earlier.omitted || one.omitted ? 'scene-number-omitted' : 'scene-number-twice';
    messages.push(sayScript(code, { number: one.number }, one.at, [{ place: earlier.at, reason: 'first used here' }]));
  }
  return messages;
}

/** One message where the order breaks; what follows is measured against the new number. */
function sayDisorder(numbers: readonly Numbered[]): Diagnostic[] {
  const messages: Diagnostic[] = [];
  numbers.forEach((one, index) => {
    const before = numbers[index - 1];
    if (before && compareSceneNumbers(before.number, one.number) > 0) {
      messages.push(sayScript('scene-number-order', { number: one.number, before: before.number }, one.at));
    }
  });
  return messages;
}

function sayMissing(scenes: readonly Pick<Scene, 'heading'>[]): Diagnostic[] {
  let after: string | null = null;
  const messages: Diagnostic[] = [];
  for (const { heading } of scenes) {
    if (heading.number === null) messages.push(sayScript('scene-number-missing', { after }, heading.at));
    after = heading.number ?? after;
  }
  return messages;
}

/** Asks about a name that another person bears with a title before it, save where `cast:` tells the two apart. */
export function checkTitles(people: readonly Person[]): Diagnostic[] {
  const titled = groupByUntitled(people);
  return people.flatMap((person) => {
    const others = person.from === 'cue' ? titled.get(foldPerson(person.name)) : undefined;
    const [other] = others?.size === 1 ? others : [];
    return other ? [sayScript('cue-title', { name: person.name, other: other.name }, person.at)] : [];
  });
}

/** Asks about a name that stands over one speech only and is one letter from a known one. */
export function checkNearNames(people: readonly Person[], blocks: Iterable<Block>): Diagnostic[] {
  const counts = countSpeeches(blocks);
  const known = new Map<string, Person>();
  const once: Person[] = [];
  for (const person of people) {
    const isOnce = person.from === 'cue' && (counts.get(foldName(person.name)) ?? 0) <= 1;
    if (isOnce) once.push(person);
    else addNearKeys(person, known);
  }
  return once.flatMap((person) => {
    const other = findNear(foldName(person.name), known);
    return other ? [sayScript('cue-near', { name: person.name, other: other.name }, person.at)] : [];
  });
}

function addNearKeys(person: Person, known: Map<string, Person>): void {
  for (const key of person.names.flatMap((name) => nearKeys(foldName(name)))) {
    if (!known.has(key)) known.set(key, person);
  }
}

function countSpeeches(blocks: Iterable<Block>): Map<string, number> {
  const counts = new Map<string, number>();
  for (const block of blocks) {
    if (block.kind !== 'speech') continue;
    const folded = foldName(block.cue.name);
    counts.set(folded, (counts.get(folded) ?? 0) + 1);
  }
  return counts;
}

/** A name with each of its letters left out, and whole: two names one letter apart share one of these. Digits are no letters. */
function nearKeys(name: string): string[] {
  const keys = [name];
  for (let at = 0; at < name.length; at += 1) {
    if (!/[\d#]/.test(name[at] as string)) keys.push(name.slice(0, at) + name.slice(at + 1));
  }
  return keys;
}

const shortestName = 3;

function findNear(name: string, known: ReadonlyMap<string, Person>): Person | null {
  if (name.length < shortestName) return null;
  for (const key of nearKeys(name)) {
    const person = known.get(key);
    if (person?.names.some((other) => isOneLetterOff(name, foldName(other)))) return person;
  }
  return null;
}

function isOneLetterOff(one: string, other: string): boolean {
  const [short, long] = one.length <= other.length ? [one, other] : [other, one];
  if (short.length < shortestName - 1 || long.length - short.length > 1 || one === other) return false;
  let at = 0;
  while (at < short.length && short[at] === long[at]) at += 1;
  return short.slice(long.length === short.length ? at + 1 : at) === long.slice(at + 1);
}
