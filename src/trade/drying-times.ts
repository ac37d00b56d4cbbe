/** How long a soaked material needs in a dry room, in hours. */
export interface DryingTime {
  readonly material: string;
  /** Words in a name that tell the material when the book does not. */
  readonly words: readonly string[];
  readonly low: number;
  readonly high: number;
  /** Hours with a drier machine; null when the machine would ruin it. */
  readonly machine: number | null;
  readonly source: string;
}

const practice = 'common practice of costume departments; machine hours from memory';

export const dryingTimes: readonly DryingTime[] = [
  {
    material: 'cotton',
    words: [
      'cotton',
      'shirt',
      'blouse',
      'dress',
      't-shirt',
      'tee',
      'apron',
      'trousers',
      'jeans',
      'socks',
      'towel',
      'handkerchief',
      'linen',
    ],
    low: 8,
    high: 12,
    machine: 2,
    source: practice,
  },
  {
    material: 'wool',
    words: [
      'wool',
      'woollen',
      'coat',
      'overcoat',
      'jumper',
      'sweater',
      'cardigan',
      'scarf',
      'uniform',
      'blanket',
      'suit',
      'tweed',
    ],
    low: 24,
    high: 36,
    machine: null,
    source: practice,
  },
  {
    material: 'leather',
    words: ['leather', 'boots', 'boot', 'shoes', 'shoe', 'gloves', 'belt', 'satchel'],
    low: 36,
    high: 48,
    machine: null,
    source: practice,
  },
  {
    material: 'synthetic',
    words: ['nylon', 'polyester', 'synthetic', 'anorak', 'raincoat', 'oilskin', 'oilskins', 'waterproof'],
    low: 2,
    high: 4,
    machine: 1,
    source: 'from memory: shells that hold little water',
  },
  {
    material: 'paper',
    words: [
      'paper',
      'letter',
      'envelope',
      'map',
      'book',
      'notebook',
      'logbook',
      'card',
      'cards',
      'newspaper',
      'photograph',
    ],
    low: 12,
    high: 24,
    machine: null,
    source: 'from memory: flat between blotters',
  },
  {
    material: 'hard',
    words: [
      'metal',
      'glass',
      'wood',
      'plastic',
      'brass',
      'lantern',
      'lamp',
      'key',
      'bottle',
      'bucket',
      'knife',
      'bicycle',
    ],
    low: 0.25,
    high: 0.5,
    machine: null,
    source: 'common practice: wiped with a cloth',
  },
];

/** The row of a material named in the book, or told by a word of the name; null when nothing tells. */
export function findDryingTime(material: string | null, name: string): DryingTime | null {
  const named = dryingTimes.find((row) => row.material === material);
  if (named) return named;
  const words = new Set(name.toLowerCase().split(/[^\p{L}-]+/u));
  return dryingTimes.find((row) => row.words.some((word) => words.has(word))) ?? null;
}

/** True for cloth, by the material that the book names or by a word of the name: creased, it is pressed and as it was. */
export function isCloth(material: string | null, name: string): boolean {
  const row = findDryingTime(material, name)?.material;
  return row === 'cotton' || row === 'wool' || row === 'synthetic';
}

/** True for paper, by the material that the book names or by a word of the name: soaked, it dries wavy and is never again as it was. */
export function isPaper(material: string | null, name: string): boolean {
  return findDryingTime(material, name)?.material === 'paper';
}
