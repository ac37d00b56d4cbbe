import { describe, expect, it } from 'vitest';
import { raiseHazards } from '../../../src/find/hazards.js';
import { isUnderAge, readToldAges } from '../../../src/find/implied/age-words.js';
import { breakDown } from '../../support/break-down.js';
import { readAll, readOne } from './read-one.js';

const told = (text: string) => readToldAges(text).map(({ name, age }) => `${name ?? '-'} ${age}`);

describe('an age that words tell', () => {
  it.each([
    ['MILO, nine, muddy to the knees, slides in.', ['MILO nine']],
    ['MILO, small and loud, seven, slides in.', ['MILO seven']],
    ['WREN (eleven) walks through.', ['WREN eleven']],
    ['WREN (mid-teens) waits.', ['WREN mid-teens']],
    ['WREN (she/her, 15) waits.', ['WREN 15']],
    ['WREN — thirteen — waits.', ['WREN thirteen']],
    ['ASA, five-year-old, naps.', ['ASA five']],
    ['ASA, a five-year-old, naps.', ['ASA five']],
    ['ASA, a boy of ten, runs.', ['ASA ten']],
    ['ASA, a thin boy of about ten, runs.', ['ASA about ten']],
    ['ASA, aged nine, sits.', ['ASA nine']],
    ['ASA (eight years old) sits.', ['ASA eight']],
    ['ASA, a teenager, sits.', ['ASA teenager']],
    ['ASA, who is twelve and a king.', ['ASA twelve']],
    ['ASA, nearly nine, sits.', ['ASA nearly nine']],
    ['ASA, twelve going on fifty, sits.', ['ASA twelve going on fifty']],
    ['Asa is ten.', ['Asa ten']],
    ['BABY LOU, six months, sleeps.', ['BABY LOU six months']],
    ['Nine paces off, ten-year-old MILO runs.', ['MILO ten']],
    ['A boy of ten, MILO, runs.', ['MILO ten']],
    ['MILO and WREN, both eight, run.', ['MILO eight', 'WREN eight']],
    ['Her son, five, reads.', ['son five']],
    ['A schoolgirl of seven juggles.', ['- seven']],
    ['A girl, 9, waits.', ['girl 9']],
    ['Children aged six to nine.', ['- six to nine']],
    ['MARA, forty, a pinny over her frock, and old Mr. Pell, seventy-one.', ['MARA forty', 'Mr. Pell seventy-one']],
    ['PIET, engineer, late fifties, comes in.', ['PIET late fifties']],
  ])('%s', (text, ages) => expect(told(text)).toEqual(ages));

  it.each([
    'Milo, two steps behind, waves.',
    'Milo, one hand on the rail, waves.',
    'Milo is two streets away.',
    'Milo counts the plates: one, two, three.',
    'Milo, ten to midnight.',
    'Milo and Wren, two of them at least, run.',
    'Milo, the ten of hearts in his hand, grins.',
    'At nine, Milo leaves.',
    'Bus 12, late, waits.',
    'Milo carries six plates, seven cups.',
  ])('is not in: %s', (text) => expect(told(text)).toEqual([]));

  it('knows who is under eighteen', () => {
    for (const age of [
      '9',
      'nine',
      'about 12',
      'mid-teens',
      'late teens',
      'seventeen',
      '17 or 18',
      'boy',
      'eighteen months',
      'twelve going on fifty',
    ])
      expect(isUnderAge(age), age).toBe(true);
    for (const age of ['18', 'eighteen', 'nineteen', 'twenty-nine', 'late twenties', '30s', 'sixty', 'about 40'])
      expect(isUnderAge(age), age).toBe(false);
  });
});

describe('children', () => {
  const scenes = (first: string) => `## INT. ROOM - DAY\n\n${first}\n\nNORA\nSit.\n\n## INT. HALL - DAY\n\n`;
  const inScenes = (text: string) => {
    const { script, sentences } = readAll(text);
    return raiseHazards(sentences, script, []).filter(({ hazard }) => hazard === 'H15');
  };

  it.each([
    ['MILO, nine, muddy, slides in.', 'Milo runs.'],
    ['MILO (mid-teens) waits.', 'Milo cocks his head.'],
    ['MILO, a boy of ten, waits.', 'The door opens. Milo looks up.'],
    ['Her son, five, reads.', 'Her son coughs.'],
    ['MILO BRANDT, aged nine, waits.', 'Milo sits on the stairs.'],
  ])('are minors in every scene: %s', (first, second) =>
    expect(inScenes(scenes(first) + second).map(({ scene }) => scene)).toEqual([0, 1]),
  );

  it.each(['MILO, thirty-nine, waits.', 'MILO, two steps behind, waits.', 'A ten-year-old car. Milo waits.'])(
    'are not there: %s',
    (first) => expect(inScenes(`${scenes(first)}Milo runs.`)).toEqual([]),
  );

  it('are told from things of an age', () => {
    const ids = (body: string) => {
      const { script, sentences } = readOne(body);
      return raiseHazards(sentences, script, []).map(({ hazard }) => hazard);
    };
    expect(ids('A ten-year-old car.')).not.toContain('H15');
    expect(ids('A wheel of cheese aged nine months.')).not.toContain('H15');
    expect(ids('A waiter, sixteen, bows.')).toContain('H15');
    expect(ids('nora, twelve, bows.')).toContain('H15');
    expect(ids('A waiter, sixty, bows.')).not.toContain('H15');
    expect(ids('A tray, sixteen cups.')).not.toContain('H15');
    expect(ids('A ten-year-old reads.')).toContain('H15');
    expect(ids('Two children aged nine read.')).toContain('H15');
  });

  it('are minors in the cast, with their age, whether they speak or not', () => {
    const { breakdown } = breakDown(
      '## INT. ROOM - DAY\n\nMILO, nine, and JUNO, a girl of fourteen, sit. MARA, forty, knits.\n\nMILO\nYes.\n\nMARA\nWhat?\n',
      { people: [{ name: 'Juno', kind: 'cast', words: 'JUNO' }] },
    );
    expect(breakdown.cast.map(({ name, age, minor }) => [name, age, minor])).toEqual([
      ['MILO', 'nine', true],
      ['MARA', 'forty', false],
      ['Juno', 'fourteen', true],
    ]);
  });

  it('keep their age under a part of their name, and a namesake keeps another', () => {
    const { breakdown } = breakDown(
      '## INT. ROOM - DAY\n\nMILO BRANDT, nine, and OLD KARL, eighty, sit. KARL, seven, runs.\n\nMILO\nYes.\n\nOLD KARL\nNo.\n\nKARL\nWhy?\n',
    );
    expect(breakdown.cast.map(({ name, age }) => [name, age])).toEqual([
      ['MILO', 'nine'],
      ['OLD KARL', 'eighty'],
      ['KARL', 'seven'],
    ]);
  });

  it('put their caution into a scene where only continuity keeps them', () => {
    const { scenes: all } = breakDown(
      '---\ncast: { MILO: { age: 9 }, NORA: {} }\n---\n\n## INT. ROOM - DAY\n\nNora waits.\n\n> cast: Milo\n',
    );
    expect(all[0]?.hazards.map(({ id }) => id)).toContain('H15');
  });
});
