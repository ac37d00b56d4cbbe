import { slug } from '../base/slug.js';
import { collectiveNouns } from '../trade/cue-words.js';
import { all, type Wanted } from './answer-fits.js';
import { questionIds } from './answers.js';
import { groupName } from './extras.js';
import { imagesIn, imagesOf } from './montage.js';
import type { Asked, DayDoubt, SceneDoubts } from './questions.js';
import { headOf } from './same-thing.js';
import { soakingId } from './soaked-answers.js';

/** Asks for the decisions about the story that a scene waits for, the most far-reaching first. */
export function askStory(doubts: SceneDoubts): Asked[] {
  return questionKinds.flatMap((ask) => [...ask(doubts)]);
}

type Ask = (doubts: SceneDoubts) => Iterable<Asked>;

const questionKinds: readonly Ask[] = [
  askDay,
  askImages,
  askUnnamed,
  askLingering,
  askNights,
  askChanges,
  askStates,
  askAlong,
  askSoaked,
  askMakeUp,
  askCounts,
  askPlace,
  askPastDressing,
];

/**
 * A decision about the story. The first thing to type stands in straight quotes, another way in curly ones, so that a list of questions
 * can show the first by itself.
 */
function story(id: string, text: string, line: number, settle: string, wants: Wanted = 'words, yes or no'): Asked {
  return { id, text, line, settle, kind: 'story', element: null, wants, choices: [] };
}

function* askDay({ ground, day, doubtfulDay }: SceneDoubts) {
  if (!doubtfulDay) return;
  const { id, others, since } = doubtfulDay;
  const more =
    others.length > 0
      ? ` The same doubt in ${others.length > 1 ? 'scenes' : 'scene'} ${joinNames(others.map((label) => label.replace(/^scene /, '')))}.`
      : '';
  const text = `${isThatDay(day, since)} Read so because: ${day.reason}.${more}`;
  const forAll = others.length > 0 ? ' for all' : '';
  const where = others.length > 0 ? 'with its number where another day is' : 'with the number of the right day';
  const settle = `Type "> answer: ${id} yes"${forAll}, or \u201c> day: \u2026\u201d ${where}.`;
  yield story(id, text, headingLine(ground), settle, 'yes or no');
}

/** Asks whether a scene plays on the day that it was read for. */
function isThatDay({ label, series, number }: SceneDoubts['day'], since: DayDoubt['since']): string {
  if (series === 'F') return since === null ? 'Is this a flashback?' : `Is this still the flashback ${label}?`;
  if (since === null) return number === 1 ? `Is this ${label}?` : `Does a new story day, ${label}, begin here?`;
  return since === 'earlier' ? `Is this ${label} again?` : `Is this still ${label}?`;
}

/** One question for all images of the montages in a scene. */
function* askImages({ ground, day, wears }: SceneDoubts) {
  const images = imagesOf(ground.scene);
  if (images.length === 0) return;
  const clothes = wears.flatMap(({ person, garments }) => {
    const own = garments.filter(({ action }) => imagesIn(action).length > 0);
    return own.length > 0 ? [`${person}: ${own.map(({ name, action }) => `${name} ${action}`).join(', ')}`] : [];
  });
  const dressed = clothes.length > 0 ? `, in these clothes: ${clothes.join('; ')}` : '';
  const text = `A montage of ${images.length} images, all read as ${day.label}${dressed}. Is that right?`;
  const id = questionIds.images(ground.id);
  const example = `${images[0]?.label} plays on another day`;
  const settle = `Type "> answer: ${id} yes", or what is otherwise: \u201c> answer: ${id}; ${example}\u201d; an image that needs a sheet of its own gets a scene line.`;
  yield story(id, text, ground.scene.heading.at.start.line, settle);
}

function joinNames(names: readonly string[]): string {
  const last = names.at(-1) ?? '';
  return names.length > 1 ? `${names.slice(0, -1).join(', ')} and ${last}` : last;
}

function* askUnnamed({ ground, unnamed }: SceneDoubts) {
  if (!unnamed) return;
  const read = unnamed.read.map(({ person }) => person.name).join(' and ');
  const text = `Who is "${unnamed.word}" at the start of this scene?${read ? ` Read as ${read}.` : ''}`;
  const settle = `Type "> cast: ${read || 'the name'}", or write the name in the line.`;
  const wants = unnamed.guessed ? 'words, yes or no' : 'words';
  yield story(questionIds.unnamed(ground.id), text, unnamed.at.start.line, settle, wants);
}

function* askLingering({ ground, lingering }: SceneDoubts) {
  for (const { presence, since } of lingering) {
    const { id, name } = presence.person;
    const text = `${name} was there in ${since}, and nothing says that ${name} leaves: still there, without a word?`;
    const settle = `Type "> cast: ${name}" if so.`;
    yield story(questionIds.there(id, ground.id), text, headingLine(ground), settle, 'yes or no');
  }
}

function* askMakeUp({ ground, makeUp }: SceneDoubts) {
  for (const { id, identity, person, since, line } of makeUp) {
    const question = questionIds.still(id, ground.id);
    const text = `Is the ${identity.name} of ${person} still to be seen on this day, as in ${since}?`;
    yield story(
      question,
      text,
      line,
      `Type "> answer: ${question} yes", or \u201c> makeup: \u2026\u201d as it looks now.`,
      'yes or no',
    );
  }
}

function* askNights({ nights }: SceneDoubts) {
  for (const { id, person, before, line } of nights) {
    const text = `A new day for ${person} after the night of ${before}: still the same clothes?`;
    yield story(
      id,
      text,
      line,
      `Type "> answer: ${id} yes, the same clothes", or “> ${person}: wears …”.`,
      'yes or no',
    );
  }
}

function* askChanges({ ground, costumes }: SceneDoubts) {
  for (const { person, before, now, line } of costumes) {
    const text = `${person} was in ${before} and is now in ${now}: read as a change of costume. Is it one?`;
    const settle = `Type "> ${person}: changes to ${now}, …", or “> ${person}: wears …”.`;
    yield story(questionIds.change(slug(person), ground.id), text, line, settle, 'yes or no');
  }
}

function* askAlong({ ground, along }: SceneDoubts) {
  for (const { id, identity, person, since } of along) {
    const question = questionIds.along(id, ground.id);
    const text = `${person} took off the ${identity.name} in ${since}: does ${person} have it along here?`;
    const settle = `Type "> answer: ${question} yes", or “> answer: ${question} no” when it stays there.`;
    yield story(question, text, headingLine(ground), settle, 'yes or no');
  }
}

function* askStates({ ground, states }: SceneDoubts) {
  for (const { id, identity, state, line, words, since } of states) {
    const { name } = identity;
    const text = words
      ? `The ${name} was "${state}" in ${since}; the words here say "${words}". Which is it?`
      : `Is the ${name} still "${state}" on this day, as in ${since}, or in which state?`;
    const settle = `Type "> ${name}: ${words ?? state}" with the state it is in here.`;
    yield story(questionIds.state(id, ground.id), text, line, settle);
  }
}

/** Nothing gets wet or dirty silently: only a note or an answer does that. */
function* askSoaked({ ground, soaked }: SceneDoubts) {
  for (const { soaking, garments, worn } of soaked) {
    const { person, kind, words, begins, at } = soaking;
    const id = soakingId(soaking, ground.id);
    const told = garments.length > 0 ? garments.join(', ') : 'the script tells of none';
    const how = `${kind === 'wet' ? 'wet' : soaking.state} ${begins ? 'afterwards' : 'here'}`;
    const text = `${person} ${begins ? 'gets' : 'is'} ${kind} here ("${words}"): which of the clothes are ${how} (${told})?`;
    const some = garments.length > 0 ? garments.slice(0, 2).join(', ') : 'jacket, trousers';
    const settle = `Type "> answer: ${id} all", or name those that are: \u201c> answer: ${id} ${some}\u201d, or \u201cno\u201d.`;
    yield { ...story(id, text, at.start.line, settle), choices: worn.length > 0 ? [...worn, all, 'no'] : [] };
  }
}

function* askCounts({ ground, extras }: SceneDoubts) {
  for (const { id, name, count, line, words } of extras) {
    const many = groupName({ name, words });
    if (count !== null || !isPlural(many)) continue;
    const text =
      isCollective(many) && headOf(many) !== 'people' ? `How many people are the ${many}?` : `How many ${many}?`;
    const settle = `Type "> extras: \u2026 ${many}" with the number you want in place of the dots.`;
    yield story(questionIds.count(id, ground.id), text, line, settle, 'number');
  }
}

function isCollective(name: string): boolean {
  return collectiveNouns.has(headOf(name));
}

function isPlural(name: string): boolean {
  return isCollective(name) || /(?:s|men|women|children)$/i.test(name);
}

function* askPlace({ ground, place }: SceneDoubts) {
  if (!place) return;
  const text = `Are "${place.first}" and "${place.second}" one place?`;
  const id = questionIds.place(slug(place.second));
  const settle = `Type "> answer: ${id} yes" or \u201c> answer: ${id} no\u201d, or write the name the same way in every heading.`;
  yield story(id, text, headingLine(ground), settle, 'yes or no');
}

function* askPastDressing({ ground, pastDressing }: SceneDoubts) {
  if (pastDressing.length === 0) return;
  const id = questionIds.past(ground.id);
  const text = `In this flashback, which of this place's dressing is there yet: ${pastDressing.join(', ')}?`;
  yield story(
    id,
    text,
    headingLine(ground),
    `Type "> dressing: …" for what is there, or “> answer: ${id} none of it”.`,
  );
}

function headingLine({ scene }: SceneDoubts['ground']): number {
  return scene.heading.at.start.line;
}
