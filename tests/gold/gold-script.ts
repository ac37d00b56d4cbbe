import type { Range } from '../../src/base/text-range.js';
import type { Line, Person, Script } from '../../src/script/types.js';

/** A thing an assistant director would list, with what else a reasonable reader could call it. */
export interface GoldElement {
  readonly name: string;
  readonly category: string;
  readonly also?: readonly string[];
  readonly who?: string;
  readonly optional?: boolean;
}

/** One action paragraph or speech and its elements. */
export interface GoldItem {
  readonly id: string;
  readonly cast: readonly string[];
  readonly kind: 'action' | 'dialogue';
  readonly speaker?: string;
  readonly text: string;
  readonly elements: readonly GoldElement[];
}

const rangeOf = (line: number, text: string, offset: number): Range => ({
  start: { line, column: 1, offset },
  end: { line, column: 1 + text.length, offset: offset + text.length },
});

function lineOf(line: number, text: string, offset: number): Line {
  const spans = [{ start: 0, end: text.length, offset, style: 'plain' as const }];
  return { text, spans, marks: [], at: rangeOf(line, text, offset) };
}

/** A script of one scene that holds a gold item, made without the reader. */
export function goldScript(item: GoldItem): Script {
  const heading = 'INT. ROOM - DAY';
  const source = `${heading}\n\n${item.speaker ? `${item.speaker}\n` : ''}${item.text}`;
  const line = lineOf(3, item.text, source.length - item.text.length);
  const at = rangeOf(1, heading, 0);
  const people: Person[] = item.cast.map((name) => ({
    name, names: [name], was: [], age: null, background: false, from: 'cast', at,
  }));
  const cue = { text: item.speaker ?? '', name: item.speaker ?? '', extensions: [], voice: 'on-screen' as const, at };
  const block = item.kind === 'action'
    ? { kind: 'action' as const, lines: [line], item: false, at: line.at }
    : { kind: 'speech' as const, cue, lines: [{ kind: 'dialogue' as const, line }], at: line.at };
  return {
    file: 'gold.md', source, people, definitions: [], opening: [], closing: [], notes: [],
    front: { title: null, draft: null, date: null, author: null, contact: null, paper: 'letter', eighths: 'nearest', numbers: 'free', language: null },
    scenes: [{
      index: 0, lead: [], blocks: [block], notes: [], part: null, at,
      heading: {
        text: heading, number: null, setting: 'INT', place: 'Room', placeParts: ['Room'], time: 'DAY', light: 'day',
        lightInherited: false, qualifiers: [], line: lineOf(1, heading, 0), at,
      },
    }],
  };
}
