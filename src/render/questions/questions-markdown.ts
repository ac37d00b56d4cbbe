import { labelOf, type SceneIndex } from '../words/scene-list-words.js';
import type { OpenQuestion, SceneQuestions, Way } from './open-questions.js';

/** The list of questions as Markdown: read in any editor, answered by one edit of the script each. */
export function questionsMarkdown(list: readonly SceneQuestions[], identity: string, index: SceneIndex): string {
  const count = list.reduce((sum, { questions }) => sum + questions.length, 0);
  const head = [`# Questions about ${escapeText(identity)}`, '', ...(count === 0 ? [nothing] : introduction(count))];
  const scenes = list.flatMap(({ scene, questions }) => [
    '',
    `## Scene ${labelOf(scene.id, index)}: ${escapeText(scene.heading)}`,
    '',
    ...questions.flatMap(questionLines),
  ]);
  return `${[...head, ...scenes].join('\n')}\n`;
}

const nothing = 'Nothing is open.';

function introduction(count: number): string[] {
  return [
    `${count} ${count === 1 ? 'question waits' : 'questions wait'} for an answer. Each is settled by one edit of the script. What begins with \`>\` goes`,
    'on a line of its own in that scene, with a blank line above and below. What stands in brackets replaces the word in',
    'the line named; if a thing is of another category, type yours in place of the one in round brackets (props, costumes,',
    'dressing, sound …). Then compile again: what is answered does not come back.',
  ];
}

function questionLines(question: OpenQuestion): string[] {
  return [
    `- **${escapeText(question.text)}**`,
    `  Line ${question.line}${quoteLine(question.context)}`,
    ...question.ways.map((way) => wayLine(way, question)),
    ...(question.ways.length > 0 || question.advice === null ? [] : [`  - ${codeInside(question.advice)}`]),
  ];
}

/** A line of the script as it is typed: between quotes, or as code when Markdown would read signs in it. */
function quoteLine(line: string): string {
  if (line === '') return '';
  return `: ${escapeText(line) === line ? `“${line}”` : codeSpan(line)}`;
}

function wayLine({ answer, typed }: Way, { advice }: OpenQuestion): string {
  return `  - ${answer}: ${codeSpan(typed)}${advice === null ? '' : codeInside(advice)}`;
}

/** Advice with what is to be typed in it as code: a note in straight quotes, a mark in brackets. */
function codeInside(advice: string): string {
  const parts = advice.split(/["“](> [^"”]+)["”]|(\[[^\]]+\](?:\[[^\]]+\]|\([^)]+\))?)/);
  return parts.map((part = '', i) => (i % 3 === 0 ? escapeText(part) : part && codeSpan(part))).join('');
}

/** Text that Markdown would read as signs keeps them as typed. */
function escapeText(text: string): string {
  return text.replace(/[\\`*_[\]<>#]/g, (sign) => `\\${sign}`);
}

/** A code span that holds backticks needs longer fences (CommonMark, code spans). */
function codeSpan(text: string): string {
  const longestRun = Math.max(0, ...(text.match(/`+/g) ?? []).map((run) => run.length));
  const fence = '`'.repeat(longestRun + 1);
  const pad = longestRun > 0 ? ' ' : '';
  return `${fence}${pad}${text}${pad}${fence}`;
}
