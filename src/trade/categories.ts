import { departmentWords } from './category-words.js';

/** The name of a category as the model and the JSON write it (plural). */
export type CategoryName =
  | 'cast'
  | 'extras'
  | 'props'
  | 'food'
  | 'graphics'
  | 'vehicles'
  | 'animals'
  | 'costumes'
  | 'makeup'
  | 'dressing'
  | 'plants'
  | 'stunts'
  | 'effects'
  | 'visual-effects'
  | 'sound'
  | 'music'
  | 'gear';

/** Where a category stands on a sheet. */
export type CategoryGroup = 'people' | 'in hand' | 'on the body' | 'the place' | 'air, sound and picture';

export interface Category {
  readonly name: CategoryName;
  /** What a writer may type for it in a mark, a definition or a note. */
  readonly written: readonly string[];
  /** How it prints at the head of a list. */
  readonly label: string;
  readonly department:
    | 'cast'
    | 'props'
    | 'costume'
    | 'make-up'
    | 'art'
    | 'camera, light and sound'
    | 'effects'
    | 'transport'
    | 'animals';
  readonly group: CategoryGroup;
  readonly definition: string;
  /** Where the definition is published (names as in the trade's literature), or "common practice". */
  readonly source: string;
  /** True when one line of it is something to get: it reaches the purchase list. */
  readonly bought: boolean;
}

/** The categories of a breakdown, in the order in which sheets list them. */
export const categories: readonly Category[] = [
  {
    name: 'cast',
    written: ['cast'],
    label: 'Cast',
    department: 'cast',
    group: 'people',
    bought: false,
    definition: 'A person with a name or a line, seen or heard.',
    source: 'Wikipedia, Script breakdown: cast = any speaking performer',
  },
  {
    name: 'extras',
    written: ['extras', 'extra', 'background'],
    label: 'Extras',
    department: 'cast',
    group: 'people',
    bought: false,
    definition: 'People seen who have no line: a silent bit or background, with a count.',
    source: 'Wikipedia, Script breakdown: extras, silent bits and atmosphere',
  },
  {
    name: 'props',
    written: ['props', 'prop'],
    label: 'Props',
    department: 'props',
    group: 'in hand',
    bought: true,
    definition: 'A thing that a performer touches, moves or uses.',
    source: 'University of British Columbia, properties course; Wikipedia, Theatrical property',
  },
  {
    name: 'food',
    written: ['food', 'foods'],
    label: 'Food and drink',
    department: 'props',
    group: 'in hand',
    bought: true,
    definition: 'What is eaten or drunk on camera; each take uses it up.',
    source: 'University of British Columbia, properties course: running props',
  },
  {
    name: 'graphics',
    written: ['graphics', 'graphic'],
    label: 'Graphics',
    department: 'art',
    group: 'in hand',
    bought: true,
    definition: 'What must be printed, drawn or shown on a screen, with its exact words.',
    source: 'University of British Columbia, properties course: paper props',
  },
  {
    name: 'vehicles',
    written: ['vehicles', 'vehicle'],
    label: 'Vehicles',
    department: 'transport',
    group: 'in hand',
    bought: true,
    definition: 'Anything that carries people or loads in the picture.',
    source: 'Wikipedia, Script breakdown: vehicles and animals',
  },
  {
    name: 'animals',
    written: ['animals', 'animal'],
    label: 'Animals',
    department: 'animals',
    group: 'in hand',
    bought: true,
    definition: 'Every animal seen, with the person who handles it.',
    source: 'Wikipedia, Script breakdown: vehicles and animals',
  },
  {
    name: 'costumes',
    written: ['costumes', 'costume', 'wardrobe'],
    label: 'Costumes',
    department: 'costume',
    group: 'on the body',
    bought: true,
    definition: 'A thing that is worn.',
    source: 'Wikipedia, Script breakdown: wardrobe',
  },
  {
    name: 'makeup',
    written: [
      'makeup',
      'make-up',
      'hair',
      'make-up and hair',
      'makeup and hair',
      'hair and make-up',
      'hair and makeup',
    ],
    label: 'Make-up and hair',
    department: 'make-up',
    group: 'on the body',
    bought: true,
    definition: 'What make-up or hair must show beyond the everyday: wounds, blood, age, dirt on the skin.',
    source: 'Wikipedia, Script breakdown: make-up and hair',
  },
  {
    name: 'dressing',
    written: ['dressing', 'set dressing'],
    label: 'Dressing',
    department: 'art',
    group: 'the place',
    bought: true,
    definition: 'What stands in a place and nobody touches; it stays in every scene there.',
    source: 'University of British Columbia, properties course: set dressing',
  },
  {
    name: 'plants',
    written: ['plants', 'plant', 'greenery'],
    label: 'Plants',
    department: 'art',
    group: 'the place',
    bought: true,
    definition: 'Living or artificial plants that dress a place.',
    source: 'common practice',
  },
  {
    name: 'stunts',
    written: ['stunts', 'stunt'],
    label: 'Stunts',
    department: 'effects',
    group: 'air, sound and picture',
    bought: false,
    definition: 'An action that may hurt someone and may need a double or a coordinator.',
    source: 'Wikipedia, Script breakdown: stunts',
  },
  {
    name: 'effects',
    written: ['effects', 'effect'],
    label: 'Effects on set',
    department: 'effects',
    group: 'air, sound and picture',
    bought: false,
    definition: 'Weather, smoke, flame and other effects made in front of the camera.',
    source: 'Wikipedia, Script breakdown: special effects',
  },
  {
    name: 'visual-effects',
    written: ['visual-effects', 'visual effects', 'visual-effect', 'visual effect', 'vfx'],
    label: 'Visual effects',
    department: 'camera, light and sound',
    group: 'air, sound and picture',
    bought: false,
    definition: 'What is added to the picture later.',
    source: 'InverseIntuition, film course: visual effects beside practical effects',
  },
  {
    name: 'sound',
    written: ['sound', 'sounds'],
    label: 'Sound',
    department: 'camera, light and sound',
    group: 'air, sound and picture',
    bought: false,
    definition: 'A sound that the scene needs, played or cued on set or recorded for it.',
    source: 'Wikipedia, Script breakdown: sound effects and music',
  },
  {
    name: 'music',
    written: ['music'],
    label: 'Music',
    department: 'camera, light and sound',
    group: 'air, sound and picture',
    bought: false,
    definition: 'Music that is heard or played in the scene.',
    source: 'Wikipedia, Script breakdown: sound effects and music',
  },
  {
    name: 'gear',
    written: ['gear', 'special equipment'],
    label: 'Special gear',
    department: 'camera, light and sound',
    group: 'air, sound and picture',
    bought: false,
    definition: 'Equipment that only this scene forces.',
    source: 'Wikipedia, Script breakdown: special equipment',
  },
];

const byWord = new Map(
  categories.flatMap((category) =>
    [...category.written, ...(departmentWords[category.name] ?? [])].map((word) => [word, category] as const),
  ),
);
const byName = new Map(categories.map((category) => [category.name, category] as const));

/** The category that a writer's word names, or null. Case does not matter. */
export function findCategory(word: string): Category | null {
  return byWord.get(word.trim().toLowerCase()) ?? null;
}

/** The row of a category name. */
export function categoryOf(name: CategoryName): Category {
  return byName.get(name) as Category;
}
