import { type Answers, questionIds } from './answers.js';
import type { SceneGround } from './ground.js';
import { pushTo } from './grouping.js';
import type { DayDoubt } from './questions.js';
import type { Reckoned } from './story-days.js';

/**
 * Gathers the scenes whose story day rests on a weak reason, by day: they are one question, asked at the first of them, so that one answer
 * settles a day. An answer that names any of them counts; a no makes a new day of it, and the scenes that follow stay on that.
 */
export function doubtDays(
  scenes: readonly SceneGround[],
  reckoned: readonly Reckoned[],
  answers: Answers,
): ReadonlyMap<number, DayDoubt> {
  const unsure = new Map<string, SceneGround[]>();
  const settled = new Set<string>();
  for (const scene of scenes) {
    const day = reckoned[scene.index]?.day;
    if (!day) continue;
    const id = questionIds.day(scene.id);
    // An answered no is sure already; only an answer that is still needed counts as asked for.
    if (day.sure ? answers.placeOf(id) !== null : answers.has(id)) settled.add(day.label);
    if (!day.sure) pushTo(unsure, day.label, scene);
  }
  const doubts = new Map<number, DayDoubt>();
  for (const [label, [first, ...others]] of unsure) {
    if (!first || settled.has(label)) continue;
    const before = reckoned.slice(0, first.index).map(({ day }) => day.label);
    const since = before.includes(label) ? (before.at(-1) === label ? 'the scene before' : 'earlier') : null;
    doubts.set(first.index, { id: questionIds.day(first.id), since, others: others.map((one) => one.label) });
  }
  return doubts;
}
