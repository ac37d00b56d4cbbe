import type { Diagnostic } from '../base/diagnostic.js';
import { findNearest } from '../base/nearest.js';
import type { Range } from '../base/text-range.js';
import { sayBreakdown } from '../messages/breakdown.js';
import { type Answers, questionIds } from './answers.js';
import type { BreakdownScene, Question } from './types.js';

/** Tells of answers that settle nothing: their question wants another kind of answer, or this script does not ask it. */
export function tellUnmetAnswers(answers: Answers, scenes: readonly BreakdownScene[]): Diagnostic[] {
  const questions = scenes.flatMap((scene) => scene.questions);
  const unfit = questions.flatMap(({ id, key, text, wants, choices }) => {
    const at = answers.placeOf(id);
    if (!at) return [];
    const wanted = choices.length > 0 ? choices.join(' or ') : sayWanted[wants];
    return [sayBreakdown('answer-of-another-kind', { key, text, wanted }, at)];
  });
  const unmet = answers.unmet().map(({ id, at }) => {
    const scene = sceneOfDay(id, at, scenes);
    if (scene?.storyDay.sure) return sayBreakdown('answer-not-needed', scene.storyDay, at);
    return sayBreakdown('answer-without-question', { id, near: findNear(id, questions) }, at);
  });
  return [...unfit, ...unmet];
}

/** The scene about whose day an answer speaks: the one that its id names, else the one in which it stands. */
function sceneOfDay(id: string, at: Range, scenes: readonly BreakdownScene[]): BreakdownScene | undefined {
  if (id === 'day') return scenes.findLast((one) => one.at.start.offset <= at.start.offset);
  return scenes.find((one) => id === questionIds.day(one.id));
}

const sayWanted = {
  'yes or no': 'yes or no',
  number: 'a number',
  words: 'the answer in words',
  'words, yes or no': 'an answer',
} as const;

/** The open question of the nearest id; of one typed without its scene, the nearest without theirs. */
function findNear(id: string, open: readonly Pick<Question, 'id' | 'key'>[]): string | null {
  const whole = findNearest(
    id,
    open.map((one) => one.id),
  );
  const short = findNearest(
    id,
    open.map((one) => one.key),
  );
  return whole ?? open.find((one) => one.key === short)?.key ?? null;
}
