import { type Ground, notesOf } from './ground.js';

/** The decisions that `answer` notes give, by the id of the question. */
export type Answers = ReadonlyMap<string, string>;

/** Reads the `answer` notes of the whole script; of two with one id the later counts. */
export function readAnswers(ground: Ground): Answers {
  const notes = [ground.script.notes, ...ground.scenes.map(({ scene }) => scene.notes)];
  const answers = notes.flatMap((list) => notesOf(list, 'answer'));
  return new Map(answers.map(({ question, line }) => [answeredId(question), line.trim()]));
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
  return /^(?:yes|same|the same)\b/i.test(answers.get(id) ?? '');
}

/** True when the answer to a question begins with a no. */
export function saysNo(answers: Answers, id: string): boolean {
  return /^(?:no|none|not)\b/i.test(answers.get(id) ?? '');
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
  still: (element: string, scene: string) => `still-${element}-${scene}`,
  there: (person: string, scene: string) => `there-${person}-${scene}`,
  past: (scene: string) => `past-${scene}`,
  which: (thing: string, scene: string) => `which-${thing}-${scene}`,
  need: (element: string, scene: string) => `need-${element}-${scene}`,
} as const;
