import { slug } from '../base/slug.js';
import type { Range } from '../base/text-range.js';
import { isNo, isYes } from './answer-fits.js';
import { type Ground, notesOf } from './ground.js';

interface Answer {
  /** As the note names the question. */
  readonly id: string;
  readonly line: string;
  readonly at: Range;
  met: boolean;
}

/** The slugs of a name that something had before, and of the one it has. */
interface Renamed {
  readonly before: string;
  readonly now: string;
}

/** The decisions that `answer` notes give, by the id of the question. It remembers which of them a pass asked for. */
export class Answers {
  readonly #byId = new Map<string, Answer>();
  readonly #renamed: readonly Renamed[];

  /** `renamed` are people and things under earlier names: an answer about TOBY holds when he is called TOBIAS. */
  constructor(renamed: readonly Renamed[] = []) {
    this.#renamed = renamed;
  }

  /**
   * A note settles the question that it names in full anywhere in the script, and one of its own scene by the part of the id before the
   * scene's: so it holds when the heading is changed. Of two answers to one question the later counts.
   */
  add(question: string, line: string, at: Range, scene: string | null): void {
    const id = answeredId(question);
    const answer = { id, line: line.trim(), at, met: false };
    for (const name of [...this.#presentIds(id), id]) {
      this.#byId.set(name, answer);
      if (scene !== null) this.#byId.set(`${name}-${scene}`, answer);
    }
  }

  /** The ids that an id made of an earlier name has by now. */
  #presentIds(id: string): string[] {
    return this.#renamed.flatMap(({ before, now }) => {
      const [whole, kind, rest] = new RegExp(`^([a-z]+)-${before}(-.*)?$`).exec(id) ?? [];
      return whole === undefined ? [] : [`${kind}-${now}${rest ?? ''}`];
    });
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

  /** Where the answer to a question stands, or null. */
  placeOf(id: string): Range | null {
    return this.#byId.get(id)?.at ?? null;
  }

  /** The answers that nothing in this script asked for. */
  unmet(): { readonly id: string; readonly at: Range }[] {
    return [...new Set(this.#byId.values())].filter(({ met }) => !met).map(({ id, at }) => ({ id, at }));
  }
}

/** Reads the `answer` notes of the whole script. */
export function readAnswers(ground: Ground): Answers {
  const { people, definitions } = ground.script;
  const answers = new Answers(
    [...people, ...definitions].flatMap(({ name, was }) =>
      was.map((one) => ({ before: slug(one), now: slug(name) })).filter(({ before, now }) => before !== now),
    ),
  );
  const scenes = ground.scenes.map(({ scene, id }) => ({ notes: scene.notes, id }));
  for (const { notes, id } of [{ notes: ground.script.notes, id: null }, ...scenes]) {
    for (const { question, line, at } of notesOf(notes, 'answer')) answers.add(question, line, at, id);
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

/** Ids of the questions whose answers change what the breakdown says. Each is made of the subject and the scene. */
export const questionIds = {
  day: (scene: string) => `day-${scene}`,
  unnamed: (scene: string) => `who-${scene}`,
  clothes: (person: string, scene: string) => `clothes-${person}-${scene}`,
  change: (person: string, scene: string) => `change-${person}-${scene}`,
  state: (element: string, scene: string) => `state-${element}-${scene}`,
  count: (extra: string, scene: string) => `count-${extra}-${scene}`,
  images: (scene: string) => `images-${scene}`,
  place: (place: string) => `place-${place}`,
  wet: (person: string, scene: string) => `wet-${person}-${scene}`,
  dirty: (person: string, scene: string) => `dirty-${person}-${scene}`,
  still: (element: string, scene: string) => `still-${element}-${scene}`,
  there: (person: string, scene: string) => `there-${person}-${scene}`,
  along: (garment: string, scene: string) => `along-${garment}-${scene}`,
  past: (scene: string) => `past-${scene}`,
  which: (thing: string, scene: string) => `which-${thing}-${scene}`,
  need: (element: string, scene: string) => `need-${element}-${scene}`,
} as const;
