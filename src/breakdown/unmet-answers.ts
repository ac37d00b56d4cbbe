import type { Diagnostic } from '../base/diagnostic.js';
import { findNearest } from '../base/nearest.js';
import { sayBreakdown } from '../messages/breakdown.js';
import type { Answers } from './answers.js';
import type { BreakdownScene } from './types.js';

/** Tells of answers whose question this script does not ask, with the open question of the nearest id. */
export function tellUnmetAnswers(answers: Answers, scenes: readonly BreakdownScene[]): Diagnostic[] {
  const unmet = answers.unmet();
  if (unmet.length === 0) return [];
  const open = scenes.flatMap((scene) =>
    scene.questions.map(({ id }) => ({ id, short: id.replace(`-${scene.id}`, '') })),
  );
  return unmet.map(({ id, at }) => sayBreakdown('answer-without-question', { id, near: findNear(id, open) }, at));
}

/** The open question of the nearest id; of one typed without its scene, the nearest without theirs. */
function findNear(id: string, open: readonly { readonly id: string; readonly short: string }[]): string | null {
  const whole = findNearest(
    id,
    open.map((one) => one.id),
  );
  const short = findNearest(
    id,
    open.map((one) => one.short),
  );
  return whole ?? open.find((one) => one.short === short)?.id ?? null;
}
