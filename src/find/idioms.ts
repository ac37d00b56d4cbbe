import type { Part } from './clause-types.js';
import type { Kind } from './kinds.js';
import type { Lexicon } from './lexicon.js';
import type { Token } from './reading.js';

/** True for a noun that only helps its verb, counts, or tells how much: "stands watch", "page 2", "a trifle late". */
export function isIdiom(part: Part, kind: Kind, tokens: readonly Token[], lexicon: Lexicon): boolean {
  return (
    helpsVerb(part, kind, tokens, lexicon) ||
    isNumbered(part, tokens) ||
    isDegree(part, tokens) ||
    isSake(part, kind, tokens) ||
    isMereQuality(kind) ||
    isTime(part, kind) ||
    isDecade(part, tokens) ||
    isOutOf(part, tokens) ||
    isSource(part, kind, tokens)
  );
}

/** Verbs that need a noun to say what is done, and those that do where the noun is no thing to hold. */
const lightVerbs = /^(?:stand|keep|make|pay|lose|gain|cease)$/;
const oftenLight = /^(?:take|give|have|open|catch|set|gather|raise|break|hold|draw|change)$/;

/** A light verb with a bare noun that is a verb itself: "takes aim", "opens fire", "keeps watch"; "takes pencil" is none. */
function helpsVerb({ phrase, role, deed }: Part, kind: Kind, tokens: readonly Token[], lexicon: Lexicon): boolean {
  if (role !== 'object' || !deed || phrase.start !== deed.at + 1) return false;
  if (phrase.determiner !== null || phrase.owner !== null || phrase.modifiers.length > 0) return false;
  const head = tokens[phrase.head] as Token;
  if (head.lower !== head.lemma || kind.letters.startsWith('f')) return false;
  const isThing = kind.source !== 'wordnet' && /^[pwcdv]/.test(kind.letters);
  if (!lightVerbs.test(deed.lemma) && (isThing || !oftenLight.test(deed.lemma))) return false;
  return (lexicon.find(head.lemma)?.verb ?? -1) >= 4;
}

/** "Page 2", "track nine": a number behind a bare noun is its name. */
function isNumbered({ phrase }: Part, tokens: readonly Token[]): boolean {
  if (phrase.determiner !== null || phrase.owner !== null || tokens[phrase.end]?.tag !== 'number') return false;
  return /^(?:page|chapter|scene|part|act|line|room|floor|level|platform|gate|track|take|day|week|number|no|route|exit|section|verse|flight|lane|bay|unit|flat|studio|stage|step|phase|plan|file|case|item|figure|channel|table|seat|row|box|lot)$/.test(
    (tokens[phrase.head] as Token).lower,
  );
}

/** "a trifle confused", "a touch too long". */
function isDegree({ phrase }: Part, tokens: readonly Token[]): boolean {
  const head = tokens[phrase.head] as Token;
  const next = tokens[phrase.end];
  if (!/^(?:trifle|bit|touch|shade|tad|fraction|hair|inch|notch)$/.test(head.lower)) return false;
  if (!/^an?$/.test(phrase.determiner?.lower ?? '') || next === undefined) return false;
  return /^(?:adjective|adverb|participle)$/.test(next.tag) || /^(?:too|more|less)$/.test(next.lower);
}

/** "for the sake of", "for her own sake". */
const isSake = ({ preposition }: Part, { head }: Kind, tokens: readonly Token[]) =>
  head === 'sake' && (preposition === 'for' || tokens.some(({ lower }) => lower === 'sakes'));

/** "the colour of mustard", "no lack of": a quality that WordNet knows as a thing in a rare meaning. */
const isMereQuality = ({ classes, letters, source, share }: Kind) =>
  source === 'wordnet' && !/^[su]/.test(letters) && share <= 4 && classes.includes('of-nothing');

/** "after a brave stand": what something comes before or after is an event, unless it is sure to be a thing. */
const isTime = ({ preposition }: Part, { source }: Kind) =>
  source !== 'list' && /^(?:after|before|during|since|until|till)$/.test(preposition ?? '');

/** "out of tune", "out of reach". */
const isOutOf = ({ phrase, preposition }: Part, tokens: readonly Token[]) =>
  preposition === 'out of' &&
  phrase.determiner === null &&
  /^(?:tune|breath|time|place|sight|reach|work|date|order|shape|season|step|luck|hand|bounds)$/.test(
    (tokens[phrase.head] as Token).lower,
  );

/** "a calendar from a seed merchant": who made or sold a thing need not be there. */
const isSource = ({ phrase, preposition }: Part, { letters }: Kind, tokens: readonly Token[]) =>
  letters.startsWith('x') && preposition === 'from' && tokens[phrase.start - 2]?.tag === 'noun';

/** "late twenties", "in her thirties"; "peels off two twenties" speaks of banknotes. */
const isDecade = ({ phrase, preposition, role }: Part, tokens: readonly Token[]) =>
  /^(?:teens|(?:twen|thir|for|fif|six|seven|eigh|nine)ties)$/.test((tokens[phrase.head] as Token).lower) &&
  (preposition === 'in' || (role !== 'object' && phrase.determiner === null));
