import { answerFits } from './answer-fits.js';
import type { Answers } from './answers.js';
import type { AlongDoubt } from './carry-in-hand.js';
import type { MakeUpDoubt } from './carry-make-up.js';
import type { CostumeDoubt } from './costume-plot.js';
import { askElements, askFinder, askWhich } from './element-questions.js';
import type { StateDoubt } from './follow-states.js';
import type { SceneGround } from './ground.js';
import type { Lingering } from './lingering.js';
import type { PlaceDoubt } from './places.js';
import type { Unclear } from './sight-finds.js';
import type { SoakedDoubt } from './soaked-answers.js';
import { askStory } from './story-questions.js';
import type { Question, SceneElement, SceneExtra, StoryDay, Wears } from './types.js';
import type { Unnamed } from './unnamed.js';

/** All that waits for the writer in one scene. Ids are made of the subject and the scene, so that an answer outlives revisions. */
export interface SceneDoubts {
  readonly ground: SceneGround;
  readonly day: StoryDay;
  /** The scenes whose day is as doubtful as that of this one, when it is the first of them; null where nothing is to ask. */
  readonly doubtfulDay: DayDoubt | null;
  readonly wears: readonly Wears[];
  readonly extras: readonly SceneExtra[];
  readonly unnamed: Unnamed | null;
  readonly lingering: readonly Lingering[];
  readonly makeUp: readonly (MakeUpDoubt & { readonly id: string })[];
  readonly elements: readonly SceneElement[];
  readonly states: readonly (StateDoubt & { readonly id: string })[];
  readonly costumes: readonly CostumeDoubt[];
  readonly soaked: readonly SoakedDoubt[];
  readonly along: readonly (AlongDoubt & { readonly id: string })[];
  readonly nights: readonly NightDoubt[];
  readonly unclear: readonly Unclear[];
  readonly place: PlaceDoubt | null;
  /** Names of what stands in this set outside the flashback that plays here. */
  readonly pastDressing: readonly string[];
}

/** Scenes of one story day that rest on weak reasons: asked about once, at the first of them. */
export interface DayDoubt {
  readonly id: string;
  /** Which scene played on that day last; null when the day begins here. */
  readonly since: 'the scene before' | 'earlier' | null;
  /** How the other scenes are called. */
  readonly others: readonly string[];
}

/** A person last seen at night and next seen in the same place the day after. */
export interface NightDoubt {
  readonly id: string;
  readonly person: string;
  readonly before: string;
  readonly line: number;
}

/** Writes the open questions of a scene: decisions about the story first, then choices and work, then things; what is answered is left out. */
export function askQuestions(doubts: SceneDoubts, answers: Answers): Question[] {
  const asked = [...askStory(doubts), ...askWhich(doubts), ...askFinder(doubts), ...askElements(doubts)];
  const ids = new Set<string>();
  return asked.flatMap((one) => {
    const answer = answers.get(one.id);
    if (ids.has(one.id) || (answer !== null && answerFits(one.wants, one.choices, answer))) return [];
    ids.add(one.id);
    return [withKey(one, doubts.ground.id)];
  });
}

/** A question as a pass asks it, before it is known how short its id may be typed. */
export type Asked = Omit<Question, 'key'>;

function withKey(asked: Asked, scene: string): Question {
  const key = asked.id.endsWith(`-${scene}`) ? asked.id.slice(0, -scene.length - 1) : asked.id;
  return { ...asked, key, settle: asked.settle.replaceAll(`answer: ${asked.id}`, `answer: ${key}`) };
}
