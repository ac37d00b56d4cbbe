import { parseDuration } from '../base/duration.js';
import { sayScript } from '../messages/script.js';
import { splitList, unquote } from './note-items.js';
import type { KeyedNote } from './note-key.js';
import { type NoteContext, type NoteLine, remark } from './note-line.js';
import type { Light, Note } from './types.js';

/** Reads the value of a reserved word; null when it cannot be read, with a message. */
type ReadValue = (value: string, line: NoteLine, context: NoteContext) => Note | null;

const reserved: ReadonlyMap<string, ReadValue> = new Map<string, ReadValue>([
  ['day', readDay],
  ['time', readScreenTime],
  ['synopsis', (value, line) => ({ ...base(line), kind: 'synopsis', line: value })],
  ['safety', (value, line) => ({ ...base(line), kind: 'safety', line: value })],
  ['no', (value, line) => readRefusal(value, line, false)],
  ['no everywhere', (value, line) => readRefusal(value, line, true)],
  ['answer', readAnswer],
]);

function base(line: NoteLine): Pick<Note, 'text' | 'at'> {
  return { text: line.text, at: line.at };
}

function readerOf(keyed: KeyedNote): ReadValue | null {
  return keyed.quoted ? null : (reserved.get(keyed.key.toLowerCase().replace(/\s+/g, ' ')) ?? null);
}

/** `answer q1: yes` is meant as `answer: q1 yes`. */
function moveQuestion(keyed: KeyedNote): KeyedNote {
  const question = keyed.quoted ? null : /^answer\s+(\S+)$/i.exec(keyed.key);
  return question ? { ...keyed, key: 'answer', value: `${question[1]} ${keyed.value}`.trim() } : keyed;
}

/** True for a key that is a reserved word; a quoted key never is. */
export function isReservedKey(keyed: KeyedNote): boolean {
  return readerOf(moveQuestion(keyed)) !== null;
}

/** Reads a note whose key is a reserved word; null when it is none. A value that cannot be read leaves a remark. */
export function readReserved(written: KeyedNote, line: NoteLine, context: NoteContext): Note[] | null {
  const keyed = moveQuestion(written);
  const read = readerOf(keyed);
  if (read === null) return null;
  if (keyed.value !== '') return [read(keyed.value, line, context) ?? remark(line)];
  context.messages.push(sayScript('note-empty', { key: keyed.key }, line.at));
  return [remark(line)];
}

/** `2`, `2 night`, `flashback`; the labels of story days (`D2`, `F1`) too. */
function readDay(value: string, line: NoteLine, context: NoteContext): Note | null {
  const found = /^(?:(flashback|flash-back|f)\s*)?(?:(?:d|day)?\s*(\d{1,3}))?\s*,?\s*(night|day|dawn|dusk)?$/i.exec(
    value,
  );
  const [, past, number, light] = found ?? [];
  const isFlashback = past !== undefined;
  const isNone = number === undefined ? !isFlashback || past.length === 1 : Number(number) === 0;
  if (isNone) {
    context.messages.push(sayScript('note-day-unreadable', { value }, line.at));
    return null;
  }
  const day = number === undefined ? null : Number(number);
  return {
    ...base(line),
    kind: 'day',
    day,
    light: (light?.toLowerCase() ?? null) as Light | null,
    flashback: isFlashback,
  };
}

function readScreenTime(value: string, line: NoteLine, context: NoteContext): Note | null {
  const seconds = parseDuration(value);
  if (seconds !== null) return { ...base(line), kind: 'time', seconds };
  context.messages.push(sayScript('note-time-unreadable', { value }, line.at));
  return null;
}

function readRefusal(value: string, line: NoteLine, everywhere: boolean): Note {
  const names = splitList(value).map((piece) => unquote(piece.text));
  return { ...base(line), kind: 'no', names: names.filter((name) => name !== ''), everywhere };
}

/** A question's id, then the decision in words. */
function readAnswer(value: string, line: NoteLine, context: NoteContext): Note {
  const first = value.split(/\s/)[0] as string;
  if (first === value) context.messages.push(sayScript('note-empty', { key: `answer: ${first}` }, line.at));
  return {
    ...base(line),
    kind: 'answer',
    question: first.replace(/[:;,]$/, ''),
    line: value.slice(first.length).trim(),
  };
}
