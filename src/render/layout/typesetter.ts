import type { FontFace } from '../types.js';

/** What a face knows of a character. */
export interface Metrics {
  /** Advance width in thousandths of the type size, or -1 when the face lacks the character. */
  advance(face: FontFace, codePoint: number): number;
}

/** A stretch of text that one face can print. */
export interface GlyphRun {
  readonly face: FontFace;
  readonly text: string;
}

/** Measures text and splits it by what the faces can print. */
export interface Typesetter {
  /** Width in points. Characters that `face` lacks count as nothing: split with `runs` first. */
  measure(text: string, face: FontFace, size: number): number;
  /** Advance width of one character in thousandths of the type size; 0 when the face lacks it. */
  advance(face: FontFace, codePoint: number): number;
  /** The text as runs that can be printed, each lacking character replaced by a visible substitute. */
  runs(text: string, face: FontFace): readonly GlyphRun[];
  /** Code points that no face of the chain has, in the order met. */
  readonly missing: ReadonlySet<number>;
}

/** How a character that no face has is shown: by its number, so that it can be looked up. */
export function showCodePoint(codePoint: number): string {
  return `[U+${codePoint.toString(16).toUpperCase().padStart(4, '0')}]`;
}

const cacheSize = 0x2200;

/**
 * Makes a typesetter over `metrics`. A character that the asked face lacks is taken from `fallback`; one that both
 * lack is printed as `substitute` gives it and remembered in `missing`.
 */
export function createTypesetter(
  metrics: Metrics,
  fallback: FontFace = 'mono-wide',
  substitute: (codePoint: number) => string = showCodePoint,
): Typesetter {
  const missing = new Set<number>();
  const advances = new Map<FontFace, AdvanceTable>();
  const tableOf = (face: FontFace): AdvanceTable => {
    let table = advances.get(face);
    if (!table) {
      table = createAdvanceTable(metrics, face);
      advances.set(face, table);
    }
    return table;
  };
  const measure = (text: string, face: FontFace, size: number) => (tableOf(face).sum(text) * size) / 1000;
  const runs = (text: string, face: FontFace): readonly GlyphRun[] => {
    const table = tableOf(face);
    const isPlain = plain.test(text);
    if (isPlain && table.coversPlain()) return text === '' ? [] : [{ face, text }];
    const clean = isPlain ? text : cleanText(text);
    if (table.covers(clean)) return clean === '' ? [] : [{ face, text: clean }];
    return splitByCoverage(clean, [face, fallback], tableOf, (code) => {
      missing.add(code);
      return substitute(code);
    });
  };
  const advance = (face: FontFace, codePoint: number) => Math.max(0, tableOf(face).advance(codePoint));
  return { measure, advance, runs, missing };
}

/** The advance widths of one face, asked once for each character. */
interface AdvanceTable {
  advance(codePoint: number): number;
  /** The sum of a text's widths, in thousandths; characters that the face lacks count nothing. */
  sum(text: string): number;
  /** True when the face has every character; line ends need none. */
  covers(text: string): boolean;
  /** True when the face has all printable characters of ASCII. */
  coversPlain(): boolean;
}

function createAdvanceTable(metrics: Metrics, face: FontFace): AdvanceTable {
  const cache = new Float64Array(cacheSize).fill(Number.NaN);
  const advance = (code: number): number => {
    if (code >= cacheSize) return metrics.advance(face, code);
    const known = cache[code] as number;
    if (!Number.isNaN(known)) return known;
    const asked = metrics.advance(face, code);
    cache[code] = asked;
    return asked;
  };
  const sum = (text: string): number => {
    let total = 0;
    for (let i = 0; i < text.length; i++) {
      const code = text.codePointAt(i) as number;
      if (code > 0xffff) i++;
      const width = advance(code);
      if (width > 0) total += width;
    }
    return total;
  };
  const covers = (text: string): boolean => {
    for (let i = 0; i < text.length; i++) {
      const code = text.codePointAt(i) as number;
      if (code > 0xffff) i++;
      if (code !== 10 && advance(code) < 0) return false;
    }
    return true;
  };
  let plainCovered: boolean | null = null;
  const coversPlain = (): boolean => {
    plainCovered ??= covers(allPlain);
    return plainCovered;
  };
  return { advance, sum, covers, coversPlain };
}

const plain = /^[\x20-\x7e\n]*$/;
const allPlain = String.fromCharCode(...Array.from({ length: 0x5f }, (_, i) => 0x20 + i));
const invisible = /\p{Cf}|\p{Variation_Selector}/gu;

/** Composes accents and takes out what has no ink: controls, joiners, direction marks, soft hyphens. */
function cleanText(text: string): string {
  return text
    .normalize('NFC')
    .replace(/[\t\v\f\r\u0085\u2028\u2029]/g, ' ')
    .replace(invisible, '')
    .replace(/\p{Cc}/gu, (control) => (control === '\n' ? control : ''));
}

function splitByCoverage(
  text: string,
  chain: readonly FontFace[],
  tableOf: (face: FontFace) => AdvanceTable,
  substitute: (codePoint: number) => string,
): readonly GlyphRun[] {
  const runs: { face: FontFace; text: string }[] = [];
  const add = (face: FontFace, piece: string) => {
    const last = runs.at(-1);
    if (last && last.face === face) last.text += piece;
    else runs.push({ face, text: piece });
  };
  for (const character of text) {
    const code = character.codePointAt(0) as number;
    const face = character === '\n' ? chain[0] : chain.find((one) => tableOf(one).advance(code) >= 0);
    if (face) add(face, character);
    else add(chain[0] as FontFace, substitute(code));
  }
  return runs;
}
