import { isMap, isScalar, isSeq, LineCounter, type Node, parseDocument, type YAMLMap } from 'yaml';
import type { Diagnostic } from '../base/diagnostic.js';
import { sayScript } from '../messages/script.js';
import { readCast } from './front-cast.js';
import { type FrontFence, frontKeys } from './front-fence.js';
import { rangeAt, type SourceText } from './source-text.js';
import type { FrontMatter, Person } from './types.js';
import { type FrontReader, scalarText } from './yaml-values.js';

/** What the front matter says, defaults filled in. */
export interface ReadFront {
  readonly front: FrontMatter;
  readonly people: readonly Person[];
  readonly messages: readonly Diagnostic[];
}

const emptyFront: FrontMatter = {
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

/** Reads the YAML of the front matter (rule L1). Mistakes are messages; what can be read is kept. */
export function readFrontMatter(source: SourceText, fence: FrontFence | null): ReadFront {
  if (fence === null) return { front: emptyFront, people: [], messages: [] };
  const messages: Diagnostic[] = [];
  const reader: FrontReader = {
    messages,
    place: (node) => {
      const range = (node as Node | null)?.range;
      return rangeAt(source, fence.start + (range?.[0] ?? 0), fence.start + (range?.[1] ?? 0));
    },
  };
  const yaml = source.text.slice(fence.start, fence.end);
  const map = parseMapping(yaml, source, fence, messages);
  if (map === null) return { front: emptyFront, people: [], messages };
  return { front: readFields(map, reader), people: readCast(findValue(map, 'cast'), reader), messages };
}

function parseMapping(yaml: string, source: SourceText, fence: FrontFence, messages: Diagnostic[]): YAMLMap | null {
  try {
    const document = parseDocument(yaml, { lineCounter: new LineCounter(), prettyErrors: false });
    for (const error of document.errors) {
      const place = rangeAt(source, fence.start + error.pos[0], fence.start + error.pos[1]);
      messages.push(sayScript('front-matter-unreadable', { problem: firstSentence(error.message) }, place));
    }
    return isMap(document.contents) ? document.contents : null;
  } catch (error) {
    // The YAML reader throws on some input, such as brackets nested too deep.
    const problem = error instanceof Error ? firstSentence(error.message) : 'text that YAML cannot read';
    messages.push(sayScript('front-matter-unreadable', { problem }, rangeAt(source, fence.start, fence.end)));
    return null;
  }
}

function firstSentence(text: string): string {
  const line = text.split('\n')[0] as string;
  return line.replace(/[.:]\s*$/, '');
}

function findValue(map: YAMLMap, key: string): unknown {
  return map.items.find((pair) => scalarText(pair.key)?.toLowerCase() === key)?.value ?? null;
}

function readFields(map: YAMLMap, reader: FrontReader): FrontMatter {
  for (const pair of map.items) {
    const key = scalarText(pair.key) ?? '';
    if (!frontKeys.some((known) => known === key.toLowerCase())) {
      reader.messages.push(sayScript('front-key-unknown', { key, known: frontKeys }, reader.place(pair.key)));
    }
  }
  return {
    title: readText(map, 'title', reader),
    draft: readText(map, 'draft', reader),
    date: readText(map, 'date', reader),
    author: readText(map, 'author', reader),
    contact: readText(map, 'contact', reader),
    paper: readChoice(map, 'paper', ['letter', 'a4'], reader),
    eighths: readChoice(map, 'eighths', ['nearest', 'up'], reader),
    numbers: readChoice(map, 'numbers', ['free', 'locked'], reader),
    language: readText(map, 'language', reader),
  };
}

/** A text; a list of texts is joined by commas (two authors). */
function readText(map: YAMLMap, key: string, reader: FrontReader): string | null {
  const node = findValue(map, key);
  if (node === null) return null;
  const text = isSeq(node)
    ? node.items
        .map(scalarText)
        .filter((item) => item !== null)
        .join(', ')
    : scalarText(node);
  if (text === null && !(isScalar(node) && node.value === null)) {
    const value = 'a list of keys';
    reader.messages.push(sayScript('front-value-unknown', { key, value, expected: ['words'] }, reader.place(node)));
  }
  return text === '' ? null : text;
}

function readChoice<T extends string>(
  map: YAMLMap,
  key: string,
  choices: readonly [T, ...T[]],
  reader: FrontReader,
): T {
  const node = findValue(map, key);
  if (node === null) return choices[0];
  const value = scalarText(node) ?? '';
  const choice = choices.find((one) => one === value.toLowerCase());
  if (choice === undefined) {
    reader.messages.push(sayScript('front-value-unknown', { key, value, expected: choices }, reader.place(node)));
  }
  return choice ?? choices[0];
}
