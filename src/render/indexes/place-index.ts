import type { Breakdown, PlaceEntry, PlaceSet } from '../../breakdown/types.js';
import { type Block, bold, type Inline, knownWords, type TableRow } from '../layout/kit.js';
import { placeWords, settingWords } from '../sheets/sheet-words.js';
import { listScenes, type SceneIndex } from '../words/scene-list-words.js';

const columns = [
  { head: 'Place', share: 2 },
  { head: 'Scenes', share: 1 },
  { head: 'What stands there, named or not', share: 3 },
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
  const name = bold(placeWords([place.name]));
  if (place.sets.length > 1) return [name, ...place.sets.map((set) => setWords(set, index))];
  const areas = place.areas.length > 0 ? [`with ${place.areas.map((area) => placeWords([area])).join(', ')}`] : [];
  return [name, place.settings.map(settingWords).join(', '), ...areas];
}

function setWords({ setting, place, scenes }: PlaceSet, index: SceneIndex): string {
  return `${settingWords(setting)}, ${placeWords([place])}: sc ${listScenes(scenes, index)}`;
}

function dressingCell(place: PlaceEntry, index: SceneIndex): Inline[] {
  if (place.dressing.length === 0) return ['nothing named'];
  return place.dressing.map(({ name, known, scenes }) => {
    const words = knownWords({ known }, index.labels);
    const where = scenes.length === place.scenes.length ? '' : `: sc ${listScenes(scenes, index)}`;
    return `${name}${words === '' ? '' : ` ${words}`}${where}`;
  });
}
