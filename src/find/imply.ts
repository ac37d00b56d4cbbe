import { slug } from '../base/slug.js';
import type { Script } from '../script/types.js';
import type { Implication, ImpliedElement, ImpliedQuestion } from '../trade/implications/implication.js';
import { meansAdult } from './implied/ages.js';
import { isAnswered, type Told } from './implied/answered.js';
import { cuesIn, settingsThatImply } from './implied/cued.js';
import { type Evidence, readEvidence, readSettings } from './implied/evidence.js';
import { collectPresent, headOf, isPresent, type Present } from './implied/present.js';
import { groupParagraphs, nameSubject, type Paragraphs } from './implied/subject.js';
import { namesTool } from './implied/tool.js';
import type { Sentence } from './reading.js';
import type { Find, FindQuestion, Strength, Task } from './types.js';

/** What words imply without naming it. */
export interface Implied {
  readonly elements: readonly Find[];
  readonly tasks: readonly Task[];
  readonly questions: readonly FindQuestion[];
}

const confidences: Readonly<Record<Strength, number>> = { certain: 0.9, likely: 0.65, ask: 0.4 };

/** Applies the table of implications: each rule once a scene. What is present already is not listed again. */
export function imply(sentences: readonly Sentence[], script: Script, elements: readonly Find[]): Implied {
  const evidence = [
    ...readEvidence(script, sentences, cuesIn(sentences).implications, elements),
    ...readSettings(script, sentences, settingsThatImply(), elements),
  ]
    .filter((one) => one.owner.id !== 'child' || !meansAdult(one))
    .sort((a, b) => a.at.start.offset - b.at.start.offset);
  const paragraphs = groupParagraphs(sentences);
  const present = collectPresent(script, sentences, elements);
  return {
    elements: listElements(evidence, present, paragraphs),
    tasks: listTasks(evidence),
    questions: listQuestions(evidence, { sentences, elements, present }, paragraphs),
  };
}

type Raised = Evidence<Implication>;

/** Fills the words of the script into a text of the table. */
function fill(text: string, { head, object }: Raised): string {
  return text.replaceAll('{head}', head).replaceAll('{object}', object?.lower ?? 'it');
}

function listElements(evidence: readonly Raised[], present: Present, paragraphs: Paragraphs): Find[] {
  const listed = new Map<string, Find>();
  for (const raised of evidence) {
    for (const implied of raised.owner.elements) {
      if (isPresent(present[raised.scene], fill(implied.name, raised), implied.unless)) continue;
      if (implied.category === 'props' && namesTool(raised)) continue;
      const find = asFind(raised, implied, paragraphs);
      const key = `${find.scene} ${headOf(find.name)} ${find.category === 'costumes' ? find.by : ''}`;
      const before = listed.get(key);
      if (!before || before.confidence < find.confidence) listed.set(key, find);
    }
  }
  return [...listed.values()].filter((one) => one.by !== null || !isNamedToo(one, listed));
}

/** A costume double of nobody in particular is the one that somebody in the scene needs. */
function isNamedToo({ scene, name, category }: Find, listed: ReadonlyMap<string, Find>): boolean {
  if (category !== 'costumes' || !name.endsWith(' double')) return false;
  return [...listed.values()].some((one) => one.scene === scene && one.name === name && one.by !== null);
}

function asFind(raised: Raised, implied: ImpliedElement, paragraphs: Paragraphs): Find {
  const { name, category, strength, bySubject } = implied;
  const by = bySubject ? nameSubject(raised, paragraphs, category === 'makeup') : null;
  return {
    scene: raised.scene,
    known: 'implied',
    name: fill(name, raised),
    category,
    count: null,
    by,
    worn: category === 'costumes' && by !== null,
    state: null,
    words: raised.words,
    at: raised.at,
    confidence: confidences[strength],
    rules: [ruleName(raised.owner)],
    strength,
  };
}

function ruleName({ row, id }: Implication): string {
  return `implication ${row}: ${id}`;
}

function listTasks(evidence: readonly Raised[]): Task[] {
  const listed = new Map<string, Task>();
  for (const raised of evidence) {
    for (const { text, kind, strength } of raised.owner.tasks) {
      const filled = fill(text, raised);
      const key = `${raised.scene} ${filled}`;
      const before = listed.get(key);
      if (before && confidences[before.strength] >= confidences[strength]) continue;
      const { scene, words, at } = raised;
      listed.set(key, { scene, text: filled, kind, strength, words, at, rule: ruleName(raised.owner) });
    }
  }
  return [...listed.values()].sort((a, b) => a.at.start.offset - b.at.start.offset);
}

function listQuestions(evidence: readonly Raised[], told: Told, paragraphs: Paragraphs): FindQuestion[] {
  const listed = new Map<string, FindQuestion>();
  for (const raised of evidence) {
    for (const question of raised.owner.questions) {
      if (isAnswered(raised, question, told)) continue;
      const { scene, words, at } = raised;
      const about = question.once ? (nameSubject(raised, paragraphs, true) ?? '') : '';
      const id = slug([question.id, namedIn(question, raised), about].join(' '));
      const key = `${scene} ${id}`;
      if (!listed.has(key))
        listed.set(key, { scene, id, once: question.once, text: fill(question.text, raised), words, at });
    }
  }
  return [...listed.values()];
}

/** The word of the script that a question names, as part of its id. */
function namedIn({ text }: ImpliedQuestion, raised: Raised): string {
  const holder = /\{(?:head|object)\}/.exec(text)?.[0];
  return holder ? fill(holder, raised) : '';
}
