import type { Cue, Limits, WordCue } from '../../trade/implications/cue.js';
import { wordGroups } from '../../trade/implications/word-groups.js';
import { divide, openWordList, type WordList } from './word-list.js';

/** The limits of a cue with their lists opened. */
export interface OpenLimits
  extends Pick<Limits, 'setting' | 'heading' | 'spoken' | 'modifier' | 'onlySpoken' | 'nothingBefore'> {
  readonly lists: readonly (readonly [Where, WordList])[];
}

/** Where a limit looks; `not…` forbids what the other demands. */
export type Where = Exclude<
  keyof Limits,
  'setting' | 'heading' | 'spoken' | 'modifier' | 'onlySpoken' | 'nothingBefore'
>;

/** A word cue ready to be matched at one of its words, with what it raises. */
export interface IndexedCue<Owner> {
  readonly on: WordCue['on'];
  /** For a phrase: all its words in order. */
  readonly row: readonly string[];
  readonly limits: OpenLimits;
  readonly owner: Owner;
}

/** Word cues by the word they begin with. */
export type CueIndex<Owner> = ReadonlyMap<string, readonly IndexedCue<Owner>[]>;

/** Indexes the word cues of the owners by their first words; other cues are left out. */
export function indexCues<Owner extends { readonly cues: readonly Cue[] }>(owners: readonly Owner[]): CueIndex<Owner> {
  const index = new Map<string, IndexedCue<Owner>[]>();
  for (const owner of owners) {
    for (const cue of owner.cues) {
      if (!isWordCue(cue)) continue;
      const limits = openLimits(cue.limits);
      for (const row of rowsOf(cue)) {
        const first = row[0] as string;
        const list = index.get(first) ?? [];
        list.push({ on: cue.on, row, limits, owner });
        index.set(first, list);
      }
    }
  }
  return index;
}

function isWordCue(cue: Cue): cue is WordCue {
  return cue.on === 'verb' || cue.on === 'noun' || cue.on === 'state' || cue.on === 'phrase';
}

function rowsOf(cue: WordCue): string[][] {
  if (cue.on === 'phrase') return cue.words.split('|').map(divide);
  return divide(cue.words)
    .flatMap((word) => (wordGroups[word] === undefined ? [word] : divide(wordGroups[word])))
    .map((word) => [word]);
}

const places: readonly Where[] = [
  'subject',
  'notSubject',
  'object',
  'notObject',
  'next',
  'notNext',
  'prev',
  'notPrev',
  'near',
  'notNear',
];

function openLimits(limits: Limits): OpenLimits {
  const lists = places.flatMap((where) => {
    const list = limits[where];
    return list === undefined ? [] : [[where, openWordList(list)] as const];
  });
  const { setting, heading, spoken, modifier, onlySpoken, nothingBefore } = limits;
  return { setting, heading, spoken, modifier, onlySpoken, nothingBefore, lists } as OpenLimits;
}
