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
  /** What follows the words to type, or all that can be said. */
  readonly advice: string | null;
}

export interface SceneQuestions {
  readonly scene: BreakdownScene;
  readonly questions: readonly OpenQuestion[];
}

/** All that is doubtful, by scene: the questions asked, then what is implied and nobody has confirmed. */
export function listOpenQuestions(breakdown: Breakdown, source: string): SceneQuestions[] {
  const lines = source.split('\n');
  const lineOf: LineOf = (line) => lines[line - 1] ?? '';
  return breakdown.scenes
    .map((scene) => ({
      scene,
      questions: [
        ...scene.questions.map((question) => openAsked(question, scene, lineOf)),
        ...unasked(scene).map((element) => openImplied(element, lineOf)),
      ],
    }))
    .filter(({ questions }) => questions.length > 0);
}

/** The text of a line of the script, counted from 1. */
type LineOf = (line: number) => string;

function openAsked(question: Question, scene: BreakdownScene, lineOf: LineOf): OpenQuestion {
  const element = scene.elements.find((one) => one.id === question.element) ?? null;
  const text = lineOf(question.line);
  const common = { text: question.text, line: question.line, context: quoteLine(text, element?.words ?? '') };
  if (element && question.kind === 'element') return { ...common, ways: yesAndNo(element, text), advice: null };
  const note = /^Type "(> .+)"(.*)$/.exec(question.settle);
  if (!note) return { ...common, ways: [], advice: question.settle };
  const [, typed = '', rest = ''] = note;
  return { ...common, ways: [{ answer: 'Answer', typed }], advice: /\w/.test(rest) ? rest : null };
}

function unasked(scene: BreakdownScene): SceneElement[] {
  const asked = new Set(scene.questions.map((question) => question.element));
  return scene.elements.filter((one) => one.known === 'implied' && !one.carried && !asked.has(one.id));
}

function openImplied(element: SceneElement, lineOf: LineOf): OpenQuestion {
  const strength = element.strength === null ? 'implied' : `implied, ${element.strength}`;
  const text = lineOf(element.line);
  return {
    text: `"${element.words}": does this scene need ${element.name}? (${strength})`,
    line: element.line,
    context: quoteLine(text, element.words),
    ways: yesAndNo(element, text),
    advice: null,
  };
}

function yesAndNo(element: SceneElement, line: string): Way[] {
  return [
    { answer: 'Yes', typed: markOf(element, line) ?? noteOf(element) },
    { answer: 'No', typed: `> no: ${element.name}` },
  ];
}

/** The mark that confirms a found element whose own name stands once, plainly, in its line; else null. */
function markOf(element: SceneElement, line: string): string | null {
  if (element.known !== 'found' || /[[\]*_`\\]/.test(line)) return null;
  const places = [...line.toLowerCase().matchAll(wholeWords(element.name))];
  const at = places[0]?.index;
  if (at === undefined || places.length > 1) return null;
  return `[${line.slice(at, at + element.name.length)}](${element.category})`;
}

function wholeWords(name: string): RegExp {
  const literal = name.toLowerCase().replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
  return new RegExp(`(?<![\\p{L}\\p{N}])${literal}(?![\\p{L}\\p{N}])`, 'gu');
}

function noteOf(element: SceneElement): string {
  const count = element.count === null ? '' : `${element.count} `;
  const by = element.by === null ? '' : ` (${element.by})`;
  return `> ${element.category}: ${count}${element.name}${by}`;
}

/** Characters of the line that are quoted on each side of the words; without words, from its start. */
const side = 60;
const whole = 140;

/** A line of the script as a quotation: without its signs, cut to the neighbourhood of the words. */
function quoteLine(line: string, words: string): string {
  const plain = line.replace(/^\s*(?:#+|>)?\s*/, '').trim();
  const at = Math.max(0, plain.indexOf(words));
  const start = at <= side ? 0 : plain.indexOf(' ', at - side) + 1;
  const cut = plain.indexOf(' ', words === '' ? whole : at + words.length + side);
  const end = cut < 0 ? plain.length : cut;
  return `${start > 0 ? '… ' : ''}${plain.slice(start, end)}${end < plain.length ? ' …' : ''}`;
}
