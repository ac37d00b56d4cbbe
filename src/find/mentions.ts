import { findBodyStates } from './body-states.js';
import { categoryByUse } from './by-use.js';
import { type Candidate, findCandidates } from './candidates.js';
import type { Clauses } from './clause-types.js';
import { type Event, findEvents } from './events.js';
import { weighEvidence } from './evidence.js';
import type { Lexicon } from './lexicon.js';
import { whyPresent } from './plainly-present.js';
import type { Token } from './reading.js';
import type { Find } from './types.js';
import { whoHas } from './who.js';

const cut = 0.5;

/** What one sentence mentions. */
export function readMentions(clauses: Clauses, lexicon: Lexicon): Find[] {
  const candidates = findCandidates(clauses, lexicon);
  if (clauses.sentence.kind !== 'action') return candidates.flatMap((one) => readSpoken(one, clauses, lexicon) ?? []);
  const events = [...findEvents(clauses, lexicon), ...findBodyStates(clauses, lexicon)];
  const taken = new Set(events.map((event) => event.at));
  const things = candidates
    .filter((one) => !taken.has(one.part.phrase.head))
    .flatMap((one) => readMention(one, clauses, lexicon) ?? []);
  return [...things, ...events.map((event) => eventFind(event, clauses))];
}

function readMention(candidate: Candidate, clauses: Clauses, lexicon: Lexicon): Find | null {
  const { part, kind, signals } = candidate;
  if (part.preposition === "'s" && /^[xz]/.test(kind.letters)) return null;
  const { confidence, fired } = weighEvidence(kind, signals);
  if (confidence < cut) return null;
  return makeFind(
    candidate,
    clauses,
    lexicon,
    confidence,
    fired.map((rule) => rule.words),
  );
}

function readSpoken(candidate: Candidate, clauses: Clauses, lexicon: Lexicon): Find | null {
  const why = whyPresent(candidate, clauses, lexicon);
  if (!why) return null;
  return makeFind(candidate, clauses, lexicon, 0.6, ['named in speech', why]);
}

function makeFind(
  candidate: Candidate,
  clauses: Clauses,
  lexicon: Lexicon,
  confidence: number,
  rules: readonly string[],
): Find {
  const { sentence } = clauses;
  const { part, signals } = candidate;
  const { category, why } = categoryByUse(candidate, clauses, lexicon);
  const head = sentence.tokens[part.phrase.head] as Token;
  const first = sentence.tokens[part.phrase.start] as Token;
  return {
    scene: sentence.scene,
    known: 'found',
    name: head.lower,
    category,
    count: null,
    by: whoHas(part, signals, category, clauses, lexicon),
    worn: category === 'costumes',
    state: null,
    words: sentence.text.slice(head.start, head.end),
    at: sentence.place(first.start, head.end),
    confidence,
    rules: why ? [...rules, why] : rules,
    strength: null,
  };
}

function eventFind(event: Event, { sentence }: Clauses): Find {
  const token = sentence.tokens[event.at] as Token;
  return {
    scene: sentence.scene,
    known: 'found',
    name: token.lower,
    category: event.category,
    count: null,
    by: event.by,
    worn: false,
    state: null,
    words: token.text,
    at: sentence.place(token.start, token.end),
    confidence: event.confidence,
    rules: [event.rule],
    strength: null,
  };
}
