/** Words that end in s and name one thing: a pair, a set, or a singular. Ordinary English. */
const oneInS: ReadonlySet<string> = new Set(
  (
    'glasses spectacles goggles binoculars scissors shears pliers tongs tweezers handcuffs cuffs trousers jeans shorts tights ' +
    'pyjamas pajamas pants leggings overalls headphones earphones crutches scales stairs steps reins braces dungarees clothes ' +
    'bus gas canvas atlas lens news series species iris oasis tennis chaos christmas bellows headquarters crossroads gallows ' +
    'works barracks means remains grounds leftovers groceries supplies belongings surroundings'
  ).split(' '),
);

/** True when the last word of a name reads as a plural of which each piece counts: `coins`, `wet towels`. */
export function looksPlural(name: string): boolean {
  const last =
    name
      .toLowerCase()
      .split(/\s+of\s+/)[0]
      ?.match(/\p{L}+$/u)?.[0] ?? '';
  return last.length > 3 && /[^siu]s$/.test(last) && !oneInS.has(last);
}

/** True when words count without a number: `every towel`, `some coins`. */
export function countsVaguely(words: string): boolean {
  return /^(?:every|all|some|several|many|a few|few|more|various|piles? of|heaps? of|lots of)\b/i.test(words.trim());
}

/** One word in the singular, as far as English endings tell. */
export function singularWord(word: string): string {
  if (word.endsWith('men') && word.length > 4 && word !== 'specimen') return `${word.slice(0, -3)}man`;
  if (word.length < 4 || !word.endsWith('s') || /(?:ss|us|is)$/.test(word)) return irregular.get(word) ?? word;
  if (word.endsWith('ies')) return `${word.slice(0, -3)}y`;
  if (/(?:ch|sh|x|ss|zz)es$/.test(word)) return word.slice(0, -2);
  return irregular.get(word) ?? word.slice(0, -1);
}

const irregular = new Map([
  ['knives', 'knife'],
  ['scarves', 'scarf'],
  ['shelves', 'shelf'],
  ['loaves', 'loaf'],
  ['leaves', 'leaf'],
  ['men', 'man'],
  ['women', 'woman'],
  ['children', 'child'],
  ['feet', 'foot'],
  ['mice', 'mouse'],
]);
