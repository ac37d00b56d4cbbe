import type { Breakdown, PlaceEntry } from '../../breakdown/types.js';
import { type Block, bold, type Inline, knownWords, type TableRow, tick } from '../layout/kit.js';
import { placeWords } from '../sheets/sheet-words.js';
import { listScenes, pickScenes, type SceneIndex } from '../words/scene-list-words.js';

const columns = [
  { head: 'Place', share: 2 },
  { head: '', width: 12 },
  { head: 'What stands there', share: 3 },
  { head: 'Named in', share: 1 },
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
  'It stands in every scene played there, in the same spot. Take a picture of the whole room before you move anything.';

function placeRows(place: PlaceEntry, index: SceneIndex): TableRow[] {
  return place.dressing.map((thing, i) => ({
    cells: [
      i === 0 ? { stack: [bold(placeWords([place.name])), `all scenes: ${listScenes(place.scenes, index)}`] } : '',
      tick,
      thingCell(thing, index),
      listScenes(namedIn(thing.id, thing.scenes, index), index),
    ],
    keepWithNext: i === 0 && place.dressing.length > 1,
  }));
}

function thingCell({ name, known }: PlaceEntry['dressing'][number], index: SceneIndex): Inline {
  return [bold(name), ` ${knownWords({ known }, index.labels)}`.trimEnd()];
}

/** The scenes whose own words name the thing. */
function namedIn(id: string, scenes: readonly string[], index: SceneIndex): string[] {
  const named = pickScenes(scenes, index).filter((scene) =>
    scene.elements.some((one) => one.id === id && !one.carried),
  );
  return named.length > 0 ? named.map((scene) => scene.id) : [...scenes];
}
