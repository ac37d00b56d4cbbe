import { describe, expect, it } from 'vitest';
import { breakDown } from '../support/break-down.js';

/** Makes a script of headings, each with a line of action after a bar: `INT. BAR - NIGHT | Nora sits.` */
function script(...scenes: string[]): string {
  const body = scenes.map((scene, index) => {
    const [heading, ...lines] = scene.split(' | ');
    return `## ${index + 1}. ${heading}\n\n${lines.join('\n\n') || 'Nora waits.'}`;
  });
  return `---\ncast: { NORA: {}, JOSEF: {}, MOTHER: {} }\n---\n\n${body.join('\n\n')}\n`;
}

/** The labels; a question mark after those that are unsure. */
function daysOf(...scenes: string[]): string {
  return breakDown(script(...scenes))
    .scenes.map(({ storyDay: { label, sure } }) => `${label}${sure ? '' : '?'}`)
    .join(' ');
}

describe('rule 1: explicit words', () => {
  it.each([
    ['NEXT MORNING'],
    ['THE NEXT DAY'],
    ['THE FOLLOWING NIGHT'],
    ['THREE DAYS LATER'],
    ['TWO WEEKS LATER'],
    ['THE MORNING AFTER'],
    ['A YEAR LATER'],
  ])('%s is the next day counted', (time) => {
    const { scenes } = breakDown(script('INT. BAR - DAY', `INT. BAR - ${time}`));
    expect(scenes[1]?.storyDay).toMatchObject({ label: 'D2', sure: true });
    expect(scenes[1]?.storyDay.reason).toContain(time);
    expect(scenes[1]?.storyDay.reason).toContain('scene 1');
  });

  it('DAY 4 is day 4, and the count goes on from there', () => {
    expect(daysOf('INT. BAR - DAY 1', 'INT. BAR - DAY 4', 'INT. BAR - NIGHT', 'INT. BAR - NEXT MORNING')).toBe(
      'D1 D4 D4 D5',
    );
  });

  it('NIGHT - CONTINUOUS is CONTINUOUS, D3 and NIGHT 3 are day 3', () => {
    expect(
      daysOf('INT. BAR - NIGHT', 'EXT. QUAY - NIGHT - CONTINUOUS', 'EXT. QUAY - DAY (D3)', 'EXT. QUAY - NIGHT 3'),
    ).toBe('D1 D1 D3 D3');
  });

  it('THAT NIGHT stays', () => {
    expect(daysOf('INT. BAR - DAY', 'EXT. QUAY - THAT NIGHT')).toBe('D1 D1');
  });

  it.each([
    ['MORNING AFTER'],
    ['TOMORROW'],
    ['NEXT WEEK'],
    ['TWO WEEKS LATER - NIGHT'],
    ['THE FOLLOWING MONDAY - DAY'],
  ])('%s is the next day counted, and no part of the place', (time) => {
    const { scenes } = breakDown(script('INT. BAR - DAY', `INT. BAR - ${time}`));
    expect(scenes[1]?.storyDay).toMatchObject({ label: 'D2', sure: true });
    expect(scenes[1]?.placeParts).toEqual(['BAR']);
  });

  it('LATER - NIGHT and CONTINUOUS - NIGHT follow the rules of their first word', () => {
    const { scenes } = breakDown(script('INT. BAR - DAY', 'INT. BAR - LATER - NIGHT', 'INT. BAR - CONTINUOUS - NIGHT'));
    expect(scenes.map(({ storyDay }) => storyDay.reason).slice(1)).toEqual([
      expect.stringContaining('"LATER"'),
      expect.stringContaining('"CONTINUOUS"'),
    ]);
  });

  it('another day of the week is another day, the same one the same, a first one is asked about', () => {
    expect(
      daysOf('INT. BAR - DAY', 'INT. BAR - MONDAY MORNING', 'INT. BAR - MONDAY NIGHT', 'INT. BAR - TUESDAY NIGHT'),
    ).toBe('D1 D2? D2 D3');
    expect(daysOf('INT. BAR - MONDAY', 'INT. BAR - MONDAY NIGHT', 'INT. BAR - MONDAY MORNING')).toBe('D1 D1 D2');
  });

  it('a day that lies back is asked about', () => {
    expect(daysOf('INT. BAR - DAY 5', 'INT. BAR - DAY 3')).toBe('D5 D3?');
  });

  it('a night that a note tells lies between', () => {
    expect(daysOf('INT. BAR - DAY', 'EXT. QUAY - DAY | > day: 4 night', 'EXT. QUAY - DAY')).toBe('D1 D4 D5');
  });

  it('quotes a title once', () => {
    const { scenes } = breakDown(script('INT. BAR - DAY', 'EXT. QUAY - DAY | SUPER: "THREE DAYS LATER"'));
    expect(scenes[1]?.storyDay.reason).toBe('"THREE DAYS LATER" after scene 1');
  });

  it('a title on screen tells as well as the heading', () => {
    expect(daysOf('INT. BAR - DAY', 'EXT. QUAY - DAY | SUPER: "Three weeks later" | Nora waits.')).toBe('D1 D2');
  });
});

describe('rule 2: flashbacks and dreams', () => {
  it('have a series of their own, and the day before goes on after them', () => {
    expect(daysOf('INT. BAR - DAY', 'INT. ATTIC - NIGHT (FLASHBACK) | Mother sings.', 'INT. BAR - DAY')).toBe(
      'D1 F1 D1',
    );
  });

  it('side by side are one, unless the light goes back; apart they are two', () => {
    expect(
      daysOf(
        'INT. BAR - DAY',
        'INT. ATTIC - NIGHT (FLASHBACK) | Mother sings.',
        'EXT. YARD - NIGHT (FLASHBACK) | Mother runs.',
        'EXT. YARD - MORNING (FLASHBACK) | Mother sleeps.',
        'INT. BAR - DAY',
        'INT. ATTIC - DAY (DREAM) | Mother flies.',
      ),
    ).toBe('D1 F1 F1 F2 D1 F3');
  });

  it('opened by a line go on until a line closes them', () => {
    const text = script(
      'INT. BAR - DAY | Nora waits. | FLASHBACK TO:',
      'INT. ATTIC - NIGHT | Mother sings.',
      'EXT. YARD - NIGHT | Mother runs. | BACK TO PRESENT:',
      'INT. BAR - DAY',
    );
    expect(breakDown(text).scenes.map(({ storyDay }) => storyDay.label)).toEqual(['D1', 'F1', 'F1', 'D1']);
  });

  it('opened and never closed hold for the next scene only', () => {
    const text = script(
      'INT. BAR - DAY | Nora waits. | FLASHBACK TO:',
      'INT. ATTIC - NIGHT | Mother sings.',
      'INT. BAR - DAY',
      'INT. BAR - NIGHT',
    );
    expect(breakDown(text).scenes.map(({ storyDay }) => storyDay.label)).toEqual(['D1', 'F1', 'D1', 'D1']);
  });

  it('are years before the year of the story; a later year is a new day', () => {
    expect(
      daysOf(
        'INT. BAR - DAY (1962)',
        'INT. ATTIC - DAY (1931) | Mother sings.',
        'INT. BAR - DAY (1962)',
        'INT. BAR - DAY (1970)',
      ),
    ).toBe('D1 F1 D1 D2');
    expect(daysOf('INT. BAR - DAY', 'INT. ATTIC - DAY (1931) | Mother sings.', 'INT. BAR - DAY (PRESENT)')).toBe(
      'D1 F1? D1',
    );
    expect(daysOf('INT. ATTIC - DAY (1931) | Mother sings.', 'INT. BAR - DAY (PRESENT)')).toBe('D1 D2');
    expect(daysOf('INT. BAR - DAY', 'INT. ATTIC - TWENTY YEARS EARLIER | Mother sings.', 'INT. BAR - DAY')).toBe(
      'D1 F1 D1',
    );
  });

  it.each([
    ['INT. ATTIC (FLASHBACK) - NIGHT'],
    ['INT. ATTIC - FLASHBACK'],
    ['INT. ATTIC - NIGHT - FLASHBACK'],
    ['INT. ATTIC - NIGHT (MEMORY)'],
    ['INT. ATTIC - DREAM SEQUENCE - NIGHT'],
    ['INT. ATTIC - TEN YEARS EARLIER'],
    ['INT. ATTIC - NIGHT - TEN YEARS EARLIER'],
  ])('are told by %s, which is the attic', (heading) => {
    const { scenes, breakdown } = breakDown(script('INT. ATTIC - DAY', heading, 'INT. ATTIC - DAY'));
    expect(scenes.map(({ storyDay }) => storyDay.label)).toEqual(['D1', 'F1', 'D1']);
    expect(breakdown.places).toHaveLength(1);
  });

  it('are not told by a street or a bar of that name', () => {
    expect(daysOf('EXT. MEMORY LANE - DAY', 'EXT. MEMORY LANE - NIGHT', 'INT. DREAM BAR - NIGHT')).toBe('D1 D1 D1?');
  });

  it('may come first', () => {
    expect(daysOf('INT. ATTIC - DAY (FLASHBACK) | Mother sings.', 'INT. BAR - DAY')).toBe('F1 D1');
  });
});

describe('rule 3: no time in between', () => {
  it('CONTINUOUS is the day of the last scene that shares people or place, not of the one before', () => {
    const { scenes } = breakDown(
      script(
        'INT. BAR - NIGHT',
        'INT. ATTIC - NIGHT (FLASHBACK) | Mother sings.',
        'EXT. QUAY - CONTINUOUS | Nora runs.',
      ),
    );
    expect(scenes[2]?.storyDay).toMatchObject({ label: 'D1', sure: true });
    expect(scenes[2]?.storyDay.reason).toContain('scene 1');
  });

  it('CONTINUOUS after a flashback whose people it shares is in the flashback', () => {
    expect(
      daysOf(
        'INT. BAR - NIGHT',
        'INT. ATTIC - NIGHT (FLASHBACK) | Mother sings.',
        'EXT. ROOF - CONTINUOUS | Mother climbs.',
      ),
    ).toBe('D1 F1 F1');
  });

  it('SAME and MOMENTS LATER stay; CONTINUOUS with nothing in common is asked about', () => {
    expect(
      daysOf('INT. BAR - NIGHT', 'EXT. QUAY - SAME | Josef waits.', 'EXT. QUAY - MOMENTS LATER | Josef waits.'),
    ).toBe('D1 D1 D1');
    expect(daysOf('INT. BAR - NIGHT', 'EXT. QUAY - CONTINUOUS | Josef waits.')).toBe('D1 D1?');
  });

  it('INTERCUT WITH 1 is the day of scene 1', () => {
    expect(
      daysOf(
        'INT. BAR - NIGHT',
        'INT. ATTIC - NEXT MORNING | Josef sits.',
        'INT. HALL - NIGHT (INTERCUT WITH 1) | Mother phones.',
      ),
    ).toBe('D1 D2 D1');
  });
});

describe('rules 4 to 8', () => {
  it('LATER stays', () => {
    expect(daysOf('INT. BAR - DAY', 'INT. BAR - LATER')).toBe('D1 D1');
  });

  it.each([
    ['NIGHT', 'DAY', 'D1 D2'],
    ['NIGHT', 'MORNING', 'D1 D2'],
    ['NIGHT', 'DAWN', 'D1 D2'],
    ['DUSK', 'DAY', 'D1 D2'],
    ['EVENING', 'DAY', 'D1 D2'],
    ['AFTERNOON', 'MORNING', 'D1 D2'],
    ['MORNING', 'DAWN', 'D1 D2'],
    ['NIGHT', 'DUSK', 'D1 D2'],
    ['DAWN', 'DAY', 'D1 D1'],
    ['DAY', 'NIGHT', 'D1 D1'],
    ['MORNING', 'AFTERNOON', 'D1 D1'],
    ['NIGHT', 'NIGHT', 'D1 D1'],
  ])('%s then %s in one place: %s', (first, second, expected) => {
    expect(daysOf(`INT. BAR - ${first}`, `INT. BAR - ${second}`)).toBe(expected);
  });

  it('DAY after DAY at another place is the same day, and asked about', () => {
    const { scenes } = breakDown(script('INT. BAR - DAY', 'EXT. QUAY - DAY'));
    expect(scenes[1]?.storyDay).toMatchObject({ label: 'D1', sure: false });
    expect(scenes[1]?.questions).toMatchObject([{ id: 'day-ext-quay-day', kind: 'story' }]);
  });

  it('is asked once a day, for all its doubtful scenes, and one answer settles them', () => {
    const scenes = [
      'INT. BAR - DAY',
      'EXT. QUAY - DAY',
      'EXT. PIER - DAY',
      'INT. BAR - NEXT MORNING',
      'EXT. LANE - MORNING',
    ];
    const ask = (...told: string[]) =>
      breakDown(script(...told)).scenes.map(({ questions }) =>
        questions.filter(({ id }) => id.startsWith('day-')).map(({ id }) => id),
      );
    expect(ask(...scenes)).toEqual([[], ['day-ext-quay-day'], [], [], ['day-ext-lane-morning']]);
    const { questions } = breakDown(script(...scenes)).scenes[1] ?? {};
    expect(questions?.[0]?.text).toContain('The same doubt in scene 3.');
    expect(ask(scenes[0] ?? '', `${scenes[1]} | > answer: day-ext-quay-day yes | Nora.`, ...scenes.slice(2))).toEqual([
      [],
      [],
      [],
      [],
      ['day-ext-lane-morning'],
    ]);
  });

  it('a montage is asked about', () => {
    expect(daysOf('INT. BAR - DAY', 'EXT. QUAY - DAY (MONTAGE)')).toBe('D1 D1?');
  });

  it('after a flashback the light is compared with the day before it', () => {
    expect(daysOf('INT. BAR - NIGHT', 'INT. ATTIC - DAY (FLASHBACK) | Mother sings.', 'INT. BAR - MORNING')).toBe(
      'D1 F1 D2',
    );
  });
});

describe('notes', () => {
  it('come before every rule, and the count goes on from them', () => {
    expect(
      daysOf(
        'INT. BAR - NIGHT',
        'INT. BAR - DAY | > day: 1 | Nora waits.',
        'INT. BAR - NIGHT',
        'INT. BAR - DAY | > day: 7',
      ),
    ).toBe('D1 D1 D1 D7');
    expect(daysOf('INT. BAR - DAY', 'INT. ATTIC - DAY | > day: flashback | Mother sings.', 'INT. BAR - DAY')).toBe(
      'D1 F1 D1',
    );
  });

  it('settle the question', () => {
    const { scenes } = breakDown(script('INT. BAR - DAY', 'EXT. QUAY - DAY | > day: 1 | Nora waits.'));
    expect(scenes[1]?.questions).toEqual([]);
  });
});
