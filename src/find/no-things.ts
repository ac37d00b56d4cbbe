import type { Clauses, Part } from './clause-types.js';
import type { Kind } from './kinds.js';
import type { Token } from './reading.js';

const kin =
  /^(?:mum|mam|mom|mama|mummy|mommy|dad|daddy|papa|gran|granny|grandma|grandpa|grandad|granddad|nan|nana|nanna|auntie|aunty)$/;

/** True for words that name a thing elsewhere and none here: kin, what is only drawn, the matter of writing. */
export function isNoThingHere(part: Part, kind: Kind, clauses: Clauses): boolean {
  return (
    (kin.test(kind.head) && (part.role !== 'subject' || !kind.letters.startsWith('x')) && part.phrase.owner === null) ||
    isGone(part, clauses) ||
    isDrawn(part, kind) ||
    isWriting(part, kind, clauses) ||
    isCrookOfArm(part, kind, clauses)
  );
}

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
  return /^(?:draw|paint|sketch|doodle|scribble|crayon)$/.test(deed.lemma) && /^[axzv]/.test(kind.letters);
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
