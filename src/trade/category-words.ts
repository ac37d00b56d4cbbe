/** What departments call their lists, and how they shorten it, by the name of the category. Common practice; from memory. */
export const departmentWords: Readonly<Record<string, readonly string[]>> = {
  extras: ['bg', 'background actors', 'supporting artists'],
  props: ['hand props', 'hand prop'],
  food: ['food and drink'],
  vehicles: ['picture vehicles', 'picture vehicle', 'picture cars', 'picture car'],
  costumes: ['wdr'],
  makeup: [
    'make up',
    'make up and hair',
    'hair and make up',
    'make-up/hair',
    'makeup/hair',
    'hair/make-up',
    'hair/makeup',
    'hair & makeup',
    'hair & make-up',
    'makeup & hair',
    'make-up & hair',
    'hmu',
    'h/mu',
    'mu/h',
    'mu',
  ],
  dressing: ['set dec', 'set decoration'],
  effects: ['special effects', 'special effect', 'practical effects', 'sfx', 'spfx', 'fx'],
  'visual-effects': ['visual fx'],
  sound: ['sound effects', 'sound effect'],
  gear: ['special gear'],
};

/** Short words that departments use for two different things: SFX stands in a breakdown and in a sound log. Common practice. */
export const shortForTwo: readonly { readonly word: string; readonly read: string; readonly other: string }[] = [
  { word: 'sfx', read: 'effects', other: 'sound' },
];
