import { type Answers, questionIds, saysNo, saysYes } from './answers.js';
import { type DayCues, readDayCues } from './day-cues.js';
import { notesOf, type SceneGround } from './ground.js';
import { scenesOfMontage } from './montage.js';
import { type DayContext, type DayMark, storyDayRules, type Verdict } from './story-day-rules.js';
import type { StoryDay } from './types.js';

/** What the story-day pass is told of a scene. */
export interface DayInput {
  readonly ground: SceneGround;
  /** Key of the place: its first part. */
  readonly place: string;
  /** Ids of the people seen. */
  readonly people: readonly string[];
}

/** A scene's day, and the scene it goes on from. */
export interface Reckoned {
  readonly day: StoryDay;
  /** Index of the scene that it continues; null when it stands alone. */
  readonly continues: number | null;
  /** True when no time at all passes in between. */
  readonly unbroken: boolean;
}

/** Gives every scene its story day, with the reason in words. The first rule that fires wins; a note comes before all. */
export function reckonStoryDays(inputs: readonly DayInput[], answers: Answers): Reckoned[] {
  const clock = new StoryClock(inputs, answers);
  return inputs.map((input, index) => clock.reckon(input, index));
}

class StoryClock {
  private main: DayMark | null = null;
  private flash: DayContext['flash'] = null;
  private flashes = 0;
  private opened = false;
  private mainYear: number | null = null;
  private mainWeekday: string | null = null;
  private readonly lastWith = new Map<string, DayMark>();
  private readonly byNumber = new Map<string, DayMark>();
  private readonly cues: readonly DayCues[];
  private readonly lastClosing: number;

  constructor(
    private readonly inputs: readonly DayInput[],
    private readonly answers: Answers,
  ) {
    const montage = scenesOfMontage(inputs.map(({ ground }) => ground.scene));
    this.cues = inputs.map(({ ground }, index) => {
      const cues = readDayCues(ground.scene, inputs[index - 1]?.ground.scene ?? null);
      // The light of an image says nothing about the scenes around it.
      return montage.has(index) ? { ...cues, montage: cues.montage ?? 'MONTAGE', hours: null } : cues;
    });
    this.lastClosing = this.cues.findLastIndex(({ present }) => present !== null);
  }

  reckon(input: DayInput, index: number): Reckoned {
    const cues = this.cues[index] as DayCues;
    if (cues.present && !cues.flashback) this.opened = false;
    const context = this.contextOf(input, index, cues);
    const verdict = this.correct(decide(context), input.ground.id);
    this.remember(input, index, cues, verdict);
    const label = `${verdict.series}${verdict.number}`;
    const day = { label, series: verdict.series, number: verdict.number, reason: verdict.reason, sure: verdict.sure };
    const before = cues.unbroken && index > 0 ? index - 1 : null;
    return { day, continues: verdict.continues ?? before, unbroken: cues.unbroken };
  }

  /** A weak reason gives way to the writer's answer: a yes settles it, a no makes it the next day, or the main line. */
  private correct(verdict: Verdict, scene: string): Verdict {
    const id = questionIds.day(scene);
    if (!verdict.sure && saysYes(this.answers, id)) {
      return { ...verdict, reason: `${verdict.reason}; an answer says that it is so`, sure: true };
    }
    if (verdict.sure || !saysNo(this.answers, id)) return verdict;
    const last = this.main?.number ?? 1;
    const number = verdict.series === 'F' ? last : (verdict.otherwise ?? Math.max(verdict.number, last) + 1);
    return { series: 'D', number, reason: 'an answer says that it is another day', sure: true };
  }

  private contextOf(input: DayInput, index: number, cues: DayCues): DayContext {
    const flash = this.flash?.index === index - 1 ? this.flash : null;
    return {
      index,
      cues,
      note: notesOf(input.ground.scene.notes, 'day').at(-1) ?? null,
      place: input.place,
      main: this.main,
      flash,
      flashes: this.flashes,
      inOpened: this.opened && flash !== null,
      mainYear: this.mainYear,
      mainWeekday: this.mainWeekday,
      shared: this.sharedWith(input),
      ties: { flash: this.ties(input, flash), main: this.ties(input, this.main) },
      numbered: cues.intercut?.number ? (this.byNumber.get(cues.intercut.number) ?? null) : null,
    };
  }

  private sharedWith(input: DayInput): DayContext['shared'] {
    const place = this.lastWith.get(placeKey(input.place));
    const people = input.people.map((id) => this.lastWith.get(personKey(id))).filter((mark) => mark !== undefined);
    const latest = people.reduce<DayMark | null>(
      (best, mark) => (best && best.index >= mark.index ? best : mark),
      null,
    );
    if (latest && (!place || latest.index >= place.index)) return { mark: latest, with: 'people' };
    return place ? { mark: place, with: 'the place' } : null;
  }

  private ties(input: DayInput, mark: DayMark | null): number {
    const other = mark ? this.inputs[mark.index] : undefined;
    if (!other) return 0;
    const people = input.people.filter((id) => other.people.includes(id)).length;
    return people + (other.place === input.place ? 1 : 0);
  }

  private remember(input: DayInput, index: number, cues: DayCues, { series, number }: Verdict): void {
    const hours = cues.hours;
    const mark = { index, label: input.ground.label, number, hours, place: input.place };
    const { number: written } = input.ground.scene.heading;
    if (written) this.byNumber.set(written, mark);
    if (series === 'F') {
      this.flash = {
        ...mark,
        hours: hours ?? this.flash?.hours ?? null,
        year: cues.year,
        words: cues.flashback ?? this.flash?.words ?? null,
      };
      this.flashes = Math.max(this.flashes, number);
      this.opened ||= cues.opens !== null && this.lastClosing > index;
      return;
    }
    this.opened = false;
    this.mainWeekday = cues.weekday ?? (number === this.main?.number ? this.mainWeekday : null);
    const kept = number === this.main?.number ? (this.main?.hours ?? null) : null;
    this.main = { ...mark, hours: hours ?? kept };
    if (cues.year !== null || (cues.present && this.mainYear !== null)) this.mainYear = cues.year;
    this.lastWith.set(placeKey(input.place), this.main);
    for (const id of input.people) this.lastWith.set(personKey(id), this.main);
  }
}

function decide(context: DayContext): Verdict {
  for (const rule of storyDayRules) {
    const verdict = rule(context);
    if (verdict) return verdict;
  }
  throw new Error('No rule gave a story day: the last one always does.');
}

const placeKey = (place: string) => `place ${place}`;
const personKey = (id: string) => `person ${id}`;
