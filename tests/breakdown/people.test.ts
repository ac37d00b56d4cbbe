import { describe, expect, it } from 'vitest';
import { breakDown } from '../support/break-down.js';

/** `NAME presence voice`, with a star for who speaks. */
function peopleOf(text: string, scene = 0): string[] {
  const { scenes } = breakDown(text);
  return (scenes[scene]?.cast ?? []).map(
    ({ name, presence, voice, speaks }) => `${name} ${presence}${voice ? ` ${voice}` : ''}${speaks ? '*' : ''}`,
  );
}

const cast = (names: string) => `---\ncast: { ${names} }\n---\n\n## 1. INT. KITCHEN - DAY\n\n`;

describe('people who are seen', () => {
  it('are those who speak on screen and those whom the action names', () => {
    expect(peopleOf(`${cast('NORA: {}, JOSEF: {}')}Josef fills the kettle.\n\nNORA\nIs there sugar?\n`)).toEqual([
      'JOSEF seen',
      'NORA seen*',
    ]);
  });

  it.each([
    ["Nora's coat hangs on the hook.", []],
    ['Nora’s hand comes in with a cup.', ['NORA seen']],
    ["Nora's left hand rests on the table.", ['NORA seen']],
    ["Nora's voice comes up the stairs.", ['NORA heard off-screen']],
    ["Nora's already at the door.", ['NORA seen']],
    ["Nora's waiting.", ['NORA seen']],
    ['A photograph of Nora stands on the shelf.', []],
    ['A letter from Nora lies on the mat.', []],
    ['He looks for Nora.', []],
    ['He dials Nora.', []],
    ['The room without Nora is only a room.', []],
    ['He hands the cup to Nora.', ['NORA seen']],
    ['He waves at Nora through the window.', ['NORA seen']],
    ['On the crate somebody has painted "Nora".', []],
    ['NORA, 40, sleeps.', ['NORA seen']],
    ['Norah waves.', []],
    ['Norafels is a town.', []],
  ])('%s', (action, expected) => {
    expect(peopleOf(`${cast('NORA: {}')}${action}\n`)).toEqual(expected);
  });

  it('can be silent by a note or by a mark', () => {
    expect(peopleOf(`${cast('NORA: {}, JOSEF: {}')}The clock ticks. [Josef] sleeps.\n\n> cast: Nora\n`)).toEqual([
      'JOSEF seen',
      'NORA seen',
    ]);
    const { scenes } = breakDown(`${cast('NORA: {}')}> cast: Nora, Old Woman\n\nThe clock ticks.\n`);
    expect(scenes[0]?.cast.map(({ name, known }) => `${name} ${known}`)).toEqual(['NORA noted', 'Old Woman noted']);
    expect(scenes[0]?.elements).toEqual([]);
  });

  it('go by every name of theirs, the longest first', () => {
    const text = `${cast('NORA: { aliases: [THE ADMIRAL] }, YOUNG NORA: {}')}The Admiral salutes. Young Nora laughs.\n`;
    expect(peopleOf(text)).toEqual(['NORA seen', 'YOUNG NORA seen']);
  });

  it('are met by a short form that can mean nobody else', () => {
    expect(
      peopleOf(`${cast('"MRS. HALE": {}, "OLD MAN": {}')}Hale sits. An old radio. Old papers everywhere.\n`),
    ).toEqual(['MRS. HALE seen']);
    expect(peopleOf(`${cast('"TOM HALE": {}, "ANN HALE": {}')}Hale sits down.\n`)).toEqual([]);
  });

  it('are met in small letters as parts, never as proper names', () => {
    expect(peopleOf(`${cast('DRIVER: {}, ROSE: {}')}The driver smokes. Beside him Rose picks the rose.\n`)).toEqual([
      'DRIVER seen',
      'ROSE seen',
    ]);
    expect(
      peopleOf(`${cast('DRIVER: {}, ROSE: {}')}A driver is wanted, says the sign. She picks a rose by Rose Lane.\n`),
    ).not.toContain('DRIVER seen');
  });

  it('keep a nickname apart from the thing of that name', () => {
    const hammer = cast('STAN: { aliases: [THE HAMMER] }, YOUNG NORA: {}, MOTHER: {}');
    expect(peopleOf(`${hammer}The hammer lies on the bench. The Hammer sits by it.\n`)).toEqual(['STAN seen']);
    expect(peopleOf(`${hammer}He likes The Hammer. The hammer lies on the bench.\n`)).toEqual(['STAN seen']);
    expect(peopleOf(`${hammer}Then young Nora runs to Stan's mother.\n`)).toEqual(['YOUNG NORA seen', 'MOTHER seen']);
  });

  it('speak together, as a crowd, or to each other', () => {
    expect(peopleOf(`${cast('NORA: {}, JOSEF: {}')}NORA AND JOSEF\nHere!\n\nBOTH\nHere!\n`)).toEqual([
      'NORA seen*',
      'JOSEF seen*',
    ]);
    expect(peopleOf(`${cast('NORA: {}, JOSEF: {}')}NORA\n(to Josef)\nHere!\n`)).toEqual(['NORA seen*', 'JOSEF seen']);
    expect(peopleOf(`${cast('NORA: {}, JOSEF: {}')}NORA\n(into phone, to Josef)\nHere!\n`)).toEqual(['NORA seen*']);
    const { scenes, breakdown } = breakDown(`${cast('NORA: {}')}Nora bows.\n\nCROWD\nMore!\n`);
    expect(scenes[0]?.extras).toMatchObject([{ name: 'crowd', count: null }]);
    expect(breakdown.cast.map(({ name }) => name)).toEqual(['NORA']);
  });

  it('are those of a kind that numbers tell apart, where a cue calls them by what they are', () => {
    const text = '## 1. INT. A - DAY\n\nCOP 1\nStop.\n\nCOP 2\nYes.\n\n## 2. INT. B - DAY\n\n';
    for (const cue of ['BOTH COPS', 'THE TWO COPS', 'ALL THE COPS', 'COPS']) {
      const script = `${text}${cue}\nNo.\n`;
      expect(peopleOf(script, 1), cue).toEqual(['COP 1 seen*', 'COP 2 seen*']);
      expect(
        breakDown(script).breakdown.cast.map(({ name }) => name),
        cue,
      ).toEqual(['COP 1', 'COP 2']);
    }
    expect(peopleOf('## 1. INT. A - DAY\n\nJAMES\nNo.\n\nTHE BOSS\nNo.\n')).toEqual(['JAMES seen*', 'THE BOSS seen*']);
  });

  it('are met by a pronoun that can only mean whoever the scene before left, and asked about', () => {
    const second = (first: string, next: string) => {
      const { scenes } = breakDown(
        `${cast('NORA: {}, JOSEF: {}')}${first}\n\n## 2. INT. CAR - CONTINUOUS\n\n${next}\n`,
      );
      const asked = scenes[1]?.questions.filter(({ id }) => id.startsWith('who-')).map(({ text }) => text);
      return { cast: scenes[1]?.cast.map(({ name, known }) => `${name} ${known}`), asked };
    };
    expect(second('Nora runs.', 'She drives. Fast.')).toEqual({
      cast: ['NORA found'],
      asked: ['Who is "She" at the start of this scene? Read as NORA.'],
    });
    expect(second('Nora and Josef run.', 'They drive.').cast).toEqual(['NORA found', 'JOSEF found']);
    expect(second('Nora and Josef run.', 'He drives.')).toEqual({
      cast: [],
      asked: ['Who is "He" at the start of this scene?'],
    });
    expect(second('Nora runs.', 'Rain. She drives.')).toEqual({ cast: [], asked: [] });
    expect(second('Nora runs.', 'She drives. Josef sleeps.').cast).toEqual(['NORA found', 'JOSEF marked']);
    expect(second('Nora runs.', 'She drives. Nora hums.')).toEqual({ cast: ['NORA marked'], asked: [] });
  });

  it('who were there a moment ago in the same place are asked about, unless they left', () => {
    const next = (first: string, heading: string, note = '') => {
      const { scenes } = breakDown(
        `${cast('NORA: {}, JOSEF: {}')}${first}\n\n## 2. ${heading}\n\n${note}Nora reads.\n`,
      );
      const asked = scenes[1]?.questions.filter(({ id }) => id.startsWith('there-')).map(({ id }) => id);
      return { asked, cast: scenes[1]?.cast.map(({ name, known }) => `${name} ${known}`) };
    };
    expect(next('Nora and Josef eat.', 'INT. KITCHEN - CONTINUOUS').asked).toEqual([
      'there-josef-int-kitchen-continuous',
    ]);
    expect(next('Nora and Josef eat.', 'INT. HALL - CONTINUOUS').asked).toEqual([]);
    expect(next('Nora and Josef eat.', 'INT. KITCHEN - NIGHT').asked).toEqual([]);
    expect(next('Nora eats. Josef, pale, walks out.', 'INT. KITCHEN - CONTINUOUS').asked).toEqual([]);
    const answer = '> answer: there-josef-int-kitchen-continuous; yes\n\n';
    expect(next('Nora and Josef eat.', 'INT. KITCHEN - CONTINUOUS', answer)).toEqual({
      asked: [],
      cast: ['NORA marked', 'JOSEF noted'],
    });
  });

  it('are not those spoken of', () => {
    expect(peopleOf(`${cast('NORA: {}, JOSEF: {}')}JOSEF\nNora will come.\n`)).toEqual(['JOSEF seen*']);
  });
});

describe('people who are heard only', () => {
  it.each([
    ['NORA (V.O.)', 'NORA heard voice-over*'],
    ['NORA (O.S.)', 'NORA heard off-screen*'],
    ['NORA (ON PHONE)', 'NORA heard phone*'],
  ])('%s', (cue, expected) => {
    expect(peopleOf(`${cast('NORA: {}')}The clock ticks.\n\n${cue}\nI never liked it.\n`)).toEqual([expected]);
  });

  it('are voices and devices by the name of the cue', () => {
    expect(peopleOf(`${cast('NORA: {}')}A door.\n\nNORA'S VOICE\nCome in!\n\nRADIO\nRain later.\n`)).toEqual([
      'NORA heard off-screen*',
      'RADIO heard voice-over*',
    ]);
  });

  it('are seen when the action shows them doing something', () => {
    expect(peopleOf(`${cast('NORA: {}')}Nora scrubs the floor.\n\nNORA (V.O.)\nI never liked it.\n`)).toEqual([
      'NORA seen*',
    ]);
    expect(peopleOf(`${cast('NORA: {}')}NORA (O.S.)\nComing!\n\nNora comes in.\n`)).toEqual(['NORA seen*']);
  });

  it('are not seen because somebody listens to them', () => {
    const text = `${cast('NORA: {}, JOSEF: {}')}Josef listens to Nora on the phone.\n\nNORA (ON PHONE)\nI am late.\n`;
    expect(peopleOf(text)).toEqual(['JOSEF seen', 'NORA heard phone*']);
  });
});

describe('the index of people', () => {
  it('tells ages, minors and the scenes where each is seen and heard', () => {
    const { breakdown } = breakDown(
      `${cast('PIP: { age: 9 }, NORA: { age: "about 40" }')}Pip waits.\n\nNORA (V.O.)\nHe waited.\n\n## 2. EXT. YARD - DAY\n\nNora waits.\n`,
    );
    expect(breakdown.cast.map(({ id, age, minor, seen, heard }) => ({ id, age, minor, seen, heard }))).toEqual([
      { id: 'pip', age: '9', minor: true, seen: ['int-kitchen-day'], heard: [] },
      { id: 'nora', age: 'about 40', minor: false, seen: ['ext-yard-day'], heard: ['int-kitchen-day'] },
    ]);
  });

  it('reads an age where the action brings someone in', () => {
    const { breakdown } = breakDown(
      `${cast('PIP: {}, NORA: {}, JOSEF: { age: 50 }, OLGA: {}')}PIP, 9, drags NORA (40s) along. JOSEF, 51, waits for OLGA, 2 bags in her hands.\n`,
    );
    expect(breakdown.cast.map(({ name, age, minor }) => `${name} ${age} ${minor}`)).toEqual([
      'PIP 9 true',
      'NORA 40s false',
      'JOSEF 50 false',
      'OLGA null false',
    ]);
  });

  it('prints background people with the extras, and says so when they speak', () => {
    const { scenes, codes, breakdown } = breakDown(
      `${cast('PORTER: { background: true }')}The PORTER nods.\n\nPORTER\nSir.\n`,
    );
    expect(scenes[0]?.cast).toEqual([]);
    expect(scenes[0]?.extras).toMatchObject([{ name: 'PORTER', count: 1 }]);
    expect(codes).toContain('background-speaks');
    expect(breakdown.cast).toMatchObject([{ name: 'PORTER', background: true, seen: ['int-kitchen-day'] }]);
  });

  it('takes in people whom only the finder met', () => {
    const { scenes } = breakDown(`${cast('NORA: {}')}A BUTCHER waves his knife at Nora.\n`, {
      people: [{ name: 'butcher', kind: 'cast', words: 'BUTCHER' }],
    });
    expect(scenes[0]?.cast.map(({ name, known }) => `${name} ${known}`)).toEqual(['butcher found', 'NORA marked']);
  });

  it('is free of extras who are somebody that speaks in the scene', () => {
    const { scenes } = breakDown(`${cast('NORA: {}')}A drunk man sits down. Two drunk men watch.\n\nDRUNK\nSing!\n`, {
      people: [
        { name: 'man', kind: 'extras', words: 'A drunk man' },
        { name: 'drunk men', kind: 'extras', count: 2, words: 'Two drunk men' },
      ],
    });
    expect(scenes[0]?.extras.map(({ name }) => name)).toEqual(['drunk men']);
  });
});

describe('extras', () => {
  it('come from notes, marks and the finder, one entry a group, with a count when one is said', () => {
    const { scenes } = breakDown(
      `${cast('NORA: {}')}> extras: 6 dock workers\n\n[Three nurses](extras) run past the workers. Two policemen watch. A crowd.\n`,
      {
        people: [
          { name: 'workers', kind: 'extras', words: 'workers#2' },
          { name: 'policemen', kind: 'extras', count: 2, words: 'Two policemen' },
          { name: 'crowd', kind: 'extras', words: 'A crowd' },
        ],
      },
    );
    expect(scenes[0]?.extras.map(({ name, count, known }) => `${count} ${name} ${known}`)).toEqual([
      '6 dock workers noted',
      '3 nurses marked',
      '2 policemen found',
      'null crowd found',
    ]);
    expect(scenes[0]?.elements).toEqual([]);
    expect(scenes[0]?.questions.map(({ id }) => id)).toEqual(['count-crowd-int-kitchen-day']);
  });

  it('are one where the words say one, and as many as a crowd is said to be of', () => {
    const { scenes } = breakDown(
      `${cast('NORA: {}')}A crowd of twenty. A girl of ten. The mayor. Women. The fishermen.\n`,
      {
        people: [
          { name: 'crowd', kind: 'extras', words: 'A crowd' },
          { name: 'girl', kind: 'extras', words: 'A girl' },
          { name: 'mayor', kind: 'extras', words: 'The mayor' },
          { name: 'women', kind: 'extras', words: 'Women' },
          { name: 'fishermen', kind: 'extras', words: 'The fishermen' },
        ],
      },
    );
    expect(scenes[0]?.extras.map(({ name, count }) => `${name} ${count}`)).toEqual([
      'crowd 20',
      'girl 1',
      'mayor 1',
      'women null',
      'fishermen null',
    ]);
    expect(scenes[0]?.questions.map(({ text }) => text)).toEqual(['How many women?', 'How many fishermen?']);
  });
});

describe('groups in the background', () => {
  const cops = (words: string, count: number | null) =>
    breakDown(`INT. CAFE - DAY\n\n${words} come in.\n\nCOP 1\nFreeze.\n\nINT. BAR - DAY\n\nCOP 2\nHands up.\n`, {
      people: [{ name: 'cops', kind: 'extras', words, count }],
    }).scenes[0];

  it('that stand for people with numbers are these people, unless there are more', () => {
    for (const [words, count] of [
      ['Two cops', 2],
      ['The cops', null],
    ] as const) {
      expect(cops(words, count)?.extras).toEqual([]);
      expect(cops(words, count)?.cast.map(({ name }) => name)).toEqual(['COP 1', 'COP 2']);
    }
    expect(cops('Three cops', 3)?.extras).toEqual([expect.objectContaining({ name: 'cops', count: 3 })]);
  });

  it('are counted by their plural, whoever comes in alone before', () => {
    const waiter = { name: 'waiter', kind: 'extras' as const };
    const scene = (many: string, count: number | null) =>
      breakDown(`INT. CAFE - DAY\n\nA waiter waits. ${many} run.\n`, {
        people: [
          { ...waiter, words: 'A waiter', count: 1 },
          { ...waiter, words: many, count },
        ],
      }).scenes[0];
    expect(scene('Five waiters', 5)?.extras).toEqual([expect.objectContaining({ id: 'waiter', count: 5 })]);
    expect(scene('The waiters', null)?.questions.map(({ text }) => text)).toEqual(['How many waiters?']);
  });
});
