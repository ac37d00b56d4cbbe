/** Numbers as scripts write them in words, with collective words. From memory of English usage. */
export const numberWords: ReadonlyMap<string, number> = new Map([
  ['one', 1],
  ['two', 2],
  ['three', 3],
  ['four', 4],
  ['five', 5],
  ['six', 6],
  ['seven', 7],
  ['eight', 8],
  ['nine', 9],
  ['ten', 10],
  ['eleven', 11],
  ['twelve', 12],
  ['thirteen', 13],
  ['fourteen', 14],
  ['fifteen', 15],
  ['sixteen', 16],
  ['seventeen', 17],
  ['eighteen', 18],
  ['nineteen', 19],
  ['twenty', 20],
  ['thirty', 30],
  ['forty', 40],
  ['fifty', 50],
  ['sixty', 60],
  ['hundred', 100],
]);

/** Reads a number in digits or in words; null when it is none. */
export function readNumber(word: string): number | null {
  const lower = word.toLowerCase();
  if (/^\d{1,6}$/.test(lower)) return Number(lower);
  const [tens = '', ones] = lower.split('-');
  const first = numberWords.get(tens) ?? null;
  if (ones === undefined || first === null) return ones === undefined ? first : null;
  const second = numberWords.get(ones) ?? null;
  return second !== null && first >= 20 && second < 10 ? first + second : null;
}
