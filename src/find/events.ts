import type { CategoryName } from '../trade/categories.js';
import type { Clauses } from './clause-types.js';
import { type DeedFacts, readDeed } from './deed-facts.js';
import { eventRules } from './event-rules.js';
import { strangerIn } from './holder.js';
import type { Lexicon } from './lexicon.js';
import type { Token } from './reading.js';

/** An event that a verb names, or a state of the body. */
export interface Event {
  /** Place of the token that stands for it. */
  readonly at: number;
  /** Place of the first token of its words. */
  readonly from: number;
  /** What to call it: "phone buzzes", "falls", "swollen eye". */
  readonly name: string;
  readonly category: CategoryName;
  readonly by: string | null;
  /** The head word of the nameless people who do it. */
  readonly stranger?: Token | null;
  readonly confidence: number;
  readonly rule: string;
  /** Place of the head of a subject that is heard and not seen: "a dog barks somewhere". */
  readonly hides: number | null;
  /** Place of the head of an animal that the words let hear and do not show: "a dog howls." */
  readonly heard?: number;
}

/** Finds what verbs name as events: stunts, sounds, effects, make-up. */
export function findEvents(clauses: Clauses, lexicon: Lexicon): Event[] {
  const events: Event[] = [];
  for (const deed of clauses.deeds) {
    if (deed.unreal || isLet(deed.at, clauses.sentence.tokens)) continue;
    const facts = readDeed(deed, clauses, lexicon);
    const rule = eventRules.find((one) => one.holds(facts));
    if (!rule) continue;
    const subject = deed.subject?.phrase ?? null;
    const at = rule.bySubject ? (subject?.head ?? deed.at) : deed.at;
    if (events.some((one) => one.at === at) || isAgain(deed, clauses.deeds)) continue;
    const named = facts.doer !== 'person' && facts.doer !== 'nobody' && subject !== null && at === deed.at;
    const sounds = named && rule.category === 'sound';
    const { tokens } = clauses.sentence;
    const word = (tokens[at] as Token).lower;
    events.push({
      at,
      from:
        subject && (named || rule.bySubject || rule.category === 'music' || rule.category === 'graphics')
          ? subject.start
          : at,
      name: rule.named ? rule.named(facts) : named ? `${(tokens[subject.head] as Token).lower} ${word}` : word,
      category: rule.category,
      by: deed.subject?.person ?? null,
      stranger: deed.subject && deed.subject.person === null ? strangerIn(deed.subject, clauses) : null,
      confidence: 0.7,
      rule: rule.words,
      hides: sounds && isOnlyHeard(facts, clauses, lexicon) ? subject.head : null,
      ...(sounds && isNotShown(facts, clauses) ? { heard: subject.head } : {}),
    });
  }
  return events;
}

/** "lets it fall": it falls, and nobody. */
const isLet = (at: number, tokens: readonly Token[]) =>
  /^(?:it|them)$/.test(tokens[at - 1]?.lower ?? '') && tokens[at - 2]?.lemma === 'let';

/** "barks and barks". */
const isAgain = (deed: Clauses['deeds'][number], deeds: Clauses['deeds']) =>
  deeds.some((one) => one.at === deed.at - 2 && one.lemma === deed.lemma && one.subject === deed.subject);

/** Animals that are heard at night or far off, and seldom cast. */
const callers =
  /^(?:owl|rooster|cockerel|cock|wolf|fox|cuckoo|frog|cricket|cicada|nightingale|jackal|coyote|peacock|loon)$/;

/** "Somewhere a dog barks", "a train whistles far off", "an owl hoots." */
function isOnlyHeard({ deed, doer, subject, rest }: DeedFacts, clauses: Clauses, lexicon: Lexicon): boolean {
  if (doer !== 'animal' && doer !== 'vehicle') return false;
  const { tokens } = clauses.sentence;
  const before = tokens.slice(0, deed.subject?.phrase?.start ?? 0).map(({ lower }) => lower);
  const isFar = (word: string) => lexicon.find(word)?.classes.includes('far-words') ?? false;
  if ([...before, ...rest].some(isFar) || before[0] === 'from') return true;
  return doer === 'animal' && rest.length === 0 && callers.test(subject?.head ?? '');
}

/** "A dog howls.", "A dog barks, twice.": nothing tells where it is or what it looks like. */
function isNotShown({ deed, doer }: DeedFacts, { deeds, sentence: { tokens } }: Clauses): boolean {
  const phrase = deed.subject?.phrase;
  if (doer !== 'animal' || !phrase || phrase.end !== deed.at || phrase.modifiers.length > 0) return false;
  const { lower, lemma } = tokens[phrase.head] as Token;
  if (lower !== lemma || deeds.some((one) => one !== deed && one.subject?.phrase === phrase)) return false;
  const next = tokens.slice(deed.at + 1).find(({ tag }) => tag !== 'adverb');
  return next === undefined || /^[.,;!]$/.test(next.text);
}
