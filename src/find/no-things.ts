import type { Clauses, Part } from './clause-types.js';
import { isFigure } from './implied/unreal.js';
import type { Kind } from './kinds.js';
import type { Token } from './reading.js';

const kin =
  /^(?:mum|mam|mom|mama|mummy|mommy|dad|daddy|papa|gran|granny|grandma|grandpa|grandad|granddad|nan|nana|nanna|auntie|aunty)$/;

/** True for words that name a thing elsewhere and none here: kin, what is only drawn, the matter of writing. */
export function isNoThingHere(part: Part, kind: Kind, clauses: Clauses): boolean {
  return (
    (kin.test(kind.head) && (part.role !== 'subject' || !kind.letters.startsWith('x')) && part.phrase.owner === null) ||
    isGone(part, clauses) ||
    (kind.head === 'figure' &&
      part.role === 'object' &&
      /^(?:write|read|check|note|add|type)$/.test(part.deed?.lemma ?? '')) ||
    isDrawn(part, kind) ||
    isWriting(part, kind, clauses) ||
    isCrookOfArm(part, kind, clauses) ||
    isSign(part, kind, clauses) ||
    isDirt(part, kind) ||
    isTank(part, kind) ||
    isTruckBed(part, kind, clauses) ||
    isMereLight(part, kind, clauses) ||
    isPartOfGarment(part, kind, clauses) ||
    isOnlySource(part, kind, clauses) ||
    isSpokenOver(part) ||
    isOwnerOfKind(part, clauses) ||
    isTrade(part, kind, clauses) ||
    isAsOne(part, clauses) ||
    isOfBefore(part, kind, clauses) ||
    isFeeling(part, kind, clauses) ||
    isSaying(kind, clauses.sentence.text)
  );
}

/** "A red cross marks the cove": drawn on the map. */
function isSign({ role, phrase }: Part, { head }: Kind, { sentence }: Clauses): boolean {
  if (role !== 'subject' || !/^(?:cross|arrow|dot|circle|star|line|tick|stripe)$/.test(head)) return false;
  return /^(?:marks?|points?|shows?)$/.test(sentence.tokens[phrase.end]?.lower ?? '');
}

/** "shakes off the grit", "wipes crumbs from the table": what only makes dirty is got from nowhere. */
const isDirt = ({ deed, role }: Part, { source, letters }: Kind) =>
  role === 'object' &&
  source !== 'list' &&
  letters.startsWith('p') &&
  /^(?:shake|brush|wipe|flick|dust|scrape)$/.test(deed?.lemma ?? '') &&
  /^(?:off|away)$/.test(deed?.particle ?? '');

/** "fills the tank", "hits the brakes", "draws the bolt": the car's own, or the door's. */
const isTank = ({ deed, role, phrase }: Part, { head }: Kind) =>
  role === 'object' &&
  phrase.modifiers.length === 0 &&
  ((head === 'tank' && /^(?:fill|refill|drain|top)$/.test(deed?.lemma ?? '')) ||
    (head === 'bolt' && /^(?:draw|shoot|slide|throw)$/.test(deed?.lemma ?? '')) ||
    (/^brakes?$/.test(head) && /^(?:hit|slam|pump|apply|stamp|jam)$/.test(deed?.lemma ?? '')));

/** "a wardrobe roped upright in the bed", with a pickup in the sentence. */
const isTruckBed = ({ preposition }: Part, { head }: Kind, { sentence }: Clauses) =>
  head === 'bed' &&
  /^(?:in|into|from|onto|on)$/.test(preposition ?? '') &&
  sentence.tokens.some(({ lemma }) => /^(?:pickup|pick-up|truck|lorry|flatbed|ute)$/.test(lemma));

/** "The light comes through", "the light in her eyes goes out": light that nobody has to bring. */
const isMereLight = ({ role, phrase }: Part, { head, from }: Kind, { sentence }: Clauses) =>
  head === 'light' &&
  role === 'subject' &&
  from === phrase.head &&
  sentence.tokens[phrase.head]?.lower === 'light' &&
  phrase.modifiers.length === 0 &&
  phrase.owner === null &&
  /^(?:the)?$/.test(phrase.determiner?.lower ?? '') &&
  sentence.tokens.slice(phrase.end, phrase.end + 5).some(({ lemma }) => falling.test(lemma));
const falling = /^(?:pool|fall|spill|pour|stream|filter|slant|leak|seep|linger|eye|come|bleed|flood)$/;

/** "over the cuff of her coat", "drags the dog by his collar". */
const isPartOfGarment = (part: Part, { letters, classes }: Kind, { parts }: Clauses) =>
  letters.startsWith('c') &&
  classes.includes('parts-of') &&
  ((part.preposition === 'by' && part.deed !== null) || parts.some((one) => one.ofPart === part));

/** "the lifeboat's maroon goes up", "a semi's air horn": it is heard or seen far off, and what it comes from is not there. */
function isOnlySource({ phrase }: Part, { letters }: Kind, clauses: Clauses): boolean {
  if (!/^[va]/.test(letters)) return false;
  const own = clauses.parts.find((one) => one.phrase.owner?.phrase === phrase);
  return own !== undefined && own.role !== 'object' && /^(?:s|e)/.test(clauses.kindOf(own.phrase).letters);
}

/** "They row about money", "she dreams about horses". */
const isSpokenOver = ({ preposition, deed }: Part) =>
  preposition === 'about' && deed !== null && speaking.has(deed.lemma);
const speaking = new Set(
  `argue row quarrel fight bicker talk speak chat gossip joke ask complain worry think dream sing lie hear know learn care forget wonder rave
  boast brag moan grumble enquire inquire`.split(/\s+/),
);

/** "a visitors' book": a kind of book, and no visitors. */
const isOwnerOfKind = ({ phrase }: Part, { parts, sentence: { tokens } }: Clauses) =>
  /^an?$/.test(phrase.determiner?.lower ?? '') &&
  tokens[phrase.end]?.tag === 'possessive' &&
  tokens[phrase.end]?.text !== "'s" &&
  parts.some((one) => one.phrase.owner?.phrase === phrase);

/** "MRS. PARDOE, wardrobe, crawls round them": what she does for a living. */
const isTrade = ({ phrase }: Part, { letters }: Kind, { sentence: { tokens } }: Clauses) =>
  letters.startsWith('d') &&
  phrase.end - phrase.start === 1 &&
  tokens[phrase.start - 1]?.text === ',' &&
  tokens[phrase.end]?.text === ',' &&
  tokens[phrase.start - 2]?.person != null;

/** "as you would a child", "as one would for a hearse". */
function isAsOne({ phrase }: Part, { sentence: { tokens } }: Clauses): boolean {
  const last = /^(?:for|to|with|at|from|in|on)$/.test(tokens[phrase.start - 1]?.lower ?? '') ? 2 : 1;
  return tokens[phrase.start - last]?.lower === 'would' && tokens[phrase.start - last - 2]?.lower === 'as';
}

/** "who have been sent here by a magistrate": who did it before is not there. */
const isOfBefore = ({ preposition, deed }: Part, { letters }: Kind, { sentence: { tokens } }: Clauses) =>
  preposition === 'by' && letters.startsWith('x') && deed?.passive === true && tokens[deed.at - 1]?.lower === 'been';

/** "a mist of tears", "a storm of applause". */
const isFeeling = ({ phrase }: Part, { letters }: Kind, { sentence: { tokens } }: Clauses) =>
  /^[ekv]/.test(letters) &&
  tokens[phrase.end]?.lower === 'of' &&
  isFigure(tokens, { first: phrase.start, core: phrase.head, last: phrase.end - 1 });

/** Sayings that name a thing and mean none, by the word they name. */
const sayings = new Map<string, RegExp>(
  Object.entries({
    alarm: /\b(?:gives?|giving|raises?|raising) the alarm\b/i,
    cat: /\braining cats and dogs\b|\bcat out of the bag\b|\bcat among the pigeons\b/i,
    dog: /\braining cats and dogs\b|\bdog in the manger\b/i,
    elephant: /\belephant in the room\b/i,
    wolf: /\bwolf (?:at|from) the door\b/i,
    bull: /\bbull in a china shop\b/i,
    horse: /\b(?:dark|high) horse\b|\beats? like a horse\b/i,
    goose: /\bwild goose chase\b/i,
    ship: /\bships? has sailed\b|\bships in the night\b/i,
    train: /\btrain of thought\b/i,
    bow: /\btak(?:es?|ing) (?:a|her|his|their) bows?\b/i,
    bag: /\bcat out of the bag\b/i,
    hole: /\bhole in (?:his|her|their) pocket\b/i,
    money: /\bmoney burns\b|\bfor (?:love or )?money\b/i,
    nail: /\bnail on the head\b/i,
    rope: /\bend of (?:his|her|their|the) rope\b|\brun out of rope\b/i,
    card: /\bhouse of cards\b|\bcards on the table: /i,
    bucket: /\bkicks? the bucket\b/i,
    close: /\bclose (?:at|to) hand\b/i,
    subject: /\b(?:drops?|changes?|broach(?:es)?) the subject\b/i,
    stub: /\bdown to a stub\b/i,
    ring: /\b(?:coffee|tea|wine|wet) rings?\b/i,
    wheel: /^one wheel\b/i,
    towel: /\bthrows? in the towel\b/i,
  }),
);

const isSaying = ({ head }: Kind, text: string) => sayings.get(head)?.test(text) ?? false;

/** "The post is bare where the bell was": it is there no more. */
function isGone({ phrase }: Part, { sentence: { tokens } }: Clauses): boolean {
  return (
    tokens[phrase.start - 1]?.lower === 'where' &&
    /^(?:was|were|hung|stood|lay|used)$/.test(tokens[phrase.end]?.lower ?? '')
  );
}

/** "draws a dinosaur on his plaster cast": a picture. "Draws a gun" and "paints the fence" are none. */
function isDrawn({ role, deed, phrase }: Part, kind: Kind): boolean {
  if (role !== 'object' || !deed || phrase.owner !== null || phrase.determiner?.lower === 'the') return false;
  return /^(?:draw|paint|sketch|doodle|scribble|crayon|write|chalk)$/.test(deed.lemma) && /^[axzv]/.test(kind.letters);
}

/** "dated in white paint", "GRAND OPENING in red letters", "the ink has run": how something is written. */
function isWriting({ preposition, deed, role, phrase }: Part, kind: Kind, { sentence }: Clauses): boolean {
  const isMatter = /^(?:paint|ink|chalk|pencil|biro|crayon|marker)$/.test(kind.head);
  if (isMatter && preposition === 'in' && isWrittenBefore(sentence.tokens, phrase.start)) return true;
  if (kind.head === 'ink' && role === 'subject' && deed === null) return runs(sentence.tokens, phrase.end);
  const plural = sentence.tokens[phrase.head]?.lower === 'letters';
  return plural && preposition === 'in' && phrase.determiner === null && phrase.owner === null;
}

function isWrittenBefore(tokens: readonly Token[], end: number): boolean {
  return tokens
    .slice(0, end)
    .some(({ tag, lower }) => /^(?:participle|verb|adjective)$/.test(tag) && writing.test(lower));
}

const writing =
  /^(?:dated|written|painted|printed|signed|lettered|marked|labelled|labeled|scrawled|numbered|drawn|daubed|stencilled|stenciled)$/;

function runs(tokens: readonly Token[], from: number): boolean {
  return tokens
    .slice(from, from + 3)
    .some(({ lower }) => /^(?:run|runs|ran|running|fades|faded|smudges|smudged)$/.test(lower));
}

/** "in the crook of her arm". */
function isCrookOfArm({ phrase }: Part, { head }: Kind, { sentence }: Clauses): boolean {
  return head === 'crook' && sentence.tokens[phrase.end]?.lower === 'of';
}
