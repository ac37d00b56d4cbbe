import { lightOfNotes } from '../script/carried-lights.js';
import { lightIn } from '../script/time-of-day.js';
import type { Block, Scene } from '../script/types.js';
import { readNumber } from '../trade/number-words.js';
import {
  continuousWords,
  dayTag,
  flashbackOpening,
  flashbackSpan,
  flashbackWords,
  hoursOfLight,
  intercutWord,
  laterWords,
  montageWord,
  newDayWords,
  presentWords,
  sameDayWords,
  timesOfDay,
  titleLine,
  unbrokenWords,
  weekdayWord,
  wholeTimePart,
  yearSign,
} from '../trade/story-day-words.js';
import { imagesOf } from './montage.js';

/** A stretch of the day in hours after midnight; past 24 is the night after. */
export interface Hours {
  readonly from: number;
  readonly to: number;
}

/** What a heading and the lines around it say about when a scene plays. Each word is as written; null when nothing says so. */
export interface DayCues {
  readonly newDay: string | null;
  readonly dayNumber: { readonly number: number; readonly words: string } | null;
  readonly sameDay: string | null;
  /** The day of the week that the heading or a line before it names. */
  readonly weekday: string | null;
  readonly flashback: string | null;
  /** A line before the heading that opens a flashback for the scenes after it. */
  readonly opens: string | null;
  readonly present: string | null;
  readonly continuous: string | null;
  readonly unbroken: boolean;
  readonly intercut: { readonly words: string; readonly number: string | null } | null;
  readonly later: string | null;
  readonly montage: string | null;
  /** True for a montage whose images are told one by one: a question of its own asks about their days. */
  readonly images: boolean;
  readonly year: number | null;
  readonly hours: Hours | null;
}

/** Reads the cues of a scene from its heading, from titles at its start and from the lines that stand before it. */
export function readDayCues(scene: Scene, previous: Scene | null): DayCues {
  const { heading } = scene;
  const inHeading = headingWords(scene);
  const around = [...linesBefore(scene, previous), ...titlesOf(scene)];
  const all = [...inHeading, ...around];
  const year = inHeading.map((part) => yearSign.exec(part)).find((match) => match !== null);
  const intercut = inHeading.map((part) => intercutWord.exec(part)).find((match) => match !== null);
  return {
    newDay: firstOf(all, newDayWords),
    dayNumber: readDayTag(all),
    sameDay: firstOf(all, sameDayWords),
    weekday: readWeekday(all),
    flashback: firstOf([...inHeading, ...titlesOf(scene)].filter(isOpen), flashbackWords),
    opens: around.find((line) => flashbackOpening.test(line)) ?? null,
    present: firstOf(all, presentWords),
    continuous: firstOf(inHeading, [continuousWords]),
    unbroken: firstOf(inHeading, [unbrokenWords]) !== null,
    intercut: intercut ? { words: intercut[0], number: intercut[1] ?? null } : null,
    later: firstOf(inHeading, [laterWords]),
    montage: firstOf([...inHeading, ...heading.placeParts], [montageWord]),
    images: imagesOf(scene).length > 0,
    year: year ? Number(year[1]) : null,
    hours: readHours(scene),
  };
}

/** Everything in a heading that may tell a time: its time words one by one, qualifiers, and areas of the place that are no places. */
function headingWords({ heading }: Scene): string[] {
  const times = heading.time?.split(/ [-\u2013\u2014] /) ?? [];
  const inPlace = heading.placeParts.flatMap((part, index) => {
    const aside = /\(([^)]*)\)$/.exec(part)?.[1];
    return [...(aside && isTimePart(aside) ? [aside] : []), ...(index > 0 && isTimePart(part) ? [part] : [])];
  });
  const last = heading.placeParts.length > 1 ? heading.placeParts.at(-1) : undefined;
  // `TWENTY YEARS EARLIER` may have been taken for an area and a time word.
  const split = last && times[0] && isTimePart(`${last} ${times[0]}`) ? [`${last} ${times[0]}`] : [];
  return [...split, ...times, ...heading.qualifiers, ...inPlace];
}

/** True for a part of a heading that tells when, not where: FLASHBACK, 1931, TWENTY YEARS EARLIER. */
export function isTimePart(part: string): boolean {
  return wholeTimePart.test(part.trim()) || flashbackSpan.test(part.trim());
}

/** `END OF FLASHBACK` speaks of one and opens none. */
function isOpen(text: string): boolean {
  return firstOf([text], presentWords) === null;
}

function firstOf(texts: readonly string[], patterns: readonly RegExp[]): string | null {
  return texts.find((text) => patterns.some((pattern) => pattern.test(text))) ?? null;
}

function readDayTag(texts: readonly string[]): DayCues['dayNumber'] {
  for (const words of texts) {
    const number = readNumber(dayTag.exec(words.trim())?.[1] ?? '');
    if (number !== null && number > 0) return { number, words };
  }
  return null;
}

function readWeekday(texts: readonly string[]): string | null {
  for (const text of texts) {
    const name = weekdayWord.exec(text)?.[0];
    if (name) return name.toUpperCase();
  }
  return null;
}

/** The hours in which a scene plays: by a note, else by its time words, else by its light. */
function readHours({ heading, notes }: Scene): Hours | null {
  const noted = lightOfNotes(notes);
  if (noted !== null && noted !== lightIn(heading.time ?? '')) return hoursOfLight[noted];
  const written = heading.lightInherited ? null : heading.time;
  const row = written === null ? undefined : timesOfDay.find(({ word }) => word.test(written));
  if (row) return { from: row.from, to: row.to };
  return heading.light ? hoursOfLight[heading.light] : null;
}

/** True when the second can only be earlier in the day than the first. */
export function goesBackward(first: Hours, second: Hours): boolean {
  return second.to < first.from;
}

/** Parts, transitions and short titles between the last speech of the scene before and this heading. */
function linesBefore(scene: Scene, previous: Scene | null): string[] {
  const lines: string[] = scene.lead.flatMap((block) =>
    block.kind === 'part' ? [block.line.text] : transitionText(block),
  );
  for (const block of [...(previous?.blocks ?? [])].reverse()) {
    const text = transitionText(block);
    if (text.length === 0) break;
    lines.push(...text);
  }
  return lines;
}

function transitionText(block: Block): string[] {
  if (block.kind === 'transition') return [block.line.text];
  if (block.kind !== 'action' || block.lines.length > 1) return [];
  const text = block.lines[0]?.text ?? '';
  return text.length < 40 && !/\p{Ll}/u.test(text) ? [text] : [];
}

/** A title on screen, or a first line that is nothing but a jump in time. */
function titlesOf(scene: Scene): string[] {
  const first = scene.blocks[0];
  if (first?.kind !== 'action') return [];
  const text = first.lines.map((line) => line.text).join(' ');
  const title = titleLine.exec(text);
  if (title) return [withoutQuotes(title[1] ?? '')];
  return text.length < 40 && !/\p{Ll}/u.test(text) ? [text] : [];
}

function withoutQuotes(text: string): string {
  return text.trim().replace(/^["\u201c\u2018']+|["\u201d\u2019']+$/g, '');
}
