import { type Answers, questionIds } from './answers.js';
import type { SceneGround } from './ground.js';
import { pushTo } from './grouping.js';
import type { DayDoubt } from './questions.js';
import type { Reckoned } from './story-days.js';

/**
 * Gathers the scenes whose story day rests on a weak reason, by day: they are one question, asked at the first of them, so that one answer
 * settles a day. An answer that names any of them counts.
 */
export function doubtDays(
  scenes: readonly SceneGround[],
  reckoned: readonly Reckoned[],
  answers: Answers,
): ReadonlyMap<number, DayDoubt> {
  const unsure = new Map<string, SceneGround[]>();
  for (const scene of scenes) {
    const day = reckoned[scene.index]?.day;
    if (day && !day.sure) pushTo(unsure, day.label, scene);
  }
  const doubts = new Map<number, DayDoubt>();
  for (const [first, ...others] of unsure.values()) {
    if (!first || [first, ...others].some(({ id }) => answers.has(questionIds.day(id)))) continue;
    doubts.set(first.index, { id: questionIds.day(first.id), others: others.map(({ label }) => label) });
  }
  return doubts;
}
