import type { Diagnostic } from '../base/diagnostic.js';
import { sortDiagnostics } from '../base/diagnostic.js';
import { editDistance, findNearest } from '../base/nearest.js';
import { sayBook } from '../messages/book.js';
import { insertEntries } from './insert-entries.js';
import { type Entry, matchEntries } from './match-entries.js';
import { readBook } from './read-book.js';
import { isBareEntry, type NewNames } from './rename-entries.js';
import { listNewThings, listThings, type ScriptNames, type ScriptSection, type Wanted } from './script-names.js';
import { bookTemplate } from './template.js';
import type { Book } from './types.js';
import { renameEntry } from './write-names.js';

const sections: readonly ScriptSection[] = ['people', 'background', 'places', 'scenes', 'elements'];

const words: Record<ScriptSection, string> = {
  people: 'a person',
  background: 'a group of people',
  places: 'a place',
  scenes: 'a scene',
  elements: 'a thing',
};

/**
 * Adds an entry for everything in the script that the book has none for, and touches no other character. `text` is null
 * when there is no book yet: then one is begun. A second run changes nothing. Entries that no longer match the script
 * are reported and kept; those of scenes and places that `renames` knows under a new heading get their new name. A book that
 * cannot be read is left as it is, with the messages that say why.
 */
export function addToBook(
  text: string | null,
  names: ScriptNames,
  file = 'book.yaml',
  renames: NewNames = noNames,
): { text: string; added: string[]; messages: Diagnostic[] } {
  const given = text === null || text.trim() === '' ? bookTemplate : text;
  const renamed = writeNewNames(given, renames);
  const start = renamed.text;
  const { book, messages } = readBook(start, file);
  if (book === null) return { text: start, added: [], messages };
  const wanted = withEarlierNames(listNewThings(names), renames);
  const added: string[] = [...renamed.changed];
  const problems: Diagnostic[] = tellBoth(book, renames);
  let result = start;
  for (const section of sections) {
    const missing = listMissing(book, section, wanted[section]);
    if (missing.length === 0) continue;
    const inserted = insertEntries(result, section, missing);
    if (inserted === null) problems.push(sayBook('book-section-not-extended', { section }));
    else {
      result = inserted;
      added.push(...missing.map((one) => `${section}: ${one.id}`));
    }
  }
  const all = [...messages, ...[...problems, ...reportStrangers(book, names)].map((message) => ({ ...message, file }))];
  return { text: result, added, messages: sortDiagnostics(all) };
}

const noNames: NewNames = { scenes: new Map(), places: new Map() };

/** The entries that have only a new heading, under their new names; what has no entry yet gets one further on. */
function writeNewNames(
  text: string,
  renames: NewNames,
): { readonly text: string; readonly changed: readonly string[] } {
  const changed: string[] = [];
  let result = text;
  for (const section of ['scenes', 'places'] as const) {
    for (const [from, to] of renames[section]) {
      const written = renameEntry(result, section, from, to);
      if (written === null) continue;
      result = written;
      changed.push(`${section}: ${to} (was ${from})`);
    }
  }
  return { text: result, changed };
}

/** A scene or place with an entry under its earlier and one under its new heading: whoever wrote them must join them. */
function tellBoth(book: Book, renames: NewNames): Diagnostic[] {
  return (['scenes', 'places'] as const).flatMap((section) =>
    [...renames[section]].flatMap(([from, to]) => {
      const [earlier, later] = [from, to].map((id) => (book[section] as readonly Entry[]).find((one) => one.id === id));
      if (!earlier || !later) return [];
      const first = isBareEntry(later) ? from : to;
      return [sayBook('book-same-thing-twice', { id: first, other: first === from ? to : from }, later.at)];
    }),
  );
}

/** New entries note under which earlier id the days know their scene. */
function withEarlierNames(wanted: Record<ScriptSection, readonly Wanted[]>, { scenes }: NewNames) {
  const earlier = new Map([...scenes].map(([from, to]) => [to, from]));
  const note = (one: Wanted): Wanted => {
    const was = earlier.get(one.id);
    return was === undefined ? one : { ...one, was };
  };
  return { ...wanted, scenes: wanted.scenes.map(note) };
}

/** Messages for entries of a book that match nothing in the script, and for two entries of one thing. */
export function reportStrangers(book: Book, names: ScriptNames): Diagnostic[] {
  const things = listThings(names);
  // What is refused has left the breakdown, and its entry waits for a change of mind.
  const refused = new Set(book.refused.map((one) => one.id));
  const lost: Entry[] = [];
  const found = sections.flatMap((section) => {
    const { unmatched, doubles, byThing } = matchEntries<Entry>(book[section], things[section]);
    const free = things[section].map((one) => one.id).filter((id) => !byThing.has(id));
    const strangers = unmatched.filter(({ id }) => !refused.has(id));
    const renamed = strangers.filter(({ id }) => nearId(id, free) !== null);
    lost.push(...strangers.filter((one) => !renamed.includes(one)));
    return [
      ...renamed.map(({ id, at }) =>
        sayBook('book-entry-without-script', { what: words[section], id, near: nearId(id, free) }, at),
      ),
      ...doubles.map(({ entry, first }) =>
        sayBook('book-same-thing-twice', { id: first.id, other: entry.id }, entry.at),
      ),
    ];
  });
  return [...found, ...reportLost(lost, book)];
}

/** What a cut took out of the script, in one message at its last entry: many would hide the ones that matter. */
function reportLost(lost: readonly Entry[], book: Book): Diagnostic[] {
  const last = [...lost].sort((a, b) => a.at.start.offset - b.at.start.offset).at(-1);
  if (last === undefined) return [];
  if (lost.length > 1) {
    return [sayBook('book-entries-without-script', { ids: lost.map((one) => one.id) }, last.at)];
  }
  const section = sections.find((one) => book[one].some((entry: Entry) => entry === last)) ?? 'elements';
  return [sayBook('book-entry-without-script', { what: words[section], id: last.id, near: null }, last.at)];
}

function listMissing(book: Book, section: ScriptSection, things: readonly Wanted[]): Wanted[] {
  const { byThing } = matchEntries<Entry>(book[section], things);
  const refused = new Set(book.refused.map((one) => one.id));
  return things.filter((thing) => !byThing.has(thing.id) && !refused.has(thing.id));
}

/** The free id that may be meant: guessing wildly would send someone to rename the wrong entry. */
function nearId(id: string, free: readonly string[]): string | null {
  const near = findNearest(id, free);
  return near !== null && editDistance(id, near) * 3 <= id.length ? near : null;
}
