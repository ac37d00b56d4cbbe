import type { Range } from '../base/text-range.js';
import { type Ground, notesOf } from './ground.js';

interface Answer {
  readonly line: string;
  readonly at: Range;
  met: boolean;
}

/** The decisions that `answer` notes give, by the id of the question. It remembers which of them a pass asked for. */
export class Answers {
  readonly #byId = new Map<string, Answer>();

  /** Of two answers to one question the later counts. */
  add(question: string, line: string, at: Range): void {
    this.#byId.set(answeredId(question), { line: line.trim(), at, met: false });
  }

  /** The answer to a question, or null. */
  get(id: string): string | null {
    const answer = this.#byId.get(id);
    if (!answer) return null;
    answer.met = true;
    return answer.line;
  }

  has(id: string): boolean {
    return this.get(id) !== null;
  }

  /** The answers that nothing in this script asked for. */
  unmet(): { readonly id: string; readonly at: Range }[] {
    return [...this.#byId].filter(([, { met }]) => !met).map(([id, { at }]) => ({ id, at }));
  }
}

/** Reads the `answer` notes of the whole script. */
export function readAnswers(ground: Ground): Answers {
  const answers = new Answers();
  for (const notes of [ground.script.notes, ...ground.scenes.map(({ scene }) => scene.notes)]) {
    for (const { question, line, at } of notesOf(notes, 'answer')) answers.add(question, line, at);
  }
  return answers;
}

/** The id that an `answer` note names, without the sign that may part it from the line. */
export function answeredId(question: string): string {
  return question
    .trim()
    .replace(/[;:,]+$/, '')
    .toLowerCase();
}

/** True when the answer to a question begins with a yes. */
export function saysYes(answers: Answers, id: string): boolean {
  return isYes(answers.get(id) ?? '');
}

/** True when the answer to a question begins with a no. */
export function saysNo(answers: Answers, id: string): boolean {
  return isNo(answers.get(id) ?? '');
}

/** True for words that begin with a yes. */
export function isYes(line: string): boolean {
  return /^(?:yes|same|the same)\b/i.test(line);
}

/** True for words that begin with a no. */
export function isNo(line: string): boolean {
  return /^(?:no|none|not)\b/i.test(line);
}

/** Ids of the questions whose answers change what the breakdown says. Each is made of the subject and the scene. */
export const questionIds = {
  day: (scene: string) => `day-${scene}`,
  unnamed: (scene: string) => `who-${scene}`,
  clothes: (person: string, scene: string) => `clothes-${person}-${scene}`,
  change: (person: string, scene: string) => `change-${person}-${scene}`,
  state: (element: string, scene: string) => `state-${element}-${scene}`,
  count: (extra: string, scene: string) => `count-${extra}-${scene}`,
  place: (place: string) => `place-${place}`,
  wet: (person: string, scene: string) => `wet-${person}-${scene}`,
  still: (element: string, scene: string) => `still-${element}-${scene}`,
  there: (person: string, scene: string) => `there-${person}-${scene}`,
  past: (scene: string) => `past-${scene}`,
  which: (thing: string, scene: string) => `which-${thing}-${scene}`,
  need: (element: string, scene: string) => `need-${element}-${scene}`,
} as const;
