import { beginsWithAge } from './implied/age-words.js';
import type { Mention } from './mentions.js';

/**
 * The person whom a mention of somebody only describes: "Nora, a tall woman in a coat, ..." is Nora, and so is "Nora, 30, the boatman, ...";
 * "Nora, a nurse and a porter" are three. Null for somebody else.
 */
export function personBefore({ sentence, start, end, name }: Mention): string | null {
  const { text, tokens } = sentence;
  const after = text.slice(end);
  const words = text.slice(start, end);
  if (/^ (?:and|or) |^, (?:and|or) (?:an?|the|his|her|two) /.test(after)) return null;
  const isSet =
    /^(?: of [^,.;]+| (?:in|with|from) [^,.;]+)?[,.;]/.test(after) && !/^, (?:\p{Lu}|(?:an?|the) )/u.test(after);
  if (!/^an? /i.test(words) && !(isSet && name.head === name.singular)) return null;
  const before = text.slice(0, start).trimEnd();
  if (!before.endsWith(',')) return null;
  const head = withoutAge(before.slice(0, -1));
  const named = tokens.findLast((token) => token.person !== null && token.end <= head.length);
  return named && surname.test(head.slice(named.end)) ? named.person : null;
}

/** The PEARSON of "LEN PEARSON, forty-five, miner", where the cues only say LEN. */
const surname = /^(?: \p{Lu}[\p{L}'’-]+)*$/u;

/** "NORA, 30", "NORA (30)", "NORA, forty-five": what stands before the age. */
function withoutAge(text: string): string {
  const bare = text.replace(/\s*\([^)]*\)$/, '');
  const comma = bare.lastIndexOf(',');
  return comma > 0 && beginsWithAge(bare.slice(comma)) ? bare.slice(0, comma) : bare;
}
