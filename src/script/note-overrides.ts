import { parseDuration } from '../base/duration.js';
import { sayScript } from '../messages/script.js';
import { splitList, unquote } from './note-items.js';
import type { KeyedNote } from './note-key.js';
import type { NoteContext, NoteLine } from './read-notes.js';
import type { Note } from './types.js';

type NoteBase = Pick<Note, 'text' | 'at'>;
type ReadReserved = (keyed: KeyedNote, base: NoteBase, line: NoteLine, context: NoteContext) => Note;

/** What each reserved word does with its value. */
const reserved: Readonly<Record<string, ReadReserved>> = {
  day: readDay,
  time: readTime,
  synopsis: (keyed, base) => ({ ...base, kind: 'synopsis', line: keyed.value }),
  safety: (keyed, base) => ({ ...base, kind: 'safety', line: keyed.value }),
  no: (keyed, base) => readRefusal(keyed, base, false),
  'no everywhere': (keyed, base) => readRefusal(keyed, base, true),
  answer: readAnswer,
};

/** Reads a note whose key is a reserved word; null when it is none. A value that cannot be read leaves a remark. */
export function readReserved(keyed: KeyedNote, base: NoteBase, line: NoteLine, context: NoteContext): Note | null {
  const key = keyed.key.toLowerCase().replace(/\s+/g, ' ');
  const read = keyed.quoted || !Object.hasOwn(reserved, key) ? undefined : reserved[key];
  if (!read) return null;
  if (keyed.value !== '') return read(keyed, base, line, context);
  context.messages.push(sayScript('note-empty', { key: keyed.key }, line.at));
  return { ...base, kind: 'free', line: base.text };
}

/** `2`, `2 night`, `flashback`; the labels of story days (`D2`, `F1`) too. */
function readDay(keyed: KeyedNote, base: NoteBase, line: NoteLine, context: NoteContext): Note {
  const found = /^(?:(flashback|flash-back|f)\s*)?(?:(?:d|day)?\s*(\d{1,3}))?\s*,?\s*(night|day)?$/i.exec(keyed.value);
  const flashback = found?.[1] !== undefined;
  if (!found || (found[2] === undefined && (!flashback || found[1]?.length === 1))) {
    context.messages.push(sayScript('note-day-unreadable', { value: keyed.value }, line.at));
    return { ...base, kind: 'free', line: base.text };
  }
  const day = found[2] === undefined ? null : Number(found[2]);
  return { ...base, kind: 'day', day, night: found[3]?.toLowerCase() === 'night', flashback };
}

function readTime(keyed: KeyedNote, base: NoteBase, line: NoteLine, context: NoteContext): Note {
  const seconds = parseDuration(keyed.value);
  if (seconds !== null) return { ...base, kind: 'time', seconds };
  context.messages.push(sayScript('note-time-unreadable', { value: keyed.value }, line.at));
  return { ...base, kind: 'free', line: base.text };
}

function readRefusal(keyed: KeyedNote, base: NoteBase, everywhere: boolean): Note {
  const names = splitList(keyed.value).map((piece) => unquote(piece.text));
  return { ...base, kind: 'no', names: names.filter((name) => name !== ''), everywhere };
}

/** A question's id, then the decision in words. */
function readAnswer(keyed: KeyedNote, base: NoteBase): Note {
  const [first = ''] = keyed.value.split(/\s/);
  return {
    ...base,
    kind: 'answer',
    question: first.replace(/[:,]$/, ''),
    line: keyed.value.slice(first.length).trim(),
  };
}
