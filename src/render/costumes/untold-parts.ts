import { placeOnBody } from '../../trade/body-order.js';

/** A part of the body that a change must cover and that no garment of it names. */
export interface UntoldPart {
  /** Where it stands head to foot, by the order of the garment that is asked for. */
  readonly order: number;
  readonly where: 'Body' | 'Legs' | 'Feet';
  /** What is asked for. */
  readonly asked: string;
}

/** Garments that cover body and legs at once (common practice). */
const whole = new Set(
  'suit uniform dress sundress frock sari kimono jumpsuit dungarees costume onesie overalls boiler-suit nightdress nightgown nightshirt pyjamas pajamas wetsuit swimsuit gown robe tuxedo tracksuit'.split(
    ' ',
  ),
);

const socks = /\b(?:socks?|foot wraps?|tights|stockings?)\b/i;
const bareFeet = /\bbare(?:foot| feet)\b/i;

/** The parts of the body that a change does not tell of: trunk, legs, feet. What must not be worn counts as told. */
export function findUntoldParts(names: readonly string[]): UntoldPart[] {
  const zones = new Set(names.filter((name) => !socks.test(name)).map((name) => placeOnBody(name).zone));
  const all = names.some((name) =>
    name
      .toLowerCase()
      .split(/[\s,]+/)
      .some((word) => whole.has(word) || whole.has(`${word}s`)),
  );
  const parts: UntoldPart[] = [];
  if (!zones.has('body')) parts.push({ order: placeOnBody('shirt').order, where: 'Body', asked: 'top' });
  if (!zones.has('legs') && !all)
    parts.push({ order: placeOnBody('trousers').order, where: 'Legs', asked: 'trousers or skirt' });
  if (!zones.has('feet') && !names.some((name) => bareFeet.test(name)))
    parts.push({ order: placeOnBody('shoes').order, where: 'Feet', asked: 'shoes' });
  return parts;
}

/** Small things that a dresser asks about for every change, and the words that tell of each (common practice). */
const smallThings: readonly { readonly asked: string; readonly told: RegExp }[] = [
  { asked: 'underlayer', told: /\b(?:vest|thermals?|undershirt|underwear|slip|t-shirt|wetsuit)\b/i },
  { asked: 'socks', told: /\b(?:socks?|foot wraps?|tights|stockings?|bare(?:foot| feet))\b/i },
  { asked: 'jewellery', told: /\b(?:rings?|necklaces?|earrings?|bracelets?|brooch|pendant|chain)\b/i },
  { asked: 'glasses', told: /\b(?:glasses|spectacles|goggles|monocle)\b/i },
  { asked: 'watch', told: /\b(?:watch|wristwatch)\b/i },
  { asked: 'bag', told: /\b(?:bag|handbag|satchel|rucksack|backpack|purse|suitcase)\b/i },
];

/** What a change does not tell of beside the clothes: that something is not worn is continuity too. */
export function findUntoldSmall(names: readonly string[]): string[] {
  return smallThings.filter(({ told }) => !names.some((name) => told.test(name))).map(({ asked }) => asked);
}
