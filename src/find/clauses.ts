import type { Clauses, Deed, Meant, Part, State, Subject } from './clause-types.js';
import { kindFinder } from './kinds.js';
import type { Lexicon } from './lexicon.js';
import { isPersonNoun } from './nameless.js';
import { particleAfter } from './particles.js';
import { findPhrases, type Phrase } from './phrases.js';
import { addPhrase, isDoer } from './place-phrase.js';
import type { Sentence, Token } from './reading.js';
import {
  antecedentOf,
  endOfName,
  giveSubject,
  isAside,
  leavesOutSubject,
  ownSubject,
  verbAwaiting,
  verbOpening,
} from './subjects.js';

/**
 * Takes a sentence apart: its verbs with their subjects, its noun phrases with their parts in the clause. `lead` is whom the sentence
 * before is about: the subject of one that leaves its own out.
 */
export function readClauses(
  sentence: Sentence,
  meant: Meant,
  lexicon: Lexicon,
  shouting = false,
  lead: Subject | null = null,
): Clauses {
  const { tokens } = sentence;
  const phrases = findPhrases(tokens, lexicon);
  let coming = 0;
  const parts: Part[] = [];
  const deeds: Deed[] = [];
  const state: State = {
    subject: leavesOutSubject(sentence) ? lead : null,
    main: null,
    deed: null,
    preposition: null,
    last: null,
    opens: 'start',
    modal: false,
    be: false,
  };
  const help: Help = { meant, lexicon, parts, deeds };
  const isBehindVerb = (phrase: Phrase) => subjectBehindVerb(tokens, phrase, state, help);
  let at = 0;
  while (at < tokens.length) {
    const phrase = phrases[coming];
    if (phrase?.start === at) {
      addPhrase(phrase, tokens, state, parts, isBehindVerb);
      at = phrase.end;
      coming++;
    } else {
      addWord(tokens, at, state, help);
      at++;
    }
  }
  const colon = tokens.findIndex((token) => token.text === ':');
  return {
    sentence,
    parts,
    deeds,
    colon: colon < 0 ? null : colon,
    resolve: meant.resolve,
    stranger: meant.stranger,
    shouting,
    kindOf: kindFinder(tokens, lexicon),
  };
}

/** A sentence that is not taken apart: only its words count. */
export function leaveWhole(sentence: Sentence, meant: Meant, lexicon: Lexicon, shouting: boolean): Clauses {
  const kindOf = kindFinder(sentence.tokens, lexicon);
  return { sentence, parts: [], deeds: [], colon: null, ...meant, shouting, kindOf };
}

interface Help {
  readonly meant: Meant;
  readonly lexicon: Lexicon;
  readonly parts: readonly Part[];
  readonly deeds: Deed[];
}

/** "Out of it climbs a delivery man": gives the verb before the phrase its subject, and tells the verb. */
function subjectBehindVerb(tokens: readonly Token[], phrase: Phrase, state: State, help: Help): Deed | null {
  const deed = verbAwaiting(tokens, phrase.start, state) ?? verbOpening(state);
  if (!deed || !isPersonNoun(tokens[phrase.head] as Token, help.lexicon)) return null;
  giveSubject(help.deeds, deed, { phrase, person: null, pronoun: null });
  return deed;
}

function addWord(tokens: readonly Token[], at: number, state: State, help: Help): void {
  const token = tokens[at] as Token;
  if (token.tag === 'name' || token.tag === 'pronoun') addPerson(tokens, at, state, help);
  else if (token.tag === 'verb' || token.tag === 'participle') addDeed(tokens, at, state, help, token.lemma);
  else if (token.tag === 'auxiliary') addAuxiliary(tokens, at, state, help);
  else if (token.tag === 'preposition') addPreposition(tokens, at, state, help.lexicon);
  else if (token.tag === 'punctuation') addSign(token, state);
  else if (token.tag === 'conjunction') addConjunction(tokens, at, state);
  else if (token.tag === 'particle') state.opens = 'word';
}

/** "takes off his cap" has no preposition, "out of the box" has one of two words. */
function addPreposition(tokens: readonly Token[], at: number, state: State, lexicon: Lexicon): void {
  const [before, token] = [tokens[at - 1], tokens[at] as Token];
  state.opens = 'word';
  if (token.lower === 'on' && before?.tag === 'auxiliary' && state.deed?.at === at - 1) return;
  const afterVerb = before?.tag === 'verb' || before?.tag === 'participle';
  if (afterVerb && lexicon.find(`${before.lemma} ${token.lower}`)?.classes.includes('phrasal')) return;
  const measured = before && /^(?:noun|name|pronoun|number|determiner)$/.test(before.tag);
  state.preposition = token.lower === 'of' && !measured ? `${before?.lower ?? ''} of` : token.lower;
}

function addPerson(tokens: readonly Token[], at: number, state: State, help: Help): void {
  const { meant } = help;
  const token = tokens[at] as Token;
  const tail = tokens[at + 1];
  if (tail?.tag === 'possessive' && /^['’]s?$/i.test(tail.lower)) return;
  if (token.tag === 'name' && token.person === null && !/^\p{Lu}/u.test(token.text)) return;
  // The Plum of "behind Mr. Plum" is the one behind whom.
  if (token.person !== null && tokens[at - 1]?.person === token.person) return;
  const subject = {
    phrase: null,
    person: token.person ?? meant.resolve(at),
    pronoun: token.tag === 'pronoun' ? token.lower : null,
    stranger: token.tag === 'pronoun' ? meant.stranger(at) : null,
  };
  const awaiting = token.tag === 'name' || /^(?:he|she)$/.test(token.lower) ? verbAwaiting(tokens, at, state) : null;
  if (awaiting) {
    giveSubject(help.deeds, awaiting, subject);
    state.subject = subject;
    state.main = subject;
  } else if (token.lower === 'who' && at > 0) {
    state.subject = antecedentOf(tokens, at, state, help.parts, help.lexicon);
    state.deed = null;
  } else if (/^(?:which|that)$/.test(token.lower) && state.last) {
    state.subject = { phrase: state.last.phrase, person: null, pronoun: null };
    state.deed = null;
  } else if (
    !state.preposition &&
    (!state.deed ||
      ((state.opens === 'comma' || state.opens === 'conjunction') && isDoer(tokens, endOfName(tokens, at))))
  ) {
    giveSubject(help.deeds, verbOpening(state), subject);
    state.subject = subject;
    state.deed = null;
    if (!state.main || state.opens !== 'word') state.main = subject;
  }
  state.preposition = null;
  state.opens = 'word';
}

function addDeed(tokens: readonly Token[], at: number, state: State, help: Help, lemma: string): void {
  const token = tokens[at] as Token;
  const afterComma = state.opens === 'comma' && (token.tag === 'participle' || isAside(state, help.deeds));
  const subject = afterComma
    ? (state.main ?? state.subject)
    : token.tag === 'participle' && state.opens === 'word' && state.last && !state.be
      ? ownSubject(tokens, at, state, help.parts, help.lexicon)
      : state.subject;
  const deed: Deed = {
    at,
    lemma,
    participle: token.tag === 'participle',
    passive: token.tag === 'participle' && !token.lower.endsWith('ing'),
    unreal: state.modal,
    particle: particleAfter(tokens, at),
    subject,
  };
  help.deeds.push(deed);
  state.deed = deed;
  state.preposition = null;
  state.opens = 'word';
  state.modal = false;
  state.be = false;
}

function addAuxiliary(tokens: readonly Token[], at: number, state: State, help: Help): void {
  const token = tokens[at] as Token;
  // "She has on a blue frock": the verb is to wear.
  if (/^(?:has|have|had)$/.test(token.lower) && tokens[at + 1]?.lower === 'on') {
    addDeed(tokens, at, state, help, 'wear');
    return;
  }
  if (
    /^(?:would|could|might|may|should|must|can|cannot|will|shall|'ll|'d|can't|won't|couldn't|wouldn't|didn't|don't|doesn't)$/.test(
      token.lower,
    )
  )
    state.modal = true;
  if (/^(?:is|are|was|were|be|been|being|'s|'re|'m)$/.test(token.lower)) state.be = true;
  if (!state.deed || state.opens === 'conjunction') state.deed = null;
  state.opens = 'word';
}

/** "quick as a wink": no clause of its own. */
function comparesThing(tokens: readonly Token[], from: number): boolean {
  const end = tokens.findIndex(({ tag }, at) => at >= from && /^(?:punctuation|verb|auxiliary|participle)$/.test(tag));
  return tokens[from]?.tag === 'determiner' && tokens[end]?.tag === 'punctuation';
}

function addSign(token: Token, state: State): void {
  state.preposition = null;
  if (token.text === ',') {
    state.opens = 'comma';
    return;
  }
  // What stands in brackets behind a subject leaves it the subject: "Greta (ninety) smokes".
  if (/^[()]/.test(token.text) && state.subject) {
    state.opens = 'comma';
    return;
  }
  if (/^[:;—–.!?()-]/.test(token.text)) {
    state.opens = token.text === ':' ? 'colon' : 'start';
    state.deed = null;
    state.last = null;
    if (token.text !== ':') state.subject = null;
  }
}

function addConjunction(tokens: readonly Token[], at: number, state: State): void {
  const token = tokens[at] as Token;
  if (token.lower === 'as' && comparesThing(tokens, at + 1)) {
    state.preposition = 'as';
    state.opens = 'word';
    return;
  }
  state.preposition = null;
  state.be = false;
  if (/^(?:and|or|then|but|nor)$/.test(token.lower)) {
    state.opens = 'conjunction';
    return;
  }
  state.opens = 'start';
  state.deed = null;
  state.subject = null;
  state.last = null;
}
