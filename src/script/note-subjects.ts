import { foldName } from '../base/slug.js';
import { sayScript } from '../messages/script.js';
import { remarkWords } from '../trade/remark-words.js';
import { readItems } from './note-items.js';
import type { KeyedNote } from './note-key.js';
import { findPerson } from './people.js';
import type { NoteContext, NoteLine } from './read-notes.js';
import type { CostumeVerb, Note, Person } from './types.js';

type NoteBase = Pick<Note, 'text' | 'at'>;

const verbPattern = /^(wears|changes\s+(?:in)?to|puts\s+on|takes\s+off|without)(?:\s+|\s*[:：]\s*|$)/i;
const remarks = new Set(remarkWords.map((row) => row.word));
const longestName = 5;

/** Names that notes of this script made or used so far. */
export interface NamesInNotes {
  readonly elements: Set<string>;
  readonly wearers: Set<string>;
}

/** Reads a note about a person or an element, known or new; a remark when it is neither. */
export function readSubject(
  keyed: KeyedNote,
  base: NoteBase,
  line: NoteLine,
  context: NoteContext,
  names: NamesInNotes,
): Note {
  const person = findPerson(context.people, keyed.key);
  if (person) return readPersonNote(person, keyed, base, line, context);
  const folded = foldName(keyed.key);
  const isElement = context.isElement(keyed.key) || names.elements.has(folded);
  const isNew = !isElement && !names.wearers.has(folded);
  if (isNew && isRemark(keyed)) return { ...base, kind: 'free', line: base.text };
  if (keyed.value === '') return sayEmpty(keyed, base, line, context);
  if (isNew) context.messages.push(sayScript('note-new-element', { name: keyed.key }, line.at));
  const costume = isElement ? null : readCostume(keyed.key, keyed, base, line, context);
  if (costume) names.wearers.add(folded);
  else names.elements.add(folded);
  return costume ?? { ...base, kind: 'state', element: keyed.key, state: keyed.value };
}

/** A key that opens a remark (`Remember:`) or reads like a sentence is no name. */
function isRemark(keyed: KeyedNote): boolean {
  if (keyed.quoted) return false;
  return (
    remarks.has(foldName(keyed.key)) || keyed.key.split(/\s+/).length > longestName || /[.!?,;](?:\s|$)/.test(keyed.key)
  );
}

function sayEmpty(keyed: KeyedNote, base: NoteBase, line: NoteLine, context: NoteContext): Note {
  context.messages.push(sayScript('note-empty', { key: keyed.key }, line.at));
  return { ...base, kind: 'free', line: base.text };
}

function readPersonNote(person: Person, keyed: KeyedNote, base: NoteBase, line: NoteLine, context: NoteContext): Note {
  if (keyed.value === '') return sayEmpty(keyed, base, line, context);
  const costume = readCostume(person.name, keyed, base, line, context);
  if (costume) return costume;
  context.messages.push(sayScript('note-person-unclear', { person: keyed.key, value: keyed.value }, line.at));
  return { ...base, kind: 'free', line: base.text };
}

function readCostume(
  person: string,
  keyed: KeyedNote,
  base: NoteBase,
  line: NoteLine,
  context: NoteContext,
): Note | null {
  const found = verbPattern.exec(keyed.value);
  if (!found) return null;
  const from = keyed.valueAt + found[0].length;
  const garments = readItems(base.text, from, context.people, line.placeOf);
  if (garments.length === 0) context.messages.push(sayScript('note-empty', { key: found[0].trim() }, line.at));
  return { ...base, kind: 'costume', person, verb: verbOf(found[1] as string), garments };
}

function verbOf(written: string): CostumeVerb {
  const verb = written.toLowerCase().replace(/\s+/g, ' ');
  return verb === 'changes into' ? 'changes to' : (verb as CostumeVerb);
}

/** Says when a remark without a colon speaks of what a known person wears. */
export function checkMissingColon(line: NoteLine, context: NoteContext): void {
  const found = /^(.{1,40}?)\s+(wears|changes to|changes into|puts on|takes off)\s/i.exec(line.text);
  const person = found ? findPerson(context.people, found[1] as string) : null;
  if (!found || !person) return;
  context.messages.push(
    sayScript('note-person-no-colon', { person: found[1] as string, verb: found[2] as string }, line.at),
  );
}
