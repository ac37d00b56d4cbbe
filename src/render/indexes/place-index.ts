import { placeKey } from '../../breakdown/places.js';
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
  const joint = breakdown.places.filter(({ name }) => jointParts(name).length > 1);
  const sharedBy = (name: string) =>
    joint.filter((one) => jointParts(one.name).some((part) => placeKey(part) === placeKey(name)));
  const known = new Set(breakdown.places.map(({ name }) => placeKey(name)));
  const parts = new Map(joint.flatMap(({ name }) => jointParts(name)).map((part) => [placeKey(part), part] as const));
  const rows = [
    ...breakdown.places.map((place) => placeRow(place, sharedBy(place.name), index)),
    ...[...parts].filter(([key]) => !known.has(key)).map(([, part]) => partRow(part, sharedBy(part), index)),
  ];
  return [
    { kind: 'heading', level: 2, text: 'By place', bookmark: 'By place' },
    { kind: 'table', columns, rows },
  ];
}

/** The places of a heading with two of them: TRUCK and MOTEL of `TRUCK / MOTEL`. */
function jointParts(name: string): string[] {
  return name.split(' / ');
}

function placeRow(place: PlaceEntry, joint: readonly PlaceEntry[], index: SceneIndex): TableRow {
  const shared = joint.filter((one) => one !== place);
  const scenes = [...new Set([place, ...shared].flatMap((one) => one.scenes))];
  return {
    cells: [
      { stack: [...placeCell(place, index), ...shared.map((one) => jointWords(one, index))] },
      listScenes(scenes, index),
      { stack: dressingCell(place, index) },
    ],
  };
}

/** A place that only ever stands beside another in a heading. */
function partRow(part: string, joint: readonly PlaceEntry[], index: SceneIndex): TableRow {
  const scenes = [...new Set(joint.flatMap((one) => one.scenes))];
  const see = `see ${joint.map(({ name }) => placeWords([name])).join(', ')}`;
  return { cells: [{ stack: [bold(placeWords([part]))] }, listScenes(scenes, index), see] };
}

function jointWords({ name, scenes }: PlaceEntry, index: SceneIndex): string {
  return `as ${placeWords([name])}: sc ${listScenes(scenes, index)}`;
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
