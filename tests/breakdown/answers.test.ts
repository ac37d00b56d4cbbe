import { describe, expect, it } from 'vitest';
import { breakDown, clothesOf, statesOf, type Told } from '../support/break-down.js';

function script(...scenes: string[]): string {
  const body = scenes.map((scene, index) => {
    const [heading, ...lines] = scene.split(' | ');
    return `## ${index + 1}. ${heading}\n\n${lines.join('\n\n') || 'Nora waits.'}`;
  });
  return `---\ncast: { NORA: {}, JOSEF: {} }\n---\n\n${body.join('\n\n')}\n`;
}

function openIds(scenes: ReturnType<typeof breakDown>['scenes']): string[] {
  return scenes.flatMap(({ questions }) => questions.map(({ id }) => id));
}

describe('answers', () => {
  it('to a story day: no makes it the next one', () => {
    const { scenes } = breakDown(
      script('INT. BAR - DAY', 'EXT. QUAY - DAY | > answer: day-ext-quay-day; no | Nora.', 'EXT. QUAY - NIGHT'),
    );
    expect(scenes.map(({ storyDay }) => storyDay.label)).toEqual(['D1', 'D2', 'D2']);
    expect(openIds(scenes)).toEqual([]);
  });

  it('to a story day settle the scenes that follow too, and need no heading in their id', () => {
    const scenes = (answer: string) =>
      breakDown(script('INT. BAR - DAY', `INT. B - DAY | ${answer}Josef.`, 'INT. C - DAY | Josef.', 'INT. D - DAY'))
        .scenes;
    expect(openIds(scenes(''))).toEqual(['day-int-b-day']);
    const answered = scenes('> answer: day; no | ');
    expect(answered.map(({ storyDay }) => storyDay.label)).toEqual(['D1', 'D2', 'D2', 'D2']);
    expect(openIds(answered)).toEqual([]);
  });

  it('to a year that may be a flashback: no puts it in the main line', () => {
    const ask = (answer: string) =>
      breakDown(script('INT. BAR - DAY', `INT. ATTIC - DAY (1931) | ${answer}Josef.`, 'INT. ATTIC - NIGHT | Josef.'));
    expect(ask('').scenes.map(({ storyDay }) => storyDay.label)).toEqual(['D1', 'F1', 'D1']);
    const answered = ask('> answer: day-int-attic-day no | ').scenes;
    expect(answered.map(({ storyDay }) => storyDay.label)).toEqual(['D1', 'D1', 'D1']);
  });

  it('to a state over night: no ends it, yes keeps it', () => {
    const states = (answer: string) => {
      const { scenes } = breakDown(
        script(
          'INT. BAR - DAY | The [letter](prop). | > letter: wet',
          `INT. BAR - NEXT MORNING | > answer: state-letter-int-bar-next-morning; ${answer} | The [letter](prop).`,
        ),
      );
      expect(openIds(scenes)).toEqual([]);
      return statesOf(scenes, 'letter');
    };
    expect(states('no')).toEqual([' > wet', ' > ']);
    expect(states('yes')).toEqual([' > wet', 'wet > wet']);
  });

  it('to a state over night: other words are the new state', () => {
    const { scenes, codes } = breakDown(
      script(
        'INT. BAR - DAY | The [letter](prop). | > letter: wet',
        'INT. BAR - NEXT MORNING | > answer: state-letter-int-bar-next-morning; dry and stained | The [letter](prop).',
      ),
    );
    expect(statesOf(scenes, 'letter')).toEqual([' > wet', 'dry and stained > dry and stained']);
    expect(codes).toEqual([]);
  });

  it('to a thing that is only implied: yes makes it found, and without an answer it is asked about', () => {
    const told: Told = {
      elements: [{ name: 'matches', category: 'props', words: 'lights up', known: 'implied', strength: 'certain' }],
    };
    const open = breakDown(script('INT. BAR - DAY | Nora lights up.'), told).scenes[0];
    expect(open?.questions).toMatchObject([{ id: 'need-matches-int-bar-day', kind: 'element', element: 'matches' }]);
    expect(open?.questions[0]?.text).toContain('(implied, certain)');
    const note = '> answer: need-matches-int-bar-day; yes | ';
    const { scenes, codes } = breakDown(script(`INT. BAR - DAY | ${note}Nora lights up.`), told);
    expect(scenes[0]?.elements).toMatchObject([{ name: 'matches', known: 'found', confidence: 1 }]);
    expect([openIds(scenes), codes]).toEqual([[], []]);
  });

  it('that settle nothing are told, with the nearest open question', () => {
    const { messages } = breakDown(
      script('INT. BAR - DAY', 'EXT. QUAY - DAY | > answer: day-ext-quai-day; no | Nora.'),
    );
    expect(messages.map(({ code, hint }) => [code, hint])).toEqual([
      ['answer-without-question', expect.stringContaining('day-ext-quay-day')],
    ]);
  });

  it('stand among the notes with their matter in words, never with an id', () => {
    const notes = '> answer: who-int-bar-day; a stranger | > answer: some-finder-id; two of them | ';
    const { scenes } = breakDown(script(`INT. BAR - DAY | ${notes}Nora.`));
    expect(scenes[0]?.notes.map(({ text }) => text)).toEqual(['who it is: a stranger', 'two of them']);
  });

  it('to a pronoun: no takes the guess back, a name puts that person in', () => {
    const castOf = (first: string, answer: string) =>
      breakDown(script(`INT. BAR - DAY | ${first}`, `EXT. QUAY - LATER | ${answer}She runs.`)).scenes[1]?.cast.map(
        ({ name }) => name,
      );
    expect(castOf('Nora.', '')).toEqual(['NORA']);
    expect(castOf('Nora.', '> answer: who-ext-quay-later; no | ')).toEqual([]);
    expect(castOf('Nora and Josef.', '> answer: who-ext-quay-later; Nora | ')).toEqual(['NORA']);
  });

  it('to a change of costume: no leaves both on', () => {
    const told: Told = {
      elements: [
        { name: 'blue dress', category: 'costumes', words: 'blue dress', by: 'NORA', worn: true },
        { name: 'red dress', category: 'costumes', words: 'red dress', by: 'NORA', worn: true },
      ],
    };
    const { scenes } = breakDown(
      script(
        'INT. BAR - DAY | Nora in a blue dress.',
        'INT. BAR - LATER | > answer: change-nora-int-bar-later; no | Her red dress.  Nora.',
      ),
      told,
    );
    expect(clothesOf(scenes, 'NORA')).toEqual(['1: blue dress', '1: blue dress (carried), red dress']);
  });

  it('to which of two things, and to whether a thing is needed', () => {
    const told: Told = {
      elements: [
        { name: 'key', category: 'props', words: 'The key' },
        { name: 'ribbon', category: 'props', words: 'A ribbon', confidence: 0.5 },
      ],
    };
    const body = 'A [brass key](prop) and an [iron key](prop). The key turns. A ribbon.';
    const open = breakDown(script(`INT. BAR - DAY | ${body}`), told).scenes;
    expect(openIds(open)).toEqual(['which-key-int-bar-day', 'need-ribbon-int-bar-day']);
    const notes = '> answer: which-key-int-bar-day; the iron key | > answer: need-ribbon-int-bar-day; no | ';
    const { scenes } = breakDown(script(`INT. BAR - DAY | ${notes}${body}`), told);
    expect(openIds(scenes)).toEqual([]);
    expect(scenes[0]?.elements.map(({ name, mentions }) => `${name} ${mentions.length}`)).toEqual([
      'brass key 1',
      'iron key 2',
    ]);
  });

  it('to a number of people are the count', () => {
    const told: Told = { people: [{ name: 'sailors', kind: 'extras', words: 'Sailors' }] };
    const { scenes } = breakDown(
      script('INT. BAR - DAY | Sailors. | > answer: count-sailors-int-bar-day; twelve or so'),
      told,
    );
    expect(scenes[0]?.extras).toMatchObject([{ name: 'sailors', count: 12 }]);
    expect(openIds(scenes)).toEqual([]);
  });

  it('to two ways of writing a place: yes makes them one', () => {
    const { scenes, breakdown } = breakDown(
      script(
        'INT. HARBOUR OFFICE - DAY | A [map](dressing). Nora.',
        'INT. HARBOR OFFICE - DAY | > answer: place-harbor-office; yes | Nora.',
      ),
    );
    expect(breakdown.places.map(({ id, scenes: where }) => `${id} ${where.length}`)).toEqual(['harbour-office 2']);
    expect(scenes[1]?.elements).toMatchObject([{ name: 'map', carried: true }]);
    expect(scenes[1]?.storyDay.sure).toBe(true);
  });

  it('to the dressing of a flashback: yes puts it there, and nothing of the flashback comes back', () => {
    const { scenes } = breakDown(
      script(
        'INT. BAR - DAY | A [mirror](dressing). Nora.',
        'INT. BAR - DAY (FLASHBACK) | > answer: past-int-bar-day-flashback; yes | A [stove](dressing). Nora.',
        'INT. BAR - DAY | Nora.',
      ),
    );
    expect(scenes.map(({ elements }) => elements.map(({ name }) => name))).toEqual([
      ['mirror'],
      ['stove', 'mirror'],
      ['mirror'],
    ]);
  });
});

describe('answers about what has another name now', () => {
  const body = (name: string) =>
    `## INT. BAR - NIGHT\n\n> ${name}: wears coat\n\n${name} waits.\n\n## INT. BAR - MORNING\n\n> answer: clothes-tom yes\n\n${name} wakes.\n`;

  it('hold for a person whose earlier name is told', () => {
    const before = breakDown(`---\ncast: { TOM: {} }\n---\n\n${body('Tom')}`);
    expect(before.codes).toEqual([]);
    const after = breakDown(`---\ncast: { TOBIAS: { was: TOM } }\n---\n\n${body('Tobias')}`);
    expect(after.codes).toEqual([]);
    expect(openIds(after.scenes)).toEqual([]);
    expect(clothesOf(after.scenes, 'TOBIAS')).toEqual(clothesOf(before.scenes, 'TOM'));
  });

  it('settle nothing where nothing tells of the name', () => {
    const { codes } = breakDown(`---\ncast: { TOBIAS: {} }\n---\n\n${body('Tobias')}`);
    expect(codes).toEqual(['answer-without-question']);
  });
});
