import type { CategoryName } from '../trade/categories.js';
import type { Clauses, Part, Subject } from './clause-types.js';
import { peopleNamed } from './genders.js';
import { doerIn, type Holder, isSomebody, meantAt, named, nobody, ownerOfPhrase, strangerOf } from './holder.js';
import { bodyAt, holderBehindVerb } from './holder-words.js';
import type { Lexicon } from './lexicon.js';
import type { Phrase } from './phrases.js';
import type { Token } from './reading.js';
import type { Signals } from './signals.js';
import { rootPart } from './signs-of-use.js';

const inHandOrOnBody = /^(?:props|food|costumes|makeup)$/;

/** Who handles or wears what a phrase names. */
export function whoHas(
  part: Part,
  signals: Signals,
  category: CategoryName,
  clauses: Clauses,
  lexicon: Lexicon,
): Holder {
  if (category === 'extras') return nobody;
  const owner = () => ownerOf(part, clauses);
  const agent = () => agentOf(part, clauses, lexicon);
  const inHand = signals.use.handled || signals.use.instrument || signals.use.held || signals.use.worn;
  if (category === 'vehicles' && isRidden(part)) return first(agent, owner);
  if (signals.use.worn || isRiddenBy(part, category)) {
    const wearer = personJustBefore(part, clauses);
    if (isSomebody(wearer)) return wearer;
  }
  if (category !== 'dressing' && category !== 'plants') {
    const behind = holderBehindVerb(part, clauses, lexicon);
    if (isSomebody(behind)) return behind;
  }
  const onBody = () => nearBody(part, clauses);
  if (keptStill.test(category))
    return inHand || signals.words.owned ? first(agent, owner, signals.use.held ? onBody : () => nobody) : nobody;
  const head = clauses.sentence.tokens[part.phrase.head]?.lemma ?? '';
  if (category === 'effects' && atmosphere.test(head)) return nobody;
  if (isFallenOn(part, signals)) return owner();
  if (isWound.test(head)) return first(owner, onBody, () => bearerOf(part, clauses, lexicon));
  const near = () =>
    first(
      onBody,
      () => listHolder(part, clauses, lexicon),
      () => onlyPersonSoFar(part, clauses),
    );
  if (category === 'costumes' || category === 'makeup') {
    const worn = putsOnOneself(part, signals)
      ? first(agent, owner)
      : first(
          owner,
          () => ownerBehindOf(part, clauses),
          () => onOthers(part, clauses, lexicon),
        );
    if (isSomebody(worn)) return worn;
  }
  if (part.role === 'subject' && part.ofPart === null && !signals.use.held) {
    if (isHad(part, clauses)) return first(() => aboutHolder(part, clauses, lexicon), owner);
    const below = category === 'makeup' ? bodyBelow(part, clauses) : nobody;
    return isSomebody(below) || !isSetApart(part, category, clauses)
      ? first(owner, () => below)
      : first(owner, agent, () => onlyPersonSoFar(part, clauses));
  }
  const known = first(agent, owner, () => (isHad(part, clauses) ? aboutHolder(part, clauses, lexicon) : nobody));
  if (isSomebody(known) || category === 'makeup') return isSomebody(known) ? known : near();
  return inHandOrOnBody.test(category) && !hasOtherSubject(part) ? near() : nobody;
}

const keptStill = /^(?:dressing|plants|graphics|vehicles|animals)$/;

/** The first of several ways to tell who has it that tells somebody. */
function first(...ways: readonly (() => Holder)[]): Holder {
  for (const way of ways) {
    const holder = way();
    if (isSomebody(holder)) return holder;
  }
  return nobody;
}

/** "pedals past on a bicycle", "rides a scooter". */
function isRidden(part: Part): boolean {
  const { deed, preposition } = rootPart(part);
  return (
    /^(?:ride|drive|pedal|cycle|steer|paddle|row|push|wheel|park)$/.test(deed?.lemma ?? '') &&
    (preposition === null || /^(?:on|upon|in|astride)$/.test(preposition))
  );
}

const isWound = /^(?:wound|bruise|cut|gash|graze|scar|burn|blister|sore|sting|rash|swelling|stitch)$/;

/** "a man with a scar", "shows a bruise"; whoever cleans or binds a wound may tend somebody else's. */
function bearerOf(part: Part, clauses: Clauses, lexicon: Lexicon): Holder {
  const { deed, preposition } = rootPart(part);
  const isOwn =
    deed === null || preposition === 'with' || /^(?:show|reveal|bear|get|nurse|bare|clutch)$/.test(deed.lemma);
  return isOwn
    ? first(
        () => agentOf(part, clauses, lexicon),
        () => onlyPersonSoFar(part, clauses),
      )
    : nobody;
}

/** "Blood runs down to his cuff", "sweat soaking her bandanna": whose body or garment the words behind name. */
function bodyBelow(part: Part, clauses: Clauses): Holder {
  const deed = clauses.deeds.find(({ subject }) => subject?.phrase === part.phrase);
  const below = deed && clauses.parts.find((one) => one.deed === deed && one.phrase.owner);
  return below ? ownerOfPhrase(below.phrase, clauses) : nobody;
}

/** "She empties her bag: a purse, a comb". */
function listHolder(part: Part, clauses: Clauses, lexicon: Lexicon): Holder {
  if (clauses.lister && rootPart(part).role === 'loose') return doerIn(clauses.lister, clauses, lexicon);
  const { opens, deed } = rootPart(part);
  if (opens !== 'colon' || deed !== null) return nobody;
  const before = clauses.deeds.findLast(({ at }) => at < part.phrase.start);
  const handles = before?.subject && lexicon.find(before.lemma)?.classes.includes('handling');
  return handles ? doerIn(before.subject, clauses, lexicon) : nobody;
}

/** "the jacket of the guard". */
function ownerBehindOf(part: Part, clauses: Clauses): Holder {
  const owner = clauses.parts.find((one) => one.ofPart === part);
  return owner ? { person: null, stranger: strangerOf(owner.phrase, clauses) } : nobody;
}

/** "her father's cap" begins with its owner. */
const startOf = ({ owner, start }: Phrase): number => owner?.phrase?.start ?? start;

/** "a girl on a bicycle". */
const isRiddenBy = ({ preposition }: Part, category: CategoryName) =>
  category === 'vehicles' && /^(?:on|in|astride)$/.test(preposition ?? '');

/** "Anna has the can strapped in with her". */
const isHad = ({ phrase }: Part, { sentence }: Clauses) =>
  /^(?:has|have|had)$/.test(sentence.tokens[phrase.start - 1]?.lower ?? '');

const aboutHolder = ({ about }: Part, clauses: Clauses, lexicon: Lexicon): Holder =>
  about === null ? nobody : doerIn(about, clauses, lexicon);

/** "ties a scarf round Ben's neck": on the body that the words name, whoever does it. */
function onOthers({ phrase }: Part, clauses: Clauses, lexicon: Lexicon): Holder {
  const next = clauses.sentence.tokens[phrase.end]?.lower ?? '';
  return /^(?:round|around|over|on|across)$/.test(next) ? (bodyAt(phrase.end + 1, clauses, lexicon) ?? nobody) : nobody;
}

/** "beside a boy in headphones": the one right before "in" has it on. */
function personJustBefore(part: Part, clauses: Clauses): Holder {
  const root = rootPart(part);
  const at = startOf(root.phrase) - 2;
  const token = clauses.sentence.tokens[at];
  if (!/^(?:in|on|astride)$/.test(root.preposition ?? '') || !token) return nobody;
  if (token.person !== null) return named(token.person);
  const before = clauses.parts.find(({ phrase }) => phrase.head === at);
  // "is a tiny old lady in tweed" goes on about the subject.
  const isTold = /^(?:be|is|are|was|were)$/.test(clauses.sentence.tokens[(before?.phrase.start ?? 0) - 1]?.lower ?? '');
  return before && !isTold ? { person: null, stranger: strangerOf(before.phrase, clauses) } : nobody;
}

/** "Anna wears Bill's jacket", "shivers in his jersey": the one who has it on is the one who does it, whosever it is. */
function putsOnOneself(part: Part, { use }: Signals): boolean {
  if (!use.worn) return false;
  const root = rootPart(part);
  if (root.role === 'preposition') return root.preposition === 'in' || root.preposition === 'into';
  return root.role === 'object' && /^(?:wear|don|sport)$/.test(use.verb ?? '');
}

/** "Rufus swings out of the saddle, boots hitting the dust": what is on the one who does it. */
function isSetApart({ opens, phrase }: Part, category: CategoryName, { sentence }: Clauses): boolean {
  const next = sentence.tokens[phrase.end];
  if (opens !== 'comma' || next?.tag !== 'participle') return false;
  if (/^(?:costumes|makeup)$/.test(category)) return !/^(?:the|this|that)$/.test(phrase.determiner?.lower ?? '');
  // "Nora enters, lantern raised".
  return (
    phrase.determiner === null && /^(?:raise|draw|lift|lower|cock|point|aim|hold|level|tuck|sling)$/.test(next.lemma)
  );
}

/** Nobody has the weather and the air. */
const atmosphere =
  /^(?:fog|mist|haze|smoke|rain|snow|wind|breeze|lightning|thunder|steam|storm|dust|hail|sleet|drizzle|downpour|gale|blizzard|sunlight|moonlight|rainbow)$/;

/** "falls on Grandad's tomatoes": nobody has them in hand. */
function isFallenOn(part: Part, { use }: Signals): boolean {
  return (
    use.placed &&
    !use.held &&
    !use.worn &&
    part.preposition !== 'under' &&
    /^(?:fall|land|slip|trip|stumble|crash|step|tread|collapse|roll|run)$/.test(part.deed?.lemma ?? '')
  );
}

/** Who does what the clause tells: its subject, or the owner of the hand that does it. */
function agentOf(part: Part, clauses: Clauses, lexicon: Lexicon): Holder {
  const root = rootPart(part);
  const subject = root.deed ? root.deed.subject : aboutOf(root);
  return subject === null ? nobody : doerIn(subject, clauses, lexicon);
}

/** Whom a phrase without a verb goes with: "Nora, with a lamp, ...", "Nora runs, phone under her chin". */
function aboutOf({ role, preposition, about }: Part): Subject | null {
  return role === 'subject' || (role === 'preposition' && /^(?:with|in)$/.test(preposition ?? '')) ? about : null;
}

const ownerOf = (part: Part, clauses: Clauses) => ownerOfPhrase(part.phrase, clauses, part.role !== 'subject');

/** A thing does it, or somebody who cannot be told. */
function hasOtherSubject(part: Part): boolean {
  const subject = part.deed?.subject;
  return part.role === 'object' && subject !== null && subject !== undefined && subject.person === null;
}

/** "a cap low over his ears": the body near it is the wearer's. */
function nearBody(part: Part, clauses: Clauses): Holder {
  const { tokens } = clauses.sentence;
  for (let at = part.phrase.end; at < Math.min(tokens.length, part.phrase.end + 6); at++) {
    const token = tokens[at] as Token;
    if (/^[.;:,]/.test(token.text)) return nobody;
    if (token.tag === 'possessive' && !/^['’]/.test(token.lower)) return meantAt(at, clauses);
    if (token.person !== null && tokens[at + 1]?.tag === 'possessive') return named(token.person);
  }
  return nobody;
}

/** The only one told of in the sentence up to the phrase, of a name or without. */
function onlyPersonSoFar(part: Part, clauses: Clauses): Holder {
  const { tokens } = clauses.sentence;
  const [person, ...others] = peopleNamed(tokens, part.phrase.start);
  const strangers = clauses.parts.flatMap(({ phrase }) =>
    phrase.end <= part.phrase.start ? (strangerOf(phrase, clauses) ?? []) : [],
  );
  const stranger = strangers.length === 1 ? { person: null, stranger: strangers[0] as Token } : nobody;
  if (person === undefined) return stranger;
  if (others.length > 0) return nobody;
  // "A man behind Nora, in a mask".
  const at = tokens.findIndex((token) => token.person === person);
  return tokens[at - 1]?.tag === 'preposition' && isSomebody(stranger) ? stranger : named(person);
}
