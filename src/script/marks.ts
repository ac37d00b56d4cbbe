import type { Diagnostic } from '../base/diagnostic.js';
import { foldName } from '../base/slug.js';
import { sayScript } from '../messages/script.js';
import { findCategory } from '../trade/categories.js';
import { checkShortWord, partCategory } from './category-words.js';
import { cutStretch, offsetIn, type RawLine, type Stretch } from './raw-line.js';
import { rangeAt, type SourceText } from './source-text.js';
import type { Line, Mark } from './types.js';

/** What the mark reader must know of the script. */
export interface MarkContext {
  readonly source: SourceText;
  /** Folded names of all definitions. */
  readonly defined: ReadonlySet<string>;
  readonly messages: Diagnostic[];
}

/** A mark as it stands in the text with brackets; all places count there. */
interface RawMark {
  readonly open: number;
  /** Behind the last bracket or parenthesis. */
  readonly end: number;
  readonly words: readonly [number, number];
  readonly name: string;
  readonly form: Mark['form'];
  /** The category as typed. */
  readonly written: string | null;
}

/** Turns a raw line into a printed line: marks found, their brackets gone (rules E2 to E4). */
export function readMarks(raw: RawLine, inSpeech: boolean, context: MarkContext): Line {
  if (!raw.text.includes('[')) return { text: raw.text, spans: raw.spans, marks: [], at: raw.at };
  const found: RawMark[] = [];
  const cuts: [number, number][] = [];
  for (let at = nextBracket(raw, 0); at !== -1; ) {
    const picture = matchPicture(raw, at);
    if (picture !== null) {
      cuts.push(pictureCut(raw.text, at - 1, picture));
      context.messages.push(sayScript('picture-left-out', undefined, placeOf(raw, at - 1, picture, context)));
      at = nextBracket(raw, picture);
      continue;
    }
    const mark = matchMark(raw, at, context);
    if (mark === null) {
      at = nextBracket(raw, at + 1);
      continue;
    }
    if (counts(mark, inSpeech, context)) {
      found.push(mark);
      cuts.push(...cutsOf(mark, raw, context));
    }
    at = nextBracket(raw, mark.end);
  }
  return printed(raw, found, cuts, context);
}

function printed(
  raw: RawLine,
  found: readonly RawMark[],
  cuts: readonly [number, number][],
  context: MarkContext,
): Line {
  const stretch = cutStretch(raw, cuts);
  let gone = 0;
  let next = 0;
  const shift = (place: number): number => {
    for (; next < cuts.length && (cuts[next] as [number, number])[0] < place; next += 1) {
      gone += (cuts[next] as [number, number])[1] - (cuts[next] as [number, number])[0];
    }
    return place - gone;
  };
  const marks = found.map((mark): Mark => {
    const start = shift(mark.words[0]);
    return {
      start,
      end: start + mark.words[1] - mark.words[0],
      words: raw.text.slice(...mark.words),
      name: mark.name,
      form: mark.form,
      category: mark.written === null ? null : (findCategory(partCategory(mark.written)?.word ?? '')?.name ?? null),
      at: placeOf(raw, mark.open, mark.end, context),
    };
  });
  return { text: stretch.text, spans: stretch.spans, marks, at: raw.at };
}

/** The next bracket that opens and is none of a text's own: escaped ones are text. */
function nextBracket(raw: Stretch, from: number): number {
  let at = raw.text.indexOf('[', from);
  while (at !== -1 && raw.literal?.has(at)) at = raw.text.indexOf('[', at + 1);
  return at;
}

/** The bracket that closes the one at `open`; -1 when another opens first or none closes. */
function closing(raw: Stretch, open: number): number {
  for (let at = open + 1; at < raw.text.length; at += 1) {
    const sign = raw.text[at];
    if ((sign !== ']' && sign !== '[') || raw.literal?.has(at)) continue;
    return sign === ']' ? at : -1;
  }
  return -1;
}

function matchMark(raw: RawLine, open: number, context: MarkContext): RawMark | null {
  const close = closing(raw, open);
  if (close === -1) {
    context.messages.push(sayScript('bracket-open', undefined, placeOf(raw, open, open + 1, context)));
    return null;
  }
  const inner = raw.text.slice(open + 1, close);
  const words: [number, number] = [
    open + 1 + inner.length - inner.trimStart().length,
    open + 1 + Math.max(inner.trimEnd().length, inner.length - inner.trimStart().length),
  ];
  const own = raw.text.slice(...words);
  if (own === '' || own.startsWith('^')) return null;
  const category = /^\(([^()]*)\)/.exec(raw.text.slice(close + 1));
  if (category) {
    const written = (category[1] as string).trim();
    return { open, end: close + 1 + category[0].length, words, name: own, form: 'words and category', written };
  }
  const paired = matchReference(raw, open, close, words);
  if (paired || isTick(own)) return paired;
  return { open, end: close + 1, words, name: own, form: 'words', written: null };
}

/** `[x]` is a ticked box, no mark. */
function isTick(words: string): boolean {
  return words === 'x' || words === 'X';
}

function matchReference(raw: RawLine, open: number, close: number, words: [number, number]): RawMark | null {
  if (raw.text[close + 1] !== '[' || raw.literal?.has(close + 1)) return null;
  const end = closing(raw, close + 1);
  if (end === -1) return null;
  const name = raw.text.slice(close + 2, end).trim();
  if (name === '') return { open, end: end + 1, words, name: raw.text.slice(...words), form: 'words', written: null };
  return { open, end: end + 1, words, name, form: 'words and name', written: null };
}

/** In speech a mark needs a definition or a category to count; elsewhere every mark does. */
function counts(mark: RawMark, inSpeech: boolean, context: MarkContext): boolean {
  if (!inSpeech || context.defined.has(foldName(mark.name))) return true;
  return mark.written !== null && partCategory(mark.written) !== null;
}

/** The brackets to take out; none when the category is unknown and all prints as typed. */
function cutsOf(mark: RawMark, raw: RawLine, context: MarkContext): [number, number][] {
  if (mark.written !== null) {
    const place = placeOf(raw, mark.words[1] + 1, mark.end, context);
    const parted = partCategory(mark.written);
    if (parted === null) {
      context.messages.push(sayScript('category-unknown', { written: mark.written }, place));
      return [];
    }
    if (parted.text !== '') {
      context.messages.push(sayScript('category-with-text', { ...parted, name: mark.name }, place));
    }
    checkShortWord(parted.word, place, context.messages);
  }
  return [
    [mark.open, mark.words[0]],
    [mark.words[1], mark.end],
  ];
}

/** The place behind a picture whose bracket opens at `open`; null when it is none. */
function matchPicture(raw: RawLine, open: number): number | null {
  if (raw.text[open - 1] !== '!' || raw.literal?.has(open - 1)) return null;
  const close = closing(raw, open);
  if (close === -1) return null;
  const file = /^\(\s*[^()]*\.(?:jpe?g|png|gif|webp|svg|tiff?|bmp|heic|avif)\s*\)/i.exec(raw.text.slice(close + 1));
  return file ? close + 1 + file[0].length : null;
}

/** A picture goes with the spaces on one of its sides, so that it leaves no gap. */
function pictureCut(text: string, from: number, to: number): [number, number] {
  const before = text.slice(0, from);
  if (to === text.length) return [before.trimEnd().length, to];
  const isSpaced = before === '' || /\s$/.test(before);
  const after = text.slice(to);
  return [from, isSpaced ? to + after.length - after.trimStart().length : to];
}

function placeOf(raw: RawLine, from: number, to: number, context: MarkContext) {
  const start = offsetIn(raw, from);
  return rangeAt(context.source, start, Math.max(start, offsetIn(raw, Math.max(from, to - 1)) + 1));
}
