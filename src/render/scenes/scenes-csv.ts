import { formatEighths } from '../../base/eighths.js';
import { labelScenes } from '../../breakdown/scene-label.js';
import type { Breakdown, BreakdownScene, SceneCast, SceneExtra } from '../../breakdown/types.js';
import { type Cell, joinCell } from '../csv/format-csv.js';

const head = [
  'number',
  'INT/EXT',
  'place',
  'time',
  'light',
  'story day',
  'page',
  'eighths',
  'length',
  'seconds',
  'seconds, low',
  'seconds, high',
  'seconds, page rule',
  'people',
  'heard only',
  'extras',
  'synopsis',
];

/** The scene list as rows: one scene a line. The length is written with a word, so that `3/8` never turns into a date. */
export function sceneRows(breakdown: Breakdown): Cell[][] {
  const labels = labelScenes(breakdown.scenes);
  return [head, ...breakdown.scenes.map((scene) => [labels.get(scene.id) ?? '', ...sceneCells(scene)])];
}

function sceneCells(scene: BreakdownScene): Cell[] {
  const time = scene.screenTime;
  return [
    scene.setting,
    scene.place,
    scene.time,
    scene.light,
    scene.storyDay.label,
    scene.page,
    scene.eighths,
    `${formatEighths(scene.eighths)} ${scene.eighths > 8 ? 'pages' : 'page'}`,
    Math.round(time.seconds),
    Math.round(time.low),
    Math.round(time.high),
    Math.round(time.pageRule),
    joinCell(scene.cast.filter((one) => one.presence === 'seen').map((one) => one.name)),
    joinCell(scene.cast.filter((one) => one.presence === 'heard').map(nameVoice)),
    joinCell(scene.extras.map(nameExtra)),
    scene.synopsis,
  ];
}

function nameVoice({ name, voice }: SceneCast): string {
  return voice === null ? name : `${name} (${voice})`;
}

function nameExtra({ name, count }: SceneExtra): string {
  return count === null ? `${name} (how many?)` : `${count} ${name}`;
}
