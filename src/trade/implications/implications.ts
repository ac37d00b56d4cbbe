import { ageAndIllness } from './age-and-illness.js';
import { body } from './body.js';
import { costume } from './costume.js';
import { danger } from './danger.js';
import { everyday } from './everyday.js';
import { food } from './food.js';
import type { Implication } from './implication.js';
import { inTheHand } from './in-the-hand.js';
import { paper } from './paper.js';
import { people } from './people.js';
import { screensAndSound } from './screens-and-sound.js';
import { smokeAndFlame } from './smoke-and-flame.js';
import { telling } from './telling.js';
import { vehiclesAndAnimals } from './vehicles-and-animals.js';
import { waterAndIntimacy } from './water-and-intimacy.js';
import { weapons } from './weapons.js';
import { weatherAndLight } from './weather-and-light.js';

/** The table of implications: what words need that nothing in them names. */
export const implications: readonly Implication[] = [
  ...smokeAndFlame,
  ...weatherAndLight,
  ...body,
  ...ageAndIllness,
  ...danger,
  ...weapons,
  ...waterAndIntimacy,
  ...food,
  ...inTheHand,
  ...paper,
  ...screensAndSound,
  ...vehiclesAndAnimals,
  ...people,
  ...costume,
  ...telling,
  ...everyday,
];
