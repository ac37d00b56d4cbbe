import type { Clauses } from './clause-types.js';
import type { Event } from './events.js';
import type { Lexicon } from './lexicon.js';
import type { Token } from './reading.js';

/** Words of colour: a state of the skin only when said of it ("her lips are blue"), no state as a plain adjective ("blue eyes"). */
const colours = /^(?:blue|black|purple|white|grey|gray|red|cut|broken|split)$/;
const colourShows = /^(?:lip|finger|fingertip|hand|toe|thumb|foot|knuckle|nail|tooth|tongue)$/;

/** Finds what make-up must show: parts of the body in a state, and what is on them. */
export function findBodyStates(clauses: Clauses, lexicon: Lexicon): Event[] {
  const { tokens } = clauses.sentence;
  const events: Event[] = [];
  const is = (at: number, name: string) => {
    const token = tokens[at];
    return (
      token !== undefined &&
      (lexicon.find(token.tag === 'noun' ? token.lemma : token.lower)?.classes.includes(name) ?? false)
    );
  };
  const add = (at: number, rule: string) =>
    events.push({ at, category: 'makeup', by: ownerOf(clauses, at), confidence: 0.75, rule });
  tokens.forEach((token, at) => {
    if (token.tag === 'noun' && is(at, 'body')) {
      const substance = substanceOn(tokens, at);
      if (substance !== null) add(substance, 'something on the body');
      else if (hasState(tokens, at, is)) add(at, 'a part of the body is in a state that make-up shows');
      return;
    }
    if (
      is(at, 'makeup-words') &&
      (token.tag === 'adjective' || token.tag === 'participle') &&
      !nearBody(tokens, at, is)
    )
      add(at, 'somebody looks as only make-up shows');
  });
  return events;
}

type Is = (at: number, name: string) => boolean;

function hasState(tokens: readonly Token[], at: number, is: Is): boolean {
  const before = tokens[at - 1];
  if (before && before.tag !== 'verb' && is(at - 1, 'skin-states') && !colours.test(before.lower)) return true;
  let next = at + 1;
  const linked = /^(?:is|are|was|were|looks?|turns?|goes?|go|turned|gone)$/.test(tokens[next]?.lower ?? '');
  if (linked) next++;
  while (tokens[next]?.tag === 'adverb') next++;
  const state = tokens[next];
  if (!state || !is(next, 'skin-states') || (state.tag === 'noun' && !colours.test(state.lower))) return false;
  const after = tokens[next + 1];
  if (after?.tag === 'noun') return false;
  if (!colours.test(state.lower)) return true;
  return colourShows.test((tokens[at] as Token).lemma) || after?.lower === 'from';
}

/** "his face white with plaster": the place of what is on the body. */
function substanceOn(tokens: readonly Token[], at: number): number | null {
  for (let here = at + 1; here < Math.min(tokens.length, at + 5); here++) {
    const token = tokens[here] as Token;
    if (/^[.;,]/.test(token.text) || token.tag === 'noun' || token.tag === 'verb') return null;
    if (token.lower !== 'with') continue;
    const next = tokens[here + 1];
    return next?.tag === 'noun' &&
      /^(?:plaster|soot|mud|dust|blood|sweat|oil|grease|paint|dirt|ash|flour|tears|powder|chalk|frost|snow|grime|coal|mascara)$/.test(
        next.lower,
      )
      ? here + 1
      : null;
  }
  return null;
}

function nearBody(tokens: readonly Token[], at: number, is: Is): boolean {
  for (let near = Math.max(0, at - 3); near <= Math.min(tokens.length - 1, at + 2); near++) {
    if (tokens[near]?.tag === 'noun' && is(near, 'body')) return true;
  }
  return false;
}

/** Whose body it is: the owner of the phrase, else the person named last before it. */
function ownerOf(clauses: Clauses, at: number): string | null {
  const { tokens } = clauses.sentence;
  const part = clauses.parts.find((one) => one.phrase.start <= at && at < one.phrase.end);
  const owner = part?.phrase.owner;
  if (owner?.person) return owner.person;
  if (owner?.pronoun) return clauses.resolve(part?.phrase.start ?? at);
  for (let before = at; before >= 0; before--) if (tokens[before]?.person) return tokens[before]?.person ?? null;
  return null;
}
