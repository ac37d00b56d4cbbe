/** Things that burn down or are struck once: each take uses one up. */
const burntDown: ReadonlySet<string> = new Set(
  'cigarette cigar cigarillo joint roll-up match sparkler flare firework firecracker'.split(' '),
);

/** Things that come closed and are opened once: sealed copies for each take. */
const sealed: ReadonlySet<string> = new Set(
  'envelope letter parcel package packet present gift sachet telegram'.split(' '),
);

/** The fact that both lists rest on. */
export const usedUpSource =
  'common practice of prop departments on small films: ten cigarettes for two setups, sealed copies for each take';

/** True for a thing that one take burns down or strikes, by the last word of its name. */
export function burnsDown(name: string): boolean {
  return burntDown.has(lastWord(name));
}

/** True for a thing that, once opened, is opened for good, by the last word of its name. */
export function isSealed(name: string): boolean {
  return sealed.has(lastWord(name));
}

function lastWord(name: string): string {
  const word = /[\p{L}-]+$/u.exec(name.toLowerCase().split(/\s+of\s+/)[0] ?? '')?.[0] ?? '';
  return word.replace(/(?<=ch|sh|x)es$|(?<=[^s])s$/, '');
}
