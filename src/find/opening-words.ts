import { afterVerb, canBeNoun, type Draft } from './word-neighbours.js';

/**
 * True for the verb of a sentence that leaves out its subject, where the word could be a plural noun too: "Leaves horse standing",
 * "Pockets it", "Creeps forward", "Swings into the saddle and rides off". A plural noun would be the subject of a verb.
 */
export function opensAsVerb(drafts: readonly Draft[], at: number): boolean {
  const { verb } = (drafts[at] as Draft).uses;
  const next = drafts[at + 1];
  if (verb?.form !== 's' || next === undefined || !followsSign(drafts, at)) return false;
  if (/^(?:it|them|him)$/.test(next.lower)) return true;
  if (verb.share < 3) return false;
  if (/^(?:determiner|possessive)$/.test(next.uses.closed ?? '')) return true;
  if (/^(?:adverb)?$/.test(next.uses.closed ?? '') && next.uses.adverb && (!next.uses.particle || verb.share >= 5))
    return true;
  if (next.uses.closed === 'preposition' && turning.test((drafts[at] as Draft).lower))
    return !drafts.slice(at + 2).some(isDeed);
  if (isBareObject(next) && !isDeed(drafts[at + 2])) return true;
  return (afterVerb(next) || canBeNoun(next) || next.lower === 'and') && goesOn(drafts, at + 1);
}

/** Verbs that go on with a preposition, seldom plural nouns: "Reaches for the can." */
const turning =
  /^(?:reaches|looks|turns|points|walks|leans|nods|stares|knocks|glances|climbs|crawls|stands|sits|kneels|runs|digs|rummages|dives|peers|pulls|hides)$/;

/** First in the sentence, save for an adverb: "Suddenly stops". */
function followsSign(drafts: readonly Draft[], at: number): boolean {
  if (at === 0) return true;
  const { uses, lower } = drafts[0] as Draft;
  return at === 1 && (uses.adverb || lower === 'then');
}

function isBareObject(draft: Draft): boolean {
  const { noun, verb } = draft.uses;
  return canBeNoun(draft) && noun !== null && draft.text === draft.lower && (verb?.share ?? 0) < 2;
}

function isDeed(draft: Draft | undefined): boolean {
  const verb = draft?.uses.verb;
  return verb?.form === 's' && draft?.uses.closed === null && (draft.uses.noun === null || verb.share >= 6);
}

/** A second verb without a subject of its own follows: ", stops and rides off". */
function goesOn(drafts: readonly Draft[], from: number): boolean {
  for (let at = from; at < drafts.length - 1; at++) {
    const { text, lower } = drafts[at] as Draft;
    if (text !== ',' && lower !== 'and') {
      if (isDeed(drafts[at])) return false;
      continue;
    }
    const next = drafts[at + ((drafts[at + 1] as Draft).lower === 'and' ? 2 : 1)];
    if (isDeed(next)) return true;
  }
  return false;
}

/**
 * True for a given name that is a word too and opens the sentence: "Rose picks up the phone", "Will and Penny wait". A thing would
 * have its article there.
 */
export function isFirstName(drafts: readonly Draft[], at: number): boolean {
  const draft = drafts[at] as Draft;
  const { given, noun, closed } = draft.uses;
  const isName = given || (closed === 'auxiliary' && /^(?:will|may)$/.test(draft.lower));
  if (!isName || !/^\p{Lu}\p{Ll}/u.test(draft.text) || !opens(drafts, at)) return false;
  const isMass = noun !== null && noun.entry.core === '' && /^[ke]/.test(noun.entry.wordnet);
  if (isMass || noun?.entry.classes.includes('time-words')) return false;
  const next = drafts[at + 1];
  if (drafts[at - 1]?.lower === 'and') return true;
  if (next?.uses.shape === 'tail') return !closed && next.lower === "'s";
  if (next?.lower === 'and') return isGivenName(drafts[at + 2]);
  if (next?.text !== next?.lower) return false;
  return (
    next?.uses.verb?.form === 's' && next.uses.closed === null && (next.uses.noun === null || next.uses.verb.share >= 4)
  );
}

/** First in the sentence, or joined to a name that is. */
function opens(drafts: readonly Draft[], at: number): boolean {
  if (at === 0 || /^[.:;!?"“(—–]/.test(drafts[at - 1]?.text ?? '')) return true;
  return at === 2 && drafts[1]?.lower === 'and' && isGivenName(drafts[0]);
}

const isGivenName = (draft: Draft | undefined) =>
  draft !== undefined &&
  /^\p{Lu}\p{Ll}/u.test(draft.text) &&
  (draft.uses.given || draft.person !== null || /^(?:will|may)$/.test(draft.lower));
