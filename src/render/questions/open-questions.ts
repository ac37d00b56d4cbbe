import type { Breakdown, BreakdownScene, Question, SceneElement } from '../../breakdown/types.js';

/** One way to answer, as one edit of the script. */
export interface Way {
  /** `Yes`, `No`, or `Answer` when a yes or no would not do. */
  readonly answer: 'Yes' | 'No' | 'Answer';
  /** What to type, exactly. */
  readonly typed: string;
}

/** A thing in doubt with all that its answer needs. */
export interface OpenQuestion {
  readonly text: string;
  /** The line of the script it is about, and what stands there. */
  readonly line: number;
  readonly context: string;
  readonly ways: readonly Way[];
  /** Advice of the pass that asked, when no exact edit is known. */
  readonly settle: string | null;
}

export interface SceneQuestions {
  readonly scene: BreakdownScene;
  readonly questions: readonly OpenQuestion[];
}

/** All that is doubtful, by scene: the questions asked, then what is implied and nobody has confirmed. */
export function listOpenQuestions(breakdown: Breakdown, source: string): SceneQuestions[] {
  const lines = source.split('\n');
  const contextOf = (line: number) => (lines[line - 1] ?? '').trim();
  return breakdown.scenes
    .map((scene) => ({
      scene,
      questions: [
        ...scene.questions.map((question) => openAsked(question, scene, contextOf)),
        ...unasked(scene).map((element) => openImplied(element, contextOf)),
      ],
    }))
    .filter(({ questions }) => questions.length > 0);
}

type ContextOf = (line: number) => string;

function openAsked(question: Question, scene: BreakdownScene, contextOf: ContextOf): OpenQuestion {
  const element = scene.elements.find((one) => one.id === question.element) ?? null;
  const ways = element && question.kind === 'element' ? yesAndNo(element) : answerWays(question);
  return {
    text: question.text,
    line: question.line,
    context: contextOf(question.line),
    ways,
    settle: ways.length > 0 ? null : question.settle,
  };
}

/** A note that answers, when the question says that a note does; else its own advice stands. */
function answerWays(question: Question): Way[] {
  const note = /^`?(> ?[^`\n]+?)`?$/.exec(question.settle.trim());
  return note?.[1] ? [{ answer: 'Answer', typed: note[1] }] : [];
}

function unasked(scene: BreakdownScene): SceneElement[] {
  const asked = new Set(scene.questions.map((question) => question.element));
  return scene.elements.filter((one) => one.known === 'implied' && !one.carried && !asked.has(one.id));
}

function openImplied(element: SceneElement, contextOf: ContextOf): OpenQuestion {
  const strength = element.strength === null ? 'implied' : `implied, ${element.strength}`;
  return {
    text: `Does it need ${element.name}? (${strength}: “${element.words}”)`,
    line: element.line,
    context: contextOf(element.line),
    ways: yesAndNo(element),
    settle: null,
  };
}

function yesAndNo(element: SceneElement): Way[] {
  const count = element.count === null ? '' : `${element.count} `;
  const by = element.by === null ? '' : ` (${element.by})`;
  return [
    { answer: 'Yes', typed: `> ${element.category}: ${count}${element.name}${by}` },
    { answer: 'No', typed: `> no: ${element.name}` },
  ];
}
