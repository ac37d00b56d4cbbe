import { isMap, isScalar, isSeq, type Node, parseDocument, type YAMLMap } from 'yaml';
import type { Diagnostic } from '../base/diagnostic.js';
import { sayScript } from '../messages/script.js';
import { readCast } from './front-cast.js';
import { type FrontFence, frontKeys } from './front-fence.js';
import { lineAt, lineEnd, lineText, rangeAt, type SourceText } from './source-text.js';
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
  const { map, errors } = parseMapping(source, fence);
  if (map === null) return { front: emptyFront, people: [], messages: errors };
  const messages: Diagnostic[] = [];
  const place = (node: unknown) => {
    const [start = 0, end = 0] = (node as Node | null)?.range ?? [];
    return rangeAt(source, fence.start + start, fence.start + end);
  };
  const front = readFields(map, { place, messages });
  const people = readCast(findValue(map, 'cast'), { place, messages });
  // What follows from text that YAML misread would only hide the mistake itself.
  return { front, people, messages: errors.length > 0 ? errors : messages };
}

function parseMapping(source: SourceText, fence: FrontFence): { map: YAMLMap | null; errors: readonly Diagnostic[] } {
  const yaml = source.text.slice(fence.start, fence.end);
  const whole = rangeAt(source, fence.start, fence.end);
  try {
    const document = parseDocument(yaml, { prettyErrors: false });
    const errors = document.errors.map((error) => sayUnreadable(source, fence.start + error.pos[0], error.code));
    if (isMap(document.contents)) return { map: document.contents, errors };
    const isEmpty = document.contents === null || errors.length > 0;
    return { map: null, errors: isEmpty ? errors : [sayUnreadable(source, fence.start, null)] };
  } catch {
    // The YAML reader throws on some input, such as brackets nested too deep: a mistake like any other.
    return { map: null, errors: [sayScript('front-matter-unreadable', { found: 'brackets in brackets' }, whole)] };
  }
}

function sayUnreadable(source: SourceText, offset: number, code: string | null): Diagnostic {
  const line = lineAt(source, offset);
  const text = lineText(source, line).trim();
  const found = code === 'DUPLICATE_KEY' ? `\`${text}\` for the second time` : `\`${text}\``;
  return sayScript('front-matter-unreadable', { found }, rangeAt(source, offset, lineEnd(source, line)));
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
  if (node === null || (isScalar(node) && node.value === null)) return choices[0];
  const value = scalarText(node) ?? '';
  const choice = choices.find((one) => one === value.toLowerCase());
  if (choice === undefined) {
    reader.messages.push(sayScript('front-value-unknown', { key, value, expected: choices }, reader.place(node)));
  }
  return choice ?? choices[0];
}
