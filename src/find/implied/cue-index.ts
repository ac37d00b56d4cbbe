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
  /** For a phrase found by a later word: how many words stand before that, and its first. */
  readonly anchor: number;
  readonly opener: WordList;
  /** For a phrase: what must follow its first word, in order, each after at most `gap` other words. */
  readonly rest: readonly { readonly list: WordList; readonly gap: number }[];
  readonly limits: OpenLimits;
  readonly owner: Owner;
}

/** A cue of a whole scene: its heading, a way of speaking, a category. */
export interface SettingCue<Owner> {
  readonly owner: Owner;
  readonly cue: Exclude<Cue, WordCue>;
}

/** Word cues by the word they begin with, for each kind of text in which they count; the other cues as they are. */
export interface CueIndex<Owner> {
  readonly action: CueMap<Owner>;
  readonly heading: CueMap<Owner>;
  readonly speech: CueMap<Owner>;
  readonly settings: readonly SettingCue<Owner>[];
}

export type CueMap<Owner> = ReadonlyMap<string, readonly IndexedCue<Owner>[]>;

/** Indexes the word cues of the owners by their first words. */
export function indexCues<Owner extends { readonly cues: readonly Cue[] }>(owners: readonly Owner[]): CueIndex<Owner> {
  const index = { action: new Map(), heading: new Map(), speech: new Map() };
  const settings: SettingCue<Owner>[] = [];
  for (const owner of owners) {
    for (const cue of owner.cues) {
      if (!isWordCue(cue)) settings.push({ owner, cue });
      else for (const [kind, word, indexed] of rowsFor(cue, owner)) addTo(index[kind], word, indexed);
    }
  }
  return { ...index, settings };
}

/** Where a word cue is filed: the kind of text, and the word it is looked up by. */
function rowsFor<Owner>(cue: WordCue, owner: Owner) {
  const limits = openLimits(cue.limits);
  const kinds = kindsOf(cue.limits);
  const filed = (word: string, indexed: IndexedCue<Owner>) => kinds.map((kind) => [kind, word, indexed] as const);
  if (cue.on !== 'phrase') {
    const indexed: IndexedCue<Owner> = { on: cue.on, anchor: 0, opener: noWords, rest: [], limits, owner };
    return wordsOf(cue.words).flatMap((word) => filed(word, indexed));
  }
  return cue.words.split('|').flatMap((phrase) => {
    const row = divide(phrase);
    const anchor = findAnchor(row);
    const opener = anchor === 0 ? noWords : openWordList(row[0] as string);
    return filed(row[anchor] as string, { on: cue.on, anchor, opener, rest: openRest(row), limits, owner });
  });
}

const noWords = openWordList('');

/** The words of a list, its groups put in. */
function wordsOf(list: string): string[] {
  return divide(list).flatMap((word) => (wordGroups[word] === undefined ? [word] : divide(wordGroups[word])));
}

/** Phrases that begin with words of every sentence are looked up by their first word that is not one, for speed. */
function findAnchor(row: readonly string[]): number {
  const anchor = row.findIndex((word) => !everywhere.has(word));
  return anchor > 0 && /^[\p{Ll}'-]+$/u.test(row[anchor] as string) ? anchor : 0;
}

const everywhere = new Set(
  'a an the in on at to of his her their into out from up over under with for he she you i is are take takes put puts go goes come comes pull pulls get gets give gives hold holds turn turns hang hangs open opens'.split(
    ' ',
  ),
);

function kindsOf({ heading, spoken, onlySpoken }: Limits): ('action' | 'heading' | 'speech')[] {
  if (onlySpoken) return ['speech'];
  if (heading === 'only') return ['heading'];
  return ['action', ...(heading ? (['heading'] as const) : []), ...(spoken ? (['speech'] as const) : [])];
}

function addTo<Owner>(map: Map<string, IndexedCue<Owner>[]>, word: string, cue: IndexedCue<Owner>): void {
  const list = map.get(word);
  if (list) list.push(cue);
  else map.set(word, [cue]);
}

/** `~` passes over up to three words. */
function openRest(row: readonly string[]): IndexedCue<unknown>['rest'] {
  return row
    .slice(1)
    .flatMap((word, at) => (word === '~' ? [] : [{ list: openWordList(word), gap: row[at] === '~' ? 3 : 0 }]));
}

function isWordCue(cue: Cue): cue is WordCue {
  return cue.on === 'verb' || cue.on === 'noun' || cue.on === 'state' || cue.on === 'phrase';
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
