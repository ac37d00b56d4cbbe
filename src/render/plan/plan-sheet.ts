import { formatClockTime, formatMinutes } from '../../base/clock-time.js';
import { formatDuration } from '../../base/duration.js';
import { formatEighths } from '../../base/eighths.js';
import type { ContinuityTrack, TrackEntry } from '../../plan/continuity-types.js';
import type { CostumeRush, PlanDay } from '../../plan/day-types.js';
import type { Plan } from '../../plan/plan-types.js';
import { type Block, bold, type Inline, joinInline, stateWords, type TableRow } from '../layout/kit.js';
import { dateWords, slotWords } from './plan-words.js';

/** The shooting days side by side: how heavy each one is, what speaks against it, what is in none. */
export function dayLoadBlocks(plan: Plan): Block[] {
  const columns = [
    { head: 'Day', share: 1.4 },
    { head: 'Call to wrap', width: 84 },
    { head: 'Scenes', share: 1 },
    { head: 'Pages', width: 40 },
    { head: 'Screen', width: 40 },
    { head: 'Setups', width: 40 },
    { head: 'Work', width: 62 },
    { head: 'Rest\nbefore', width: 54 },
  ];
  const rows = plan.days.map(
    (day): TableRow => ({
      cells: [
        bold(`Day ${day.number}, ${dateWords(day.date)}`),
        `${formatClockTime(day.call.value)} to ${formatClockTime(day.wrap.value % 1440)}`,
        day.scenes.map((slot) => slot.label).join(', '),
        formatEighths(day.eighths),
        formatDuration(day.seconds),
        String(day.setups),
        formatMinutes(day.shootingMinutes),
        day.restHours === null ? '' : formatMinutes(day.restHours * 60),
      ],
    }),
  );
  const against = plan.days.flatMap((day) =>
    [
      ...day.warnings,
      ...plan.messes.filter((one) => one.scene.day === day.number).map((one) => `${one.sure ? '' : '? '}${one.words}.`),
      ...day.sun.flatMap((sun) => sun.clashes),
      ...day.changes.flatMap((one) => (one.from === null ? [] : [rushWords(one, one.from.label)])),
      // Asked once of a date with two calls.
      ...day.minors
        .filter(({ question }) => !plan.days.slice(0, day.number - 1).some((one) => asksSame(one, day, question)))
        .map((minor) => `? ${minor.question}`),
    ].map((words): Inline => [bold(`Day ${day.number}: `), words]),
  );
  return [
    { kind: 'heading', level: 2, text: 'The shooting days', bookmark: 'Shooting days' },
    rows.length > 0
      ? { kind: 'table', columns, rows, tight: true }
      : { kind: 'paragraph', text: 'No shooting days yet.' },
    ...(against.length > 0
      ? [
          { kind: 'heading', level: 3, text: 'What speaks against them' } as const,
          { kind: 'entries', entries: against } as const,
        ]
      : []),
    ...(plan.unscheduled.length > 0
      ? [
          {
            kind: 'paragraph',
            text: [bold('In no shooting day: '), plan.unscheduled.map((slot) => `scene ${slot.label}`).join(', '), '.'],
          } as const,
        ]
      : []),
  ];
}

/** What nobody said and the plan assumed. */
export function defaultBlocks(plan: Plan): Block[] {
  if (plan.defaults.length === 0) return [];
  return [
    { kind: 'heading', level: 2, text: 'What this plan assumes, because the book does not say', bookmark: 'Assumed' },
    { kind: 'entries', entries: plan.defaults },
  ];
}

/** Continuity in the order of shooting: at each scene what must match something shot, and what sets what comes later. */
export function continuityBlocks(plan: Plan): Block[] {
  const rows = plan.slots.flatMap((slot): TableRow[] => {
    const here = plan.tracks.flatMap((track) =>
      track.inShooting.filter((entry) => entry.slot.scene === slot.scene).map((entry) => ({ track, entry })),
    );
    const match = dutyLines(here, 'match');
    const sets = dutyLines(here, 'sets');
    if (match.length === 0 && sets.length === 0) return [];
    return [
      {
        cells: [bold(slotWords(slot)), { stack: match.length > 0 ? match : ['nothing shot before'] }, { stack: sets }],
      },
    ];
  });
  if (rows.length === 0) return [];
  return [
    { kind: 'heading', level: 2, text: 'Continuity, in the order of shooting', bookmark: 'Continuity' },
    {
      kind: 'paragraph',
      text: [
        'What a scene must ',
        bold('match'),
        ' is shot already: look at the picture. What it ',
        bold('sets'),
        ' binds a scene shot later: take the picture.',
      ],
    },
    {
      kind: 'table',
      columns: [
        { head: 'Scene', width: 84 },
        { head: 'Must match', share: 1 },
        { head: 'Sets for later', share: 1 },
      ],
      rows,
      tight: true,
    },
  ];
}

interface Here {
  readonly track: ContinuityTrack;
  readonly entry: TrackEntry;
}

/** One line for each other scene: `sc 9: oilskin; storm lantern, lit`. */
function dutyLines(here: readonly Here[], kind: 'match' | 'sets'): Inline[] {
  const byScene = new Map<string, string[]>();
  for (const { track, entry } of here) {
    for (const duty of entry.duties.filter((one) => one.kind === kind)) {
      const what = duty.what === 'as it looks' ? track.name : `${track.name}, ${duty.what}`;
      byScene.set(duty.scene.label, [...(byScene.get(duty.scene.label) ?? []), what]);
    }
  }
  return [...byScene].map(([scene, what]): Inline => [bold(`sc ${scene}: `), what.join('; ')]);
}

/** Things that change or change hands, each in story order and in shooting order. */
export function trackBlocks(plan: Plan): Block[] {
  const changing = plan.tracks.filter(isChanging);
  if (changing.length === 0) return [];
  const rows = changing.map(
    (track): TableRow => ({
      cells: [bold(track.name), { stack: track.inStory.map(entryWords) }, { stack: track.inShooting.map(entryWords) }],
    }),
  );
  return [
    { kind: 'heading', level: 2, text: 'What changes, in both orders', bookmark: 'Both orders' },
    {
      kind: 'table',
      columns: [
        { head: 'What', share: 0.8 },
        { head: 'As the story goes', share: 1.6 },
        { head: 'As it is shot', share: 1.6 },
      ],
      rows,
      tight: true,
    },
  ];
}

/** A state, an absence, or a garment that goes from one body to another: what merely changes hands is no change. */
function isChanging(track: ContinuityTrack): boolean {
  const looks = new Set(track.inStory.flatMap((entry) => [entry.stateIn, entry.stateOut]));
  const wearers = new Set(
    track.inStory
      .filter((entry) => entry.worn || entry.absent)
      .map((entry) => (entry.absent ? 'nobody' : entry.by.join())),
  );
  return looks.size > 1 || wearers.size > 1;
}

function entryWords(entry: TrackEntry): Inline {
  const who = entry.absent
    ? 'NOT worn'
    : entry.by.length > 0
      ? `${entry.worn ? 'on' : 'with'} ${entry.by.join(', ')}`
      : 'by itself';
  const state = stateWords(entry);
  const words = [state, who, entry.action === null ? '' : bold(entry.action)];
  return joinInline([`sc ${entry.slot.label}, ${entry.storyDay}`, ...words]);
}

function rushWords({ person, to, minutesNeeded, minutesThere }: CostumeRush, from: string): string {
  return `${person} changes between sc ${from} and sc ${to.label}: ${minutesNeeded} min needed, ${minutesThere} there.`;
}

function asksSame(earlier: PlanDay, day: PlanDay, question: string): boolean {
  return earlier.date === day.date && earlier.minors.some((one) => one.question === question);
}
