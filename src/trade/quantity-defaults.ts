/** A planning figure that the book may replace. */
export interface Default<T> {
  readonly value: T;
  /** How it prints where it was used and nobody gave another. */
  readonly words: string;
  readonly source: string;
}

const practice = 'common practice of prop and costume departments on small films';

/** What is assumed of takes, spares and deliveries until the book says otherwise. */
export const quantityDefaults = {
  takes: { value: 4, words: '4 takes of each setup', source: practice },
  setups: { value: 2, words: '2 setups see it', source: practice },
  rehearsals: { value: 1, words: '1 rehearsal with the real thing', source: practice },
  spare: { value: '20%', words: '20 % spare, at least one whole piece', source: practice },
  liquidLoss: { value: '30%', words: '30 % stays on walls, clothes and in the bottle', source: practice },
  crowdSpare: { value: '20%', words: '20 % spare for people in the background', source: practice },
  wornDoubles: { value: 2, words: 'one to spoil and one to follow it', source: practice },
  fragileSpare: { value: 1, words: '1 spare', source: practice },
  storyStopsFrom: { value: 3, words: 'handled in 3 scenes or more: the story stops without it', source: practice },
  contingency: { value: '10%', words: 'contingency of 10 % on what is not yet paid', source: practice },
  hardContingency: {
    value: '15%',
    words: 'contingency of 15 % on what is not yet paid: water, an animal or a child is in the film',
    source: practice,
  },
  deliveryDays: { value: 5, words: '5 working days of delivery', source: practice },
  collectDays: { value: 1, words: '1 working day to fetch it', source: practice },
  lastFitting: { value: 4, words: 'the last fitting is 4 days before the first shooting day', source: practice },
  coldBelow: { value: 5, words: 'below 5 °C batteries count twice', source: practice },
} as const satisfies Record<string, Default<number | string>>;

/** Words in a name that make a thing easy to break, so that one spare is advised. */
export const fragileWords: readonly string[] = [
  'bottle',
  'bowl',
  'bulb',
  'ceramic',
  'china',
  'cup',
  'dish',
  'egg',
  'eggs',
  'glass',
  'glasses',
  'jar',
  'lamp',
  'mirror',
  'mug',
  'paper',
  'photo',
  'photograph',
  'plate',
  'porcelain',
  'saucer',
  'teapot',
  'vase',
  'window',
  'letter',
  'map',
  'note',
];
