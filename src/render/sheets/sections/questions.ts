import type { Question } from '../../../breakdown/types.js';
import type { Inline } from '../../layout/inline.js';
import { answerSpace } from '../../words/answer-space.js';
import type { Section } from '../sheet-context.js';
import { foldedWords } from '../sheet-words.js';

const shown = 3;

/** Open questions, each with a blank to write its answer; folded once, the first three; folded twice, a count. */
export const writeQuestions: Section = (scene, _context, fold) => {
  if (scene.questions.length === 0) return [];
  const some = scene.questions.slice(0, fold === 0 ? undefined : fold === 1 ? shown : 0);
  const left = scene.questions.length - some.length;
  const rest: Inline[] = left > 0 ? [foldedWords(left, some.length > 0 ? 'more question' : 'question')] : [];
  return [
    {
      kind: 'section',
      label: 'Open questions',
      blocks: [{ kind: 'entries', entries: [...some.map(questionWords), ...rest] }],
    },
  ];
};

function questionWords(question: Question): Inline {
  return ['? ', question.text, ...answerSpace(question, 220)];
}
