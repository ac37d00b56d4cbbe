import type { Range } from '../../src/base/text-range.js';
import type {
  Action,
  Block,
  Cue,
  FrontMatter,
  Heading,
  Line,
  Note,
  Part,
  Scene,
  Script,
  Speech,
  SpeechLine,
  TextStyle,
  Transition,
} from '../../src/script/types.js';

/** Where hand-made nodes claim to stand. */
export const nowhere: Range = { start: { line: 1, column: 1, offset: 0 }, end: { line: 1, column: 1, offset: 0 } };

/** A line of text in one style. */
export function line(text: string, style: TextStyle = 'plain'): Line {
  return { text, spans: [{ start: 0, end: text.length, offset: 0, style }], marks: [], at: nowhere };
}

/** A line whose stretches have styles of their own. */
export function styledLine(...parts: readonly (readonly [text: string, style: TextStyle])[]): Line {
  let start = 0;
  const spans = parts.map(([text, style]) => {
    const span = { start, end: start + text.length, offset: start, style };
    start = span.end;
    return span;
  });
  return { text: parts.map(([text]) => text).join(''), spans, marks: [], at: nowhere };
}

export function action(...lines: readonly (string | Line)[]): Action {
  return { kind: 'action', lines: lines.map(toLine), item: false, at: nowhere };
}

/** An image of a montage. */
export function item(text: string): Action {
  return { ...action(text), item: true };
}

/** A speech; a line in parentheses is a parenthetical. */
export function speech(cue: string, ...lines: readonly (string | Line)[]): Speech {
  const spoken = lines.map((one): SpeechLine => {
    const text = toLine(one);
    return { kind: /^\(.*\)$/.test(text.text) ? 'parenthetical' : 'dialogue', line: text };
  });
  return { kind: 'speech', cue: makeCue(cue), lines: spoken, at: nowhere };
}

function makeCue(text: string): Cue {
  const extensions = [...text.matchAll(/\(([^)]*)\)/g)].map((match) => match[1] ?? '');
  const voice = extensions.includes('V.O.')
    ? 'voice-over'
    : extensions.includes('O.S.')
      ? 'off-screen'
      : extensions.includes('ON THE PHONE')
        ? 'phone'
        : 'on-screen';
  return { text, name: text.replace(/\s*\(.*$/, ''), extensions, voice, at: nowhere };
}

export function transition(text: string): Transition {
  return { kind: 'transition', line: line(text), at: nowhere };
}

export function part(text: string): Part {
  return { kind: 'part', line: line(text), depth: 1, at: nowhere };
}

export const pageBreak: Block = { kind: 'page break', at: nowhere };

export function omitted(number: string): Block {
  return { kind: 'omitted', number, at: nowhere };
}

export function heading(text: string, number: string | null = null, more: Partial<Heading> = {}): Heading {
  return {
    text,
    number,
    setting: text.startsWith('EXT') ? 'EXT' : 'INT',
    place: text,
    placeParts: [text],
    time: null,
    light: null,
    lightInherited: false,
    qualifiers: [],
    line: line(text),
    at: nowhere,
    ...more,
  };
}

export function scene(head: string | Heading, blocks: readonly Block[], more: Partial<Scene> = {}): Scene {
  return {
    index: 0,
    heading: typeof head === 'string' ? heading(head) : head,
    lead: [],
    blocks,
    notes: [],
    part: null,
    at: nowhere,
    ...more,
  };
}

/** A note that gives a scene's screen time. */
export function timeNote(seconds: number): Note {
  return { kind: 'time', seconds, text: `time: ${seconds} s`, at: nowhere };
}

const front: FrontMatter = {
  title: null,
  draft: null,
  date: null,
  author: null,
  contact: null,
  paper: 'letter',
  eighths: 'nearest',
  numbers: 'free',
  language: null,
};

export function script(
  scenes: readonly Scene[],
  settings: Partial<FrontMatter> = {},
  more: Partial<Script> = {},
): Script {
  return {
    file: 'script.md',
    source: '',
    front: { ...front, ...settings },
    people: [],
    definitions: [],
    opening: [],
    scenes: scenes.map((one, index) => ({ ...one, index })),
    closing: [],
    notes: [],
    ...more,
  };
}

function toLine(text: string | Line): Line {
  return typeof text === 'string' ? line(text) : text;
}
