import { slug } from '../base/slug.js';
import type { Script } from '../script/types.js';
import type { Clauses, Deed } from './clause-types.js';
import type { Mention } from './mentions.js';
import type { Token } from './reading.js';
import type { Named } from './same-element.js';
import type { Find, FindQuestion } from './types.js';

/** A listed mention with the find that was made of it. */
export interface Listed {
  readonly named: Named;
  readonly find: Find;
}

/** A pronoun that is the object of a verb, with the thing that it means. */
export interface PronounThing {
  readonly clause: Clauses;
  readonly deed: Deed;
  /** Place of the pronoun. */
  readonly at: number;
  readonly meant: Listed;
}

export interface PronounThings {
  readonly things: readonly PronounThing[];
  readonly questions: readonly FindQuestion[];
}

/** What a sentence of a scene leaves behind for the pronouns after it. */
interface Told {
  readonly paragraph: number;
  readonly things: readonly Listed[];
  /** The thing that a pronoun of it means: in hand, and before all others. */
  readonly again: Listed | null;
}

const lasting = /^(?:props|costumes|dressing|food|vehicles|graphics|plants)$/;
/** How far back a pronoun reaches, in sentences that name things. */
const reach = 3;

/**
 * Tells which thing "it" and "them" behind a verb mean: the one last handled, when it is the only handled one of the fitting number where
 * things were last named. Where two fit it asks, unless an `answer` note of the scene tells. `listed` stands in the order of the text.
 */
export function readPronounThings(
  clauses: readonly Clauses[],
  listed: readonly Listed[],
  script: Script,
): PronounThings {
  const bySentence = groupBySentence(listed);
  const things: PronounThing[] = [];
  const questions: FindQuestion[] = [];
  let told: Told[] = [];
  let scene = -1;
  for (const clause of clauses) {
    const { sentence } = clause;
    if (sentence.kind !== 'action') continue;
    if (sentence.scene !== scene) told = [];
    scene = sentence.scene;
    const here = bySentence.get(sentence) ?? [];
    let again: Listed | null = null;
    for (const deed of clause.deeds) {
      const at = pronounOf(deed, clause);
      if (at === null) continue;
      const fitting = meantBy(deed, at, clause, here, again, told);
      const only = fitting.length > 1 ? answerOf(deed, fitting, clause, script, questions) : fitting[0];
      if (!only) continue;
      again = only;
      things.push({ clause, deed, at, meant: only });
    }
    if (here.length > 0 || again)
      told = [{ paragraph: sentence.paragraph, things: here, again }, ...told].slice(0, reach);
  }
  return { things, questions };
}

function groupBySentence(listed: readonly Listed[]): Map<Clauses['sentence'], Listed[]> {
  const groups = new Map<Clauses['sentence'], Listed[]>();
  for (const one of listed) {
    const { sentence } = one.named.mention;
    const group = groups.get(sentence);
    if (group) group.push(one);
    else groups.set(sentence, [one]);
  }
  return groups;
}

/** The place of "it" or "them" right behind the verb, or behind its particle: "tears it", "puts on it". */
function pronounOf(deed: Deed, { sentence }: Clauses): number | null {
  if (deed.unreal || deed.passive) return null;
  const next = sentence.tokens[deed.at + 1]?.lower ?? '';
  return next === 'it' || next === 'them' ? deed.at + 1 : null;
}

/** The things that the pronoun may mean, one of each name: of the nearest place that names a fitting one. */
function meantBy(
  deed: Deed,
  at: number,
  { sentence }: Clauses,
  here: readonly Listed[],
  again: Listed | null,
  told: readonly Told[],
): Listed[] {
  const { tokens } = sentence;
  const several = tokens[at]?.lower === 'them';
  const fits = (one: Listed) => lasting.test(one.find.category) && isSeveral(one.named.mention) === several;
  const before = here.filter(({ named }) => headOf(named.mention).end <= (tokens[deed.at] as Token).start);
  const places: Told[] = [{ paragraph: sentence.paragraph, things: before, again }, ...told];
  for (const { paragraph, things, again: pronoun } of places) {
    if (sentence.paragraph - paragraph > 2) return [];
    if (pronoun && fits(pronoun) && suits(deed, pronoun)) return [pronoun];
    const fitting = things.filter(fits);
    if (fitting.length === 0) continue;
    // "They take them by the arm": people may be meant.
    if (several && namesPeople(places[0] === undefined ? null : sentence)) return [];
    const handled = onePerName(fitting.filter((one) => one.named.mention.inHand && suits(deed, one)));
    return handled.length > 0 ? handled : onlyOne(fitting, deed);
  }
  return [];
}

/** "A letter lies on the mat. Ben picks it up": nothing is in hand, and one thing alone can be taken; of several, the one that does something. */
function onlyOne(fitting: readonly Listed[], deed: Deed): Listed[] {
  if (!taking.test(deed.lemma)) return [];
  const portable = onePerName(fitting.filter((one) => isLoose(one) && suits(deed, one)));
  if (portable.length < 2) return portable;
  const movers = onePerName(portable.filter(({ named }) => isDoing(named.mention)));
  return movers.length === 1 ? movers : [];
}

const taking =
  /^(?:catch|grab|take|pick|snatch|seize|fetch|collect|retrieve|lift|open|read|unfold|pocket|hold|carry|raise|tear|eat|drink|crumple|fold|bite|throw|toss|hide|examine|sniff|shake)$/;

/** In the picture, and in no way a part of the place: a letter that lies there, no shelf. */
const isLoose = (one: Listed) =>
  (/^(?:props|food|graphics|costumes)$/.test(one.find.category) || liesThere(one)) &&
  !one.find.worn &&
  !one.named.mention.signals.use.placed;

/** A thing that could be in hand, and only lies or hangs there. */
export function liesThere({ find, named: { mention } }: Listed): boolean {
  const { letters, classes } = mention.kind;
  return find.category === 'dressing' && letters.startsWith('p') && !classes.includes('fixed');
}

const isDoing = ({ part, signals }: Mention) => part.role === 'subject' && signals.use.subjectOfDeed;

const headOf = ({ sentence, part }: Mention) => sentence.tokens[part.phrase.head] as Token;

/** Scissors and a pair of gloves are several, as the grammar has it. */
const isSeveral = ({ name }: Mention) =>
  name.head !== name.singular || /(?:scissors|forceps|glasses|trousers|jeans|pliers)$/.test(name.head);

const namesPeople = (sentence: Clauses['sentence'] | null) =>
  new Set((sentence?.tokens ?? []).flatMap(({ person }) => person ?? [])).size > 1;

/** Only clothes are put on and taken off, only food is eaten, only what can be read is read. */
function suits({ lemma, particle }: Deed, { find, named }: Listed): boolean {
  const worn = named.mention.kind.letters.includes('c') || find.category === 'costumes';
  if (/^(?:wear|don|unbutton|button|zip|unzip)$/.test(lemma)) return worn;
  if (/^(?:eat|drink|chew|swallow|bite|sip)$/.test(lemma)) return /^(?:food|props)$/.test(find.category) && !worn;
  if (lemma === 'put' && particle === 'on') return worn;
  return !(/^(?:read|light|smoke|open|unfold)$/.test(lemma) && find.category === 'costumes');
}

function onePerName(things: readonly Listed[]): Listed[] {
  return [...new Map(things.map((one) => [one.find.name, one])).values()];
}

/** Asks which of several it is, and gives the one that the writer has answered. */
function answerOf(
  deed: Deed,
  fitting: readonly Listed[],
  { sentence }: Clauses,
  script: Script,
  questions: FindQuestion[],
): Listed | undefined {
  const names = fitting.map(({ find }) => find.name);
  const start = (sentence.tokens[deed.at] as Token).start;
  const pronoun = sentence.tokens[deed.at + 1] as Token;
  const words = sentence.text.slice(start, pronoun.end);
  const id = slug(['which', words, ...names].join(' '));
  const text = `Which one is "${pronoun.lower}" in "${words}": ${names.map((name) => `the ${name}`).join(' or ')}?`;
  questions.push({ scene: sentence.scene, id, once: false, text, words, at: sentence.place(start, pronoun.end) });
  const notes = script.scenes[sentence.scene]?.notes ?? [];
  const said = notes.flatMap((note) =>
    note.kind === 'answer' && note.question.startsWith(id) ? [note.line.toLowerCase()] : [],
  );
  const named = fitting.filter(({ find }) => said.some((line) => line.includes(find.name.toLowerCase())));
  return named.length === 1 ? named[0] : undefined;
}
