import type { Diagnostic } from '../base/diagnostic.js';
import { findNearest } from '../base/nearest.js';
import { sayBreakdown } from '../messages/breakdown.js';
import type { Answers } from './answers.js';
import type { BreakdownScene } from './types.js';

/** Tells of answers whose question this script does not ask, with the open question of the nearest id. */
export function tellUnmetAnswers(answers: Answers, scenes: readonly BreakdownScene[]): Diagnostic[] {
  const unmet = answers.unmet();
  if (unmet.length === 0) return [];
  const open = scenes.flatMap(({ questions }) => questions.map(({ id }) => id));
  return unmet.map(({ id, at }) => sayBreakdown('answer-without-question', { id, near: findNearest(id, open) }, at));
}
