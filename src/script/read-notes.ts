import type { Diagnostic } from '../base/diagnostic.js';
import { foldThing } from '../base/slug.js';
import { sayScript } from '../messages/script.js';
import { type CategoryName, findCategory } from '../trade/categories.js';
import { saysNothing } from '../trade/quantities.js';
import { checkShortWord } from './category-words.js';
import { peopleOfNotes } from './gather-people.js';
import { isTransition } from './line-kinds.js';
import { type MarkContext, readMarks } from './marks.js';
import { readItems } from './note-items.js';
import { type KeyedNote, splitKey } from './note-key.js';
import { type NoteContext, type NoteLine, remark } from './note-line.js';
import { isReservedKey, readReserved } from './note-overrides.js';
import { checkMissingColon, type NamesInNotes, readCostume, readSubject } from './note-subjects.js';
import { findPerson, numberedPeople, singularName } from './people.js';
import { offsetIn, type RawLine, withSign } from './raw-line.js';
import { matchSceneStart } from './scene-heading.js';
import { rangeAt } from './source-text.js';
import type { Note, NoteItem, Person } from './types.js';

/** The text of note lines: bullets gone, list numbers kept. */
export function toNoteLines(lines: readonly RawLine[], context: MarkContext): NoteLine[] {
  return lines
    .filter((line) => line.text !== '')
    .map((raw) => {
      const line = readMarks(/\d[.)]$/.test(raw.sign) ? withSign(raw, raw.sign) : raw, false, context);
      const placeOf = (start: number, end: number) =>
        rangeAt(context.source, offsetIn(line, start), offsetIn(line, end - 1) + 1);
      return { text: line.text, at: line.at, placeOf, bulleted: /^[-*+]$/.test(raw.sign) };
    });
}

/** Reads the notes, and with them the people whom only a `cast:` note names. */
export function readNotesAndPeople(
  lines: readonly NoteLine[],
  known: readonly Person[],
  names: Pick<NoteContext, 'isElement' | 'isSpokenOf'>,
  messages: Diagnostic[],
): { notes: Note[]; people: readonly Person[] } {
  const first: Diagnostic[] = [];
  const notes = readNotes(lines, { people: known, ...names, messages: first });
  const added = peopleOfNotes(known, notes);
  if (added.length === 0) {
    messages.push(...first);
    return { notes, people: known };
  }
  const people = [...known, ...added];
  return { notes: readNotes(lines, { people, ...names, messages }), people };
}

/** A note line with its key, and the category whose list it holds or goes on with. */
interface PlannedNote {
  readonly line: NoteLine;
  readonly keyed: KeyedNote | null;
  readonly category: CategoryName | null;
  /** Where the list begins in the text. */
  readonly from: number;
}

/** Reads the notes of a script, each line for itself, save a list of things that goes on after a comma. */
export function readNotes(lines: readonly NoteLine[], context: NoteContext): Note[] {
  const planned = planNotes(lines);
  const known = planned.map((note) => readKnown(note, context));
  const names: NamesInNotes = { elements: new Set(known.flat().flatMap(namesOf).map(foldThing)), wearers: new Set() };
  return planned.flatMap((note, index) => {
    const read = known[index] as readonly Note[];
    if (note.category !== null && note.keyed) checkShortWord(note.keyed.key, note.line.at, context.messages);
    if (note.category !== null && !isContinued(planned, index)) checkList(note, read, context);
    return read.length > 0 ? read : readOther(note, context, names);
  });
}

/** What can be read before all names are known: lists of things, and the clothes of known people. */
function readKnown(note: PlannedNote, context: NoteContext): readonly Note[] {
  if (note.category !== null) return readList(note, note.category, context);
  const person = note.keyed === null ? null : findPerson(context.people, note.keyed.key);
  const isReserved = note.keyed !== null && isReservedKey(note.keyed);
  return person && note.keyed && !isReserved ? readCostume(person.name, note.keyed, note.line, context) : [];
}

function namesOf(note: Note): readonly string[] {
  if (note.kind === 'items') return note.items.map((item) => item.name);
  return note.kind === 'costume' ? note.garments.map((item) => item.name) : [];
}

function planNotes(lines: readonly NoteLine[]): PlannedNote[] {
  const planned: PlannedNote[] = [];
  for (const line of lines) {
    const keyed = splitKey(line.text);
    const above = planned[planned.length - 1];
    const goesOn =
      keyed === null &&
      above !== undefined &&
      (staysOpen(above) || isNextBullet(above, line)) &&
      isRightUnder(above.line, line);
    if (goesOn) planned.push({ line, keyed, category: above.category, from: 0 });
    else {
      const category = keyed && !keyed.quoted ? (findCategory(keyed.key)?.name ?? null) : null;
      planned.push({ line, keyed, category, from: keyed?.valueAt ?? 0 });
    }
  }
  return planned;
}

function isRightUnder(above: NoteLine, below: NoteLine): boolean {
  return below.at.start.line === above.at.start.line + 1;
}

/** A list goes on after a comma, and after a key that has nothing behind it. */
function staysOpen(note: PlannedNote): boolean {
  return note.category !== null && (/[,，]$/.test(note.line.text) || note.keyed?.value === '');
}

/** In a list set with bullets each bullet is one more thing. */
function isNextBullet(above: PlannedNote, line: NoteLine): boolean {
  return above.category !== null && above.line.bulleted && line.bulleted;
}

function isContinued(planned: readonly PlannedNote[], index: number): boolean {
  const next = planned[index + 1];
  return next !== undefined && next.keyed === null && next.category !== null;
}

function readList(note: PlannedNote, category: CategoryName, context: NoteContext): Note[] {
  const { text, at, placeOf } = note.line;
  const all = readItems(text, [note.from, text.length], context.people, placeOf);
  const { items, groups } = category === 'cast' ? sortCast(all, context) : { items: all, groups: [] };
  const list: Note = { text, at, kind: 'items', category, items };
  if (groups.length === 0) return [list];
  const extras: Note = { text, at, kind: 'items', category: 'extras', items: groups };
  return items.length > 0 ? [list, extras] : [extras];
}

/** `2 cops` among the cast are the two that the script numbers, else a group of people without a name. */
function sortCast(all: readonly NoteItem[], { people, messages }: NoteContext) {
  const groups = all.filter(({ name, count }) => count !== null && numberedPeople(people, name).length !== count);
  for (const { name, count, at } of groups) {
    messages.push(
      sayScript('cast-note-counts', { name, count: count ?? 0, one: singularName(name).toUpperCase() }, at),
    );
  }
  const items = all
    .filter((item) => !groups.includes(item))
    .flatMap((item) => {
      const numbered = item.count === null ? [] : numberedPeople(people, item.name);
      return numbered.length > 0 ? numbered.map(({ name }) => ({ ...item, name, count: null })) : [item];
    });
  return { items, groups };
}

function checkList(note: PlannedNote, read: readonly Note[], context: NoteContext): void {
  if (read.some((one) => one.kind === 'items' && one.items.length > 0)) return;
  const written = note.line.text.slice(note.from).trim();
  if (saysNothing(written)) {
    const key = note.keyed?.key ?? note.category ?? '';
    context.messages.push(sayScript('note-none', { key, written }, note.line.at));
  } else context.messages.push(sayScript('note-empty', { key: note.keyed?.key ?? note.line.text }, note.line.at));
}

function readOther(note: PlannedNote, context: NoteContext, names: NamesInNotes): readonly Note[] {
  const { line, keyed } = note;
  if (isTransition(line.text) || isSceneLike(line.text)) {
    context.messages.push(sayScript('note-looks-like-script', { text: line.text }, line.at));
  } else if (keyed) return readReserved(keyed, line, context) ?? readSubject(keyed, line, context, names);
  else checkMissingColon(line, context);
  return [remark(line)];
}

function isSceneLike(text: string): boolean {
  const start = matchSceneStart(text);
  return start !== null && !start.row.inFull && start.written === start.written.toUpperCase();
}
