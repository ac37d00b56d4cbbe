/** Things that burn down or are struck once: each take uses one up. Common practice: ten cigarettes for two setups. */
const burntDown: ReadonlySet<string> = new Set(
  'cigarette cigar cigarillo joint roll-up match sparkler flare firework firecracker'.split(' '),
);

/** Things that come closed and are opened once. Common practice: sealed copies for each take. */
const sealed: ReadonlySet<string> = new Set(
  'envelope letter parcel package packet present gift sachet telegram'.split(' '),
);

/** Drinks and broths: counted in millilitres, not in pieces. Ordinary English. */
const liquids: ReadonlySet<string> = new Set(
  (
    'tea coffee cocoa water milk juice lemonade wine beer ale cider brandy whisky whiskey rum gin vodka schnapps champagne punch ' +
    'soup broth gravy syrup cream squash soda cola'
  ).split(' '),
);

/** True for a drink or a broth by the last word of its name: `tea`, not `cup of tea`. */
export function namesLiquid(name: string): boolean {
  return liquids.has(lastWord(name));
}

/** True for a thing that one take burns down or strikes, by the last word of its name. */
export function burnsDown(name: string): boolean {
  return burntDown.has(lastWord(name));
}

/** True for a candle: it burns for hours, so the same one is lit again for each take. Common practice. */
export function burnsAgain(name: string): boolean {
  return /^(?:candle|taper|tealight|nightlight)$/.test(lastWord(name));
}

/** True for a thing that, once opened, is opened for good, by the last word of its name. */
export function isSealed(name: string): boolean {
  return sealed.has(lastWord(name));
}

function lastWord(name: string): string {
  const word = /[\p{L}-]+$/u.exec(name.toLowerCase().split(/\s+of\s+/)[0] ?? '')?.[0] ?? '';
  return word.replace(/(?<=ch|sh|x)es$|(?<=[^s])s$/, '');
}
