import { findBodyStates } from './body-states.js';
import type { Clauses } from './clause-types.js';
import { type Event, findEvents } from './events.js';
import { isPictured, namesPicture } from './implied/unreal.js';
import type { Lexicon } from './lexicon.js';
import { quotedPlaces } from './quoted-words.js';
import type { Token } from './reading.js';
import type { Find } from './types.js';
import { isTitleLine } from './written-words.js';

/** The events of a sentence: what verbs and states of the body name. Nothing in speech. */
export function readEvents(clauses: Clauses, lexicon: Lexicon): Event[] {
  if (clauses.sentence.kind !== 'action') return [];
  if (isTitleLine(clauses.sentence)) return [titleEvent(clauses.sentence.tokens)];
  const quoted = quotedPlaces(clauses.sentence.tokens);
  const { tokens } = clauses.sentence;
  const shows = namesPicture(tokens);
  const isShown = ({ at, category }: Pick<Event, 'at' | 'category'>) =>
    /^(?:effects|visual-effects|stunts)$/.test(category) && isPictured(tokens, { first: at, core: at, last: at });
  const isHere = (one: Pick<Event, 'at' | 'category'>) => !quoted.has(one.at) && !(shows && isShown(one));
  const bodies = findBodyStates(clauses, lexicon).filter(isHere);
  const told = bodies.some(({ category, at }) => category === 'makeup' && bleeds(clauses, at));
  const events = findEvents(clauses, lexicon).filter((one) => isHere(one) && !(told && one.category === 'makeup'));
  return [...events, ...bodies.filter((state) => !events.some((one) => one.at === state.at))];
}

/** Words laid over the picture: "SUPER: Three days later". */
function titleEvent(tokens: readonly Token[]): Event {
  const said = tokens.slice(tokens.findIndex(({ text }) => /^[:—–-]$/.test(text)) + 1);
  const at = tokens.length - said.length;
  return {
    at: Math.min(at, tokens.length - 1),
    from: 0,
    name: 'title on the picture',
    category: 'graphics',
    by: null,
    confidence: 0.9,
    rule: 'words are laid over the picture',
    hides: null,
  };
}

/** "Tim's knee is bleeding" is told by the knee already. */
function bleeds({ sentence }: Clauses, at: number): boolean {
  return sentence.tokens
    .slice(Math.max(0, at - 1), at + 4)
    .some(({ lemma, lower }) => lemma === 'bleed' || lower === 'bleeding');
}

/** An event as a find; its words reach to the end of what happens. */
export function eventFind(event: Event, { sentence }: Clauses): Find {
  const { tokens } = sentence;
  const token = tokens[event.at] as Token;
  const last = tokens[lastWord(tokens, event.at)] as Token;
  const first = tokens[event.from] as Token;
  return {
    scene: sentence.scene,
    known: 'found',
    name: event.name,
    category: event.category,
    count: null,
    by: event.by,
    worn: false,
    state: null,
    words: sentence.text.slice(first.start, Math.max(token.end, last.end)),
    at: sentence.place(first.start, Math.max(token.end, last.end)),
    confidence: event.confidence,
    rules: [event.rule],
    strength: null,
  };
}

/** Place of the last word of what happens: up to six words on, before a comma or a conjunction. */
function lastWord(tokens: readonly Token[], at: number): number {
  let last = at;
  for (let here = at + 1; here < Math.min(tokens.length, at + 7); here++) {
    const token = tokens[here] as Token;
    if (token.tag === 'punctuation' || token.tag === 'conjunction') break;
    if (token.tag === 'noun' || token.tag === 'name' || token.tag === 'adverb' || token.tag === 'particle') last = here;
  }
  return last;
}
