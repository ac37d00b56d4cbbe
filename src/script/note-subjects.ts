import { foldName, foldThing } from '../base/slug.js';
import { sayScript } from '../messages/script.js';
import { findCategory } from '../trade/categories.js';
import { saysNothing } from '../trade/quantities.js';
import { remarkWords } from '../trade/remark-words.js';
import { readItems } from './note-items.js';
import type { KeyedNote } from './note-key.js';
import { type NoteContext, type NoteLine, remark } from './note-line.js';
import { findPerson } from './people.js';
import type { CostumeVerb, Note } from './types.js';

const verb = 'wears|changes\\s+(?:in)?to|puts\\s+on|takes\\s+off|without';
const startsWithVerb = new RegExp(`^(?:${verb})(?:\\s|:|$)`, 'i');
/** A verb at the start, behind a comma, or behind `and`: one line may take a coat off and put an apron on. */
const eachVerb = new RegExp(
  `(?:^|[,;]\\s*(?:and\\s+|then\\s+)?|\\s(?:and|then)\\s+)(${verb})(?:\\s*:\\s*|\\s+|$)`,
  'gi',
);
const namedVerb = /^(.{1,40}?)\s+(wears|changes (?:in)?to|puts on|takes off)\s/i;
const remarks = new Set(remarkWords.map((row) => row.word));
const dashedKey = /^([\p{L}-]+)\s*(?:[-\u2010-\u2015=]+|\s)\s+(\S.*)$/u;
const longestName = 5;

/** Names that notes of this script made or used so far, folded. */
export interface NamesInNotes {
  readonly elements: Set<string>;
  readonly wearers: Set<string>;
}

/** Reads a note about a person or an element, known or new; a remark when it is neither. */
export function readSubject(
  keyed: KeyedNote,
  line: NoteLine,
  context: NoteContext,
  names: NamesInNotes,
): readonly Note[] {
  const person = findPerson(context.people, keyed.key);
  const folded = foldThing(keyed.key);
  const isElement = context.isElement(keyed.key) || names.elements.has(folded);
  const isNew = !person && !isElement && !names.wearers.has(folded);
  if (isNew && isRemark(keyed)) return [remark(line)];
  if (keyed.value === '') {
    context.messages.push(sayScript('note-empty', { key: keyed.key }, line.at));
    return [remark(line)];
  }
  if (person) {
    // Clothes of known people were read before; what is left says nothing that a person's note can say.
    context.messages.push(sayScript('note-person-unclear', { person: keyed.key, value: keyed.value }, line.at));
    return [remark(line)];
  }
  const turned = readTurnedRound(keyed, line, context);
  if (turned !== null) return [turned];
  if (isNew && !context.isSpokenOf(keyed.key))
    context.messages.push(sayScript('note-new-element', { name: keyed.key }, line.at));
  const costume = isElement ? [] : readCostume(keyed.key, keyed, line, context);
  (costume.length > 0 ? names.wearers : names.elements).add(folded);
  if (costume.length > 0) return costume;
  return [
    { text: line.text, at: line.at, kind: 'state', element: keyed.key, state: keyed.value, quoted: keyed.quoted },
  ];
}

/** `letter: prop` has the name and the kind the wrong way round: no thing is in the state "prop". Null for any other note. */
function readTurnedRound(keyed: KeyedNote, line: NoteLine, { people, messages }: NoteContext): Note | null {
  const category = keyed.quoted ? null : findCategory(keyed.value);
  if (category === null) return null;
  messages.push(sayScript('note-turned-round', { name: keyed.key, category: keyed.value }, line.at));
  const items = readItems(line.text, [0, line.text.indexOf(':')], people, line.placeOf);
  return { text: line.text, at: line.at, kind: 'items', category: category.name, items };
}

/** A key that opens a remark (`Remember:`) or reads like a sentence is no name. */
function isRemark({ key, quoted }: KeyedNote): boolean {
  if (quoted) return false;
  return remarks.has(foldName(key)) || key.split(/\s+/).length > longestName || /[.!?,;](?:\s|$)/.test(key);
}

/** Reads what a person puts on, takes off, wears or lacks: one note for each verb; none when the value has no verb, a remark when it has nothing else. */
export function readCostume(person: string, keyed: KeyedNote, line: NoteLine, context: NoteContext): Note[] {
  const value = line.text.slice(keyed.valueAt);
  if (!startsWithVerb.test(value)) return [];
  const verbs = [...value.matchAll(eachVerb)];
  const notes = verbs.flatMap((found, index): Note[] => {
    const from = keyed.valueAt + found.index + found[0].length;
    const to = keyed.valueAt + (verbs[index + 1]?.index ?? value.length);
    const garments = readItems(line.text, [from, to], context.people, line.placeOf);
    if (garments.length === 0 && !saysNothing(line.text.slice(from, to))) {
      context.messages.push(sayScript('note-empty', { key: found[1] as string }, line.at));
      return [];
    }
    return [{ text: line.text, at: line.at, kind: 'costume', person, verb: verbOf(found[1] as string), garments }];
  });
  return notes.length > 0 ? notes : [remark(line)];
}

function verbOf(written: string): CostumeVerb {
  return written.toLowerCase().replace(/\s+/g, ' ').replace('into', 'to') as CostumeVerb;
}

/** Says when a remark without a colon speaks of what a known person wears, or begins with a kind of thing and a dash. */
export function checkMissingColon(line: NoteLine, context: NoteContext): void {
  const [, kind = '', rest = ''] = dashedKey.exec(line.text) ?? [];
  if (findCategory(kind)) {
    context.messages.push(sayScript('note-kind-no-colon', { kind, rest }, line.at));
    return;
  }
  const found = namedVerb.exec(line.text);
  const [, name = '', said = ''] = found ?? [];
  if (!found || !findPerson(context.people, name)) return;
  context.messages.push(sayScript('note-person-no-colon', { person: name, verb: said }, line.at));
}
