import type { Breakdown, PlaceEntry } from '../../breakdown/types.js';
import { type Block, bold, type Inline, knownWords, type TableRow } from '../layout/kit.js';
import { placeWords, settingWords } from '../sheets/sheet-words.js';
import { listScenes, type SceneIndex } from '../words/scene-list-words.js';

const columns = [
  { head: 'Place', share: 2 },
  { head: 'Scenes', share: 1 },
  { head: 'What stands there, in every scene', share: 3 },
];

/** Index by place: its areas, its scenes, and the dressing that stays there. */
export function placeIndex(breakdown: Breakdown, index: SceneIndex): Block[] {
  return [
    { kind: 'heading', level: 2, text: 'By place', bookmark: 'By place' },
    { kind: 'table', columns, rows: breakdown.places.map((place) => placeRow(place, index)) },
  ];
}

function placeRow(place: PlaceEntry, index: SceneIndex): TableRow {
  return {
    cells: [{ stack: placeCell(place, index) }, listScenes(place.scenes, index), { stack: dressingCell(place, index) }],
  };
}

function placeCell(place: PlaceEntry, index: SceneIndex): Inline[] {
  const several = place.sets.length > 1;
  const sets = several
    ? place.sets.map(
        (set) => `${settingWords(set.setting)}, ${placeWords([set.place])}: sc ${listScenes(set.scenes, index)}`,
      )
    : [];
  const areas =
    !several && place.areas.length > 0 ? [`with ${place.areas.map((area) => placeWords([area])).join(', ')}`] : [];
  return [bold(placeWords([place.name])), place.settings.map(settingWords).join(', '), ...areas, ...sets];
}

function dressingCell(place: PlaceEntry, index: SceneIndex): Inline[] {
  if (place.dressing.length === 0) return ['nothing named'];
  return place.dressing.map(({ name, known }) => [name, ` ${knownWords({ known }, index.labels)}`.trimEnd()]);
}
