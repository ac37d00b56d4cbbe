import { slug } from '../base/slug.js';
import type { CostumeDoubt } from './costume-plot.js';
import type { StateDoubt } from './follow-states.js';
import { type Ground, notesOf, type SceneGround } from './ground.js';
import type { PlaceDoubt } from './places.js';
import type { Unclear } from './sight-finds.js';
import type { Question, SceneElement, SceneExtra, StoryDay } from './types.js';

/** All that waits for the writer in one scene. Ids are made of the subject and the scene, so that an answer outlives revisions. */
export interface SceneDoubts {
  readonly ground: SceneGround;
  readonly day: StoryDay;
  readonly extras: readonly SceneExtra[];
  readonly elements: readonly SceneElement[];
  readonly states: readonly StateDoubt[];
  readonly costumes: readonly CostumeDoubt[];
  readonly nights: readonly NightDoubt[];
  readonly unclear: readonly Unclear[];
  readonly place: PlaceDoubt | null;
  /** Names of what stands in this set outside the flashback that plays here. */
  readonly pastDressing: readonly string[];
}

/** A person last seen at night and next seen in the same place the day after. */
export interface NightDoubt {
  readonly id: string;
  readonly person: string;
  readonly before: string;
  readonly line: number;
}

/** A find below this confidence is asked about. */
const doubtful = 0.6;

/** Ids of the questions that an `answer` note settles anywhere in the script. */
export function readAnswers(ground: Ground): ReadonlyMap<string, string> {
  const notes = [ground.script.notes, ...ground.scenes.map(({ scene }) => scene.notes)];
  const answers = notes.flatMap((list) => notesOf(list, 'answer'));
  return new Map(answers.map(({ question, line }) => [answeredId(question), line]));
}

/** The id that an `answer` note names, without the sign that may part it from the line. */
export function answeredId(question: string): string {
  return question
    .trim()
    .replace(/[;:,]+$/, '')
    .toLowerCase();
}

/** Writes the open questions of a scene: decisions about the story first, then things, then work; what is answered is left out. */
export function askQuestions(doubts: SceneDoubts, answers: ReadonlyMap<string, string>): Question[] {
  const questions = [...askStory(doubts), ...askElements(doubts), ...askFinder(doubts)];
  const ids = new Set<string>();
  return questions.filter(({ id }) => {
    if (answers.has(id) || ids.has(id)) return false;
    ids.add(id);
    return true;
  });
}

/** The id of the question whether clothes are kept overnight; an answer that begins with yes keeps them. */
export function nightQuestionId(person: string, scene: string): string {
  return `clothes-${slug(person)}-${scene}`;
}

const story = (id: string, text: string, line: number, settle: string): Question => ({
  id,
  text,
  line,
  settle,
  kind: 'story',
  element: null,
});

function* askStory({
  ground,
  day,
  extras,
  states,
  costumes,
  nights,
  place,
  pastDressing,
}: SceneDoubts): Generator<Question> {
  const { id, scene } = ground;
  const line = scene.heading.at.start.line;
  if (!day.sure) {
    const settle = day.series === 'D' ? `> day: ${day.number}` : '> day: flashback';
    yield story(
      `day-${id}`,
      `Is this still ${day.label}? Read so because: ${day.reason}.`,
      line,
      `Type "${settle}", or the right day.`,
    );
  }
  for (const night of nights) {
    yield story(
      night.id,
      `A new day for ${night.person} after the night of ${night.before}: still the same clothes?`,
      night.line,
      `Type "> answer: ${night.id} yes, the same clothes", or "> ${night.person}: wears …".`,
    );
  }
  for (const { person, before, now, line: at } of costumes) {
    const text = `${person} was in ${before} and is now in ${now}: read as a change of costume. Is it one?`;
    yield story(
      `change-${slug(person)}-${id}`,
      text,
      at,
      `Type "> ${person}: changes to ${now}, …", or "> ${person}: wears …".`,
    );
  }
  for (const doubt of states) yield askState(doubt, id);
  for (const { id: extra, name, count, line: at } of extras) {
    if (count === null && isPlural(name)) {
      yield story(`count-${extra}-${id}`, askCount(name), at, `Type "> extras: 6 ${name}" with the number you want.`);
    }
  }
  if (place) {
    const text = `Are "${place.first}" and "${place.second}" one place?`;
    yield story(
      `place-${slug(place.second)}`,
      text,
      line,
      'Write the name the same way in every heading, or answer that there are two.',
    );
  }
  if (pastDressing.length > 0) {
    const text = `In this flashback, which of this place's dressing is there yet: ${pastDressing.join(', ')}?`;
    yield story(
      `past-${id}`,
      text,
      line,
      `Type "> dressing: …" for what is there, or "> answer: past-${id} none of it".`,
    );
  }
}

function askState({ identity, state, line, words, since }: StateDoubt, scene: string): Question {
  const id = `state-${slug(identity.name)}-${scene}`;
  const text = words
    ? `The ${identity.name} was "${state}" in ${since}; the words here say "${words}". Which is it?`
    : `Is the ${identity.name} still "${state}" on this day, as in ${since}?`;
  const settle = `Type "> ${identity.name}: ${words ?? state}", or its state here.`;
  return { id, text, line, settle, kind: 'story', element: identity.name };
}

function askCount(name: string): string {
  return collective.test(name) ? `How many people is the ${name}?` : `How many ${name}?`;
}

const collective = /(?:crowd|family|audience|band|team|group)$/i;

function isPlural(name: string): boolean {
  return collective.test(name) || /(?:s|men|women|people|children)$/i.test(name);
}

function* askElements({ ground, elements, unclear }: SceneDoubts): Generator<Question> {
  for (const { find, meant } of unclear) {
    const names = meant.map(({ name }) => name);
    const text = `Which one is "${find.words}": ${names.join(' or ')}?`;
    const settle = `Mark it with its name: [${find.words}][${names[0]}].`;
    yield {
      id: `which-${slug(find.name)}-${ground.id}`,
      text,
      line: find.at.start.line,
      settle,
      kind: 'element',
      element: find.name,
    };
  }
  const asked = elements.filter((one) => isDoubtful(one)).sort((a, b) => (b.confidence ?? 0) - (a.confidence ?? 0));
  for (const { id, name, category, known, words, line } of asked) {
    const text =
      known === 'implied'
        ? `"${words}": does this scene need ${name}?`
        : `"${words}": is ${name} something to prepare (${category})?`;
    const settle =
      known === 'implied'
        ? `Yes: "> ${category}: ${name}". No: "> no: ${name}".`
        : `Yes: put [${words}] in brackets. No: "> no: ${name}".`;
    yield { id: `need-${id}-${ground.id}`, text, line, settle, kind: 'element', element: id };
  }
}

function isDoubtful({ known, carried, strength, confidence }: SceneElement): boolean {
  if (carried) return false;
  return known === 'implied' ? strength === 'ask' : known === 'found' && (confidence ?? 1) < doubtful;
}

function* askFinder({ ground }: SceneDoubts): Generator<Question> {
  for (const { id, text, at } of ground.finds.questions) {
    const settle = `Type "> answer: ${id} …" with your decision.`;
    yield { id, text, line: at.start.line, settle, kind: 'element', element: null };
  }
  for (const { kind, rule, text, at } of ground.finds.tasks) {
    if (kind !== 'question') continue;
    const id = `task-${slug(rule)}-${slug(text).slice(0, 24)}-${ground.id}`;
    const settle = `Type "> answer: ${id} …" with your decision.`;
    yield { id, text, line: at.start.line, settle, kind: 'task', element: null };
  }
}
