import type { Clauses, Part } from './clause-types.js';
import { isIdiom } from './idioms.js';
import type { Kind } from './kinds.js';
import type { Lexicon } from './lexicon.js';
import { isNoThingHere } from './no-things.js';
import { pictureTest } from './only-pictured.js';
import type { Token } from './reading.js';
import { isShotTalk } from './shot-talk.js';
import { readSignals, type Signals } from './signals.js';

/** A noun phrase that may name an element. */
export interface Candidate {
  readonly part: Part;
  readonly kind: Kind;
  readonly signals: Signals;
}

/** The candidates of a sentence: heads of noun phrases, and the whole that a part belongs to ("coat pocket"). */
export function findCandidates(clauses: Clauses, lexicon: Lexicon): Candidate[] {
  const isPictured = pictureTest(clauses);
  const found: Candidate[] = [];
  for (const part of clauses.parts) {
    const one = readPart(part, clauses, lexicon);
    if (one && !isPictured?.(one.part, one.kind)) found.push(one);
  }
  return found;
}

function readPart(part: Part, clauses: Clauses, lexicon: Lexicon): Candidate | null {
  const kind = asSound(part, clauses, lexicon) ?? asFalseLimb(part, clauses, lexicon) ?? clauses.kindOf(part.phrase);
  if (
    isPartOfVehicle(part, kind, clauses) ||
    onlyMeasures(part, kind, clauses) ||
    isColour(part, kind) ||
    isMeasureOfDoing(part, clauses) ||
    isGap(part, kind) ||
    isHairdo(part, kind, clauses) ||
    isNoThingHere(part, kind, clauses) ||
    isIdiom(part, kind, clauses.sentence.tokens, lexicon) ||
    isShotTalk(part, clauses.sentence.tokens)
  )
    return null;
  if (!isNothing(kind, part)) return { part, kind, signals: readSignals(part, clauses, lexicon) };
  const whole = wholeOf(part, clauses, lexicon);
  return whole && { part: whole.part, kind: whole.kind, signals: readSignals(part, clauses, lexicon) };
}

/** "a sharp crack", "a distant bark": what is a verb of sound too is a sound. */
function asSound({ phrase, role }: Part, clauses: Clauses, lexicon: Lexicon): Kind | null {
  const { tokens } = clauses.sentence;
  const last = phrase.modifiers.at(-1);
  if (last === undefined) return besideSound(phrase, clauses);
  if (role === 'preposition') return null;
  const is = (word: string, list: string) => lexicon.find(word)?.classes.includes(list) ?? false;
  const head = tokens[phrase.head] as Token;
  const heard = is(head.lemma, 'sound-verbs') || is(head.lemma, 'sounds');
  if (!heard || !is((tokens[last] as Token).lower, 'sound-adjectives')) return null;
  const known = clauses.kindOf(phrase);
  return /^[^s]/.test(known.letters) && known.source === 'list' ? null : { ...known, letters: 's', source: 'list' };
}

/** "a pop and a hiss": listed with a sound, it is one. */
function besideSound(phrase: Part['phrase'], clauses: Clauses): Kind | null {
  const known = clauses.kindOf(phrase);
  if (known.letters !== 's' || known.source !== 'weak') return null;
  const beside = clauses.parts.find((one) => one.listedWith?.phrase === phrase);
  return beside && clauses.kindOf(beside.phrase).letters.startsWith('s') ? { ...known, source: 'list' } : null;
}

/** "page by page", "hand over hand": how it is done, not what is there. */
function isMeasureOfDoing({ phrase }: Part, { sentence }: Clauses): boolean {
  const { tokens } = sentence;
  const word = tokens[phrase.head]?.lower;
  const joins = (at: number) => /^(?:by|to|over|after)$/.test(tokens[at]?.lower ?? '');
  if (phrase.determiner !== null || phrase.modifiers.length > 0) return false;
  return (
    (joins(phrase.end) && tokens[phrase.end + 1]?.lower === word) ||
    (joins(phrase.start - 1) && tokens[phrase.start - 2]?.lower === word)
  );
}

/** "down a crack": a word for a sound that tells where is a gap. */
const isGap = ({ preposition, deed }: Part, { letters }: Kind) =>
  letters === 's' && /^(?:down|in|into|through|between|inside)$/.test(preposition ?? deed?.particle ?? '');

/** "her hair is in a bun". */
const isHairdo = ({ preposition }: Part, { head }: Kind, { sentence }: Clauses) =>
  preposition === 'in' && head === 'bun' && sentence.tokens.some(({ lower }) => lower === 'hair');

/** "a foam hand", "a glass eye": a part of the body that is made is a thing. */
function asFalseLimb({ phrase }: Part, clauses: Clauses, lexicon: Lexicon): Kind | null {
  const last = phrase.modifiers.at(-1);
  const kind = clauses.kindOf(phrase);
  if (last === undefined || !kind.classes.includes('body') || kind.from < phrase.head) return null;
  const made = lexicon.find((clauses.sentence.tokens[last] as Token).lower)?.classes.includes('materials');
  return made ? { ...kind, letters: 'p', source: 'list', from: last, classes: [] } : null;
}

/** "glows orange", "one red, one brown". */
function isColour({ phrase }: Part, kind: Kind): boolean {
  return (
    kind.classes.includes('colours') &&
    phrase.determiner === null &&
    phrase.owner === null &&
    phrase.modifiers.length === 0
  );
}

/** "kicks off her heels": what is put on or taken off is worn, and no part of the body. */
const isTakenOff = (deed: Part['deed']) =>
  /^(?:off|on)$/.test(deed?.particle ?? '') && /^(?:kick|take|slip|pull|ease|put)$/.test(deed?.lemma ?? '');

/** "runs behind in heels". */
const isShod = ({ determiner, owner }: Part['phrase'], preposition: string | null) =>
  preposition === 'in' && determiner === null && owner === null;

/** "glues the handle to the cup", "holds up the handle": a part that has come off is in hand by itself. */
const isBrokenOff = ({ head }: Kind, deed: Part['deed']) =>
  /^(?:handle|knob|spout|stopper|hinge|lens|sole)$/.test(head) &&
  (/^(?:glue|solder|mend)$/.test(deed?.lemma ?? '') || (deed?.lemma === 'hold' && deed.particle === 'up'));

/** Parts, bodies, rooms, times: no element by themselves. */
function isNothing(kind: Kind, { phrase, deed, preposition }: Part): boolean {
  if (kind.letters.startsWith('t') || kind.letters === '') return !isBrokenOff(kind, deed);
  if (kind.from < phrase.head) return false;
  if (kind.classes.includes('body') && kind.letters.startsWith('c') && isTakenOff(deed)) return false;
  if (kind.classes.includes('body') && kind.letters.startsWith('c') && isShod(phrase, preposition)) return false;
  if (kind.classes.includes('body') && kind.letters.startsWith('f') && phrase.determiner?.lower === 'some')
    return false;
  if (kind.head === 'bone' && /^(?:gnaw|chew|bury|dig|drop|throw|carry)$/.test(deed?.lemma ?? '')) return false;
  if (kind.classes.includes('body')) return !/^an?$/.test(phrase.determiner?.lower ?? '') || kind.source !== 'list';
  if (kind.source === 'list' || kind.source === 'weak') return false;
  return kind.classes.some((name) => /^(?:places|time-words|quantities|parts-of|numbers)$/.test(name));
}

/** "a shower of sparks": the head only measures what is there. */
function onlyMeasures(part: Part, kind: Kind, clauses: Clauses): boolean {
  if (!kind.classes.includes('quantities')) return false;
  return clauses.parts.some((one) => one.ofPart === part && one.phrase.determiner === null);
}

/** The noun before a part that is a thing itself: the coat of "coat pocket", the bunk of "bunk frame". */
function wholeOf(part: Part, clauses: Clauses, lexicon: Lexicon): { part: Part; kind: Kind } | null {
  const { phrase } = part;
  const { tokens } = clauses.sentence;
  const at = phrase.modifiers.at(-1);
  if (lexicon.find((tokens[phrase.head] as Token).lemma)?.classes.includes('places')) return null;
  if (at === undefined || (tokens[at] as Token).tag !== 'noun') return null;
  const own = { ...phrase, head: at, end: at + 1, modifiers: phrase.modifiers.slice(0, -1) };
  const kind = clauses.kindOf(own);
  if (!(kind.source === 'list' || kind.source === 'weak') || !/^[pwcdvf]/.test(kind.letters)) return null;
  return { part: { ...part, phrase: own }, kind };
}

/** "the boot of the car", "the hatchback's bonnet", "its strap": one word means a garment elsewhere. */
function isPartOfVehicle(part: Part, kind: Kind, clauses: Clauses): boolean {
  if (!kind.classes.includes('parts-of') && !kind.classes.includes('parts')) return false;
  const { owner: possessor, determiner } = part.phrase;
  if (possessor?.pronoun === 'its') return true;
  if (
    /^(?:boot|bonnet|hood|trunk)$/.test(kind.head) &&
    determiner?.lower === 'the' &&
    (/^(?:in|into|from|on|onto)$/.test(part.preposition ?? '') ||
      (kind.head === 'bonnet' && /^(?:over|off|across|under|against)$/.test(part.preposition ?? '')))
  )
    return true;
  const owner = possessor?.phrase;
  const of = clauses.parts.find((one) => one.ofPart === part)?.phrase;
  return [owner, of].some((phrase) => phrase && clauses.kindOf(phrase).letters.startsWith('v'));
}
