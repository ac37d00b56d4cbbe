import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readSoaked } from '../../src/breakdown/soaked-answers.js';
import { breakDown, clothesOf } from '../support/break-down.js';

const front = '---\ncast: { NORA: {}, TOM: {} }\n---\n\n';

function told(...bodies: string[]) {
  return breakDown(front + bodies.join('\n\n')).scenes;
}

function statesOfClothes(scenes: ReturnType<typeof told>, person: string): string[] {
  return scenes.map(({ wears }) => {
    const garments = wears.find((one) => one.person === person)?.garments ?? [];
    return garments.map(({ name, stateIn, stateOut }) => `${name}: ${stateIn ?? ''} > ${stateOut ?? ''}`).join(', ');
  });
}

const asked = (scenes: ReturnType<typeof told>) =>
  scenes.flatMap(({ questions }) => questions.map(({ key }) => key)).filter((key) => /^(?:wet|dirty)-/.test(key));

describe('who gets wet or dirty', () => {
  it.each([
    ['EXT. QUAY - DAY', 'Nora overbalances and goes in.', ['wet-nora']],
    ['EXT. QUAY - DAY', 'Nora comes up spluttering.', ['wet-nora']],
    ['EXT. AT SEA - DAY', 'Nora, dripping, climbs into the boat.', ['wet-nora']],
    ['INT. SHOP - DAY', 'Nora opens the door and goes in.', []],
    ['EXT. BOAT SHED - DAY', 'Nora opens the door and goes in.', []],
    ['INT. SHOP - DAY', 'Nora falls in love.', []],
    ['INT. HALL - DAY', 'Nora, nine, muddy to the knees, slides in.', ['dirty-nora']],
    ['INT. HALL - DAY', 'Nora is covered in plaster.', ['dirty-nora']],
    ['EXT. GARDEN - DAY', 'Nora goes head first into the ornamental pond.', ['wet-nora']],
    ['INT. HALL - DAY', 'Tom tips a bucket of water over Nora.', ['wet-nora']],
    ['EXT. ROAD - DAY', 'A lorry splashes Nora.', ['wet-nora']],
    ['EXT. FIELD - DAY', 'Nora slips and falls in the mud.', ['dirty-nora']],
    ['INT. HALL - DAY', 'Nora spills red wine down herself.', ['dirty-nora']],
    ['INT. HALL - DAY', 'Nora comes in, black with oil.', ['dirty-nora']],
    ['INT. HALL - DAY', 'Nora pours wine for herself. Tom splashes about.', []],
    ['EXT. FIELD - DAY', 'Nora steps over a puddle.', []],
    ['INT. HALL - DAY', "Nora's face is black with soot.", []],
    ['EXT. BOAT - DAY', 'Nora lets go of the rail. She goes over the side.', ['wet-nora']],
    ['EXT. BOAT - DAY', 'Nora lets go of Tom. She goes over the side.', []],
    ['INT. HALL - DAY', 'Nora opens a muddy envelope.', []],
    ['INT. HALL - DAY', 'Nora looks at the muddy floor.', []],
    ['INT. HALL - DAY', 'Nora pats Tom. The dog is muddy.', []],
    ['INT. HALL - DAY', "Nora's soaked coat hangs there.", []],
    ['INT. HALL - DAY', "Nora hears Tom's voice, soaked in brandy.", []],
  ])('%s: %s', (heading, line, expected) => {
    expect(asked(told(`## 1. ${heading}\n\n> Nora: wears coat, boots\n\n${line}`))).toEqual(expected);
  });

  it('is asked where nothing is told of the clothes, too', () => {
    const [scene] = told('## 1. EXT. QUAY - DAY\n\nNora falls into the river.');
    expect(scene?.questions).toMatchObject([{ key: 'wet-nora', choices: [] }]);
    expect(scene?.questions[0]?.text).toContain('the script tells of none');
  });
});

describe('an answer to which clothes are wet', () => {
  const fall = (answer: string) =>
    told(
      `## 1. EXT. QUAY - DAY\n\n> Nora: wears coat, boots\n> answer: wet-nora; ${answer}\n\nNora stands.\n\nNora falls into the river.`,
      '## 2. EXT. ROAD - CONTINUOUS\n\nNora walks.',
    );

  it.each([
    ['all', ['coat:  > wet, boots:  > wet', 'coat: wet > wet, boots: wet > wet']],
    ['yes', ['coat:  > wet, boots:  > wet', 'coat: wet > wet, boots: wet > wet']],
    [
      'coat soaked through',
      ['coat:  > soaked through, boots:  > ', 'coat: soaked through > soaked through, boots:  > '],
    ],
    ['coat, and the boots are damp', ['coat:  > wet, boots:  > damp', 'coat: wet > wet, boots: damp > damp']],
    ['no', ['coat:  > , boots:  > ', 'coat:  > , boots:  > ']],
  ])('%s', (answer, expected) => {
    const scenes = fall(answer);
    expect(statesOfClothes(scenes, 'NORA')).toEqual(expected);
    expect(asked(scenes)).toEqual([]);
  });

  it('that names nothing worn settles nothing', () => {
    const scenes = fall('a doll');
    expect(asked(scenes)).toEqual(['wet-nora']);
    expect(statesOfClothes(scenes, 'NORA')[0]).toBe('coat:  > , boots:  > ');
  });

  it('tells what is worn where nothing else does', () => {
    const fallen = (answer: string) =>
      told(`## 1. EXT. QUAY - DAY\n\n> answer: wet-nora; ${answer}\n\nNora stands.\n\nNora falls into the river.`);
    expect(statesOfClothes(fallen('jersey, socks'), 'NORA')).toEqual(['jersey:  > wet, socks:  > wet']);
    expect(statesOfClothes(fallen('all'), 'NORA')).toEqual(['clothes:  > wet']);
    expect(clothesOf(fallen('no'), 'NORA')).toEqual(['1: ']);
  });

  it('is how somebody comes in who is told to be dirty, and a change on camera after another state', () => {
    const scenes = told(
      '## 1. INT. HALL - DAY\n\n> Nora: wears coat\n> answer: dirty-nora; all\n\nNora, muddy to the knees, slides in.',
      '## 2. INT. HALL - CONTINUOUS\n\n> answer: wet-nora; all\n\nNora is soaked.',
    );
    expect(statesOfClothes(scenes, 'NORA')).toEqual([
      'coat: muddy to the knees > muddy to the knees',
      'coat: muddy to the knees > soaked',
    ]);
  });

  it('never gives a state to what it does not name, whatever is typed', () => {
    const worn = ['grey coat', 'boots', 'cap'];
    fc.assert(
      fc.property(fc.string(), (answer) => {
        const read = readSoaked(answer, worn, 'wet');
        expect(read.every(({ name, state }) => worn.includes(name) && state !== '')).toBe(true);
        if (!/coat|boots|cap|all|every|both|\by\b|yes|lot/i.test(answer)) expect(read).toEqual([]);
      }),
    );
  });
});
