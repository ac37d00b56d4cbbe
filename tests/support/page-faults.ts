import type { PrintedPage, PrintedText } from './pdf-ink.js';

/** Narrow columns and hung punctuation may stand out by less than a hair. */
const hair = 0.6;
/** Binding side 20 mm, other sides 12 mm, in points (common practice for punched paper). */
const binding = 56.69;
const edge = 34.02;
/** Height of the two lines at the foot of each page. */
const foot = 34;
/** No type is smaller than this, in points. */
const smallest = 10;

/** What a practitioner would send back to the printer: type too small, colour, text outside the margins or over other text. */
export function findFaults(page: PrintedPage, where: string): string[] {
  const { texts, width, height, coloured } = page;
  const isOutside = (one: PrintedText) =>
    one.x < binding - hair || one.right > width - edge + hair || one.y > height - edge + hair;
  return [
    ...texts.filter((one) => one.size < smallest - 0.01).map((one) => `${where}: ${one.size} points: ${one.text}`),
    ...(coloured ? [`${where}: colour`] : []),
    ...texts.filter(isOutside).map((one) => `${where}: outside: ${one.text}`),
    ...findOverprints(texts).map((words) => `${where}: ${words}`),
  ];
}

function findOverprints(texts: readonly PrintedText[]): string[] {
  return [...new Set(texts.map((one) => one.y))].flatMap((y) => {
    const line = texts.filter((one) => one.y === y).sort((a, b) => a.x - b.x);
    return line.flatMap((one, at) => {
      const next = line[at + 1];
      return next && next.x < one.right - hair ? [`"${next.text}" over "${one.text}"`] : [];
    });
  });
}

/** How far down a page is used: 0 to 1. */
export function usedOf({ texts, height }: PrintedPage): number {
  const area = height - edge * 2 - foot;
  return Math.max(0, ...texts.filter((one) => one.y < edge + area).map((one) => (one.y - edge) / area));
}
