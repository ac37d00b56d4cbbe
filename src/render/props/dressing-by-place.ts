import type { Breakdown, PlaceEntry } from '../../breakdown/types.js';
import { type Block, bold, type Inline, knownWords, type TableRow, tick } from '../layout/kit.js';
import { placeWords } from '../sheets/sheet-words.js';
import { listScenes, type SceneIndex } from '../words/scene-list-words.js';

type Thing = PlaceEntry['dressing'][number];

const columns = [
  { head: 'Place', share: 2 },
  { head: '', width: 12 },
  { head: 'What stands there', share: 3 },
  { head: 'In scenes', share: 1.4 },
];

/** The dressing of each place: it stands there in every scene played there, whether the scene names it or not. */
export function dressingBlocks(breakdown: Breakdown, index: SceneIndex): Block[] {
  const places = breakdown.places.filter((place) => place.dressing.length > 0);
  if (places.length === 0) return [];
  return [
    { kind: 'heading', level: 2, text: 'What stands in each place', bookmark: 'What stands in each place' },
    { kind: 'paragraph', text: explanation, keepWithNext: true },
    { kind: 'table', columns, rows: places.flatMap((place) => placeRows(place, index)) },
  ];
}

const explanation =
  'It stands there in every scene listed, in the same spot, whether the scene names it or not. Take a picture of the whole room before you move anything.';

function placeRows(place: PlaceEntry, index: SceneIndex): TableRow[] {
  return groupByRoom(place).flatMap(({ room, scenes, things }) =>
    things.map((thing, i) => ({
      cells:
        i === 0
          ? [bold(room), tick, thingCell(thing, index), listScenes(scenes, index)]
          : ['', tick, thingCell(thing, index)],
      keepWithNext: i === 0 && things.length > 1,
    })),
  );
}

interface Room {
  readonly room: string;
  readonly scenes: readonly string[];
  readonly things: readonly Thing[];
}

/** Things of a place that stand in the same scenes: a room of it, when one set has just these scenes. */
function groupByRoom(place: PlaceEntry): Room[] {
  const groups = new Map<string, Thing[]>();
  for (const thing of place.dressing) {
    const key = thing.scenes.join(' ');
    groups.set(key, [...(groups.get(key) ?? []), thing]);
  }
  return [...groups].map(([key, things]) => {
    const set = place.sets.find((one) => one.scenes.join(' ') === key);
    return { room: placeWords([set?.place ?? place.name]), scenes: things[0]?.scenes ?? [], things };
  });
}

function thingCell({ name, known }: Thing, index: SceneIndex): Inline {
  return [bold(name), ` ${knownWords({ known }, index.labels)}`.trimEnd()];
}
