import type { Diagnostic } from '../base/diagnostic.js';
import type { Range } from '../base/text-range.js';
import { shortenRemark } from '../book/insert-entries.js';
import { isBareEntry, listUsedNames, readRemarks, renameEntries } from '../book/rename-entries.js';
import type { Book } from '../book/types.js';
import { labelScenes } from '../breakdown/scene-label.js';
import type { Breakdown } from '../breakdown/types.js';
import type { EarlierFile, EarlierFiles } from '../compare/choose-baseline.js';
import { factsOf } from '../compare/draft-facts.js';
import { findRenamed, type Renamed, type RenamedNames } from '../compare/find-renamed.js';
import { readFacts } from '../compare/read-facts.js';
import { listSceneIds, readRenames } from '../compare/read-renames.js';
import type { DraftFacts, Renames, SceneFacts } from '../compare/types.js';
import { sayCompare } from '../messages/compare.js';
import { listSlipped, tellSlipped } from './tell-slipped.js';

/** A book that goes by the present names of scenes and places. */
export interface CarriedBook {
  readonly book: Book;
  /** The names that the text of the book does not have yet. */
  readonly renames: Renames;
  readonly messages: readonly Diagnostic[];
}

/**
 * Lets the entries of a book follow scenes and places whose headings changed, as far as an earlier run, or the remark that `book`
 * wrote beside a new entry, can tell what they were. `text` is that of the book.
 * What is certain is carried and told; what is doubtful is told and left as it is.
 */
export function carryOver(book: Book, text: string, breakdown: Breakdown, earlier: EarlierFiles): CarriedBook {
  const live = { scenes: idsOf(breakdown.scenes), places: idsOf(breakdown.places) };
  const lost = listLost(book, breakdown, live);
  const after = factsOf(breakdown, null);
  const files = [earlier.written, earlier.previous, earlier.since].filter((file) => file !== null);
  // A run with the very same scenes has nothing to tell: most runs are spared the reading of a long file.
  const drafts = files.filter((file) => lost.length > 0 || !hasScenesOf(file, breakdown)).flatMap(readDraft);
  const remarks = lost.length > 0 ? readRemarks(book, text) : new Map<string, string>();
  const fresh = listFresh(book, after);
  const found = lost.flatMap((one) => follow(one, drafts, after, live) ?? followRemark(one, remarks, fresh) ?? []);
  const names = {
    scenes: new Map(found.flatMap(({ what, sure, from, to }) => (what === 'scene' && sure ? [[from, to]] : []))),
    places: new Map(found.flatMap(({ what, sure, from, to }) => (what === 'place' && sure ? [[from, to]] : []))),
  };
  const carried = renameEntries(book, names, live.scenes);
  const facts = drafts.map((draft) => draft.facts);
  const slipped = listSlipped(carried, breakdown, after, facts, earlier.written);
  const messages = [...tellCarried(found), ...tellDoubtful(found), ...tellSlipped(slipped, carried, breakdown)];
  return {
    book: carried,
    renames: { ...names, slipped },
    messages: messages.map((message) => ({ file: book.file, ...message })),
  };
}

/** A name of the book that the script does not have. */
interface Lost {
  readonly what: 'scene' | 'place';
  readonly from: string;
  readonly at: Range;
}

interface Followed extends Lost, Renamed {}

interface Draft {
  readonly facts: DraftFacts;
  readonly renames: Renames;
  renamed: RenamedNames | null;
}

type Live = { readonly scenes: ReadonlySet<string>; readonly places: ReadonlySet<string> };

function idsOf(list: readonly { readonly id: string }[]): ReadonlySet<string> {
  return new Set(list.map(({ id }) => id));
}

function hasScenesOf({ text }: EarlierFile, { scenes }: Breakdown): boolean {
  const ids = listSceneIds(text);
  return ids !== null && ids.length === scenes.length && ids.every((id, index) => id === scenes[index]?.id);
}

function readDraft(file: EarlierFile): Draft[] {
  const facts = readFacts(file.text);
  // A file that cannot be read has its message from the comparison of drafts.
  return 'why' in facts ? [] : [{ facts, renames: readRenames(file.text), renamed: null }];
}

function listLost(book: Book, breakdown: Breakdown, live: Live): Lost[] {
  const used = listUsedNames(book);
  const labels = new Set([...labelScenes(breakdown.scenes).values()].map((label) => label.toLowerCase()));
  const lost = [
    ...used.scenes
      .filter(({ text }) => !live.scenes.has(text) && !labels.has(text.trim().toLowerCase()))
      .map(({ text, at }): Lost => ({ what: 'scene', from: text, at })),
    ...used.places
      .filter(({ text }) => !live.places.has(text))
      .map(({ text, at }): Lost => ({ what: 'place', from: text, at })),
  ];
  return [...new Map(lost.map((one) => [`${one.what} ${one.from}`, one])).values()];
}

/** What a lost name is now, by the first earlier run that knew it; null when none did, or it is gone. */
function follow(lost: Lost, drafts: readonly Draft[], after: DraftFacts, live: Live): Followed | null {
  const kind = lost.what === 'scene' ? 'scenes' : 'places';
  for (const draft of drafts) {
    const known = draft.renames[kind].get(lost.from) ?? null;
    if (known !== null && live[kind].has(known)) {
      return { ...lost, to: known, label: labelOf(known, lost.what, after), sure: true };
    }
    draft.renamed ??= findRenamed(draft.facts.scenes, after.scenes);
    const found = draft.renamed[kind].find((one) => one.from === (known ?? lost.from));
    if (found) return { ...found, ...lost };
  }
  return null;
}

/** Scenes of which the book does not speak yet, or only by an entry that says nothing. */
function listFresh(book: Book, { scenes }: DraftFacts): SceneFacts[] {
  const said = new Set([
    ...book.scenes.filter((one) => !isBareEntry(one)).map(({ id }) => id),
    ...book.days.flatMap((day) => day.scenes.map(({ text }) => text)),
  ]);
  return scenes.filter(({ id }) => !said.has(id));
}

/** The one fresh scene in which happens what the remark beside a lost entry tells; null when there is none, or more. */
function followRemark(lost: Lost, remarks: ReadonlyMap<string, string>, fresh: readonly SceneFacts[]): Followed | null {
  const remark = lost.what === 'scene' ? remarks.get(lost.from) : undefined;
  const [same, other] = fresh.filter(({ synopsis }) => synopsis !== '' && shortenRemark(synopsis) === remark);
  return same && !other ? { ...lost, to: same.id, label: same.label, sure: true } : null;
}

function labelOf(id: string, what: Lost['what'], { scenes }: DraftFacts): string {
  const scene = scenes.find((one) => (what === 'scene' ? one.id : one.placeId) === id);
  return (what === 'scene' ? scene?.label : scene?.place) ?? id;
}

function tellCarried(found: readonly Followed[]): Diagnostic[] {
  const sure = found.filter((one) => one.sure);
  const [first] = sure;
  if (first === undefined) return [];
  const names = sure.map(({ what, from, to, label }) =>
    what === 'scene' ? `"${from}" is "${to}" now (scene ${label})` : `the place "${from}" is "${to}" now`,
  );
  return [sayCompare('names-carried', { names }, first.at)];
}

function tellDoubtful(found: readonly Followed[]): Diagnostic[] {
  return found
    .filter((one) => !one.sure)
    .map(({ what, from, to, label, at }) =>
      what === 'scene'
        ? sayCompare('name-doubtful', { what: 'a scene', from, to, label: `scene ${label}`, section: 'scenes' }, at)
        : sayCompare('name-doubtful', { what: 'a place', from, to, label, section: 'places' }, at),
    );
}
