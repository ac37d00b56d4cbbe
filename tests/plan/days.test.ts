import { describe, expect, it } from 'vitest';
import { planOf } from './fixture.js';

const long = { eighths: 8, seconds: 60 };

describe('the load of a day', () => {
  it('adds eighths, seconds and setups', () => {
    const plan = planOf(
      {
        scenes: [
          { eighths: 5, seconds: 40 },
          { eighths: 6, seconds: 50 },
        ],
      },
      'days:\n  - { date: 2027-03-12, scenes: [1, 2] }\nscenes:\n  s1: { setups: 4 }\n  s2: { shots: [wide, hands] }\n',
    );
    expect(plan.days[0]).toMatchObject({ eighths: 11, seconds: 90, setups: 6, number: 1, of: 1 });
  });

  it('reckons shooting minutes of an interior', () => {
    // 4 setups: light 40 + 3 × 18 = 94 min. A setup covers 2 × 60 / 4 = 30 s: a take is (30 × 1.3 + 60) / 60 = 1.65 min, and 3 min of
    // reset: 4.65; 4 × 4 takes = 74.4. Together 168.4, rounded 168; a meal of 45: 213.
    const plan = planOf(
      { scenes: [{ seconds: 60 }] },
      'days:\n  - { date: 2027-03-12, scenes: [1] }\nscenes:\n  s1: { setups: 4, reset minutes: 3 }\n',
    );
    expect(plan.days[0]?.scenes[0]?.minutes).toBe(168);
    expect(plan.days[0]?.shootingMinutes).toBe(213);
  });

  it('counts moves between locations, and redressing one room as another', () => {
    const scenes = [{ place: 'SHED' }, { place: 'OFFICE' }, { place: 'QUAY', setting: 'EXT' as const }];
    const book =
      'locations:\n  hut:\n  quay:\nplaces:\n  shed: { at: hut }\n  office: { at: hut }\n  quay: { at: quay }\ndays:\n  - { date: 2027-03-12, at: [hut, quay], scenes: [1, 2, 3] }\n';
    const [day] = planOf({ scenes }, book).days;
    const work = (day?.scenes ?? []).reduce((sum, slot) => sum + slot.minutes, 0);
    // One move of 75, one redress of 60, a meal of 45.
    expect([day?.moves, (day?.shootingMinutes ?? 0) - work]).toEqual([1, 180]);
  });

  it('warns of a day that is too much', () => {
    const scenes = [long, long, long, long];
    const [day] = planOf(
      { scenes },
      'days:\n  - { date: 2027-03-12, call: 7:00, wrap: 19:00, scenes: [1, 2, 3, 4] }\n',
    ).days;
    // 12 h from call to wrap; 4 × 6 = 24 setups.
    expect(day?.warnings.some((one) => one.includes('12 h, more than 11 h'))).toBe(true);
    expect(day?.warnings.some((one) => one.includes('24 setups, more than 18'))).toBe(true);
  });

  it('measures the rest over midnight', () => {
    // Wrap 01:30 on the 13th, call 8:00 the same morning: 6.5 h.
    const plan = planOf(
      { scenes: [{}, {}] },
      'days:\n  - { date: 2027-03-12, call: 16:00, wrap: 1:30, scenes: [1] }\n  - { date: 2027-03-13, call: 8:00, wrap: 18:00, scenes: [2] }\n',
    );
    expect(plan.days.map((day) => day.restHours)).toEqual([null, 6.5]);
    expect(plan.days[1]?.warnings[0]).toContain('only 6 h 30 min between the last wrap and this call, less than 11 h');
  });

  it('lists scenes that are in no day', () => {
    expect(
      planOf({ scenes: [{}, {}, {}] }, 'days:\n  - { date: 2027-03-12, scenes: [2] }\n').unscheduled.map(
        (slot) => slot.label,
      ),
    ).toEqual(['1', '3']);
  });

  it('asks about a minor and asserts nothing', () => {
    const book =
      'days:\n  - { date: 2027-03-12, call: 8:00, wrap: 18:00, scenes: [1] }\npeople:\n  mo: { hours a day: 4.5 }\n';
    const [minor] = planOf({ scenes: [{ cast: ['MO'] }], minors: ['MO'] }, book).days[0]?.minors ?? [];
    // 4 setups in a room: 40 + 3 × 18 = 94 min; 4 × 4 takes of (15 s × 1.3 + 60 s) = 21 min; 115 min. Half as much again is
    // 172.5 min: nobody keeps a child for the ten hours of the day.
    expect(minor).toMatchObject({ hoursOnSet: 2.9, hoursEntered: 4.5 });
    expect(minor?.question).toMatch(/on set about 2 h 53 min; .* reckoned at 1 h 55 min\. .*\?$/);
  });

  it('adds the hours of a minor over two calls on one date', () => {
    // 8:00 to 9:00 has 60 min for scene 1; scene 2 has 173 min of its three hours: 233 min in all.
    const book =
      'days:\n  - { date: 2027-03-12, call: 8:00, wrap: 9:00, scenes: [1] }\n  - { date: 2027-03-12, call: 19:00, wrap: 22:00, scenes: [2] }\npeople:\n  mo: { hours a day: 3 }\n';
    const { days } = planOf({ scenes: [{ cast: ['MO'] }, { cast: ['MO'] }], minors: ['MO'] }, book);
    const asked = days.map((day) => day.minors.map((one) => one.question));
    expect(asked[0]?.[0]).toMatch(/on set about 3 h 53 min in all at 2 calls on that date; 3 hours a day is entered/);
    expect(asked[1]).toEqual(asked[0]);
  });

  it('leaves time for a change of clothes where the day is full, and flags one that has no time', () => {
    const scenes = [{ wears: { ADA: { coat: {}, boots: {} } } }, { wears: { ADA: { gown: {}, slippers: {} } } }];
    const dayOf = (wrap: string, rest = '') =>
      planOf({ scenes }, `days:\n  - { date: 2027-03-12, call: 8:00, wrap: ${wrap}, scenes: [1, 2] }\n${rest}`).days[0];
    // Dressed by 8:20, 20 minutes to change: of the 40 minutes to 9:00, 20 are left for two scenes: 8:20 to 8:30, 8:50 to 9:00.
    const full = dayOf('9:00');
    const minutes = full?.scenes.map(({ start, end }) =>
      [start, end].map((hour) => Math.round(((hour ?? 0) % 24) * 60)),
    );
    expect(minutes).toEqual([
      [500, 510],
      [530, 540],
    ]);
    expect(full?.changes).toEqual([]);
    const [rush] = dayOf('8:35')?.changes ?? [];
    expect([rush?.minutesNeeded, rush?.minutesThere]).toEqual([20, 0]);
    // A beginning of the book: the scene before ends 20 minutes sooner.
    const fixed = dayOf('12:00', 'scenes:\n  s2: { begin: 9:30 }\n');
    expect(fixed?.changes).toEqual([]);
    expect(Math.round(((fixed?.scenes[0]?.end ?? 0) % 24) * 60)).toBe(550);
    // From 8:00 to 18:00 there is far more time than two scenes of half a page take.
    expect(planOf({ scenes }, 'days:\n  - { date: 2027-03-12, scenes: [1, 2] }\n').days[0]?.changes).toEqual([]);
  });

  it('dresses the people of the first scene between the call and its beginning', () => {
    const coat = { wears: { ADA: { coat: {} } } };
    const day = (more = '', scenes = '') =>
      planOf(
        { scenes: [coat] },
        `days:\n  - { date: 2027-03-12, call: 8:00, wrap: 18:00, scenes: [1]${more} }\n${scenes}`,
      ).days[0];
    // Call 8:00 and 20 minutes to dress: the scene begins at 8:20, and nobody is told to come earlier.
    expect((((day()?.scenes[0]?.start ?? 0) % 24) * 60).toFixed(0)).toBe('500');
    expect(day()?.changes).toEqual([]);
    // A beginning of the book stands, and is judged.
    expect(day('', 'scenes:\n  s1: { begin: 8:05 }\n')?.changes).toMatchObject([
      { minutesNeeded: 20, minutesThere: 5 },
    ]);
  });
});

describe('light', () => {
  const at = (more: string, scenes: string) =>
    `locations:\n  quay: { coordinates: "55.6, 12.3", zone: Europe/Copenhagen }\ndays:\n  - { date: 2027-03-12, ${more}, at: quay, scenes: [${scenes}] }\n`;
  const dawn = { setting: 'EXT' as const, light: 'dawn' as const, eighths: 2, seconds: 15 };

  it('gives the window in clock times', () => {
    // 12 March 2027 near Copenhagen: first light 05:58, sunrise 06:35; golden until the Sun is 6 degrees up, 07:24.
    const [sun] = planOf({ scenes: [dawn] }, at('call: 5:30, wrap: 12:00', '1')).days[0]?.sun ?? [];
    expect(sun?.windows[0]?.words).toBe('scene 1 (dawn): 05:58 to 07:24');
    expect(sun?.words).toContain('a ridge may take');
  });

  it('says when the day is called after the light', () => {
    const [sun] = planOf({ scenes: [dawn] }, at('call: 8:00, wrap: 18:00', '1')).days[0]?.sun ?? [];
    expect(sun?.clashes).toEqual(['scene 1 (dawn): 05:58 to 07:24; the day is called 08:00 to 18:00.']);
  });

  it('says when two scenes want one dawn', () => {
    const [sun] = planOf({ scenes: [dawn, dawn] }, at('call: 5:30, wrap: 12:00', '1, 2')).days[0]?.sun ?? [];
    expect(sun?.clashes.at(-1)).toMatch(/^scenes 1 and 2 want the same dawn: 1 h 26 min there/);
  });

  it('says when the order would miss it', () => {
    const inside = { setting: 'INT' as const, eighths: 8, seconds: 60 };
    const small = { ...dawn, seconds: 5 };
    const book = `${at('call: 5:30, wrap: 12:00', '1, 2')}scenes:\n  s2: { setups: 1, takes: 2 }\n`;
    const [sun] = planOf({ scenes: [inside, small] }, book).days[0]?.sun ?? [];
    expect(sun?.clashes[0]).toContain('in this order it would begin about');
  });

  it('asks for coordinates when there are none', () => {
    const [sun] =
      planOf({ scenes: [dawn] }, 'locations:\n  quay:\ndays:\n  - { date: 2027-03-12, at: quay, scenes: [1] }\n')
        .days[0]?.sun ?? [];
    expect([sun?.times, sun?.words]).toEqual([
      null,
      'No sunrise or sunset: write coordinates (55.61, 12.34) for "quay" in the book.',
    ]);
  });

  it('gives a night shoot the dawn in which it ends', () => {
    // 13 March near Copenhagen: two to three minutes earlier than the day before.
    const [sun] =
      planOf({ scenes: [{ ...dawn, seconds: 5, eighths: 1 }] }, at('call: 22:00, wrap: 8:30', '1')).days[0]?.sun ?? [];
    expect(sun?.windows[0]?.words).toBe('scene 1 (dawn): 05:58 to 07:24 or 05:56 (+1 day) to 07:21 (+1 day)');
    expect(sun?.clashes.join()).not.toContain('the day is called');
  });

  it('looks at no interior', () => {
    expect(
      planOf({ scenes: [{ ...dawn, setting: 'INT' }] }, at('call: 8:00, wrap: 18:00', '1')).days[0]?.sun[0]?.windows,
    ).toEqual([]);
  });
});

describe('light in the bright nights of the north', () => {
  const at = (place: string, date: string, light: 'day' | 'dawn' | 'dusk' | 'night') => {
    const book = `locations:\n  quay: { coordinates: "${place}", zone: Europe/Oslo }\ndays:\n  - { date: ${date}, call: 14:00, wrap: 2:00, at: quay, scenes: [1] }\n`;
    const scene = { setting: 'EXT' as const, light, seconds: 5, eighths: 1 };
    return planOf({ scenes: [scene] }, book).days[0]?.sun[0]?.windows[0]?.words;
  };

  it('goes from golden over the lowest Sun into dawn', () => {
    // Trondheim, 18 June: sunset 23:37, lowest 01:20, sunrise 03:03.
    expect(at('63.43, 10.40', '2027-06-18', 'dusk')).toBe('scene 1 (dusk): 21:50 to 01:20 (+1 day)');
    expect(at('63.43, 10.40', '2027-06-18', 'dawn')).toContain('scene 1 (dawn): 01:19 to 04:49');
  });

  it('has no dark, and says so', () => {
    expect(at('63.43, 10.40', '2027-06-18', 'night')).toBe(
      'scene 1 (night): it does not get dark: civil twilight lasts all night, and 01:20 is the darkest',
    );
  });

  it('has neither dusk nor dark while the Sun does not set', () => {
    expect(at('71.17, 25.78', '2027-06-20', 'dusk')).toBe(
      'scene 1 (dusk): the Sun does not set that day; it stands lowest at 00:19',
    );
    expect(at('71.17, 25.78', '2027-06-20', 'day')).toBe('scene 1 (day): 00:00 to 00:00 (+1 day)');
  });

  it('has no day where the Sun does not rise, but twilight', () => {
    expect(at('69.65, 18.96', '2027-12-21', 'day')).toBe('scene 1 (day): the Sun does not rise that day');
    expect(at('69.65, 18.96', '2027-12-21', 'dusk')).toContain('to 13:53');
  });
});
