import type { Diagnostic } from '../base/diagnostic.js';
import { sayFind } from '../messages/find.js';
import type { Script } from '../script/types.js';
import type { Clauses, Subject } from './clause-types.js';
import { leaveWhole, readClauses } from './clauses.js';
import { tellForeignWords } from './foreign-words.js';
import { raiseHazards } from './hazards.js';
import { imply } from './imply.js';
import type { Lexicon } from './lexicon.js';
import { markedPlaces } from './marked-places.js';
import { findMoves } from './moves.js';
import { findPeople } from './people-finds.js';
import { answersInAWord, mayPoint } from './plainly-present.js';
import { holdersByPronoun, takeUp } from './pronoun-holders.js';
import { type Listed, readPronounThings } from './pronoun-things.js';
import { readSentences } from './read-sentences.js';
import { readThings } from './read-things.js';
import type { Sentence } from './reading.js';
import { learnReferents } from './referents.js';
import { nameElements } from './same-element.js';
import { changeStates } from './state-changes.js';
import { giveToStrangers, nameStrangers } from './strangers.js';
import { leadOf, listerOf, onlyLists } from './subjects.js';
import { type Find, type Finds, noFinds } from './types.js';
import { gatherElements } from './whole-script.js';

/** What the finder read, and what it has to say about it. */
export interface FoundElements {
  readonly finds: Finds;
  readonly messages: readonly Diagnostic[];
}

/**
 * Reads in the script what nobody marked. English only: for any other `language` it stays silent and says so.
 *
 *   script ─▶ sentences ─▶ clauses ─▶ mentions, events ─▶ elements, people, moves ─▶ implications, hazards
 */
export function findElements(script: Script, lexicon: Lexicon): FoundElements {
  const { language } = script.front;
  if (language !== null && !/^en\b/i.test(language)) {
    const first = script.scenes[0]?.heading.line.at;
    return { finds: noFinds, messages: [sayFind('language-not-read', { language }, first)] };
  }

  // 1. Words: sentences with tagged words.
  const sentences = readSentences(script, lexicon);

  // 2. Grammar: noun phrases with their parts in the clause, verbs with their subjects, whom pronouns mean.
  const clauses = takeApart(sentences, lexicon);

  // 3. What each sentence names: events first, things where no event stands.
  const { mentions, events } = readThings(clauses, placeWords(sentences), lexicon);

  // 4. The whole script: one element under several names, evidence from anywhere.
  const extras = nameElements(mentions.filter((one) => one.category === 'extras'));
  const strangers = nameStrangers(extras, clauses);
  const given = giveToStrangers(mentions, strangers);
  const { finds: things, named } = gatherElements(given, markedPlaces(script), lexicon);
  const listed = named.map((one, at): Listed => ({ named: one, find: things[at] as Find }));
  const pronouns = readPronounThings(clauses, listed, script);
  const handled = holdersByPronoun(pronouns.things, strangers, lexicon);
  const done = events.map(({ find, stranger }) => (stranger ? { ...find, by: strangers.get(stranger) ?? null } : find));
  const all = [...changeStates(clauses, listed, pronouns.things), ...handled, ...done];
  const elements = [...takeUp(all, pronouns.things, lexicon)].sort((a, b) => a.at.start.offset - b.at.start.offset);
  const people = findPeople(clauses, extras, script, lexicon);
  const moves = findMoves(clauses, named, pronouns.things, strangers);

  // 5. What the words imply, and what may hurt somebody.
  const implied = imply(sentences, script, elements);
  const present = [...elements, ...implied.elements];
  const hazards = raiseHazards(sentences, script, present);

  return {
    finds: {
      elements: present,
      people,
      moves,
      tasks: implied.tasks,
      hazards,
      questions: [...pronouns.questions, ...implied.questions],
    },
    messages: language === null ? tellForeignWords(sentences, lexicon) : [],
  };
}

function takeApart(sentences: readonly Sentence[], lexicon: Lexicon): Clauses[] {
  const referents = learnReferents(sentences, lexicon);
  const shouting = isShouting(sentences);
  let lead: Subject | null = null;
  let lister: Subject | null = null;
  let scene = -1;
  let before: Sentence | null = null;
  return sentences
    .filter((one) => one.kind !== 'heading')
    .map((sentence) => {
      if (sentence.scene !== scene) lead = lister = null;
      if (sentence.paragraph !== before?.paragraph) lister = null;
      scene = sentence.scene;
      const meant = referents.enter(sentence);
      const apart = sentence.kind === 'action' || (mayPoint(sentence) && !answersInAWord(sentence, before));
      before = sentence;
      const clauses = apart
        ? readClauses(sentence, meant, lexicon, shouting, lead)
        : leaveWhole(sentence, meant, lexicon, shouting);
      lead = leadOf(clauses, lead);
      if (lister !== null && onlyLists(clauses)) return { ...clauses, lister };
      lister = listerOf(clauses);
      return clauses;
    });
}

/** A script that writes more than a third of the nouns of its action in capitals uses them for everything. */
function isShouting(sentences: readonly Sentence[]): boolean {
  let nouns = 0;
  let loud = 0;
  for (const { kind, tokens } of sentences) {
    if (kind !== 'action') continue;
    for (const { tag, text, lower } of tokens) {
      if (tag !== 'noun') continue;
      nouns++;
      if (text !== lower && text.length > 1 && text === text.toUpperCase()) loud++;
    }
  }
  return nouns > 0 && loud / nouns > 1 / 3;
}

/** The words for places in the headings: a diner that a scene plays in is nobody and nothing to get. */
function placeWords(sentences: readonly Sentence[]): ReadonlySet<string> {
  const headings = sentences.filter((one) => one.kind === 'heading');
  return new Set(
    headings.flatMap(({ tokens }) => tokens.filter((token) => token.tag === 'noun').map((token) => token.lemma)),
  );
}
