/** A word or sign as it stands, before it is tagged. */
export interface RawWord {
  readonly text: string;
  readonly start: number;
  readonly end: number;
}

const wordPattern = /[\p{L}\p{N}]+(?:[-'’.&][\p{L}\p{N}]+)*|['’]\p{L}+|\S/uy;
/** `INT.CAR` is a heading whose space is missing. */
const gluedSetting = /^(?:INT|EXT)(?=\.[\p{L}\p{N}])/iu;
const possessiveEnd = /['’](?:s|S|re|ve|ll|d|m)$/;

/** Cuts text into words and signs; a possessive or shortened verb stands apart ("Nora" + "'s"). */
export function splitWords(text: string): RawWord[] {
  const words: RawWord[] = [];
  let at = 0;
  while (at < text.length) {
    wordPattern.lastIndex = at;
    if (text[at] === ' ' || !wordPattern.test(text)) at++;
    else {
      addWord(words, text, at, wordPattern.lastIndex);
      at = wordPattern.lastIndex;
    }
  }
  return words;
}

function addWord(words: RawWord[], text: string, from: number, end: number): void {
  let start = from;
  let word = text.slice(start, end);
  const setting = word.includes('.') ? (gluedSetting.exec(word)?.[0].length ?? 0) : 0;
  if (setting > 0) {
    words.push({ text: word.slice(0, setting), start, end: start + setting });
    words.push({ text: '.', start: start + setting, end: start + setting + 1 });
    start += setting + 1;
    word = word.slice(setting + 1);
  }
  const tail = word.includes("'") || word.includes('’') ? possessiveEnd.exec(word) : null;
  if (tail && tail.index > 0) {
    words.push({ text: word.slice(0, tail.index), start, end: start + tail.index });
    words.push({ text: tail[0], start: start + tail.index, end });
  } else words.push({ text: word, start, end });
}

const abbreviations = new Set('mr mrs ms dr st prof sgt capt lt col gen rev jr sr no vs etc approx'.split(' '));

/** The stretches of a paragraph that are sentences, as [start, end) pairs without the white space between them. */
export function splitSentences(text: string): (readonly [number, number])[] {
  const sentences: (readonly [number, number])[] = [];
  let start = skipSpace(text, 0);
  for (const match of text.matchAll(/(?:[.!?…]+)(?:["'”’)\]]*)(?=\s|$)/gu)) {
    const end = match.index + match[0].length;
    if (end <= start || !endsHere(text, match.index, match[0], end)) continue;
    sentences.push([start, end]);
    start = skipSpace(text, end);
  }
  const last = text.trimEnd().length;
  if (start < last) sentences.push([start, last]);
  return sentences;
}

function skipSpace(text: string, from: number): number {
  let at = from;
  while (at < text.length && /\s/.test(text[at] as string)) at++;
  return at;
}

function endsHere(text: string, at: number, sign: string, end: number): boolean {
  const next = text.slice(end).trimStart()[0];
  if (next && /\p{Ll}/u.test(next)) return false;
  if (sign !== '.') return true;
  const before = /(\p{L}+)$/u.exec(text.slice(Math.max(0, at - 12), at))?.[1] ?? '';
  return !(
    abbreviations.has(before.toLowerCase()) ||
    (before.length === 1 && /\p{Lu}/u.test(before) && before !== 'I')
  );
}
