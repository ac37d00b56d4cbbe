import { describe, expect, it } from 'vitest';
import type { PlaceEntry } from '../../../src/breakdown/types.js';
import { writePlace } from '../../../src/render/sheets/sections/place.js';
import { createContext } from '../../../src/render/sheets/sheet-context.js';
import { departureWords, dressRooms } from '../../../src/render/words/place-dressing.js';
import { makeBreakdown, makeElement, makePlace, makeScene } from '../../support/make-breakdown.js';

const names = ['stove', 'table', 'clock', 'lamp', 'rug', 'calendar'];
const there: readonly (readonly string[])[] = [
  ['stove', 'table', 'clock', 'lamp', 'rug'],
  ['stove', 'table', 'lamp', 'rug', 'clock'],
  ['stove', 'table', 'lamp', 'rug', 'calendar'],
];
const scenes = there.map((things, at) =>
  makeScene({
    order: at + 1,
    place: 'Kitchen',
    placeId: 'kitchen',
    elements: things.map((name) =>
      makeElement({
        name,
        category: 'dressing',
        carried: at > 0 && name !== 'calendar',
        from: at > 0 && name !== 'calendar' ? 'scene-1' : null,
        ...(name === 'clock' && at === 1 ? { stateIn: 'stopped', stateOut: 'stopped' } : {}),
      }),
    ),
  }),
);
const ids = scenes.map((scene) => scene.id);
const place: PlaceEntry = makePlace({
  id: 'kitchen',
  name: 'Kitchen',
  scenes: ids,
  sets: [{ setting: 'INT', place: 'Kitchen', scenes: ids }],
  dressing: names.map((name) => ({
    id: name,
    name,
    known: 'found',
    scenes: ids.filter((_, at) => there[at]?.includes(name)),
  })),
});
const breakdown = makeBreakdown({ scenes, places: [place] });
const words = (at: number) =>
  JSON.stringify(writePlace(scenes[at] as (typeof scenes)[number], createContext(breakdown), 0));

describe('the dressing of a room', () => {
  /* Three scenes: in all of them stove, table, lamp, rug; the clock in two of three stands as a rule; the calendar in one does not. */
  it('is what stands there in at least half of its scenes, with exceptions by scene', () => {
    const [room] = dressRooms(place, breakdown);
    expect(room?.standing.map((thing) => thing.name)).toEqual(['stove', 'table', 'clock', 'lamp', 'rug']);
    expect(room?.departures.map((one) => `${one.scene}: ${departureWords(one)}`)).toEqual([
      `${ids[1]}: clock: stopped`,
      `${ids[2]}: MINUS clock; PLUS calendar`,
    ]);
  });
});

describe('the place on a scene’s sheet', () => {
  it('points to the place sheet where much only stands there', () => {
    expect(words(1)).toContain('as the place sheet of Kitchen (5 things more)');
    expect(words(1)).not.toContain('rug');
  });

  it('lists little in full, and says what is not there', () => {
    expect(words(2)).toContain('stove, table, lamp, rug');
    expect(words(2)).toContain('calendar');
    expect(words(2)).toMatch(/MINUS.*clock/);
    expect(words(0)).not.toContain('MINUS');
  });
});
