import { foldName, slug } from '../base/slug.js';
import type { Range } from '../base/text-range.js';
import { collectiveNouns } from '../trade/cue-words.js';
import { readNumber } from '../trade/number-words.js';
import { readLeadingCount } from '../trade/quantities.js';
import { kindOfCue, peopleOfGroup } from './cue-people.js';
import { notesOf, type SceneGround } from './ground.js';
import { splitWords } from './name-matcher.js';
import type { PeopleIndex } from './people-index.js';
import type { Presence } from './presence.js';
import { coreName, headOf, singular } from './same-thing.js';
import type { Known, SceneExtra } from './types.js';

/** Elements of the script that are people in the background, by folded name, with the count their definition gives. */
export type ExtrasDefined = ReadonlyMap<string, number | null>;

interface Sight {
  readonly name: string;
  readonly count: number | null;
  readonly known: Known;
  readonly words: string;
  readonly at: Range;
}

/** Counts the people without a line in a scene: from notes, marks, `background` people and the finder; one group is one entry. */
export function countExtras(
  ground: SceneGround,
  people: PeopleIndex,
  presences: readonly Presence[],
  defined: ExtrasDefined,
  source: string,
): SceneExtra[] {
  const byName = new Map<string, SceneExtra>();
  for (const sight of sightExtras(ground, people, presences, defined, source)) {
    const key = sameGroup([...byName.keys()], groupKey(sight.name));
    const known = byName.get(key);
    byName.set(key, known ? joinSights(known, sight) : makeExtra(sight));
  }
  return [...byName.values()].sort((a, b) => a.line - b.line);
}

/** `A waiter` and then `five waiters` are one group, counted by the number of the plural. */
function joinSights(known: SceneExtra, sight: Sight): SceneExtra {
  const grows = known.count === 1 && known.known !== 'noted' && isPluralOf(sight.words, known.words);
  if (grows) return { ...known, count: sight.count, words: sight.words, line: sight.at.start.line };
  return { ...known, count: joinCounts(known, sight) };
}

/** What the words of a scene call a group: `waiters` where the script calls one of them `waiter` elsewhere. */
export function groupName({ name, words }: Pick<SceneExtra, 'name' | 'words'>): string {
  const head = lastWord(name);
  return isPluralOf(words, name) ? name.slice(0, name.length - head.length) + lastWord(words) : name;
}

function isPluralOf(words: string, other: string): boolean {
  const [many, one] = [lastWord(words), lastWord(other)];
  return many !== one && singular(many) === one;
}

function lastWord(words: string): string {
  return foldName(words).split(' ').at(-1) ?? '';
}

/** The first count holds, save that a note knows better than a name seen once. */
function joinCounts(known: SceneExtra, { known: how, count }: Sight): number | null {
  return how === 'noted' && known.known !== 'noted' ? (count ?? known.count) : (known.count ?? count);
}

function makeExtra({ name, count, known, words, at }: Sight): SceneExtra {
  return { id: slug(name), name, count, known, words, line: at.start.line };
}

function* sightExtras(
  { scene, finds }: SceneGround,
  people: PeopleIndex,
  presences: readonly Presence[],
  defined: ExtrasDefined,
  source: string,
): Generator<Sight> {
  for (const { person, cast } of presences) {
    const mention = cast.mentions[0];
    if (!person.background || !mention) continue;
    yield { name: person.name, count: 1, known: cast.known, words: mention.words, at: mention.at };
  }
  for (const block of scene.blocks) {
    if (block.kind === 'speech' && kindOfCue(block.cue.name) === 'crowd') {
      const name = block.cue.name.toLowerCase();
      yield { name, count: null, known: 'marked', words: block.cue.text, at: block.cue.at };
    }
    if (block.kind !== 'action') continue;
    for (const mark of block.lines.flatMap((line) => line.marks)) {
      const key = foldName(mark.name);
      if (people.find(mark.name) || (mark.category !== 'extras' && !defined.has(key))) continue;
      const { count, rest } = readLeadingCount(mark.name);
      yield { name: rest, count: defined.get(key) ?? count, known: 'marked', words: mark.words, at: mark.at };
    }
  }
  for (const note of notesOf(scene.notes, 'items')) {
    if (note.category !== 'extras') continue;
    for (const item of note.items) {
      if (people.find(item.name)?.background === false) continue;
      const { count, rest } = readLeadingCount(item.name);
      yield { name: rest, count: item.count ?? count, known: 'noted', words: item.name, at: item.at };
    }
  }
  yield* foundExtras(finds, people, presences, defined, source);
}

function* foundExtras(
  finds: SceneGround['finds'],
  people: PeopleIndex,
  presences: readonly Presence[],
  defined: ExtrasDefined,
  source: string,
): Generator<Sight> {
  const names = presences.flatMap(({ person }) => person.names.map(wordsOf));
  const isCast = (words: string, count: number | null) => {
    const own = wordsOf(words);
    return (count ?? 1) === 1 && names.some((name) => name.every((word) => own.includes(word)));
  };
  const found = [
    ...finds.people.filter(({ kind }) => kind === 'extras').map((find) => ({ ...find, known: 'found' as const })),
    ...finds.elements.filter(({ category }) => category === 'extras'),
  ];
  for (const { name, count, known, words, at } of found) {
    if (people.find(name) || isCast(words, count)) continue;
    if (peopleOfGroup(name, count, (one) => people.find(one) !== null).length > 0) continue;
    yield {
      name,
      count:
        count ??
        defined.get(foldName(name)) ??
        countInWords(name, words, source.slice(at.end.offset, at.end.offset + 30)),
      known,
      words,
      at,
    };
  }
}

/** The count of people whom the words tell without a number before them: `a girl` is one, `a crowd of twenty` are twenty. */
function countInWords(name: string, words: string, after: string): number | null {
  const head = headOf(name);
  if (collectiveNouns.has(head)) {
    const [, number = ''] = /^ of (?:about |around |some )?([\w-]+)/i.exec(after) ?? [];
    return readNumber(number);
  }
  const last = coreName(name).split(' ').at(-1) ?? '';
  const isOne = head === last && !isPluralOf(words, name);
  return isOne && /^(?:a|an|the|his|her|their|another) /i.test(words) ? 1 : null;
}

/** `A drunk man` is no extra where DRUNK speaks. */
function wordsOf(text: string): string[] {
  return splitWords(text).map(({ folded }) => folded);
}

/** `three nurses`, `nurses` and `nurse` are one group within a scene. */
function groupKey(name: string): string {
  const words = foldName(name)
    .replace(/^(?:the|a|an|some|several|many) /, '')
    .split(' ');
  return [...words.slice(0, -1), singular(words.at(-1) ?? '')].join(' ');
}

/** A bare head met after a fuller name of the same scene is that group: `passengers` after `bus passengers`. */
function sameGroup(known: readonly string[], key: string): string {
  return known.find((one) => one === key || one.endsWith(` ${key}`)) ?? key;
}
