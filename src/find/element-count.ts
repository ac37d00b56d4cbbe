import type { Part } from './clause-types.js';
import type { Token } from './reading.js';

const words = new Map<string, number>(
  Object.entries({
    one: 1,
    two: 2,
    three: 3,
    four: 4,
    five: 5,
    six: 6,
    seven: 7,
    eight: 8,
    nine: 9,
    ten: 10,
    eleven: 11,
    twelve: 12,
    thirteen: 13,
    fourteen: 14,
    fifteen: 15,
    sixteen: 16,
    seventeen: 17,
    eighteen: 18,
    nineteen: 19,
    twenty: 20,
    thirty: 30,
    forty: 40,
    fifty: 50,
    sixty: 60,
    seventy: 70,
    eighty: 80,
    ninety: 90,
    hundred: 100,
    dozen: 12,
    both: 2,
  }),
);

/** Things of which a pair is one. */
const onePair =
  /(?:glass|glasses|spectacles|goggles|binoculars|scissors|shears|pliers|tongs|tweezers|handcuffs|cuffs|trousers|jeans|shorts|tights|pyjamas|pajamas|pants|leggings|knickers|headphones|crutches|overalls|dungarees|johns|braces|suspenders|breeches)$/;

/** How many the words say there are, or null when they do not: "six crates", "a pair of gloves", "a dozen eggs". */
export function readCount(part: Part, tokens: readonly Token[]): number | null {
  const { phrase, ofPart } = part;
  const head = tokens[phrase.head] as Token;
  // "both pick and shovel" are one of each.
  const joins = phrase.determiner?.lower === 'both' && head.lower === head.lemma;
  const own = countIn(tokens, phrase.modifiers) ?? (joins ? null : numberOf(phrase.determiner?.lower ?? ''));
  const before = tokens[phrase.start - 1];
  if (own === 12 && before?.lower === 'half') return 6;
  if (own !== null) return own;
  if (/^(?:other|more|further)$/.test(phrase.determiner?.lower ?? '') && before?.tag === 'number')
    return numberOf(before.lower);
  const told = afterOf(part, tokens) ?? byItself(head.lower, phrase.determiner !== null);
  if (told !== null) return told;
  if (!ofPart || phrase.determiner !== null) return null;
  const measure = (tokens[ofPart.phrase.head] as Token).lemma;
  const many = countIn(tokens, ofPart.phrase.modifiers) ?? 1;
  if (measure === 'pair') return onePair.test(head.lower) ? many : many * 2;
  if (measure === 'couple') return 2;
  if (measure === 'dozen') return /^half$/.test(tokens[ofPart.phrase.start - 1]?.lower ?? '') ? 6 : many * 12;
  return null;
}

const ensembles = new Map([
  ['trio', 3],
  ['quartet', 4],
  ['quintet', 5],
]);

/** "a couple", "the twins", "a trio". */
function byItself(head: string, isOne: boolean): number | null {
  if (head === 'twins' || (isOne && /^(?:couple|duo)$/.test(head))) return 2;
  return isOne ? (ensembles.get(head) ?? null) : null;
}

/** "a crowd of twenty": the number stands alone after "of". "A girl of ten" tells an age. */
function afterOf({ phrase }: Part, tokens: readonly Token[]): number | null {
  const { end, head } = phrase;
  const group =
    /^(?:crowd|group|gang|band|party|squad|team|crew|congregation|audience|choir|mob|posse|class|queue|line|set|pack|platoon|company|tribe|family|herd|flock)$/;
  if (!group.test((tokens[head] as Token).lemma) || tokens[end]?.lower !== 'of' || tokens[end + 1]?.tag !== 'number')
    return null;
  return tokens[end + 2]?.tag === 'noun' ? null : numberOf((tokens[end + 1] as Token).lower);
}

function countIn(tokens: readonly Token[], places: readonly number[]): number | null {
  const numbers = places.map((place) => tokens[place] as Token).filter((token) => token.tag === 'number');
  if (numbers.length === 0) return null;
  const values = numbers.map((token) => numberOf(token.lower));
  if (values.some((value) => value === null)) return null;
  return (values as number[]).reduce(
    (sum, value) => ((value >= 100 || value === 12) && sum > 0 ? sum * value : sum + value),
    0,
  );
}

function numberOf(word: string): number | null {
  if (/^\d{1,4}$/.test(word)) return Number(word);
  const parts = word.split('-').map((part) => words.get(part));
  return parts.every((value) => value !== undefined)
    ? (parts as number[]).reduce((sum, value) => sum + value, 0)
    : null;
}
