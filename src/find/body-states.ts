import { bondOf } from '../trade/verb-tools.js';
import { dressingOn } from './body-dressings.js';
import type { Clauses } from './clause-types.js';
import type { Event } from './events.js';
import { type Holder, named, nobody, ownerOfPhrase, strangerOf } from './holder.js';
import type { Lexicon } from './lexicon.js';
import type { Token } from './reading.js';

/** Words of colour: a state of the skin only when said of it ("her lips are blue"), no state as a plain adjective ("blue eyes"). */
const colours = /^(?:blue|black|purple|white|grey|gray|red|scarlet|crimson|cut|broken|split)$/;
const colourShows = /^(?:lip|finger|fingertip|hand|palm|wrist|forearm|toe|thumb|foot|knuckle|nail|tooth|tongue)$/;

/** True when the word at a place stands in a list. */
type Is = (at: number, list: string) => boolean;

/** Finds what make-up must show (parts of the body in a state, and what is on them), and who or what is bound or on fire. */
export function findBodyStates(clauses: Clauses, lexicon: Lexicon): Event[] {
  const { tokens } = clauses.sentence;
  const is: Is = (at, list) => {
    const token = tokens[at];
    if (token === undefined) return false;
    return lexicon.find(token.tag === 'noun' ? token.lemma : token.lower)?.classes.includes(list) ?? false;
  };
  const events: Event[] = [];
  for (const [at, { tag }] of tokens.entries()) {
    if (tag === 'noun' && is(at, 'body')) events.push(...bodyState(tokens, at, is, () => ownerOf(clauses, at)));
    if (tag === 'adjective' || tag === 'participle')
      events.push(...wordState(tokens, at, is, () => ownerOf(clauses, at)));
  }
  return events;
}

function bodyState(tokens: readonly Token[], at: number, is: Is, owner: () => Holder): Event[] {
  const smear = dressingOn(tokens, at) ?? smearOn(tokens, at, is);
  if (smear !== null) {
    const before = tokens[smear - 1];
    const kind = before?.tag === 'noun' && smear - 1 !== at ? `${before.lower} ` : '';
    const name = `${kind}${(tokens[smear] as Token).lower}`;
    return [
      {
        at: smear,
        from: at,
        name,
        category: 'makeup',
        ...belonging(owner()),
        confidence: 0.75,
        rule: 'something is on the body',
        hides: null,
      },
    ];
  }
  const state = stateOf(tokens, at, is);
  if (state === null) return [];
  const side = /^(?:left|right)$/.exec(tokens[at - 1]?.lower ?? '')?.[0];
  const name = [state < at || !side ? null : side, (tokens[at] as Token).lower].filter((one) => one !== null).join(' ');
  const rule = 'a part of the body is in a state that make-up shows';
  return [
    {
      at,
      from: Math.min(at, state),
      name: `${(tokens[state] as Token).lower} ${name}`,
      category: 'makeup',
      ...belonging(owner()),
      confidence: 0.75,
      rule,
      hides: null,
    },
  ];
}

/** Words that by themselves name a state: bearded, shackled, burning. */
function wordState(tokens: readonly Token[], at: number, is: Is, owner: () => Holder): Event[] {
  const name = (tokens[at] as Token).lower;
  const event = { at, from: at, name, confidence: 0.75, hides: null };
  if (is(at, 'on-fire') && tokens[at + 1]?.tag === 'noun' && !is(at + 1, 'body'))
    return [{ ...event, category: 'effects', by: null, rule: 'a thing is on fire' }];
  const isLoose = name === 'bound' && !/^(?:and|hand|to|with)$/.test(tokens[at + 1]?.lower ?? '');
  if (is(at, 'restrained') && !isLoose)
    return [{ ...event, name: bondOf(name), category: 'props', ...belonging(owner()), rule: 'somebody is held by it' }];
  // Only of a body: paperbacks swell too.
  const ofThing = name === 'swollen' && tokens[at + 1]?.tag === 'noun' && !is(at + 1, 'body');
  if (!is(at, 'makeup-words') || nearBody(tokens, at, is) || ofThing) return [];
  return [{ ...event, category: 'makeup', ...belonging(owner()), rule: 'somebody looks as only make-up shows' }];
}

/** Place of the word that tells the state of a part of the body, or null. */
function stateOf(tokens: readonly Token[], at: number, is: Is): number | null {
  const sided = /^(?:left|right)$/.test(tokens[at - 1]?.lower ?? '') ? at - 2 : at - 1;
  const before = tokens[sided];
  if (before && before.tag !== 'verb' && is(sided, 'skin-states') && !colours.test(before.lower)) return sided;
  let next = at + 1;
  if (/^(?:is|are|was|were|has|have|looks?|turns?|goes?|go|turned|gone)$/.test(tokens[next]?.lower ?? '')) next++;
  while (tokens[next]?.tag === 'adverb') next++;
  const state = tokens[next];
  if (!state || !is(next, 'skin-states') || (state.tag === 'noun' && !colours.test(state.lower))) return null;
  const after = tokens[next + 1];
  if (after?.tag === 'noun' && !colours.test(after.lower) && after.lower !== 'pink') return null;
  if (!colours.test(state.lower)) return next;
  return colourShows.test((tokens[at] as Token).lemma) || after?.lower === 'from' ? next : null;
}

/** "his face white with plaster": the place of what is on the body, or null. */
function smearOn(tokens: readonly Token[], at: number, is: Is): number | null {
  for (let here = at + 1; here < Math.min(tokens.length, at + 5); here++) {
    const token = tokens[here] as Token;
    if (/^[.;,]/.test(token.text) || token.tag === 'noun' || token.tag === 'verb') return null;
    if (token.lower === 'with') return tokens[here + 1]?.tag === 'noun' && is(here + 1, 'smears') ? here + 1 : null;
  }
  return null;
}

function nearBody(tokens: readonly Token[], at: number, is: Is): boolean {
  for (let near = Math.max(0, at - 3); near <= Math.min(tokens.length - 1, at + 2); near++) {
    if (tokens[near]?.tag === 'noun' && is(near, 'body')) return true;
  }
  return false;
}

const belonging = ({ person: by, stranger }: Holder) => ({ by, stranger });

/** Whose body it is: the owner of the phrase, else the one named last before it, of a name or without. */
function ownerOf(clauses: Clauses, at: number): Holder {
  const { tokens } = clauses.sentence;
  const part = clauses.parts.find((one) => one.phrase.start <= at && at < one.phrase.end);
  if (part?.phrase.owner) return ownerOfPhrase(part.phrase, clauses);
  for (let before = at; before >= 0; before--) {
    const person = tokens[before]?.person ?? null;
    // "TILLY, Dot's granddaughter, face painted": not the one whose granddaughter she is.
    if (person !== null && tokens[before + 1]?.tag !== 'possessive') return named(person);
  }
  const strangers = clauses.parts.flatMap(({ phrase }) =>
    phrase.head <= at ? (strangerOf(phrase, clauses) ?? []) : [],
  );
  return strangers.length === 1 ? { person: null, stranger: strangers[0] as Token } : nobody;
}
