import type { Diagnostic } from '../base/diagnostic.js';
import { foldName } from '../base/slug.js';
import type { Range } from '../base/text-range.js';
import { sayScript } from '../messages/script.js';
import { type CategoryName, findCategory } from '../trade/categories.js';
import { peopleOfNotes } from './gather-people.js';
import { isTransition } from './line-kinds.js';
import { readItems } from './note-items.js';
import { type KeyedNote, splitKey } from './note-key.js';
import { readReserved } from './note-overrides.js';
import { checkMissingColon, type NamesInNotes, readSubject } from './note-subjects.js';
import { offsetIn, type RawLine, withSign } from './raw-line.js';
import { matchSceneStart } from './scene-heading.js';
import { rangeAt, type SourceText } from './source-text.js';
import type { Note, Person } from './types.js';

/** A note line before anybody knows what it says. */
export interface NoteLine {
  readonly text: string;
  readonly at: Range;
  /** The place in the source of a stretch of the text. */
  readonly placeOf: (start: number, end: number) => Range;
}

/** What notes are read with. */
export interface NoteContext {
  readonly people: readonly Person[];
  /** True for the name of a mark or a definition. */
  readonly isElement: (name: string) => boolean;
  readonly messages: Diagnostic[];
}

/** The text of note lines: bullets gone, list numbers kept. */
export function toNoteLines(lines: readonly RawLine[], source: SourceText): NoteLine[] {
  return lines
    .filter((line) => line.text !== '')
    .map((raw) => {
      const line = /\d[.)]$/.test(raw.sign) ? withSign(raw, raw.sign) : raw;
      const placeOf = (start: number, end: number) =>
        rangeAt(source, offsetIn(line, start), offsetIn(line, end - 1) + 1);
      return { text: line.text, at: line.at, placeOf };
    });
}

/** Reads the notes, and with them the people whom only a `cast:` note names. */
export function readNotesAndPeople(
  lines: readonly NoteLine[],
  known: readonly Person[],
  isElement: NoteContext['isElement'],
  messages: Diagnostic[],
): { notes: Note[]; people: readonly Person[] } {
  const first: Diagnostic[] = [];
  const notes = readNotes(lines, { people: known, isElement, messages: first });
  const added = peopleOfNotes(known, notes);
  if (added.length === 0) {
    messages.push(...first);
    return { notes, people: known };
  }
  const people = [...known, ...added];
  return { notes: readNotes(lines, { people, isElement, messages }), people };
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
  const lists = planned.map((note) => (note.category === null ? null : readList(note, note.category, context)));
  const names: NamesInNotes = { elements: new Set(), wearers: new Set() };
  for (const list of lists) for (const item of list?.items ?? []) names.elements.add(foldName(item.name));
  return planned.map((note, index) => {
    const list = lists[index];
    if (!list) return readOther(note, context, names);
    if (list.items.length === 0 && !isContinued(planned, index)) sayEmptyList(note, context);
    return list;
  });
}

function planNotes(lines: readonly NoteLine[]): PlannedNote[] {
  const planned: PlannedNote[] = [];
  for (const line of lines) {
    const keyed = splitKey(line.text);
    const above = planned[planned.length - 1];
    const goesOn = keyed === null && above !== undefined && staysOpen(above) && isRightUnder(above.line, line);
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

function isContinued(planned: readonly PlannedNote[], index: number): boolean {
  const next = planned[index + 1];
  return next !== undefined && next.keyed === null && next.category !== null;
}

function readList(note: PlannedNote, category: CategoryName, context: NoteContext): Note & { kind: 'items' } {
  const { text, at, placeOf } = note.line;
  return { text, at, kind: 'items', category, items: readItems(text, note.from, context.people, placeOf) };
}

function sayEmptyList(note: PlannedNote, context: NoteContext): void {
  context.messages.push(sayScript('note-empty', { key: note.keyed?.key ?? note.line.text }, note.line.at));
}

function readOther(note: PlannedNote, context: NoteContext, names: NamesInNotes): Note {
  const { line, keyed } = note;
  const base = { text: line.text, at: line.at };
  const isScript = isTransition(line.text) || isSceneLike(line.text);
  if (isScript) context.messages.push(sayScript('note-looks-like-script', { text: line.text }, line.at));
  else if (keyed) return readReserved(keyed, base, line, context) ?? readSubject(keyed, base, line, context, names);
  else checkMissingColon(line, context);
  return { ...base, kind: 'free', line: line.text };
}

function isSceneLike(text: string): boolean {
  const start = matchSceneStart(text);
  return start !== null && !start.row.inFull && start.written === start.written.toUpperCase();
}
