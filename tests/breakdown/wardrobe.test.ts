import { describe, expect, it } from 'vitest';
import { breakDown, clothesOf } from '../support/break-down.js';

const front = '---\ncast: { NORA: {}, JOSEF: {} }\n---\n\n';

function scenes(...bodies: string[]) {
  return breakDown(front + bodies.join('\n\n')).scenes;
}

describe('what must not be worn after a change on camera', () => {
  const told = scenes(
    '## 1. INT. BAR - DAY\n\n> Nora: wears boots, coat\n\nNora sits.',
    '## 2. INT. BAR - LATER\n\nNora sits.\n\n> Nora: changes to pyjamas\n> Nora: without boots\n\nShe goes.',
    '## 3. INT. BAR - LATER\n\nNora sits.',
  );

  it('leaves what was worn before as it was', () => {
    expect(clothesOf(told, 'NORA')).toEqual([
      '1: boots, coat',
      '1 to 2: boots (carried) (taken off), coat (carried) (taken off), pyjamas (put on), no boots (left off)',
      '2: pyjamas (carried), no boots (carried)',
    ]);
  });

  it('stands in the list of the new change only', () => {
    const changes = breakDown(
      `${front}## 1. INT. BAR - DAY\n\n> Nora: wears boots\n\nNora sits.\n\n> Nora: changes to pyjamas\n> Nora: without shoes, boots`,
    ).breakdown.cast[0]?.changes;
    const lists = changes?.map(({ garments }) => garments.map(({ name, absent }) => (absent ? `no ${name}` : name)));
    expect(lists?.map((one) => [...one].sort())).toEqual([['boots'], ['no boots', 'no shoes', 'pyjamas']]);
  });

  it('is taken off where the camera saw it on, and has a line for either in the change', () => {
    const { breakdown } = breakDown(
      `${front}## 1. INT. BAR - DAY\n\n> Nora: wears hat, coat\n\nNora sits.\n\n> Nora: without hat\n\n## 2. INT. BAR - LATER\n\nNora sits.`,
    );
    expect(clothesOf(breakdown.scenes, 'NORA')).toEqual([
      '1: hat (taken off), coat, no hat (left off)',
      '1: coat (carried), no hat (carried)',
    ]);
    const hats = breakdown.cast[0]?.changes[0]?.garments.filter(({ name }) => name === 'hat');
    expect(hats?.map(({ absent }) => absent)).toEqual([false, true]);
  });
});

describe('a new day after a night that nobody says was slept through elsewhere', () => {
  const night = '## 1. INT. BAR - NIGHT\n\n> Nora: wears jeans, cap\n\nNora sits.';
  const morning = '## 2. INT. BAR - DAY';

  it('asks for the clothes of the day before until it is answered, on every scene of the day', () => {
    const told = scenes(night, `${morning}\n\nNora wakes.`, '## 3. INT. BAR - LATER\n\nNora sits.');
    const perhaps = [{ person: 'NORA', garments: ['jeans', 'cap'], from: 'int-bar-night' }];
    expect(told.map(({ perhapsWorn }) => perhapsWorn)).toEqual([[], perhaps, perhaps]);
  });

  it.each(['yes', 'no'])('is quiet after %s', (answer) => {
    const told = scenes(night, `${morning}\n\n> answer: clothes-nora; ${answer}\n\nNora wakes.`);
    expect(told[1]?.perhapsWorn).toEqual([]);
    expect(clothesOf(told, 'NORA')[1]).toBe(answer === 'yes' ? '1: jeans (carried), cap (carried)' : '2: ');
  });

  it('asks only for what the day does not tell', () => {
    const told = scenes(night, `${morning}\n\nNora wakes.\n\n> Nora: puts on cap`, '## 3. INT. BAR - LATER\n\nNora.');
    expect(told.map(({ perhapsWorn }) => perhapsWorn.flatMap(({ garments }) => garments))).toEqual([
      [],
      ['jeans'],
      ['jeans'],
    ]);
  });
});

describe('voices to record', () => {
  it('are those of people seen, too', () => {
    const [scene] = scenes(
      '## 1. INT. BAR - DAY\n\nNora drinks.\n\nNORA (V.O.)\nI was young.\n\nJOSEF (O.S.)\nNora?\n\nNORA\nYes?',
    );
    expect(scene?.cast.map(({ name, presence, voiceOver }) => [name, presence, voiceOver])).toEqual([
      ['NORA', 'seen', true],
      ['JOSEF', 'heard', false],
    ]);
  });
});

describe('a note that dresses someone whom no scene of the day shows', () => {
  it('lists the garments where it stands, on nobody', () => {
    const { scenes: told, codes } = breakDown(
      `${front}## 1. INT. BAR - DAY\n\n> Carl: wears cape\n\nNora sits.\n\n## 2. INT. BAR - NEXT MORNING\n\nNora sits.`,
    );
    const cape = told[0]?.elements.find(({ name }) => name === 'cape');
    expect(cape).toMatchObject({ category: 'costumes', known: 'noted', by: 'Carl', worn: false });
    expect(codes).toContain('costume-note-nobody');
  });

  it('waits for the scene that shows the person', () => {
    const { scenes: told, codes } = breakDown(
      `${front}## 1. INT. BAR - DAY\n\n> Josef: wears cape\n\nNora sits.\n\n## 2. INT. BAR - LATER\n\nJosef sits.`,
    );
    expect(told.map(({ elements }) => elements.map(({ name, worn }) => [name, worn]))).toEqual([[], [['cape', true]]]);
    expect(codes).not.toContain('costume-note-nobody');
  });
});

describe('a garment taken off', () => {
  const off = '## 1. INT. FLAT - DAY\n\n> Nora: wears green coat\n\nNora sits.\n\n> Nora: takes off green coat';
  const coats = (told: ReturnType<typeof scenes>) =>
    told.map(({ elements }) => elements.filter(({ name }) => name === 'green coat').map(({ by }) => by));

  it('lies where it was taken off, and asks whether it comes along', () => {
    const told = scenes(off, '## 2. EXT. STREET - CONTINUOUS\n\nNora walks.');
    expect(coats(told)).toEqual([['NORA'], []]);
    expect(told[1]?.questions).toMatchObject([
      { id: 'along-green-coat-ext-street-continuous', key: 'along-green-coat', wants: 'yes or no' },
    ]);
  });

  it.each([
    ['yes', [['NORA'], ['NORA'], ['NORA']]],
    ['no', [['NORA'], [], []]],
  ])('follows the answer %s into all that goes on without a gap', (answer, expected) => {
    const told = scenes(
      off,
      `## 2. EXT. STREET - CONTINUOUS\n\n> answer: along-green-coat; ${answer}\n\nNora walks.`,
      '## 3. EXT. YARD - CONTINUOUS\n\nNora walks.',
    );
    expect(coats(told)).toEqual(expected);
    expect(told.flatMap(({ questions }) => questions)).toEqual([]);
  });

  it.each([
    ['over her arm', 1],
    ['on the hook', 0],
  ])('%s says whether it comes along', (state, count) => {
    const told = scenes(`${off}\n\n> green coat: ${state}`, '## 2. EXT. STREET - CONTINUOUS\n\nNora walks.');
    expect(coats(told)[1]).toHaveLength(count);
  });

  it('is still there when the scene goes on in the same place', () => {
    expect(coats(scenes(off, '## 2. INT. FLAT - CONTINUOUS\n\nNora stands.'))).toEqual([['NORA'], ['NORA']]);
  });
});

describe('a `changes to` note behind words that show the same garment', () => {
  const front = '---\ncast: { NORA: {} }\n---\n\n';
  const told = (words: string) => ({
    elements: [{ name: 'robe', category: 'costumes' as const, words, by: 'NORA', worn: true }],
  });
  const before = '## 1. INT. BAR - DAY\n\n> Nora: wears coat\n\nNora sits.\n\n';

  it('is the change before the scene where the words say that it is done, and nothing is asked', () => {
    const text = `${front}${before}## 2. INT. BAR - LATER\n\nNora waits. She has changed into a robe.\n\n> Nora: changes to robe, slippers`;
    const { scenes, breakdown } = breakDown(text, told('a robe'));
    expect(clothesOf(scenes, 'NORA')).toEqual(['1: coat', '2: robe, slippers']);
    expect(breakdown.scenes.flatMap(({ questions }) => questions.map(({ id }) => id))).toEqual([]);
  });

  it('is a change before the camera where the words show it', () => {
    const text = `${front}${before}## 2. INT. BAR - LATER\n\nNora waits. She slips into a robe.\n\n> Nora: changes to robe, slippers`;
    const { scenes } = breakDown(text, told('a robe'));
    expect(clothesOf(scenes, 'NORA')).toEqual([
      '1: coat',
      '1 to 2: coat (carried) (taken off), robe (put on), slippers (put on)',
    ]);
  });
});
