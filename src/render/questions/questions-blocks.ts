import { type Block, blank, bold, type Inline, tick } from '../layout/kit.js';
import { labelOf, type SceneIndex } from '../words/scene-list-words.js';
import type { OpenQuestion, SceneQuestions } from './open-questions.js';

/** The list of questions on paper: boxes to tick and a line to write on, and what to type for each answer. */
export function questionBlocks(list: readonly SceneQuestions[], identity: string, index: SceneIndex): Block[] {
  const count = list.reduce((sum, { questions }) => sum + questions.length, 0);
  return [
    { kind: 'heading', level: 1, text: `Questions: ${identity}`, bookmark: 'Questions' },
    { kind: 'paragraph', text: count === 0 ? 'Nothing is open.' : introduction },
    ...list.map(({ scene, questions }) => sceneBlock(labelOf(scene.id, index), scene.heading, questions)),
  ];
}

const introduction =
  'Go through them with the director and tick or write the answer. Then type it into the script: what begins with > on a line of its own in that scene, with a blank line above and below; what stands in brackets in place of the word, with another category in the round brackets if the thing is of another. What is answered does not come back.';

function sceneBlock(label: string, heading: string, questions: readonly OpenQuestion[]): Block {
  return {
    kind: 'section',
    label: `Scene ${label}`,
    blocks: [{ kind: 'paragraph', text: bold(heading), keepWithNext: true }, ...questions.map(questionBlock)],
  };
}

function questionBlock(question: OpenQuestion): Block {
  const yesNo = question.ways.some((way) => way.answer === 'Yes');
  const ticks = yesNo ? ['   ', tick, '\u00a0yes  ', tick, '\u00a0no'] : [];
  return {
    kind: 'keep',
    blocks: [
      {
        kind: 'paragraph',
        text: [bold('? '), question.text, ...ticks, '  ', blank(yesNo ? 56 : 220)],
        hang: 12,
        after: 1,
      },
      { kind: 'paragraph', text: typedText(question), indent: 12, hang: 12, size: 10, after: 6 },
    ],
  };
}

function typedText(question: OpenQuestion): Inline {
  const ways = question.ways.flatMap(({ answer, typed }, i) => [
    i === 0 ? '' : '   ',
    answer === 'Answer' ? 'type ' : `${answer.toLowerCase()}: `,
    bold(typed),
  ]);
  return [`line ${question.line}   `, ...ways, question.advice ?? ''];
}
