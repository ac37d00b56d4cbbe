import type { Question } from '../../../breakdown/types.js';
import { type Inline, italic, tick } from '../../layout/inline.js';
import type { Section } from '../sheet-context.js';
import { foldedWords } from '../sheet-words.js';

const shown = 3;

/** Open questions with what to type; folded once, the first three; folded twice, a count. */
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
  const ticks: Inline = question.kind === 'element' ? ['  yes ', tick, '  no ', tick] : [];
  const settle = question.settle === '' ? '' : italic(`  ${holdQuotes(question.settle)}`);
  return ['? ', question.text, ...ticks, settle];
}

/** What is to be typed stays on one line, so that no one types the line end. */
function holdQuotes(text: string): string {
  return text.replace(/"[^"]{1,40}"/g, (quoted) => quoted.replaceAll(' ', '\u00a0'));
}
