import { foldName } from '../base/slug.js';
import { movePoint } from '../base/text-range.js';
import { answerFits, isNo } from '../breakdown/answer-fits.js';
import type { Breakdown, BreakdownScene, Question, SceneElement } from '../breakdown/types.js';
import type { Script } from '../script/types.js';
import type { Insertion } from './text-edits.js';

/** A question with all that its answer needs. */
export interface ReviewItem {
  readonly scene: BreakdownScene;
  readonly question: Question;
  /** The element it asks about, when it asks about one. */
  readonly element: SceneElement | null;
  /** The script's line that it rests on. */
  readonly context: string;
}

export type ReviewAnswer =
  | { readonly kind: 'yes' }
  | { readonly kind: 'no' }
  | { readonly kind: 'words'; readonly text: string }
  /** A note that the list of questions recommends, typed as it stands in a script, without its sign. */
  | { readonly kind: 'note'; readonly text: string };

/** What may be typed as an answer, in words for a prompt. */
export function sayWanted({ wants, choices }: Question): string {
  if (choices.length > 0) return choices.join(' or ');
  if (wants === 'yes or no') return 'y or n';
  if (wants === 'number') return 'a number';
  return wants === 'words' ? 'in your words' : 'in your words, or y or n';
}

/** The notes other than an answer that settle a question, as the list of questions recommends them: `NORA: wears …`. */
export function notesFor({ settle }: Question): readonly string[] {
  return [...settle.matchAll(/["\u201c]> ([^"\u201d]+)["\u201d]/g)]
    .map(([, note = '']) => note)
    .filter((note) => !note.startsWith('answer:') && note.includes(':'));
}

function readNote(question: Question, typed: string): ReviewAnswer | null {
  const [, key = '', value = ''] = /^>\s*([^:]+):\s*(\S.*)$/.exec(typed) ?? [];
  const isKnown = notesFor(question).some((note) => foldName(note.split(':')[0] as string) === foldName(key));
  return isKnown && !/\u2026|<!--/.test(value) ? { kind: 'note', text: `${key.trim()}: ${value}` } : null;
}

/** Reads what was typed, an answer or one of the notes that settle the question; null for what would not settle it. */
export function readAnswer(question: Question, typed: string): ReviewAnswer | null {
  const { wants, choices, element } = question;
  const note = readNote(question, typed);
  if (note) return note;
  if (!answerFits(wants, choices, typed)) return null;
  if (element !== null) return { kind: isNo(typed) ? 'no' : 'yes' };
  if (/^(y|yes)$/i.test(typed)) return { kind: 'yes' };
  if (/^(n|no)$/i.test(typed)) return { kind: 'no' };
  return { kind: 'words', text: typed };
}

/** The open questions in script order. */
export function listReview(breakdown: Breakdown, script: Script): readonly ReviewItem[] {
  const lines = script.source.split('\n');
  return breakdown.scenes.flatMap((scene) =>
    scene.questions.map((question) => ({
      scene,
      question,
      element: scene.elements.find((one) => one.id === question.element) ?? null,
      context: (lines[question.line - 1] ?? '').trim(),
    })),
  );
}

/** The text to put into the script so that the question is settled: a mark around the words, or a note under the paragraph. */
export function writeAnswer(item: ReviewItem, answer: ReviewAnswer, script: Script): readonly Insertion[] {
  const { element, question } = item;
  if (answer.kind === 'note') return [noteUnder(item, answer.text, script)];
  if (answer.kind === 'no') {
    return [noteUnder(item, element ? `no: ${element.name}` : `answer: ${question.key}; no`, script)];
  }
  if (answer.kind === 'words' || !element) {
    const text = answer.kind === 'words' ? answer.text.replaceAll('<!--', '\\<!--') : 'yes';
    return [noteUnder(item, `answer: ${question.key}; ${text}`, script)];
  }
  return markWords(element, script) ?? [noteUnder(item, noteOf(element), script)];
}

/** What an answer puts into the script, in words for a terminal. */
export function sayWritten(item: ReviewItem, insertions: readonly Insertion[]): string {
  const [first, second] = insertions;
  if (first && second && item.element) {
    return `[${item.element.name}]${second.text.slice(1)} in line ${first.at.line}`;
  }
  return first ? `${first.text.trim()} under line ${first.at.line}` : 'nothing';
}

/** Brackets around an element's own name where it stands plainly in the source; null when it does not. */
function markWords(element: SceneElement, script: Script): readonly Insertion[] | null {
  if (element.known === 'implied') return null;
  const at = element.mentions[0]?.at;
  if (!at || at.start.line !== at.end.line) return null;
  const words = script.source.slice(at.start.offset, at.end.offset);
  const start = findName(words, element.name);
  if (start === null) return null;
  const end = start + element.name.length;
  const [before, after] = [at.start.offset + start - 1, at.start.offset + end];
  if (/[[\]*_`\\]/.test(words + script.source.slice(before, before + 1) + script.source.slice(after, after + 1)))
    return null;
  return [
    { at: movePoint(at.start, start), text: '[' },
    { at: movePoint(at.start, end), text: `](${element.category})` },
  ];
}

/** Where a name stands in words as words of its own, by their letters; null when it does not, or more than once. */
function findName(words: string, name: string): number | null {
  const letters = words.toLowerCase();
  const start = letters.indexOf(name.toLowerCase());
  if (letters.length !== words.length || start < 0 || letters.lastIndexOf(name.toLowerCase()) !== start) return null;
  const around = words.slice(0, start).slice(-1) + words.slice(start + name.length).slice(0, 1);
  return /[\p{L}\p{N}'\u2019-]/u.test(around) ? null : start;
}

function noteOf(element: SceneElement): string {
  const count = element.count === null ? '' : `${element.count} `;
  return `${element.category}: ${count}${element.name}${element.by ? ` (${element.by})` : ''}`;
}

/** A note in a paragraph of its own, under the paragraph that holds the question's line, and in the question's scene. */
function noteUnder({ question, scene }: ReviewItem, note: string, script: Script): Insertion {
  const lines = script.source.split('\n');
  const next = script.scenes[scene.order]?.heading.at.start.line ?? Number.POSITIVE_INFINITY;
  let last = question.line;
  let read = lines.slice(scene.at.start.line - 1, last).join('\n');
  const goesOn = () => (lines[last] ?? '').trim() !== '' || isPrivate(read);
  while (last < lines.length && last + 1 < next && goesOn()) {
    read += `\n${lines[last] ?? ''}`;
    last++;
  }
  const gap = (lines[last] ?? '').trim() === '' ? '' : '\n';
  return { at: { line: last, column: (lines[last - 1] ?? '').length + 1 }, text: `\n\n> ${note}${gap}` };
}

/** True when a text ends inside private text: what is put in there would be private too. */
function isPrivate(text: string): boolean {
  return text.lastIndexOf('<!--') > text.lastIndexOf('-->');
}
