import { collectiveNouns } from './cue-words.js';
import { readNumber } from './number-words.js';

/** How many, or how much, a list says that there are of a thing. */
export interface Quantity {
  readonly count: number | null;
  /** An amount that is no count of things, as written: `5 m`, `2 1/2`. */
  readonly measure: string | null;
  /** The name of the thing. */
  readonly rest: string;
}

/** Units by which things are cut, weighed or poured, never counted. From memory; a pint or a cup is a thing to hold. */
const units =
  'mm|cm|m|km|metres?|meters?|centimetres?|centimeters?|inch|inches|ft|feet|foot|yds?|yards?|miles?|mg|g|kg|kilos?|grams?|grammes?|oz|ounces?|lbs?|ml|cl|l|litres?|liters?|gallons?';
const fraction = '(?:\\d+\\s+)?\\d+\\s?/\\s?\\d+|\\d*[\\u00bc-\\u00be\\u2150-\\u215e]|\\d+[.,]\\d{1,2}(?!\\d)';
const amount = new RegExp(`^((?:${fraction}|\\d+)\\s?(?:${units})\\b\\.?|${fraction})\\s+(?:of\\s+)?(?=\\S)`, 'i');
const times = /^(\d[\d,]*)\s*[x\u00d7]\s*(?=\S)|^[x\u00d7]\s?(\d+)\s+(?=\S)|(?<=\S)\s+[x\u00d7]\s?(\d+)$/i;
const number = '\\d[\\d,]*|[a-z]+(?:-[a-z]+)?';
const dozens = /^(half a |a half |[a-z]+(?:-[a-z]+)? |\d+ )dozen\s+(?:of\s+)?(?:the\s+)?(?=\S)/i;
const hundreds = /^([a-z]+|\d+) (hundred|thousand)\s+(?=\S)/i;
const two = /^(?:both(?: of)?(?: the)?|a couple of)\s+(?=\S)/i;
const vague =
  /^(?:a few|few|some|several|many|various|a lot|lots|a number|dozens|scores|hundreds|thousands)(?:\s+of)?(?:\s+the)?\s+(?=\S)/i;
const leading = new RegExp(`^(${number})\\s+(?=\\S)`, 'i');
const group = new RegExp(
  `^(?:an?\\s+|the\\s+)?(\\p{L}+)\\s+of\\s+(?:about\\s+|around\\s+|some\\s+)?(${number})(?:\\s+(.+))?$`,
  'iu',
);

/** Takes a quantity off a name as lists write it: `a dozen eggs`, `x3 cups`, `5 m of rope`, `both keys`, `a crowd of 200`. */
export function readQuantity(written: string): Quantity {
  const text = written.trim();
  const none = { count: null, measure: null, rest: text };
  const byTimes = times.exec(text);
  if (byTimes) return counted(toNumber(byTimes[1] ?? byTimes[2] ?? byTimes[3] ?? ''), text.replace(times, ''));
  const measured = amount.exec(text);
  if (measured) return { count: null, measure: measured[1] as string, rest: text.slice(measured[0].length) };
  const many = readMany(text);
  if (many) return many;
  const ofMany = group.exec(text);
  const size =
    ofMany && collectiveNouns.has((ofMany[1] as string).toLowerCase()) ? toNumber(ofMany[2] as string) : null;
  if (ofMany && size !== null) return counted(size, ofMany[3] ? `${ofMany[1]} of ${ofMany[3]}` : (ofMany[1] as string));
  const first = leading.exec(text);
  const count = first ? toNumber(first[1] as string) : null;
  return first && count !== null ? counted(count, text.slice(first[0].length)) : none;
}

/** Splits a leading count off a name: `three nurses` is 3 of `nurses`; `a pair of gloves` keeps its words and counts none. */
export function readLeadingCount(name: string): { readonly count: number | null; readonly rest: string } {
  const { count, rest, measure } = readQuantity(name);
  return measure === null ? { count, rest } : { count: null, rest: name.trim() };
}

/** Dozens, hundreds, both, and words that say several without a number. */
function readMany(text: string): Quantity | null {
  const dozen = dozens.exec(text);
  const how = dozen?.[1]?.trim().toLowerCase() ?? '';
  const perDozen = /half/.test(how) ? 0.5 : oneOr(how);
  if (dozen && perDozen !== null) return counted(12 * perDozen, text.slice(dozen[0].length));
  const hundred = hundreds.exec(text);
  const ofHundred = oneOr(hundred?.[1] ?? '');
  const size = hundred?.[2]?.toLowerCase() === 'thousand' ? 1000 : 100;
  if (hundred && ofHundred !== null) return counted(ofHundred * size, text.slice(hundred[0].length));
  if (two.test(text)) return counted(2, text.replace(two, ''));
  return vague.test(text) ? counted(null, text.replace(vague, '')) : null;
}

function counted(count: number | null, rest: string): Quantity {
  return { count, measure: null, rest: rest.trim() };
}

function oneOr(word: string): number | null {
  return /^an?$/i.test(word) ? 1 : readNumber(word);
}

/** A number as typed, with or without commas between thousands. */
function toNumber(text: string): number | null {
  return readNumber(/^\d/.test(text) ? text.replaceAll(',', '') : text);
}

/** What a careful writer puts where there is nothing to list. */
const nothing = /^(?:none|nothing|nobody|no one|nil|n\/a|n\.a\.|no|-|\u2013|\u2014)\.?$/i;

/** True for a list that says that it holds nothing: `none`, `n/a`. */
export function saysNothing(text: string): boolean {
  return nothing.test(text.trim());
}
