import type { Note } from '../script/types.js';
import { dreamWords } from '../trade/story-day-words.js';
import { type DayCues, goesBackward, type Hours } from './day-cues.js';

/** What a rule decides. `main` gives a day of the main line, `flashback` a number of the series of its own. */
export interface Verdict {
  readonly series: 'D' | 'F';
  readonly number: number;
  readonly reason: string;
  readonly sure: boolean;
  /** The scene whose day it shares, when it continues one. */
  readonly continues?: number;
  /** The day it is if the writer says no to a verdict that is not sure; the next one when none is given. */
  readonly otherwise?: number;
}

/** A scene of the main line or of a flashback that later scenes are compared with. */
export interface DayMark {
  readonly index: number;
  readonly label: string;
  readonly number: number;
  readonly hours: Hours | null;
  readonly place: string;
}

/** What the rules know when they come to a scene. */
export interface DayContext {
  readonly index: number;
  readonly cues: DayCues;
  readonly note: Extract<Note, { readonly kind: 'day' }> | null;
  readonly place: string;
  /** The last scene of the main line, or null before the first. */
  readonly main: DayMark | null;
  /** The flashback that the scene right before belongs to, or null. */
  readonly flash: (DayMark & { readonly year: number | null; readonly words: string | null }) | null;
  /** Flashbacks counted so far. */
  readonly flashes: number;
  /** True inside a flashback that a line opened and a later line closes. */
  readonly inOpened: boolean;
  /** The year the main line plays in, when a heading told. */
  readonly mainYear: number | null;
  /** The day of the week of the main line's last day, when something told it. */
  readonly mainWeekday: string | null;
  /** The last scene of the main line that shares people or place, and how many of them. */
  readonly shared: { readonly mark: DayMark; readonly with: string } | null;
  /** People and places shared with the flashback scene right before, and with the last scene of the main line. */
  readonly ties: { readonly flash: number; readonly main: number };
  /** The scene that a number in INTERCUT WITH names. */
  readonly numbered: DayMark | null;
}

type Rule = (context: DayContext) => Verdict | null;

/** The rules in order: the first that fires wins. */
export const storyDayRules: readonly Rule[] = [
  byNote,
  byExplicitWords,
  byFlashback,
  byContinuity,
  byLater,
  byFirstScene,
  byLightBackward,
  byMontage,
  byPlace,
];

const main = (number: number, reason: string, sure = true): Verdict => ({ series: 'D', number, reason, sure });

function today({ main: last }: DayContext): number {
  return last?.number ?? 1;
}

function tomorrow({ main: last }: DayContext): number {
  return last ? last.number + 1 : 1;
}

function byNote(context: DayContext): Verdict | null {
  const { note, flash, flashes } = context;
  if (!note) return null;
  if (note.flashback) {
    const number = note.day ?? flash?.number ?? flashes + 1;
    return { series: 'F', number, reason: `the note says "${note.text}"`, sure: true };
  }
  return main(note.day ?? today(context), `the note says "${note.text}"`);
}

/**
 * Days are counted as they are seen: after THREE DAYS LATER comes the next number, and the reason keeps the words, because a
 * costume or a wound needs to know how long it was, and the sheets only need to know that it is another day.
 */
function byExplicitWords(context: DayContext): Verdict | null {
  const { cues, main: last } = context;
  if (cues.flashback || cues.opens || stillInFlashback(context)) return null;
  if (cues.dayNumber) return byDayNumber(context, cues.dayNumber);
  if (cues.newDay && last) return main(tomorrow(context), `"${cues.newDay}" after ${last.label}`);
  const jump = yearJump(context) ?? byWeekday(context);
  if (jump) return jump;
  if (cues.sameDay && last)
    return main(today(context), `"${cues.sameDay}" after ${last.label}`, !/hours/i.test(cues.sameDay));
  return null;
}

/** A day that the story has left behind is asked about: it may be a flashback, or a slip. */
function byDayNumber({ main: last }: DayContext, { number, words }: NonNullable<DayCues['dayNumber']>): Verdict {
  if (!last || number >= last.number) return main(number, `"${words}" stands there`);
  return main(number, `"${words}" stands there, though ${last.label} plays on day ${last.number}`, false);
}

/** Another day of the week is another day; the first that is named may still be the day before. */
function byWeekday(context: DayContext): Verdict | null {
  const { cues, main: last, mainWeekday } = context;
  if (cues.weekday === null || !last) return null;
  if (mainWeekday === null) {
    const reason = `"${cues.weekday}" stands there, and no day of the week before`;
    return { ...main(tomorrow(context), reason, false), otherwise: last.number };
  }
  const after = `"${cues.weekday}" after ${last.label}`;
  if (cues.weekday !== mainWeekday) return main(tomorrow(context), `${after} on ${mainWeekday}`);
  const goesBack = last.hours !== null && cues.hours !== null && goesBackward(last.hours, cues.hours);
  return goesBack ? null : main(today(context), `${after} on the same day of the week`);
}

/** A later year is a new day; an earlier one is told by the rule of flashbacks. */
function yearJump(context: DayContext): Verdict | null {
  const { cues, main: last, mainYear } = context;
  if (!last || mainYear === null) return null;
  if (cues.year !== null && cues.year > mainYear) {
    return main(tomorrow(context), `${cues.year} in the heading, ${mainYear} before`);
  }
  return cues.present && cues.year === null && !context.flash
    ? main(tomorrow(context), `"${cues.present}" after ${mainYear}`)
    : null;
}

function stillInFlashback({ inOpened, cues }: DayContext): boolean {
  return inOpened && !cues.present;
}

function byFlashback(context: DayContext): Verdict | null {
  const { cues, flash, flashes, main: last, mainYear } = context;
  if (cues.present && !cues.flashback) return null;
  const early = cues.year !== null && last !== null && (mainYear === null || cues.year < mainYear);
  const words = cues.flashback ?? cues.opens ?? (early ? String(cues.year) : null);
  if (!words && !context.inOpened) return null;
  const reason = words ? `"${words}": a series of its own` : 'the flashback opened before goes on';
  const sure = Boolean(cues.flashback ?? cues.opens) || context.inOpened || mainYear !== null;
  if (flash && sameFlash(context))
    return { series: 'F', number: flash.number, reason: `${reason}, as in ${flash.label}`, sure };
  return { series: 'F', number: flashes + 1, reason, sure };
}

function sameFlash({ cues, flash }: DayContext): boolean {
  if (!flash || cues.newDay) return false;
  if (cues.flashback && flash.words && dreamWords.test(cues.flashback) !== dreamWords.test(flash.words)) return false;
  if (cues.year !== null && flash.year !== null && cues.year !== flash.year) return false;
  return !(flash.hours && cues.hours && goesBackward(flash.hours, cues.hours));
}

function byContinuity(context: DayContext): Verdict | null {
  const { cues, main: last, flash, ties, shared, numbered } = context;
  const word = cues.continuous ?? cues.intercut?.words ?? null;
  if (!word) return null;
  if (flash && !cues.present && ties.flash > ties.main) {
    const reason = `"${word}" after the flashback in ${flash.label}, with which it shares people or place`;
    return { series: 'F', number: flash.number, reason, sure: ties.main === 0, continues: flash.index };
  }
  if (numbered) return { ...main(numbered.number, `"${word}" names ${numbered.label}`), continues: numbered.index };
  if (shared) {
    const reason = `"${word}": same day as ${shared.mark.label}, with which it shares ${shared.with}`;
    return { ...main(shared.mark.number, reason, !flash || ties.flash === 0), continues: shared.mark.index };
  }
  if (!last) return main(1, `"${word}", but nothing comes before`, false);
  const reason = `"${word}": same day as ${last.label}, though they share neither people nor place`;
  return { ...main(last.number, reason, /same|meanwhile|intercut/i.test(word)), continues: last.index };
}

function byLater(context: DayContext): Verdict | null {
  const { cues, main: last, flash, ties } = context;
  if (!cues.later) return null;
  if (flash && !cues.present && ties.flash > ties.main) {
    const reason = `"${cues.later}" after the flashback in ${flash.label}, with which it shares people or place`;
    return { series: 'F', number: flash.number, reason, sure: ties.main === 0 };
  }
  return last
    ? main(last.number, `"${cues.later}": same day as ${last.label}`)
    : main(1, `"${cues.later}", but nothing comes before`, false);
}

function byFirstScene({ main: last }: DayContext): Verdict | null {
  return last ? null : main(1, 'the first scene of the story');
}

function byLightBackward(context: DayContext): Verdict | null {
  const { main: last, cues } = context;
  if (!last?.hours || !cues.hours || !goesBackward(last.hours, cues.hours)) return null;
  return main(tomorrow(context), `the light goes back after ${last.label}: a night lies between`);
}

function byMontage(context: DayContext): Verdict | null {
  const { cues, main: last } = context;
  return cues.montage
    ? main(today(context), `a montage after ${last?.label}: each image may have its own day`, cues.images)
    : null;
}

function byPlace(context: DayContext): Verdict | null {
  const { main: last, cues, place, flash } = context;
  if (!last) return null;
  const after = flash ? `${last.label} before the flashback` : last.label;
  if (!cues.hours)
    return main(last.number, `the heading tells no time: read as the day of ${after}`, place === last.place);
  if (last.place === place) return main(last.number, `the same place as ${after}, and the light does not go back`);
  if (!last.hours) return main(last.number, `${after} tells no time: read as the same day`, false);
  if (cues.hours.from > last.hours.from) return main(last.number, `the light goes on after ${after}`);
  return main(last.number, `the light is as in ${after}, at another place`, false);
}
