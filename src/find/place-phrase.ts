import type { Deed, Part, State } from './clause-types.js';
import type { Phrase } from './phrases.js';
import type { Token } from './reading.js';

/** Adds a noun phrase with its part in the clause, and makes it the subject when it is one. */
export function addPhrase(
  phrase: Phrase,
  tokens: readonly Token[],
  state: State,
  parts: Part[],
  isBehindVerb: (phrase: Phrase) => Deed | null,
): void {
  if (isOwner(tokens, phrase)) {
    parts.push({
      phrase,
      role: 'loose',
      preposition: "'s",
      deed: state.deed,
      listedWith: null,
      ofPart: null,
      opens: state.opens,
      about: null,
    });
    state.preposition = state.preposition ?? null;
    return;
  }
  if (state.preposition === 'of' && countsSome(tokens, phrase.start, state)) state.preposition = null;
  const verb = isBehindVerb(phrase);
  const part = verb ? makePart(phrase, state, 'subject', null, null) : placePhrase(phrase, tokens, state);
  parts.push(part);
  if (part.role === 'subject') {
    // "rain hammering on the roof" is an aside: the clause keeps its subject.
    const aside = state.subject !== null && verbAfter(tokens, phrase.end) === 'participle';
    if (!aside) state.subject = { phrase, person: null, pronoun: null };
    if (!state.main || state.opens === 'start') state.main = state.subject;
  }
  state.last = part;
  state.preposition = null;
  state.opens = 'word';
}

/** "One of the robbers drops a sack": the robbers do it. */
export function countsSome(tokens: readonly Token[], at: number, { deed, last, opens }: State): boolean {
  if (deed !== null || last !== null || opens !== 'word') return false;
  return /^(?:one|two|three|four|some|none|both|each|most|several|another|many|all)$/.test(tokens[at - 2]?.lower ?? '');
}

const isOwner = (tokens: readonly Token[], phrase: Phrase) => {
  const next = tokens[phrase.end];
  return next?.tag === 'possessive' && /^['’]s?$/i.test(next.lower);
};

function placePhrase(phrase: Phrase, tokens: readonly Token[], state: State): Part {
  const { preposition, last, opens } = state;
  const joins = opens === 'conjunction';
  if (preposition) return makePart(phrase, state, 'preposition', null, preposition === 'of' ? last : null);
  const next = verbAfter(tokens, phrase.end) ?? (joins && isDoer(tokens, phrase.end) ? 'verb' : null);
  if (opens === 'comma' || joins) {
    const bent = next === 'participle' && !tokens[phrase.end]?.lower.endsWith('ing');
    if (next && !(bent && last && joins)) {
      const partner = joins && !state.deed && last?.role === 'subject' ? last : null;
      const about = opens === 'comma' ? (state.main ?? state.subject) : null;
      return { ...makePart(phrase, state, 'subject', partner, null), deed: null, about };
    }
    const listed =
      joins ||
      continuesList(tokens, phrase.end) ||
      (!phrase.owner && (last?.listedWith || (state.deed && last?.role === 'object')));
    return last && listed ? inherit(phrase, state, last) : makePart(phrase, state, 'loose', null, null);
  }
  if (state.deed) return makePart(phrase, state, 'object', null, null);
  return makePart(phrase, state, next || anyVerbLater(tokens, phrase.end) ? 'subject' : 'loose', null, null);
}

function makePart(
  phrase: Phrase,
  state: State,
  role: Part['role'],
  listedWith: Part | null,
  ofPart: Part | null,
): Part {
  const { preposition, deed, opens, subject } = state;
  return { phrase, role, preposition, deed, listedWith, ofPart, opens, about: deed ? null : subject };
}

function inherit(phrase: Phrase, state: State, last: Part): Part {
  const { role, preposition, deed, about } = last;
  return { phrase, role, preposition, deed, listedWith: last, ofPart: null, opens: state.opens, about };
}

/** True when a comma or conjunction after the phrase shows that it is one of a list. */
function continuesList(tokens: readonly Token[], end: number): boolean {
  const next = tokens[end];
  return next?.text === ',' || next?.lower === 'and' || next?.lower === 'or';
}

/** What kind of verb of its own follows the phrase that ends here, or null. */
export function verbAfter(tokens: readonly Token[], end: number): 'verb' | 'participle' | null {
  for (let at = end; at < tokens.length; at++) {
    const { tag } = tokens[at] as Token;
    if (tag === 'adverb') continue;
    if (tag === 'verb' || tag === 'auxiliary') return 'verb';
    return tag === 'participle' ? 'participle' : null;
  }
  return null;
}

/** True before a verb of its own, or before an aside between commas and a verb: "the boy, after some thought, takes". */
export function isDoer(tokens: readonly Token[], end: number): boolean {
  if (verbAfter(tokens, end)) return true;
  if (tokens[end]?.text !== ',' || tokens[end + 1]?.tag !== 'preposition') return false;
  for (let at = end + 2; at < Math.min(tokens.length, end + 12); at++) {
    const { text, tag } = tokens[at] as Token;
    if (text === ',') return verbAfter(tokens, at + 1) === 'verb';
    if (tag === 'verb' || /^[.;:!?]$/.test(text)) return false;
  }
  return false;
}

function anyVerbLater(tokens: readonly Token[], end: number): boolean {
  for (let at = end; at < tokens.length; at++) {
    const token = tokens[at] as Token;
    if (token.tag === 'verb' || token.tag === 'auxiliary') return true;
    if (/^[.;:!?—–]/.test(token.text)) return false;
  }
  return false;
}
