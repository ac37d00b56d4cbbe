import type { BreakdownScene } from '../../breakdown/types.js';
import type { PlanDay } from '../../plan/day-types.js';
import { changeMinutes } from '../../trade/shooting-times.js';
import { type Block, bold, type Inline, type TableRow, tick } from '../layout/kit.js';
import type { Production } from '../types.js';
import { labelOf, type SceneIndex } from '../words/scene-list-words.js';
import { aboutWhen } from './call-sheet-tables.js';
import { dayHead } from './plan-words.js';

const columns = [
  { head: '', width: 12 },
  { head: 'Ready by\nabout', width: 50 },
  { head: 'Scene', width: 36 },
  { head: 'Who', share: 1.5 },
  { head: 'Change', width: 52 },
  { head: 'State in → out', share: 2.4 },
  { head: 'Dressing', share: 1.2 },
];

/** Per shooting day, in order: who is dressed in what by when, and where the time is too short. */
export function dressingOrderBlocks({ plan }: Production, index: SceneIndex): Block[] {
  const head: Block = {
    kind: 'heading',
    level: 2,
    text: 'Who is dressed in what, day by day',
    bookmark: 'Dressing order',
  };
  if (plan.days.length === 0)
    return [head, { kind: 'paragraph', text: 'No shooting days yet: dress by the list scene by scene.' }];
  const words = `Reckon ${changeMinutes.simple} minutes for a simple change, ${changeMinutes.full} for a full one, 30 to 45 with blood, water or a wig.`;
  return [head, { kind: 'paragraph', text: words }, ...plan.days.flatMap((day) => dayBlocks(day, index))];
}

function dayBlocks(day: PlanDay, index: SceneIndex): Block[] {
  const rows = day.scenes.flatMap((slot) => {
    const scene = index.scenes[index.positions.get(slot.scene) as number] as BreakdownScene;
    return scene.wears.map((wears): TableRow => {
      const rush = day.changes.find((one) => one.person === wears.person && one.to.scene === scene.id);
      const states = wears.garments
        .filter((one) => one.stateIn !== null || one.stateOut !== null)
        .map(
          (one) =>
            `${one.name}: ${one.stateOut === null || one.stateOut === one.stateIn ? one.stateIn : `${one.stateIn ?? 'as it was'} → ${one.stateOut}`}`,
        );
      const time = aboutWhen(slot);
      const hurry: Inline = rush
        ? [
            bold(`${rush.minutesNeeded} min needed`),
            `, ${rush.minutesThere} there${rush.from === null ? ' from the call' : ''}: tell whoever plans the day`,
          ]
        : '';
      return {
        cells: [
          tick,
          time,
          labelOf(scene.id, index),
          bold(wears.person),
          String(wears.change),
          states.join('; '),
          hurry,
        ],
      };
    });
  });
  const table: Block =
    rows.length > 0
      ? { kind: 'table', columns, rows, tight: true }
      : { kind: 'paragraph', text: 'The script does not tell what anyone wears in these scenes.' };
  return [{ kind: 'heading', level: 3, text: dayHead(day) }, table];
}
