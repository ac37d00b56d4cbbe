import type { Breakdown, BreakdownScene, PlaceEntry } from '../../breakdown/types.js';
import { locateScenes } from '../../plan/place-days.js';
import {
  type Block,
  blank,
  bold,
  danger,
  type Inline,
  inlineRuns,
  joinInline,
  knownWords,
  type TableRow,
  tick,
} from '../layout/kit.js';
import { placeFactBlocks } from '../plan/place-facts.js';
import { locationWords } from '../plan/plan-words.js';
import { placeWords, settingWords } from '../sheets/sheet-words.js';
import type { RenderInput } from '../types.js';
import { callWords } from '../words/call-words.js';
import { chargeWords } from '../words/charge-words.js';
import { departureWords, dressRooms, type RoomDressing } from '../words/place-dressing.js';
import { labelOf, listScenes, pickScenes, type SceneIndex } from '../words/scene-list-words.js';

/** The place of one sheet: a real location, or without one a place of the story, and the scenes played there. */
interface Site {
  readonly location: string | null;
  readonly name: string;
  readonly places: readonly PlaceEntry[];
  readonly scenes: readonly string[];
}

type SheetInput = Pick<RenderInput, 'breakdown' | 'production'>;

/**
 * One sheet for each shooting place, two on a page where they fit, the shortest first: what stands there, where a scene departs from it,
 * what is dangerous, the Sun, whom to ask.
 */
export function placeSheetBlocks(input: SheetInput, index: SceneIndex): Block[] {
  const sites = listSites(input).filter((site) => hasToTell(site, index));
  const sizes = new Map(sites.map((site) => [site, guessLines(site, input, index)]));
  return [...sites]
    .sort((a, b) => (sizes.get(a) ?? 0) - (sizes.get(b) ?? 0))
    .flatMap((site, at): Block[] => [
      { kind: 'space', height: at === 0 ? 0 : 14 },
      { kind: 'keep', blocks: isBare(site, input) ? bareBlocks(site, input, index) : siteBlocks(site, input, index) },
    ]);
}

/** True for a place of whose rooms nothing is told. */
function isBare(site: Site, { breakdown }: SheetInput): boolean {
  return roomsOf(site, breakdown).every((room) => room.standing.length === 0 && room.departures.length === 0);
}

/** About how many lines tell one sheet from another in length: dangers, facts two to a line, days with the Sun, rooms. */
function guessLines(site: Site, input: SheetInput, index: SceneIndex): number {
  const dangers = new Set(pickScenes(site.scenes, index).flatMap((scene) => scene.hazards.map((one) => one.title)));
  const known = input.production?.book.locations.find((one) => one.id === site.location);
  const days = input.production?.plan.days.filter((day) => day.scenes.some((slot) => site.scenes.includes(slot.scene)));
  const rooms = isBare(site, input) ? 0 : roomsOf(site, input.breakdown).length + 2;
  return dangers.size + (known?.facts.length ?? 0) / 2 + (days?.length ?? 0) * 2 + rooms;
}

function listSites({ breakdown, production }: SheetInput): Site[] {
  const where = production ? locateScenes(breakdown, production.book, production.plan) : null;
  const sites = new Map<string, Site>();
  for (const place of breakdown.places) {
    for (const scene of place.scenes) {
      const location = where?.get(scene) ?? null;
      const key = location === null ? `story ${place.id}` : `real ${location}`;
      const known = sites.get(key);
      sites.set(key, {
        location,
        name: known?.name ?? (location && production ? locationWords(location, production.book) : nameOf(place)),
        places: [...new Set([...(known?.places ?? []), place])],
        scenes: [...(known?.scenes ?? []), scene],
      });
    }
  }
  return [...sites.values()];
}

/** A place of the story of which nothing is known but its name needs no page. */
function hasToTell({ location, places, scenes }: Site, index: SceneIndex): boolean {
  const isDangerous = pickScenes(scenes, index).some((scene) => scene.hazards.length > 0);
  return location !== null || isDangerous || places.some((place) => place.dressing.length > 0);
}

function nameOf(place: PlaceEntry): string {
  return placeWords([place.name]);
}

function bareBlocks(site: Site, input: SheetInput, index: SceneIndex): Block[] {
  return [
    ...headBlocks(site, input, index),
    { kind: 'paragraph', text: [bold('What stands here: '), `nothing told. ${arrival} `, blank(190)] },
  ];
}

function siteBlocks(site: Site, input: SheetInput, index: SceneIndex): Block[] {
  return [
    ...headBlocks(site, input, index),
    { kind: 'space', height: 4 },
    { kind: 'paragraph', text: [bold('What stands here, '), explanation], keepWithNext: true },
    dressingTable(site, input.breakdown, index),
    { kind: 'paragraph', text: [`${arrival} `, blank(340)] },
  ];
}

function headBlocks(site: Site, input: SheetInput, index: SceneIndex): Block[] {
  const scenes = pickScenes(site.scenes, index);
  const plays = site.location === null ? '' : `plays ${site.places.map(nameOf).join(', ')}; `;
  return [
    { kind: 'heading', level: 2, text: `Place sheet: ${site.name}`, bookmark: `Place: ${site.name}` },
    {
      kind: 'paragraph',
      text: [`${plays}sc ${listScenes(site.scenes, index)}. `, ...inlineRuns(callWords(input.production)), '.'],
    },
    ...dangerBlocks(scenes, input, index),
    ...placeFactBlocks(site.location, input),
  ];
}

const explanation =
  'in the same spot in every scene of the room, whether the scene names it or not. Take a picture of the whole room before you move anything; put it back as it was.';
const arrival = 'How it looked when we came:';

function dangerBlocks(scenes: readonly BreakdownScene[], { production }: SheetInput, index: SceneIndex): Block[] {
  const found = new Map<string, BreakdownScene[]>();
  for (const scene of scenes)
    for (const title of new Set(scene.hazards.map((hazard) => hazard.title)))
      found.set(title, [...(found.get(title) ?? []), scene]);
  const rows = [...found].map(
    ([title, where]): TableRow => ({
      cells: [
        bold(title),
        listScenes(
          where.map((scene) => scene.id),
          index,
        ),
        chargeWords(where, production, index, 120),
      ],
    }),
  );
  const columns = [
    { head: [danger, ' ', bold('Dangers here')], share: 1.4 },
    { head: 'Scenes', share: 0.8 },
    { head: 'Person in charge', share: 1.4 },
  ];
  return rows.length === 0
    ? []
    : [{ kind: 'frame', blocks: [{ kind: 'table', columns, rows, tight: true, ruled: false }] }];
}

const columns = [
  { head: 'Room', share: 1.6 },
  { head: 'Scenes', share: 0.5 },
  { head: 'As a rule', share: 2.6 },
];
const butColumn = { head: 'But in', share: 1.8 };

/** The rooms of a place; without the column of exceptions where there is none. */
function dressingTable(site: Site, breakdown: Breakdown, index: SceneIndex): Block {
  const played = new Set(site.scenes);
  const rooms = roomsOf(site, breakdown);
  const rows = rooms.map((room) => roomRow(room, played, index));
  const departs = rooms.some((room) => room.departures.some((one) => played.has(one.scene)));
  return { kind: 'table', columns: departs ? [...columns, butColumn] : columns, rows, tight: true };
}

function roomsOf(site: Site, breakdown: Breakdown): RoomDressing[] {
  const played = new Set(site.scenes);
  return site.places
    .flatMap((place) => dressRooms(place, breakdown))
    .filter(({ set }) => set.scenes.some((id) => played.has(id)));
}

function roomRow(
  { set, standing, departures }: RoomDressing,
  played: ReadonlySet<string>,
  index: SceneIndex,
): TableRow {
  const but = departures
    .filter((one) => played.has(one.scene))
    .map((one): Inline => [bold(`sc ${labelOf(one.scene, index)}: `), departureWords(one)]);
  const scenes = set.scenes.filter((id) => played.has(id));
  const head: Inline = [bold(placeWords([set.place])), `, ${settingWords(set.setting).toLowerCase()}`];
  const things = standing.map((thing): Inline => {
    const known = knownWords(thing, index.labels);
    return [tick, '\u00a0', bold(thing.name), known === '' ? '' : ` ${known}`];
  });
  const rule = things.length > 0 ? joinInline(things) : ['nothing told: ', blank(70)];
  return { cells: [head, listScenes(scenes, index), rule, { stack: but }] };
}
