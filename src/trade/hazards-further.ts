import { bulletins, check, type Hazard, sheets } from './hazard.js';

/** Rows that stand in for a graver one where the words tell of less: what is raised says which. */
export const milderHazards: readonly (Hazard & { readonly insteadOf: string })[] = [
  {
    id: 'H22',
    insteadOf: 'H20',
    title: 'Intimacy',
    precaution:
      'Talk the kiss through and write the consent down before the day; it can be withdrawn. Agree the moves and how long it lasts, keep the room small, and ask who is ill or has a cold sore. Never assume how far it goes from the script alone.',
    reading: `Ask the performers’ union or an intimacy coordinator, from common practice. ${check}`,
    qualified: 'An intimacy coordinator, or a trained person whom both performers choose.',
    source: 'common practice; no published source seen',
  },
  {
    id: 'H23',
    insteadOf: 'H2',
    title: 'Toy blades',
    precaution:
      'Feel it for hard edges and points, keep it away from eyes and faces, and rehearse slowly when it is swung. Carry and store it covered in public: from afar a toy looks real.',
    reading: `${sheets('sheet 20')}. ${check}`,
    qualified: 'The person in charge of props.',
    source: 'HSE sheet 20; common practice',
  },
];

/** Rows that the published tables have only as a part of another, and that ask for other care. */
export const ownHazards: readonly Hazard[] = [
  {
    id: 'H24',
    title: 'Broken glass',
    precaution:
      'Breakaway copies for everything that breaks near a person, and soft or blunt pieces wherever someone walks, kneels or touches. Eyes turned away, goggles for the crew, shoes on every foot. Real glass only far from people, behind a screen. Sweep, count the pieces and look again after every take.',
    reading: `${bulletins('bulletin 30')}; ${sheets('sheet 17')}. ${check}`,
    qualified: 'A property master or effects technician; a first-aider at hand.',
    source: 'CSATF bulletin 30 for what cuts; common practice',
  },
  {
    id: 'H25',
    title: 'Moving machinery',
    precaution:
      'Machine off and locked off whenever anyone is within reach; guards stay on. No loose sleeve, scarf, hair or cord near it. Only its own operator runs it. Show the danger with sound, a turn by hand and the angle. Agree who hits the stop.',
    reading: `${bulletins('bulletin 13')}; the maker’s handbook. ${check}`,
    qualified: 'The operator of the machine or ride; its owner.',
    source: 'CSATF bulletin 13 for petrol-driven equipment; common practice',
  },
];
