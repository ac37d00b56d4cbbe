import { formatClockTime, formatMinutes } from '../../base/clock-time.js';
import { formatDuration } from '../../base/duration.js';
import { formatEighths } from '../../base/eighths.js';
import type { BreakdownScene, PersonEntry } from '../../breakdown/types.js';
import type { PlanDay } from '../../plan/day-types.js';
import type { Slot } from '../../plan/slot-types.js';
import { type Block, bold, type Inline, type TableRow } from '../layout/kit.js';
import { labelOf } from '../words/scene-list-words.js';
import { otherCallRows } from './call-sheet-others.js';
import type { CallSheetGround, Folding } from './call-sheet-types.js';
import { calledAt, isMinor, peopleOf } from './plan-words.js';

const sceneColumns = [
  { head: 'Scene', fit: true },
  { head: 'About', width: 34 },
  { head: 'What', share: 2.6 },
  { head: 'Who', share: 1.1 },
  { head: 'Pages', width: 36 },
  { head: 'Time', width: 32 },
  { head: 'Setups', width: 38 },
];

/** The scenes of a day in the order they are shot, with about when each begins and the light it needs. */
export function sceneTable(
  day: PlanDay,
  scenes: readonly BreakdownScene[],
  ground: CallSheetGround,
  folding: Folding,
): Block {
  const rows = scenes.map((scene, place) => sceneRow(scene, day.scenes[place] as Slot, day, ground, folding));
  if (rows.length === 0) return { kind: 'paragraph', text: 'No scene stands in this day yet.' };
  const work = `Together, moves and a meal counted: ${formatMinutes(day.shootingMinutes)}`;
  const total: TableRow = {
    cells: [
      '',
      '',
      work,
      '',
      bold(formatEighths(day.eighths)),
      bold(formatDuration(day.seconds)),
      bold(String(day.setups)),
    ],
  };
  return { kind: 'table', columns: sceneColumns, rows: [...rows, total], tight: true };
}

function sceneRow(
  scene: BreakdownScene,
  slot: Slot,
  day: PlanDay,
  ground: CallSheetGround,
  folding: Folding,
): TableRow {
  const words: Inline[] = [
    [bold(`${scene.setting}. ${scene.place}${scene.time ? `, ${scene.time}` : ''}`), ` · ${scene.storyDay.label}`],
    ...(folding === 'whole' ? [scene.synopsis] : []),
    ...lightLines(scene, day),
  ];
  return {
    cells: [
      bold(labelOf(scene.id, ground.index)),
      aboutWhen(slot),
      { stack: words },
      whoWords(scene),
      formatEighths(scene.eighths),
      formatDuration(scene.screenTime.seconds),
      String(slot.setups.value),
    ],
  };
}

/** The beginning of a scene on the clock, to five minutes. */
export function aboutWhen(slot: Slot): string {
  if (slot.start === null) return '';
  return formatClockTime((Math.round((slot.start % 24) * 12) * 5) % 1440);
}

/** When the light of the heading is there between call and wrap; by day nothing is said. */
function lightLines(scene: BreakdownScene, day: PlanDay): string[] {
  const window = day.sun.flatMap((sun) => sun.windows).find((one) => one.slot.scene === scene.id);
  if (!window || window.light === 'day') return [];
  const inside = window.windows
    .map(({ from, to }) => ({ from: Math.max(from, day.call.value), to: Math.min(to, day.wrap.value) }))
    .filter(({ from, to }) => to > from);
  const shown = inside.length > 0 ? inside : window.windows;
  const times = shown.map(({ from, to }) => `${formatClockTime(from % 1440)} to ${formatClockTime(to % 1440)}`);
  return times.length > 0 ? [`${window.light} light ${times.join(' or ')}`] : [];
}

function whoWords(scene: BreakdownScene): string {
  const seen = scene.cast.filter((one) => one.presence === 'seen').map((one) => one.name);
  const called = scene.cast.filter((one) => one.presence === 'heard' && one.voice === 'off-screen');
  const extras = scene.extras.map((one) => (one.count === null ? one.name : `${one.count} ${one.name}`));
  return [...seen, ...called.map((one) => `${one.name} (voice)`), ...extras].join(', ');
}

/** When each person is called, with what must be known of them; the crew in one line. */
export function callTable(day: PlanDay, scenes: readonly BreakdownScene[], ground: CallSheetGround): Block {
  const { breakdown } = ground.input;
  const { book } = ground.production;
  const cast = breakdown.cast.flatMap((person) => callRow(person, day, scenes, ground));
  const crew = book.helpers.map((helper) => `${helper.name} (${helper.does.join(', ')})`);
  const crewRow: TableRow[] = crew.length > 0 ? [{ cells: [formatClockTime(day.call.value), crew.join(', ')] }] : [];
  const columns = [
    { head: 'Call', width: 40 },
    { head: 'Name', share: 1.6 },
    { head: 'Scenes', share: 0.8 },
    { head: 'Comes by, food', share: 1.4 },
  ];
  return { kind: 'table', columns, rows: [...cast, ...otherCallRows(day, scenes, ground), ...crewRow], tight: true };
}

function callRow(
  person: PersonEntry,
  day: PlanDay,
  scenes: readonly BreakdownScene[],
  ground: CallSheetGround,
): TableRow[] {
  const { breakdown } = ground.input;
  const { book } = ground.production;
  const on = scenes.flatMap((scene, place) => {
    const here = scene.cast.some(
      (one) => one.id === person.id && (one.presence === 'seen' || one.voice === 'off-screen'),
    );
    return here ? [{ scene, slot: day.scenes[place] as Slot }] : [];
  });
  const first = on[0];
  if (!first) return [];
  const called = calledAt(first.slot, day);
  const entry = peopleOf(breakdown, book).get(person.id) ?? null;
  const name: Inline = [
    bold(person.name),
    entry?.playedBy ? `, ${entry.playedBy}` : '',
    isMinor(person.id, breakdown, book) ? bold('  MINOR') : '',
  ];
  const labels = on.map(({ scene }) => labelOf(scene.id, ground.index));
  const remarks = [entry?.transport, entry?.food].filter((one) => one).join(' · ');
  return [{ cells: [formatClockTime(called % 1440), name, labels.join(', '), remarks] }];
}
