/** A part of the body that a garment or a thing worn belongs to. */
export type BodyZone =
  | 'head'
  | 'face'
  | 'neck'
  | 'body'
  | 'hands'
  | 'waist'
  | 'legs'
  | 'feet'
  | 'carried'
  | 'not placed';

/** Garments that are put on, and listed, at the same place: words for them in the singular. */
export interface BodyRow {
  readonly zone: BodyZone;
  readonly words: readonly string[];
}

/**
 * Head to foot, and on one part of the body from the outside in: the order in which a dresser checks a person.
 * Source: common practice (a costume list is read head to foot, under-layer, jewellery and bag included).
 */
export const bodyOrder: readonly BodyRow[] = [
  { zone: 'head', words: ['helmet', 'hard hat', 'crown', 'tiara', 'veil'] },
  { zone: 'head', words: ['hat', 'cap', 'beanie', 'beret', 'bonnet', 'hood', 'headscarf', 'turban', 'kerchief'] },
  {
    zone: 'head',
    words: ['bandana', 'headband', 'hairband', 'hairnet', 'hairpin', 'ribbon', 'wig', 'hijab', 'kippah'],
  },
  { zone: 'head', words: ['headphone', 'earphone', 'earbud', 'headset', 'earring', 'hearing aid'] },
  {
    zone: 'face',
    words: ['mask', 'goggle', 'glasses', 'sunglasses', 'spectacles', 'monocle', 'eyepatch', 'eye patch'],
  },
  { zone: 'face', words: ['beard', 'moustache', 'nose ring', 'piercing'] },
  { zone: 'neck', words: ['scarf', 'shawl', 'muffler', 'boa'] },
  { zone: 'neck', words: ['tie', 'bow tie', 'necktie', 'cravat', 'collar'] },
  {
    zone: 'neck',
    words: ['necklace', 'pendant', 'locket', 'medal', 'lanyard', 'whistle', 'dog tag', 'chain', 'cross'],
  },
  { zone: 'body', words: ['raincoat', 'oilskin', 'poncho', 'cape', 'cloak', 'mackintosh', 'anorak', 'parka'] },
  {
    zone: 'body',
    words: ['coat', 'overcoat', 'greatcoat', 'trench coat', 'duffel coat', 'gown', 'robe', 'dressing gown'],
  },
  {
    zone: 'body',
    words: ['life jacket', 'life vest', 'hi-vis vest', 'tabard', 'apron', 'pinafore', 'overall', 'boiler suit'],
  },
  { zone: 'body', words: ['jacket', 'blazer', 'windbreaker', 'tunic', 'uniform', 'suit', 'tuxedo', 'dinner jacket'] },
  { zone: 'body', words: ['waistcoat', 'vest', 'gilet', 'bodywarmer'] },
  {
    zone: 'body',
    words: ['cardigan', 'jumper', 'sweater', 'pullover', 'hoodie', 'sweatshirt', 'fleece', 'jersey', 'knit'],
  },
  {
    zone: 'body',
    words: ['dress', 'sundress', 'frock', 'sari', 'kimono', 'jumpsuit', 'dungaree', 'costume', 'onesie'],
  },
  {
    zone: 'body',
    words: ['nightdress', 'nightgown', 'nightshirt', 'pyjama', 'pajama', 'wetsuit', 'swimsuit', 'bathing suit'],
  },
  {
    zone: 'body',
    words: ['shirt', 'blouse', 'polo shirt', 'top', 'tank top', 't-shirt', 'tee', 'turtleneck', 'polo neck'],
  },
  {
    zone: 'body',
    words: ['brooch', 'badge', 'name tag', 'pin', 'buttonhole', 'corsage', 'sash', 'brace', 'suspender'],
  },
  {
    zone: 'body',
    words: ['undershirt', 'singlet', 'camisole', 'slip', 'corset', 'bodice', 'bra', 'thermal', 'bandage'],
  },
  { zone: 'hands', words: ['glove', 'mitten', 'mitt', 'gauntlet', 'muff'] },
  {
    zone: 'hands',
    words: ['watch', 'wristwatch', 'bracelet', 'bangle', 'cuff', 'cufflink', 'wristband', 'ring', 'wedding ring'],
  },
  { zone: 'waist', words: ['belt', 'cummerbund', 'tool belt', 'holster', 'bum bag', 'waist bag', 'buckle'] },
  {
    zone: 'legs',
    words: ['trouser', 'pants', 'jeans', 'slacks', 'chino', 'cord', 'tracksuit', 'wader', 'legging', 'jogger'],
  },
  { zone: 'legs', words: ['skirt', 'kilt', 'sarong', 'petticoat', 'shorts', 'breeches', 'swimming trunks', 'trunks'] },
  {
    zone: 'legs',
    words: ['underwear', 'underpants', 'boxers', 'long johns', 'tights', 'stocking', 'garter', 'knee pad'],
  },
  { zone: 'feet', words: ['sock', 'ankle sock', 'foot wrap'] },
  {
    zone: 'feet',
    words: ['boot', 'wellington', 'welly', 'shoe', 'trainer', 'sneaker', 'sandal', 'slipper', 'clog', 'heel'],
  },
  { zone: 'feet', words: ['loafer', 'brogue', 'plimsoll', 'flip-flop', 'pump', 'skate', 'spur', 'galosh', 'moccasin'] },
  {
    zone: 'carried',
    words: ['bag', 'handbag', 'backpack', 'rucksack', 'satchel', 'purse', 'wallet', 'briefcase', 'umbrella'],
  },
  { zone: 'carried', words: ['walking stick', 'cane', 'crutch', 'fan', 'parasol', 'handkerchief', 'pocket watch'] },
];

const places = new Map<string, number>();
bodyOrder.forEach((row, index) => {
  for (const word of row.words) places.set(word, index);
});

/** Where a garment stands head to foot, told by the last words of its name; what no row knows comes last. */
export function placeOnBody(name: string): { readonly order: number; readonly zone: BodyZone } {
  const words = headWords(name);
  for (const count of [2, 1]) {
    const tail = words.slice(-count).join(' ');
    const order = places.get(tail) ?? places.get(singular(tail));
    if (order !== undefined) return { order, zone: (bodyOrder[order] as BodyRow).zone };
  }
  return { order: bodyOrder.length, zone: 'not placed' };
}

/** The words up to the head: `coat with a fur collar` is a coat, `pair of boots` are boots. */
function headWords(name: string): string[] {
  const bare = name.toLowerCase().replace(/^.*\b(?:pair|set)s? of /, '');
  const head = bare.replace(/[,(].*$/, '').replace(/\s(?:with|of|from|in|for|without|over|under)\s.*$/, '');
  return head.trim().split(/\s+/);
}

function singular(word: string): string {
  if (/(?:sh|ch|x|ss)es$/.test(word)) return word.slice(0, -2);
  if (word.endsWith('scarves')) return `${word.slice(0, -3)}f`;
  if (/[^aeiou]ies$/.test(word)) return `${word.slice(0, -3)}y`;
  return word.endsWith('s') ? word.slice(0, -1) : word;
}
