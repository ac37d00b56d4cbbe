/** The thing that a verb is done with, where it is not the verb's own word. Common practice of a props list: the tool is what is got. */
const tools: Readonly<Record<string, string>> = {
  tack: 'hammer and tacks',
  nail: 'hammer and nails',
  sweep: 'broom',
  stamp: 'rubber stamp',
  staple: 'stapler',
  shave: 'razor',
  hoover: 'vacuum cleaner',
  vacuum: 'vacuum cleaner',
  mow: 'lawnmower',
  film: 'camera',
  handcuff: 'handcuffs',
  'duct-tape': 'duct tape',
  'gaffer-tape': 'gaffer tape',
  scrub: 'scrubbing brush',
  photograph: 'camera',
};

/** What somebody is held by, from the word for how he is held. Common practice. */
const bonds: Readonly<Record<string, string>> = {
  gagged: 'gag',
  blindfolded: 'blindfold',
  handcuffed: 'handcuffs',
  cuffed: 'handcuffs',
  shackled: 'shackles',
  manacled: 'manacles',
  chained: 'chain',
  roped: 'rope',
  bound: 'rope',
  tied: 'rope',
  trussed: 'rope',
  saddled: 'saddle',
  harnessed: 'harness',
  muzzled: 'muzzle',
};

/** The tool of a verb in its base form: "iron" of "iron", "broom" of "sweep". */
export const toolOf = (verb: string): string => tools[verb] ?? verb;

/** What holds somebody, from the participle: "handcuffs" of "handcuffed"; the word itself when it is in no row. */
export const bondOf = (participle: string): string => bonds[participle] ?? participle;
