import { categoryByUse } from './by-use.js';
import type { Clauses, Part } from './clause-types.js';
import { findEvents } from './events.js';
import { weighEvidence } from './evidence.js';
import { findKind } from './kinds.js';
import type { Lexicon } from './lexicon.js';
import type { Token } from './reading.js';
import { readSignals } from './signals.js';
import type { Find } from './types.js';

const cut = 0.5;

/** What one sentence mentions. */
export function readMentions(clauses: Clauses, lexicon: Lexicon): Find[] {
  const { sentence } = clauses;
  const finds: Find[] = [];
  for (const part of clauses.parts) {
    const find = readMention(part, clauses, lexicon);
    if (find) finds.push(find);
  }
  for (const event of findEvents(clauses, lexicon)) {
    const token = sentence.tokens[event.at] as Token;
    finds.push({
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
    });
  }
  return finds;
}

function readMention(part: Part, clauses: Clauses, lexicon: Lexicon): Find | null {
  const { sentence } = clauses;
  const { tokens } = sentence;
  const kind = findKind(tokens, part.phrase, lexicon);
  if (kind.classes.some((name) => /^(?:body|places|time-words)$/.test(name)) && kind.source !== 'list') return null;
  if (kind.letters.startsWith('t') || (kind.letters === '' && kind.source === 'unknown')) return null;
  if (part.preposition === "'s" && /^x/.test(kind.letters)) return null;
  const signals = readSignals(part, clauses, lexicon);
  if (sentence.kind !== 'action') return null;
  const { confidence, fired } = weighEvidence(kind, signals);
  if (confidence < cut) return null;
  const category = categoryByUse(kind, signals);
  const head = tokens[part.phrase.head] as Token;
  const first = tokens[part.phrase.start] as Token;
  return {
    scene: sentence.scene,
    known: 'found',
    name: head.lower,
    category,
    count: null,
    by: category === 'dressing' ? null : (part.deed?.subject?.person ?? part.phrase.owner?.person ?? null),
    worn: category === 'costumes',
    state: null,
    words: sentence.text.slice(head.start, head.end),
    at: sentence.place(first.start, head.end),
    confidence,
    rules: fired.map((rule) => rule.words),
    strength: null,
  };
}
