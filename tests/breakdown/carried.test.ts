import { describe, expect, it } from 'vitest';
import { breakDown, type Told } from '../support/break-down.js';

function script(...scenes: string[]): string {
  const body = scenes.map((scene, index) => {
    const [heading, ...lines] = scene.split(' | ');
    return `## ${index + 1}. ${heading}\n\n${lines.join('\n\n') || 'Nora waits.'}`;
  });
  return `---\ncast: { NORA: {}, JOSEF: {} }\n---\n\n${body.join('\n\n')}\n`;
}

/** For each scene, `name < scene it is carried from` or the bare name. */
function thingsOf(told: Told | null, ...scenes: string[]): string[][] {
  return breakDown(script(...scenes), told ?? {}).scenes.map(({ elements }) =>
    elements.map(({ name, carried, from }) => (carried ? `${name} < ${from}` : name)),
  );
}

describe('dressing', () => {
  it('stands in every scene of its set, before its first mention too', () => {
    expect(
      thingsOf(
        null,
        'INT. BAR - DAY',
        'INT. BAR - NIGHT | The [wall clock](dressing) ticks.',
        'INT. BAR - NEXT MORNING',
      ),
    ).toEqual([['wall clock < int-bar-night'], ['wall clock'], ['wall clock < int-bar-night']]);
  });

  it('stays in its area and on its side of the wall', () => {
    expect(
      thingsOf(
        null,
        'INT. BAR - BACK ROOM - DAY | A [mirror](dressing).',
        'INT. BAR - DAY',
        'EXT. BAR - BACK ROOM - DAY',
        'INT. THE BAR - BACK ROOM - NIGHT',
      ),
    ).toEqual([['mirror'], [], [], ['mirror < int-bar-back-room-day']]);
  });

  it('of a car or a doorway is that of the inside', () => {
    expect(thingsOf(null, 'INT. CAR - DAY | A [map](dressing).', 'INT/EXT. CAR - DAY', 'EXT. CAR - DAY')).toEqual([
      ['map'],
      ['map < int-car-day'],
      [],
    ]);
  });

  it('is neither carried into a flashback nor out of one; the flashback asks', () => {
    const scenes = [
      'INT. BAR - DAY | A [mirror](dressing).',
      'INT. BAR - DAY (FLASHBACK) | A [stove](dressing). Nora.',
      'INT. BAR - DAY',
    ];
    expect(thingsOf(null, ...scenes)).toEqual([['mirror'], ['stove'], ['mirror < int-bar-day']]);
    const { scenes: broken } = breakDown(script(...scenes));
    expect(broken[1]?.questions).toMatchObject([
      { id: 'past-int-bar-day-flashback', text: expect.stringContaining('mirror') },
    ]);
  });

  it('that somebody carries off is gone afterwards', () => {
    const told: Told = {
      elements: [{ name: 'mirror', category: 'dressing', words: 'mirror' }],
      moves: [{ name: 'mirror', kind: 'carried off', words: 'carries the mirror out', from: 'JOSEF' }],
    };
    expect(
      thingsOf(
        told,
        'INT. BAR - DAY | A mirror.',
        'INT. BAR - LATER | Josef carries the mirror out.',
        'INT. BAR - LATER',
      ),
    ).toEqual([['mirror'], ['mirror < int-bar-day'], []]);
  });

  it('that the finder doubts is asked about where it is read, and stands nowhere else', () => {
    const told: Told = { elements: [{ name: 'post', category: 'dressing', words: 'A post', confidence: 0.5 }] };
    expect(thingsOf(told, 'INT. BAR - DAY | A post.', 'INT. BAR - LATER')).toEqual([['post'], []]);
  });

  it('is in the index of places with all its scenes', () => {
    const { breakdown } = breakDown(
      script('INT. BAR - DAY | A [mirror](dressing).', 'EXT. BAR - DAY', 'INT. Bar - NIGHT'),
    );
    expect(breakdown.places).toMatchObject([
      {
        id: 'bar',
        settings: ['INT', 'EXT'],
        scenes: ['int-bar-day', 'ext-bar-day', 'int-bar-night'],
        dressing: [{ id: 'mirror', known: 'marked', scenes: ['int-bar-day', 'int-bar-night'] }],
        sets: [
          { setting: 'INT', scenes: ['int-bar-day', 'int-bar-night'] },
          { setting: 'EXT', scenes: ['ext-bar-day'] },
        ],
      },
    ]);
  });
});

describe('things in hand', () => {
  it('go along into CONTINUOUS scenes with the person who holds them, and no further', () => {
    expect(
      thingsOf(
        null,
        'INT. BAR - DAY | > props: letter (Nora) | Nora reads.',
        'EXT. QUAY - CONTINUOUS | Nora runs.',
        'EXT. PIER - CONTINUOUS | Nora stops.',
        'EXT. PIER - LATER | Nora waits.',
      ),
    ).toEqual([['letter'], ['letter < int-bar-day'], ['letter < int-bar-day'], []]);
  });

  it('stay when their holder does, when put down, and when only found', () => {
    const found: Told = { elements: [{ name: 'letter', category: 'props', words: 'letter', by: 'NORA' }] };
    expect(
      thingsOf(
        null,
        'INT. BAR - DAY | > props: letter (Nora) | Nora reads.',
        'EXT. QUAY - CONTINUOUS | Josef runs.',
      )[1],
    ).toEqual([]);
    expect(thingsOf(found, 'INT. BAR - DAY | Nora reads a letter.', 'EXT. QUAY - CONTINUOUS | Nora runs.')[1]).toEqual(
      [],
    );
    const down: Told = { moves: [{ name: 'letter', kind: 'put down', words: 'drops the letter', from: 'NORA' }] };
    expect(
      thingsOf(
        down,
        'INT. BAR - DAY | > props: letter (Nora) | Nora drops the letter.',
        'EXT. QUAY - CONTINUOUS | Nora runs.',
      )[1],
    ).toEqual([]);
  });

  it('go with their new holder when handed over, and along when the words carry them off', () => {
    const over: Told = {
      moves: [{ name: 'letter', kind: 'handed over', words: 'hands Josef the letter', from: 'NORA', to: 'JOSEF' }],
    };
    const scenes = [
      'INT. BAR - DAY | > props: letter (Nora) | Nora hands Josef the letter.',
      'EXT. QUAY - CONTINUOUS | Josef and Nora run.',
    ];
    expect(breakDown(script(...scenes), over).scenes[1]?.elements).toMatchObject([
      { name: 'letter', by: 'JOSEF', carried: true },
    ]);
    const off: Told = {
      elements: [{ name: 'letter', category: 'props', words: 'letter', by: 'NORA' }],
      moves: [{ name: 'letter', kind: 'carried off', words: 'leaves with the letter', from: 'NORA' }],
    };
    expect(
      thingsOf(off, 'INT. BAR - DAY | Nora leaves with the letter.', 'EXT. QUAY - CONTINUOUS | Nora runs.')[1],
    ).toEqual(['letter < int-bar-day']);
  });
});

describe('make-up', () => {
  const wound = [
    'INT. BAR - DAY | > makeup: cut on cheek (Nora) | Nora.',
    'INT. HALL - DAY | Josef.',
    'EXT. QUAY - NIGHT | Nora.',
  ];

  it('stays on the person for the story day; on the next day it is asked about', () => {
    expect(thingsOf(null, ...wound, 'EXT. QUAY - NEXT MORNING | Nora.')).toEqual([
      ['cut on cheek'],
      [],
      ['cut on cheek < int-bar-day'],
      [],
    ]);
    const { scenes } = breakDown(script(...wound, 'EXT. QUAY - NEXT MORNING | Nora.'));
    const asked = scenes.map(({ questions }) =>
      questions.filter(({ id }) => id.startsWith('still-')).map(({ id }) => id),
    );
    expect(asked).toEqual([[], [], [], ['still-cut-on-cheek-ext-quay-next-morning']]);
  });

  it('goes on when the answer is yes, until a state says that it is gone', () => {
    const yes = 'EXT. QUAY - NEXT MORNING | > answer: still-cut-on-cheek-ext-quay-next-morning; yes | Nora.';
    const healed = 'INT. BAR - NIGHT | > cut on cheek: healed | Nora.';
    expect(thingsOf(null, ...wound, yes, healed, 'INT. BAR - LATER | Nora.').slice(3)).toEqual([
      ['cut on cheek < int-bar-day'],
      ['cut on cheek'],
      [],
    ]);
  });

  it('that is only found stays when it is of a lasting kind', () => {
    const told: Told = {
      elements: [
        { name: 'bruise', category: 'makeup', words: 'a bruise', by: 'NORA' },
        { name: 'sweat', category: 'makeup', words: 'sweat', by: 'NORA' },
      ],
    };
    expect(thingsOf(told, 'INT. BAR - DAY | Nora has a bruise, and sweat.', 'INT. BAR - LATER | Nora.')).toEqual([
      ['bruise', 'sweat'],
      ['bruise < int-bar-day'],
    ]);
  });
});

describe('links', () => {
  it('tie a scene to the nearest ones that must match it, in the line of the story', () => {
    const { scenes } = breakDown(
      script(
        'INT. BAR - DAY | Nora takes the [letter](prop). | > letter: torn',
        'INT. ATTIC - DAY (FLASHBACK) | Nora plays.',
        'INT. BAR - DAY | Josef waits.',
        'INT. BAR - LATER | Nora reads the [letter].',
      ),
    );
    expect(scenes[3]?.comesFrom).toEqual([{ scene: 'int-bar-day', what: ['NORA change 1', 'letter (torn)'] }]);
    expect(scenes[0]?.goesTo).toEqual([{ scene: 'int-bar-later', what: ['NORA change 1', 'letter (torn)'] }]);
    expect(scenes[1]?.comesFrom).toEqual([]);
  });
});
