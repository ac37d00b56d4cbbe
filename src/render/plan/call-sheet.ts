import { formatClockTime } from '../../base/clock-time.js';
import type { Book } from '../../book/types.js';
import type { BreakdownScene } from '../../breakdown/types.js';
import type { PlanDay } from '../../plan/day-types.js';
import { helperFor } from '../../plan/helper-for.js';
import type { PlanLine } from '../../plan/line-types.js';
import type { Use } from '../../plan/need-types.js';
import { countThere, shortWords } from '../../plan/short-copies.js';
import { listEating } from '../../plan/used-up.js';
import { type Block, blank, bold, danger, type Inline, type TableRow } from '../layout/kit.js';
import { labelOf } from '../words/scene-list-words.js';
import { capitalize } from '../words/story-words.js';
import { callTable, sceneTable } from './call-sheet-tables.js';
import type { CallSheetGround, Folding } from './call-sheet-types.js';
import { clockWords, helperWords, locationOf, locationWords } from './plan-words.js';
import { allergyWithoutName } from './thing-notes.js';

/** One shooting day on one side: when, where, who, what, and what is dangerous. Dangers, hospital and calls are never folded. */
export function callSheetBlocks(day: PlanDay, ground: CallSheetGround, folding: Folding = 'whole'): Block[] {
  const scenes = day.scenes.map(
    (slot) => ground.index.scenes[ground.index.positions.get(slot.scene) as number] as BreakdownScene,
  );
  return [
    { kind: 'heading', level: 1, text: headWords(day), bookmark: `Day ${day.number}` },
    { kind: 'paragraph', text: timeWords(day), after: 4 },
    dangerFrame(day, scenes, ground),
    { kind: 'space', height: 4 },
    ...placeBlocks(day, ground, folding),
    sceneTable(day, scenes, ground, folding),
    { kind: 'space', height: 4 },
    callTable(day, scenes, ground),
    ...noteBlocks(day, scenes, ground, folding),
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
  const { plan, book } = ground.production;
  const knows = helperFor('food', book) ?? helperFor('production', book);
  const questions = day.minors.map((minor): Inline => [bold('? '), minor.question]);
  const allergies = watchedToday(scenes, ground).map(
    (one): Inline => [
      danger,
      ' ',
      ...[allergyWithoutName(one, plan, knows === null ? null : helperWords(knows, book))].flat(),
    ],
  );
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
  const asked: Block[] =
    questions.length + allergies.length > 0 ? [{ kind: 'entries', entries: [...allergies, ...questions] }] : [];
  return {
    kind: 'frame',
    blocks: [
      { kind: 'paragraph', text: [danger, bold(' Dangers today')], keepWithNext: true, after: 1 },
      ...body,
      ...asked,
    ],
  };
}

function watchedToday(scenes: readonly BreakdownScene[], { production }: CallSheetGround) {
  const ids = new Set(scenes.map((scene) => scene.id));
  return production.plan.allergies
    .map((one) => ({ ...one, scenes: one.scenes.filter((id) => ids.has(id)) }))
    .filter((one) => one.scenes.length > 0);
}

function placeBlocks(day: PlanDay, ground: CallSheetGround, folding: Folding): Block[] {
  const { book } = ground.production;
  if (day.locations.length === 0)
    return [{ kind: 'section', label: 'Where', blocks: [{ kind: 'paragraph', text: blank(300) }] }];
  return day.locations.map((id, place): Block => {
    const location = locationOf(id, book);
    const facts = (labels: readonly string[]) =>
      (location?.facts ?? [])
        .filter((fact) => labels.includes(fact.label))
        .map((fact) => `${capitalize(fact.label)}: ${fact.text}`)
        .join(' · ');
    const sun = day.sun.find((one) => one.location === id);
    const entries: Inline[] = [
      [bold(locationWords(id, book)), location?.address ? `, ${location.address}` : ''],
      ...(folding === 'places in short'
        ? [facts(['contact'])]
        : [
            facts(['contact', 'parking', 'toilets', 'warm room', 'power']),
            facts(['permission', 'noise', 'phone signal']),
          ]),
      location?.facts.some((fact) => fact.label === 'hospital')
        ? [bold('Hospital: '), location.facts.find((fact) => fact.label === 'hospital')?.text ?? '']
        : [bold('Hospital: '), blank(180)],
      place > 0 && sun?.words === day.sun[0]?.words ? '' : `Sun: ${sun?.words ?? ''}`,
    ];
    return {
      kind: 'section',
      label: 'Where',
      labelWidth: 44,
      blocks: [{ kind: 'entries', entries: entries.filter((entry) => entry !== '') }],
    };
  });
}

function noteBlocks(
  day: PlanDay,
  scenes: readonly BreakdownScene[],
  ground: CallSheetGround,
  folding: Folding,
): Block[] {
  const { plan, book } = ground.production;
  const ids = new Set(scenes.map((scene) => scene.id));
  const changing = plan.lines.flatMap((line) =>
    line.need.uses
      .filter((use) => !line.need.usedUp && ids.has(use.scene) && use.onCamera !== null && use.onCamera !== 'reset')
      .map((use) => `sc ${use.slot.label}: ${line.name} → ${use.stateOut} (${readyWords(line, use)})`),
  );
  const returns = plan.lines.filter((line) => line.back === day.date).map((line) => returnWords(line, day));
  const messes = plan.messes.filter((one) => ids.has(one.scene.scene));
  const warnings = [
    ...messes.map((one): Inline => [bold(one.sure ? '! ' : '? '), `${one.words}.`]),
    ...dressingWords(day),
    ...[...day.warnings, ...day.sun.flatMap((sun) => sun.clashes)].map((words): Inline => [bold('! '), words]),
  ];
  const noted = plan.lines
    .filter(
      (line) =>
        line.note !== null && line.status !== 'done without' && line.need.uses.some((use) => ids.has(use.scene)),
    )
    .map((line): Inline => [bold(line.name), `: ${line.note}`]);
  const section = (label: string, entries: readonly Inline[]): Block[] =>
    entries.length === 0 ? [] : [{ kind: 'section', label, labelWidth: 60, blocks: [{ kind: 'entries', entries }] }];
  return [
    ...section('Gets spoilt', spoiltEntries(changing, usedUpWords(plan.lines, ids))),
    ...section('Going back', returns),
    ...section('Watch', warnings.slice(0, 5)),
    ...section('Things', folding === 'places in short' || noted.length === 0 ? [] : [joinNotes(noted)]),
    ...section('Note', [...(day.note ? [day.note] : []), ...pullListWords(day, book)]),
  ];
}

/** What is used up in each take, in one line, and the first changes that leave nothing as it was; of more the pull lists tell. */
function spoiltEntries(changing: readonly string[], usedUp: readonly string[]): string[] {
  const more = changing.length - mostSpoilt;
  return [
    ...changing.slice(0, mostSpoilt),
    ...(more > 0 ? [`and ${more} more: see the pull lists`] : []),
    ...(usedUp.length > 0 ? [`used up in each take: ${usedUp.join('; ')}`] : []),
  ];
}

const mostSpoilt = 5;

function usedUpWords(lines: readonly PlanLine[], scenes: ReadonlySet<string>): string[] {
  return lines
    .filter(
      ({ need, status, department }) =>
        need.usedUp && department !== 'kit' && status !== 'done without' && status !== 'replaced',
    )
    .flatMap(({ need, element, name }) => {
      const here = listEating(need.uses, element).filter((use) => scenes.has(use.scene));
      return here.length === 0 ? [] : [`${name} (sc ${here.map((use) => use.slot.label).join(', ')})`];
    });
}

/** How many copies the takes of a change find, never more than there are. */
function readyWords(line: PlanLine, { advised }: Use): string {
  const there = countThere(line.need);
  return shortWords(line) ?? (there === null ? `needs ${advised}` : `${Math.min(advised, there)} ready`);
}

/** Who has the pull lists of the day. */
function pullListWords({ number }: PlanDay, book: Book): string[] {
  const [props, costume] = [helperFor('props', book), helperFor('costume', book)];
  if (props !== null && props === costume)
    return [`Things and clothes: ${helperWords(props, book)} has the pull lists of day ${number}.`];
  const lists = [
    ...(props ? [`things, ${helperWords(props, book)}`] : []),
    ...(costume ? [`clothes, ${helperWords(costume, book)}`] : []),
  ];
  return lists.length === 0 ? [] : [`Pull lists of day ${number}: ${lists.join('; ')}.`];
}

/** Whether the day of return leaves time for it: a wrap past midnight does not. */
function returnWords(line: PlanLine, day: PlanDay): string {
  const who = line.owner ?? line.from ?? 'its owner';
  const isUsed = line.need.uses.some((use) => use.slot.day === day.number);
  if (day.wrap.value < 1440) return `${line.name}: back with ${who} today${isUsed ? ', after its last scene' : ''}`;
  const when = isUsed ? 'agree when' : 'before the call, or agree when';
  return `${line.name}: due back with ${who} today, and wrap is after midnight: ${when}`;
}

/** Whoever must be dressed sooner after the call than dressing takes, in one line. */
function dressingWords(day: PlanDay): Inline[] {
  const soon = day.changes.filter((one) => one.from === null);
  const first = soon[0];
  if (!first) return [];
  const longest = Math.max(...soon.map((one) => one.minutesNeeded));
  const people = soon.map((one) => one.person).join(', ');
  return [
    [
      bold('! '),
      `sc ${first.to.label} begins ${first.minutesThere} min after the call; dressing takes ${longest} min: ${people} must come earlier, or it begins later.`,
    ],
  ];
}

/** Notes on things, one after the other in one paragraph: a line each would not fit a side. */
function joinNotes(notes: readonly Inline[]): Inline {
  return notes.flatMap((note, index) => [...(index > 0 ? [' · '] : []), ...[note].flat()]);
}
