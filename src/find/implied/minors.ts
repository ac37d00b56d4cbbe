import { foldName } from '../../base/slug.js';
import type { Range } from '../../base/text-range.js';
import type { Script } from '../../script/types.js';
import { learnNames } from '../people-names.js';
import type { Sentence, Token } from '../reading.js';
import { listMinors, type Minor, readAges } from './ages.js';
import type { Reason } from './reason.js';

/** Minors by every folded word they go by. */
type Minors = ReadonlyMap<string, Minor>;

/** A minor raises the hazard of children in every scene that names the person or gives the lines. */
export function raiseMinors(script: Script, sentences: readonly Sentence[]): Reason[] {
  const listed = listMinors(script);
  const ages = sentences.flatMap(readAges);
  if (listed.length === 0 && ages.length === 0) return [];
  const told = [...listed, ...ages.flatMap(({ minor, named }) => (named ? [minor] : []))];
  const minors = gather(told, new Set(script.people.flatMap(({ names }) => names.map(foldName))));
  return [
    ...ages.map(({ sentence, start, end, minor }) => reason(sentence, start, end, 'an age in the action', 0, minor)),
    ...sentences.flatMap((sentence) => (sentence.kind === 'action' ? fromMentions(sentence, minors) : [])),
    ...fromCues(script, minors),
    ...fromCastNotes(script, minors),
  ];
}

/**
 * Whole names go before their parts: of two people who share a name, the one called by it alone keeps it, as DANNY does beside
 * YOUNG DANNY, whatever their ages.
 */
function gather(people: readonly Minor[], whole: ReadonlySet<string>): Minors {
  const minors = new Map<string, Minor>();
  for (const minor of people) if (!minors.has(foldName(minor.name))) minors.set(foldName(minor.name), minor);
  for (const minor of people) {
    const parts = foldName(minor.name).split(' ');
    for (const part of parts.length > 1 ? parts : []) {
      if (part.length > 2 && !noNames.has(part.replace('.', '')) && !minors.has(part) && !whole.has(part))
        minors.set(part, minor);
    }
  }
  return minors;
}

const noNames = new Set('mrs miss the old young little big baby master boy girl and sister brother'.split(' '));

function fromMentions(sentence: Sentence, minors: Minors): Reason[] {
  const reasons: Reason[] = [];
  let before: Minor | undefined;
  for (let at = 0; at < sentence.tokens.length; at++) {
    const token = sentence.tokens[at] as Token;
    const named = minorOf(token, minors);
    if (named && named !== before)
      reasons.push(reason(sentence, token.start, endOfName(sentence, at, named, minors), sayAge(named), 0.9, named));
    before = named;
  }
  return reasons;
}

/** A name, whatever its case; a son or a niece of an age keeps it under that word. */
function minorOf(token: Token | undefined, minors: Minors): Minor | undefined {
  if (!token) return undefined;
  if (token.person !== null) return minors.get(foldName(token.person));
  return token.tag === 'noun' || token.text !== token.lower ? minors.get(token.lower) : undefined;
}

/** Where the name ends whose first word stands at `at`. */
function endOfName({ tokens }: Sentence, at: number, minor: Minor, minors: Minors): number {
  let last = at;
  while (minorOf(tokens[last + 1], minors) === minor) last++;
  return (tokens[last] as Token).end;
}

function fromCues(script: Script, minors: Minors): Reason[] {
  const names = learnNames(script.people);
  return script.scenes.flatMap(({ index: scene, blocks }) =>
    blocks.flatMap((block) => {
      if (block.kind !== 'speech') return [];
      const { name, at } = block.cue;
      const minor = minors.get(foldName(names.canonical(name) ?? name)) ?? minors.get(foldName(name));
      return minor ? [elsewhere(scene, name, at, minor, 2)] : [];
    }),
  );
}

function fromCastNotes(script: Script, minors: Minors): Reason[] {
  return script.scenes.flatMap(({ index: scene, notes }) =>
    notes.flatMap((note) => {
      if (note.kind !== 'items' || note.category !== 'cast') return [];
      return note.items.flatMap(({ name, at }) => {
        const minor = minors.get(foldName(name));
        return minor ? [elsewhere(scene, name, at, minor, 1)] : [];
      });
    }),
  );
}

const sources = { cast: 'front matter', action: 'action', cue: 'a cue' } as const;

function sayAge({ name, age, from }: Minor): string {
  return `the age of ${name}: ${age} (${sources[from]})`;
}

/** A cue or a note names a minor. */
function elsewhere(scene: number, words: string, at: Range, minor: Minor, rank: number): Reason {
  return { scene, hazard: 'H15', words, at, because: sayAge(minor), rank, sentence: null, child: minor.name };
}

function reason(
  sentence: Sentence,
  start: number,
  end: number,
  because: string,
  rank: number,
  { name }: Minor,
): Reason {
  return {
    scene: sentence.scene,
    hazard: 'H15',
    words: sentence.text.slice(start, end),
    at: sentence.place(start, end),
    because,
    rank,
    sentence,
    child: name,
  };
}
