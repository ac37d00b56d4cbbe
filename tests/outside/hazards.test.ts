import { describe, expect, it } from 'vitest';
import { raiseHazards } from '../../src/find/hazards.js';
import { hazards } from '../../src/trade/hazards.js';
import { readOne } from '../find/implied/read-one.js';

/**
 * Subjects of the bulletins of the Industry-Wide Labor-Management Safety Committee (csatf.org), in short form, as the
 * published index and the bulletins' own titles give them; those marked * are from memory.
 */
const bulletins: Readonly<Record<string, string>> = {
  '1': 'firearms',
  '2': 'firearms',
  '3': 'aircraft',
  '4': 'stunts',
  '6': 'animals',
  '7': 'water',
  '8': 'vehicles',
  '8A': 'vehicles',
  '8C': 'vehicles electricity',
  '10': 'smoke',
  '11': 'aircraft',
  '12': 'animals',
  '13': 'vehicles',
  '14': 'aircraft',
  '15': 'water',
  '16': 'explosions',
  '17': 'water',
  '18': 'stunts',
  '19': 'flame',
  '20': 'vehicles',
  '22': 'height', // *
  '23': 'electricity', // *
  '24': 'blood', // *
  '25': 'height', // *
  '26': 'derelict', // *
  '28': 'rail',
  '29': 'aircraft', // *
  '30': 'blades',
  '31': 'animals',
  '33': 'children', // *
  '34': 'weather', // *
  '35': 'weather', // *
  '36': 'drones', // *
  '37': 'stunts vehicles',
  '38': 'weather', // *
  '41': 'vehicles',
  '42': 'vehicles',
};

const subjects: Readonly<Record<string, string>> = {
  H1: 'firearms',
  H2: 'blades',
  H3: 'stunts',
  H4: 'explosions',
  H5: 'flame',
  H6: 'smoke',
  H7: 'water',
  H8: 'animals',
  H9: 'vehicles',
  H10: 'rail',
  H11: 'height',
  H12: 'aircraft',
  H13: 'drones',
  H15: 'children',
  H16: 'electricity',
  H17: 'weather',
  H18: 'derelict',
  H19: 'blood',
};

function cited(reading: string): string[] {
  const part = /bulletins? ([^;.]+)/.exec(reading)?.[1] ?? '';
  return part.match(/\d+[A-C]?/g) ?? [];
}

describe('the bulletins that a hazard sends its reader to', () => {
  for (const { id, reading } of hazards) {
    it(`${id} cites bulletins on its own subject`, () => {
      for (const number of cited(reading)) {
        const fits = bulletins[number] ?? '';
        // Falls from a height are the subject of bulletin 18 too.
        const allowed = [subjects[id], id === 'H11' && number === '18' ? 'stunts' : ''];
        expect(
          allowed.some((subject) => subject && fits.includes(subject)),
          `${id}: bulletin ${number}`,
        ).toBe(true);
      }
    });
  }

  it('water is 7, 15 and 17, as the General Code of Safe Practices refers', () => {
    expect(cited(hazards.find(({ id }) => id === 'H7')?.reading ?? '')).toEqual(['7', '15', '17']);
  });

  it('every bulletin that the General Code names for stunts and effects is cited somewhere', () => {
    const all = new Set(hazards.flatMap(({ reading }) => cited(reading)));
    for (const number of ['1', '2', '3', '4', '11', '14', '16', '18', '20', '29', '30', '37'])
      expect(all).toContain(number);
  });
});

/** Things that others want to be told of: a second list of triggers, each in our own words. */
const noticeLists: readonly (readonly [source: string, item: string, text: string, hazard: string])[] = [
  ['Metropolitan Police film unit (2020)', 'weapons', 'Tom draws a sword.', 'H2'],
  ['Metropolitan Police film unit (2020)', 'replica guns', 'Tom waves a replica pistol.', 'H1'],
  ['Metropolitan Police film unit (2020)', 'airsoft guns', 'An airsoft rifle on the bed.', 'H1'],
  ['Metropolitan Police film unit (2020)', 'police uniforms', 'A man in a police uniform.', 'H21'],
  ['Metropolitan Police film unit (2020)', 'police vehicles', 'A police car pulls up.', 'H21'],
  ['Metropolitan Police film unit (2020)', 'staged crime', 'Two robbers leave the bank.', 'H21'],
  ['Metropolitan Police film unit (2020)', 'nudity', 'Tom, naked, runs out.', 'H20'],
  ['Metropolitan Police film unit (2020)', 'filming on the move', 'Nora drives along the seafront.', 'H9'],
  ['Metropolitan Police film unit (2020)', 'drones', 'A drone rises over the roofs.', 'H13'],
  ['HSE entertainment sheet 17', 'stunts with fire', 'Tom, his sleeve on fire, runs out.', 'H5'],
  ['HSE entertainment sheet 17', 'explosives', 'The bridge explodes.', 'H4'],
  ['HSE entertainment sheet 17', 'aircraft', 'A helicopter lands.', 'H12'],
  ['HSE entertainment sheet 17', 'confined spaces', 'Nora crawls into the sewer.', 'H18'],
  ['HSE entertainment sheet 17', 'under water', 'Nora sinks under water.', 'H7'],
  ['HSE entertainment sheet 17', 'fights without weapons', 'They struggle. Tom wrestles Ines to the floor.', 'H3'],
  ['HSE entertainment sheet 17', 'fights with weapons', 'Ines stabs him.', 'H2'],
  ['HSE entertainment sheet 18', 'derelict places', 'They squat in a derelict hotel.', 'H18'],
  ['Film London code of practice', 'staged accidents', 'A van knocks Tom down.', 'H9'],
];

describe('what the police and the safety authority want to know of', () => {
  for (const [source, item, text, hazard] of noticeLists) {
    it(`${source}: ${item}`, () => {
      const { script, sentences } = readOne(text);
      expect(raiseHazards(sentences, script, []).map((one) => one.hazard)).toContain(hazard);
    });
  }
});
