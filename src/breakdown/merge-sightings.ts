import { compareRanges } from '../base/text-range.js';
import type { Strength } from '../find/types.js';
import { categoryOfIdentity, type Identity, strongerOf } from './element-register.js';
import { obtain } from './grouping.js';
import { sameThing } from './same-thing.js';
import type { Sighting } from './sighting.js';
import type { Known, Mention } from './types.js';

/** A thing in a scene before its states are known. */
export interface Thing {
  readonly identity: Identity;
  readonly known: Known;
  readonly carried: boolean;
  readonly from: string | null;
  readonly by: string | null;
  readonly worn: boolean;
  readonly count: number | null;
  readonly description: string | null;
  readonly line: number;
  readonly sightings: readonly Sighting[];
}

/** Makes one entry of all that speaks of one thing in a scene. People are no elements. */
export function mergeSightings(sightings: readonly Sighting[], isSeen: (person: string) => boolean): Thing[] {
  const groups = new Map<Identity, Sighting[]>();
  for (const sighting of [...sightings].sort((a, b) => compareRanges(a.at, b.at))) {
    obtain(groups, sighting.identity, () => []).push(sighting);
  }
  const entries = [...groups].filter(([identity]) => !isPeople(identity));
  const things = entries.map(([identity, group]) => mergeOne(identity, withoutHints(group), isSeen));
  return things.sort((a, b) => startOf(a) - startOf(b));
}

function startOf({ sightings }: Thing): number {
  return sightings[0]?.at.start.offset ?? 0;
}

/** Words that only imply a thing are none of its mentions where the scene names it. */
function withoutHints(group: readonly Sighting[]): readonly Sighting[] {
  const named = group.filter(({ known }) => known !== 'implied');
  return named.length > 0 ? named : group;
}

/** Leaves out what is implied where something present can be that very thing. */
export function dropImpliedTwins(things: readonly Thing[]): Thing[] {
  const present = things.filter(({ known }) => known !== 'implied');
  return things.filter(
    ({ known, identity }) => known !== 'implied' || !present.some((one) => sameThing(one.identity.name, identity.name)),
  );
}

function isPeople(identity: Identity): boolean {
  const category = categoryOfIdentity(identity);
  return category === 'cast' || category === 'extras';
}

function mergeOne(identity: Identity, group: readonly Sighting[], isSeen: (person: string) => boolean): Thing {
  const { definition } = identity;
  const noted = group.filter(({ known }) => known === 'noted');
  const holder = definition?.carriedBy ?? definition?.wornBy ?? null;
  const here = holder !== null && isSeen(holder) ? holder : null;
  const by = firstOf(noted, 'by') ?? firstOf(group, 'by') ?? here;
  const spoken = group.map(({ worn }) => worn).filter((worn) => worn !== null);
  const worn = spoken.length > 0 ? spoken.includes(true) : by !== null && definition?.wornBy === by;
  return {
    identity,
    known: group.reduce<Known>((best, { known }) => strongerOf(best, known), 'implied'),
    carried: false,
    from: null,
    by,
    worn,
    count: firstOf(noted, 'count') ?? definition?.count ?? largestCount(group),
    description: firstOf(noted, 'description') ?? definition?.description ?? null,
    line: group[0]?.at.start.line ?? 0,
    sightings: group,
  };
}

function firstOf<K extends 'by' | 'count' | 'description'>(group: readonly Sighting[], key: K): Sighting[K] | null {
  return group.find((one) => one[key] !== null)?.[key] ?? null;
}

/** Things named twice in a scene are not more things: the largest count said. */
function largestCount(group: readonly Sighting[]): number | null {
  const counts = group.map(({ count }) => count).filter((count) => count !== null);
  return counts.length > 0 ? Math.max(...counts) : null;
}

/** The words and places that speak of a thing; a mark and the find under it are one mention, in the words of the mark. */
export function mentionsOf(sightings: readonly Sighting[]): Mention[] {
  const groups: Sighting[][] = [];
  let end = -1;
  for (const sighting of sightings) {
    if (sighting.at.start.offset < end) groups.at(-1)?.push(sighting);
    else groups.push([sighting]);
    end = Math.max(end, sighting.at.end.offset);
  }
  return groups.map((group) => {
    const known = group.map((one) => one.known).reduce(strongerOf);
    const { words, at } = group.find((one) => one.known === known) as Sighting;
    return { words, line: at.start.line, at };
  });
}

/** A find below this confidence is asked about, and not carried to other scenes. */
export const doubtful = 0.6;

const strengths: readonly Strength[] = ['certain', 'likely', 'ask'];

/** How strongly an implied thing is implied: the strongest of its cues. */
export function strongestOf(sightings: readonly Sighting[]): Strength | null {
  return strengths.find((strength) => sightings.some((one) => one.strength === strength)) ?? null;
}

/** The highest confidence of the finder in a thing that nobody declared here. */
export function confidenceOf(known: Known, sightings: readonly Sighting[]): number | null {
  if (known === 'marked' || known === 'noted') return null;
  const all = sightings.map(({ confidence }) => confidence).filter((one) => one !== null);
  return all.length > 0 ? Math.max(...all) : null;
}
