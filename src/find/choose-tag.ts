import { chooseClosed } from './closed-words.js';
import { compoundTag, isThingOfDoing } from './compound-words.js';
import {
  isAfterAge,
  isChained,
  isGoal,
  isInChain,
  isJoined,
  isLet,
  isListedGarment,
  isSecondGarment,
  isSetBehindName,
  isTold,
  isVerbOfOne,
  unknownVerb,
} from './neighbours-of-verbs.js';
import { asNominal } from './nominal-words.js';
import { isFirstName, opensAsVerb } from './opening-words.js';
import type { Tag, Token } from './reading.js';
import { isPluralTail, tailTag } from './tails.js';
import { afterVerb, canBeNoun, type Draft, isNominative } from './word-neighbours.js';
import type { WordUses } from './word-uses.js';

/** Where the reader stands in the clause. */
export interface Reading {
  subject: boolean;
  finite: boolean;
  plural: boolean;
  /** The subject so far ends in "and". */
  joined: boolean;
  inPreposition: boolean;
  /** The noun phrase under way: begun by a determiner or adjective, or with its head seen. */
  phrase: 'none' | 'open' | 'headed';
  readonly speech: boolean;
  /** A relative clause has begun before the verb of the main one: "the man who saw him knocks". */
  owed: boolean;
}

/** Chooses the class of the word at `at` from its uses and from what stands before and after it. */
export function chooseTag(drafts: readonly Draft[], at: number, before: readonly Token[], reading: Reading): Tag {
  const draft = drafts[at] as Draft;
  if (draft.person !== null) return 'name';
  if (draft.uses.shape === 'tail') return tailTag(drafts, at, before.at(-1));
  if (draft.uses.shape === 'sign') return isPluralTail(drafts, at, before) ? 'possessive' : 'punctuation';
  if (isFirstName(drafts, at)) return 'name';
  const closed = draft.uses.closed;
  if (closed) return chooseClosed(closed, drafts, at, before, reading);
  if (isOtherName(drafts, at)) return 'name';
  return chooseOpen(drafts, at, before, reading);
}

/** A capital inside a sentence on a word that is not wholly in capitals, or a word no list knows. */
function isOtherName(drafts: readonly Draft[], at: number): boolean {
  const { text, lower, uses } = drafts[at] as Draft;
  if (text === lower || !/^\p{Lu}/u.test(text)) return false;
  const known = uses.noun !== null || uses.verb !== null || uses.adjective >= 0 || uses.adverb;
  if (!known) return true;
  const first = at === 0 || /^[.:;!?"“(—–-]/.test(drafts[at - 1]?.text ?? '');
  return !first && /\p{Ll}/u.test(text);
}

function chooseOpen(drafts: readonly Draft[], at: number, before: readonly Token[], reading: Reading): Tag {
  const { uses } = drafts[at] as Draft;
  if (at === 0 && uses.noun?.entry.core && uses.adjective < 5 && /^[.!]$/.test(drafts[1]?.text ?? '')) return 'noun';
  const previous = lastTag(before);
  const bound = compoundTag(drafts, at, before.at(-1), reading);
  if (bound) return bound;
  if (uses.adverb && !(reading.phrase === 'open' && uses.adjective >= 3)) return 'adverb';
  if (reading.phrase === 'open') return inPhrase(drafts, at, before);
  const verb = asVerbHere(drafts, at, previous, reading) ?? unknownVerb(drafts, at, reading);
  if (verb) return verb;
  return asNominal(drafts, at, previous);
}

/** The class of the last word that is no adverb. */
function lastTag(before: readonly Token[]): Token | null {
  for (let i = before.length - 1; i >= 0; i--) if (before[i]?.tag !== 'adverb') return before[i] as Token;
  return null;
}

/** After a determiner, number or adjective: a modifier while nouns follow, then the head. */
function inPhrase(drafts: readonly Draft[], at: number, before: readonly Token[]): Tag {
  const { uses } = drafts[at] as Draft;
  const next = drafts[at + 1];
  const previous = before.at(-1);
  if (previous?.lower === 'both' && uses.verb?.form === 'base' && isNominative(before.at(-2)?.lower ?? ''))
    return 'verb';
  const alone =
    previous &&
    (previous.tag === 'number' || previous.tag === 'determiner') &&
    /^(?:one|two|three|four|five|six|dozen|all|some|several|many|another|other|each)$/.test(previous.lower);
  if (
    alone &&
    uses.verb &&
    uses.verb.share >= 6 &&
    uses.verb.form === (/^(?:one|another|other|each)$/.test(previous.lower) ? 's' : 'base') &&
    afterVerb(next)
  )
    return 'verb';
  if (next?.person != null && uses.adjective >= 5) return 'adjective';
  const isAge = previous?.tag === 'number' && drafts[at - 2]?.lower === 'of' && drafts[at - 3]?.uses.noun;
  if (isAge && uses.verb?.form === 's' && uses.verb.share >= 4) return 'verb';
  if (previous?.tag === 'adjective' && uses.verb && !uses.noun && uses.adjective < 0 && uses.verb.form === 's')
    return 'verb';
  const more =
    next !== undefined &&
    (canBeNoun(next) || isFormBefore(next, drafts[at + 2])) &&
    !(uses.noun && verbFollows(drafts, at + 1, uses.noun.entry.core !== ''));
  const last =
    uses.noun?.entry.core &&
    next !== undefined &&
    (next.uses.noun?.entry.core ?? '') === '' &&
    !canFollow(drafts[at + 2]);
  if (uses.noun && (last || !(more && isModifier(uses)))) return 'noun';
  if (uses.adjective >= 0 || (uses.verb && uses.verb.form !== 's')) return 'adjective';
  return 'noun';
}

/** "blows the safe open": what could be a noun behind the thing is none when no noun follows it. */
const canFollow = (draft: Draft | undefined) => draft !== undefined && canBeNoun(draft);

/** "the regular watering stop": a form of a verb that a noun follows is part of the phrase. */
function isFormBefore({ uses, person }: Draft, after: Draft | undefined): boolean {
  if (uses.closed !== null || person !== null || uses.verb?.form !== 'ing') return false;
  return after !== undefined && canBeNoun(after);
}

/** "An orderly holds it": the word after the head is the verb, not one more noun. */
function verbFollows(drafts: readonly Draft[], at: number, known: boolean): boolean {
  const verb = (drafts[at] as Draft).uses.verb;
  const next = drafts[at + 1];
  const object = /^(?:determiner|possessive)$/.test(next?.uses.closed ?? '');
  if (!known && !(object && (verb?.share ?? 0) >= 4)) return false;
  if (verb?.form !== 's' || !(afterVerb(next) || verb.share >= 5)) return false;
  return !canFollow(next) || ((next?.uses.adjective ?? 0) >= 5 && !canFollow(drafts[at + 2]));
}

function isModifier(uses: WordUses): boolean {
  if (uses.adjective >= 5) return true;
  return uses.verb !== null && (uses.verb.form === 'ed' || uses.verb.form === 'ing') && !uses.noun?.entry.core;
}

function asVerbHere(drafts: readonly Draft[], at: number, previous: Token | null, reading: Reading): Tag | null {
  const { uses, lower } = drafts[at] as Draft;
  const { verb } = uses;
  if (!verb) return null;
  const next = drafts[at + 1];
  const onlyVerb = !uses.noun && uses.adjective < 0;
  if (verb.form === 'base' && verb.share >= 4 && isLet(drafts, at)) return 'verb';
  if (verb.form === 'ing') return isThingOfDoing(uses, previous, next) ? null : 'participle';
  if (previous?.tag === 'auxiliary')
    return verb.form === 'ed' || isPerfect(previous.lower, lower)
      ? 'participle'
      : verb.form === 'base' && !/^(?:is|are|was|were|be|been|being|'s|'re|'m|has|have|had)$/.test(previous.lower)
        ? 'verb'
        : null;
  if (previous?.lower === 'to' && verb.form === 'base' && isGoal(drafts, at)) return null;
  if (previous?.lower === 'to' && verb.form === 'base')
    return verb.share >= 5 || onlyVerb || (next?.uses.closed ?? '') !== '' ? 'verb' : null;
  const describes = previous?.tag === 'preposition' && uses.adjective >= 5 && next !== undefined && canBeNoun(next);
  if (verb.form === 'ed' && describes) return null;
  if (verb.form === 'ed' && previous === null && uses.adjective >= 5 && next?.uses.noun?.plural) return null;
  if (verb.form === 'ed')
    return previous?.tag !== 'pronoun' && pastIsNoun(lower, uses, reading, next)
      ? null
      : edForm(previous, reading, uses);
  if (verb.form === 's' && isInChain(drafts, at)) return 'verb';
  if (reading.subject && !reading.finite) return finiteVerb(drafts, at, previous, reading);
  if (reading.owed && reading.finite && verb.form === 's' && afterVerb(next)) return 'verb';
  const begins = previous === null || previous.tag === 'punctuation' || previous.tag === 'conjunction';
  if (begins && (onlyVerb || opensAsVerb(drafts, at))) return 'verb';
  if (
    begins &&
    verb.share >= 5 &&
    next &&
    next.uses.closed !== null &&
    /^(?:determiner|possessive|pronoun)$/.test(next.uses.closed)
  )
    return 'verb';
  if (onlyVerb && !(lower.endsWith('s') && previous?.tag === 'preposition')) return 'verb';
  return null;
}

/** "has put": a participle that looks like its base form. */
const isPerfect = (helper: string, word: string) => /^(?:has|have|had|'ve)$/.test(helper) && unchanged.has(word);
const unchanged = new Set(
  'put cut shut hit set let hurt burst cast spread read beat split bet quit shed spit upset'.split(' '),
);

const isMaterial = (draft: Draft | undefined) => draft?.uses.noun?.entry.classes.includes('materials') ?? false;

/** Scripts are told in the present: "a fox stole around her shoulders" holds no theft. */
function pastIsNoun(lower: string, uses: WordUses, reading: Reading, next: Draft | undefined): boolean {
  if (lower === 'wound' && /^(?:round|around|about|up|tight|into|tightly)$/.test(next?.lower ?? '')) return false;
  return (
    !lower.endsWith('ed') && (uses.noun?.entry.core ?? '') !== '' && (reading.phrase === 'headed' || reading.finite)
  );
}

function edForm(previous: Token | null, reading: Reading, uses: WordUses): Tag | null {
  const subject = previous?.tag === 'name' || (previous?.tag === 'pronoun' && reading.subject);
  if (subject && !reading.finite) return 'verb';
  if (uses.noun && previous?.tag === 'preposition') return null;
  return 'participle';
}

/** The clause has its subject and waits for its verb. */
function finiteVerb(drafts: readonly Draft[], at: number, previous: Token | null, reading: Reading): Tag | null {
  const { uses } = drafts[at] as Draft;
  const verb = uses.verb as NonNullable<WordUses['verb']>;
  const next = drafts[at + 1];
  const fits =
    verb.form === 's' || reading.plural || previous?.tag === 'pronoun' || /[^s]s$/.test(previous?.lower ?? '');
  if (!uses.noun && uses.adjective < 0) return 'verb';
  if (!fits) return null;
  // "goggles pushed up in her hair": a participle tells of the noun before it.
  if (previous?.tag === 'punctuation' && uses.noun?.entry.core && isTold(next, drafts[at + 2])) return null;
  if (isAfterAge(drafts, at)) return 'verb';
  if (isSecondGarment(drafts, at) || isSetBehindName(drafts, at) || isListedGarment(drafts, at)) return null;
  if (previous?.tag === 'name' || previous?.tag === 'pronoun')
    return verb.form === 'base' && uses.adjective >= 5 && verb.share < 5 ? null : 'verb';
  if (previous?.tag === 'noun' && uses.noun?.entry.core && isMaterial(drafts[at - 1]) && drafts[at - 2]?.lower !== 'in')
    return null;
  const rival = next?.uses.verb;
  // A plural never stands before the noun it belongs to: in "the robbers stand watch" the second word is the verb.
  const afterPlural = previous?.tag === 'noun' && previous.lemma !== previous.lower;
  if (
    rival &&
    !afterPlural &&
    next &&
    next.uses.closed === null &&
    next.person === null &&
    !next.uses.adverb &&
    (next.uses.adjective < 5 || next.lower === 'go') &&
    rival.form === (verb.form === 's' && uses.noun?.plural ? 'base' : 's') &&
    rival.share >= 5
  )
    return null;
  if (previous?.tag === 'noun') return afterVerb(next) || verb.share >= 2 || isVerbOfOne(drafts, at) ? 'verb' : null;
  if (previous?.tag === 'punctuation' || previous?.tag === 'conjunction') {
    if (isJoined(drafts, at)) return 'verb';
    if (next?.text === ',' && uses.noun?.plural && uses.noun.entry.core.startsWith('a')) return null;
    const chain = next?.text === ',' && isChained(drafts, at + 2);
    if (next && /^[,.;]/.test(next.text)) return verb.share >= 7 || chain ? 'verb' : null;
    if (next && /^(?:determiner|possessive|number|pronoun)$/.test(next.uses.closed ?? '')) return 'verb';
    return afterVerb(next) ? (verb.share >= 2 ? 'verb' : null) : verb.share >= 5 ? 'verb' : null;
  }
  return verb.share >= 6 && afterVerb(next) ? 'verb' : null;
}
