import { formatClockTime, formatMinutes } from '../../base/clock-time.js';
import { formatDuration } from '../../base/duration.js';
import { formatEighths } from '../../base/eighths.js';
import type { BreakdownScene } from '../../breakdown/types.js';
import type { PlanDay } from '../../plan/day-types.js';
import { helperFor } from '../../plan/tasks.js';
import { type Block, blank, bold, danger, type Inline, type TableRow } from '../layout/kit.js';
import type { Production, RenderInput } from '../types.js';
import { labelOf, type SceneIndex } from '../words/scene-list-words.js';
import { capitalize } from '../words/story-words.js';
import { clockWords, helperWords, isMinor, locationOf, locationWords, peopleOf } from './plan-words.js';

/** What a call sheet is written from. */
export interface CallSheetGround {
  readonly input: RenderInput;
  readonly production: Production;
  readonly index: SceneIndex;
}

/** One shooting day on one side: when, where, who, what, and what is dangerous. */
export function callSheetBlocks(day: PlanDay, ground: CallSheetGround): Block[] {
  const scenes = day.scenes.map(
    (slot) => ground.index.scenes[ground.index.positions.get(slot.scene) as number] as BreakdownScene,
  );
  return [
    { kind: 'heading', level: 1, text: headWords(day), bookmark: `Day ${day.number}` },
    { kind: 'paragraph', text: timeWords(day), after: 4 },
    dangerFrame(day, scenes, ground),
    ...placeBlocks(day, ground),
    sceneTable(day, scenes, ground),
    { kind: 'space', height: 4 },
    callTable(day, scenes, ground),
    ...noteBlocks(day, scenes, ground),
  ];
}

function headWords(day: PlanDay): string {
  return `Day ${day.number} of ${day.of}: ${dateLine(day)}`;
}

function dateLine(day: PlanDay): string {
  return new Intl.DateTimeFormat('en-GB', {
    weekday: 'long',
    day: 'numeric',
    month: 'long',
    year: 'numeric',
    timeZone: 'UTC',
  }).format(new Date(`${day.date}T00:00:00Z`));
}

function timeWords(day: PlanDay): Inline {
  const meal = day.meal === null ? [' · Meal ', blank(40)] : [` · Meal ${formatClockTime(day.meal)}`];
  return [bold(`Call ${clockWords(day.call)} · Wrap ${clockWords(day.wrap)}`), ...meal, ' · Weather ', blank(110)];
}

function dangerFrame(day: PlanDay, scenes: readonly BreakdownScene[], ground: CallSheetGround): Block {
  const rows = scenes.flatMap((scene) => {
    const titles = [...new Set(scene.hazards.map((hazard) => hazard.title))];
    const charge = ground.production.book.scenes.find((entry) => entry.id === scene.id)?.inCharge ?? null;
    const who: Inline = charge === null ? blank(90) : helperWords(charge, ground.production.book);
    return titles.length === 0
      ? []
      : [{ cells: [labelOf(scene.id, ground.index), titles.join(' · '), who] } satisfies TableRow];
  });
  const questions = day.minors.map((minor): Inline => [bold('? '), minor.question]);
  const body: Block[] =
    rows.length === 0
      ? [{ kind: 'paragraph', text: ['Nothing raised. Checked by ', blank(120)], after: 0 }]
      : [
          {
            kind: 'table',
            columns: [
              { head: 'Scene', fit: true },
              { head: 'Danger', share: 1 },
              { head: 'In charge', width: 96 },
            ],
            rows,
            headed: true,
            tight: true,
          },
        ];
  const asked: Block[] = questions.length > 0 ? [{ kind: 'entries', entries: questions }] : [];
  return {
    kind: 'frame',
    blocks: [
      { kind: 'paragraph', text: [danger, bold(' Dangers today')], keepWithNext: true, after: 1 },
      ...body,
      ...asked,
    ],
  };
}

function placeBlocks(day: PlanDay, ground: CallSheetGround): Block[] {
  const { book } = ground.production;
  if (day.locations.length === 0)
    return [{ kind: 'section', label: 'Where', blocks: [{ kind: 'paragraph', text: blank(300) }] }];
  return day.locations.map((id): Block => {
    const location = locationOf(id, book);
    const facts = (labels: readonly string[]) =>
      (location?.facts ?? [])
        .filter((fact) => labels.includes(fact.label))
        .map((fact) => `${capitalize(fact.label)}: ${fact.text}`)
        .join(' · ');
    const sun = day.sun.find((one) => one.location === id);
    const entries: Inline[] = [
      [bold(locationWords(id, book)), location?.address ? `, ${location.address}` : ''],
      facts(['contact', 'parking', 'toilets', 'warm room', 'power']),
      facts(['permission', 'noise', 'phone signal']),
      location?.facts.some((fact) => fact.label === 'hospital')
        ? [bold('Hospital: '), location.facts.find((fact) => fact.label === 'hospital')?.text ?? '']
        : [bold('Hospital: '), blank(180)],
      sun?.times ? `Sun: ${sun.words}` : (sun?.words ?? ''),
    ];
    return {
      kind: 'section',
      label: 'Where',
      labelWidth: 44,
      blocks: [{ kind: 'entries', entries: entries.filter((entry) => entry !== '') }],
    };
  });
}

function sceneTable(day: PlanDay, scenes: readonly BreakdownScene[], ground: CallSheetGround): Block {
  const rows = scenes.map((scene, place): TableRow => {
    const slot = day.scenes[place];
    const start =
      slot?.start === null || slot?.start === undefined ? '' : formatClockTime(Math.round((slot.start % 24) * 12) * 5);
    const window = day.sun.flatMap((sun) => sun.windows).find((one) => one.slot.scene === scene.id);
    const light =
      window && window.light !== 'day' && window.windows.length > 0
        ? `light ${window.windows.map(({ from, to }) => `${formatClockTime(from)} to ${formatClockTime(to)}`).join(' or ')}`
        : '';
    const who = scene.cast.filter((one) => one.presence === 'seen').map((one) => one.name);
    const heard = scene.cast
      .filter((one) => one.presence === 'heard' && one.voice !== 'voice-over')
      .map((one) => `${one.name} (voice)`);
    const extras = scene.extras.map((one) => `${one.count === null ? '' : `${one.count} `}${one.name}`);
    const words: Inline[] = [
      [bold(`${scene.setting}. ${scene.place}${scene.time ? `, ${scene.time}` : ''}`), ` · ${scene.storyDay.label}`],
      scene.synopsis,
      light,
    ].filter((line) => line !== '');
    return {
      cells: [
        bold(labelOf(scene.id, ground.index)),
        start,
        { stack: words },
        [...who, ...heard, ...extras].join(', '),
        formatEighths(scene.eighths),
        formatDuration(scene.screenTime.seconds),
        String(slot?.setups.value ?? ''),
      ],
    };
  });
  if (rows.length === 0) return { kind: 'paragraph', text: 'No scene stands in this day yet.' };
  const total: TableRow = {
    cells: [
      '',
      '',
      `Together: ${formatMinutes(day.shootingMinutes)} of work reckoned, with moves and a meal`,
      '',
      bold(formatEighths(day.eighths)),
      bold(formatDuration(day.seconds)),
      bold(String(day.setups)),
    ],
  };
  const columns = [
    { head: 'Scene', fit: true },
    { head: 'About', width: 34 },
    { head: 'What', share: 2.3 },
    { head: 'Who', share: 1.1 },
    { head: 'Pages', width: 36 },
    { head: 'Time', width: 32 },
    { head: 'Setups', width: 38 },
  ];
  return { kind: 'table', columns, rows: [...rows, total], tight: true };
}

/** When each person is called: half an hour before the first scene for dressing, an hour with blood or wig to be set by hand. */
function callTable(day: PlanDay, scenes: readonly BreakdownScene[], ground: CallSheetGround): Block {
  const { breakdown } = ground.input;
  const { book } = ground.production;
  const people = peopleOf(breakdown, book);
  const cast = breakdown.cast.flatMap((person): TableRow[] => {
    const first = scenes.findIndex((scene) =>
      scene.cast.some((one) => one.id === person.id && (one.presence === 'seen' || one.voice === 'off-screen')),
    );
    if (first < 0) return [];
    const start = day.scenes[first]?.start ?? null;
    const ready = start === null ? null : (start % 24) * 60;
    const called = ready === null ? '' : formatClockTime(Math.max(day.call.value, Math.floor((ready - 45) / 15) * 15));
    const entry = people.get(person.id) ?? null;
    const name: Inline = [
      bold(person.name),
      entry?.playedBy ? `, ${entry.playedBy}` : '',
      isMinor(person.id, breakdown, book) ? bold('  MINOR') : '',
    ];
    const on = scenes
      .filter((scene) => scene.cast.some((one) => one.id === person.id))
      .map((scene) => labelOf(scene.id, ground.index));
    return [{ cells: [called, name, on.join(', '), entry?.transport ?? '', entry?.food ?? ''] }];
  });
  const crew = book.helpers.map(
    (helper): TableRow => ({ cells: [formatClockTime(day.call.value), helper.name, helper.does.join(', ')] }),
  );
  const columns = [
    { head: 'Call', width: 40 },
    { head: 'Name', share: 1.6 },
    { head: 'Scenes or work', share: 1 },
    { head: 'Comes by', share: 0.8 },
    { head: 'Food', share: 0.8 },
  ];
  return { kind: 'table', columns, rows: [...cast, ...crew], tight: true };
}

function noteBlocks(day: PlanDay, scenes: readonly BreakdownScene[], ground: CallSheetGround): Block[] {
  const { plan, book } = ground.production;
  const ids = new Set(scenes.map((scene) => scene.id));
  const changing = plan.needs.flatMap((need) =>
    need.uses
      .filter((use) => ids.has(use.scene) && use.onCamera !== null && use.onCamera !== 'reset')
      .map((use) => `sc ${use.slot.label}: ${need.name} → ${use.stateOut} (${use.advised} ready)`),
  );
  const returns = plan.lines
    .filter((line) => line.back === day.date)
    .map((line) => `${line.name}: back with ${line.owner ?? line.from ?? 'its owner'} today`);
  const warnings = [...day.warnings, ...day.sun.flatMap((sun) => sun.clashes)].map(
    (words): Inline => [bold('! '), words],
  );
  const section = (label: string, entries: readonly Inline[]): Block[] =>
    entries.length === 0 ? [] : [{ kind: 'section', label, labelWidth: 60, blocks: [{ kind: 'entries', entries }] }];
  const props = helperFor('props', book);
  return [
    ...section('Once only', changing.slice(0, 5)),
    ...section('Going back', returns),
    ...section('Watch', warnings.slice(0, 4)),
    ...section('Note', [
      ...(day.note ? [day.note] : []),
      ...(props ? [`Things and clothes: ${helperWords(props, book)} has the pull list of day ${day.number}.`] : []),
    ]),
  ];
}
