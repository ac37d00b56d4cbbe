import type { Clauses, Deed } from './clause-types.js';
import { strangerIn } from './holder.js';
import type { Mention } from './mentions.js';
import { particleBehind } from './particles.js';
import type { PronounThing } from './pronoun-things.js';
import type { Token } from './reading.js';
import type { Named } from './same-element.js';
import type { StrangerNames } from './strangers.js';
import type { Move } from './types.js';

type MoveKind = Move['kind'];

/** What a verb with its particle does to its object; the first row that holds counts. */
const moveRows: readonly {
  readonly kind: MoveKind;
  readonly verb: RegExp;
  readonly particle?: RegExp;
  readonly garment?: true;
}[] = [
  {
    kind: 'put on',
    verb: /^(?:don|put|pull|slip|shrug|try|throw|zip|button|buckle|strap|tie|jam|cram|clap|drag|wriggle|struggle|climb|get)$/,
    particle: /^(?:on|into)$/,
    garment: true,
  },
  { kind: 'put on', verb: /^don$/, garment: true },
  {
    kind: 'taken off',
    verb: /^(?:take|pull|kick|peel|strip|slip|shrug|tear|throw|rip|tug|whip|sweep|toss|yank)$/,
    particle: /^off$/,
    garment: true,
  },
  { kind: 'taken off', verb: /^(?:remove|doff|shed|unbuckle|unlace|unpin|unclip|unfasten)$/, garment: true },
  {
    kind: 'put down',
    verb: /^(?:put|set|lay|place|drop|throw|dump|toss|fling|slam|leave|rest|prop|lean|abandon|stand|balance|hang|pin|hide|bury|stash|park|lock|stuff|tuck)$/,
  },
  {
    kind: 'carried off',
    verb: /^(?:carry|take|drag|haul|lug|bear|wheel|bring|steal|snatch|smuggle)$/,
    particle: /^(?:off|away|out|upstairs|downstairs|inside|outside|home)$/,
  },
];

const giving =
  /^(?:hand|give|pass|offer|toss|throw|slip|lend|return|present|deliver|surrender|fling|chuck|slide|press)$/;

/** What changes hands, wearer or place, by the verbs whose objects are known elements. */
export function findMoves(
  clauses: readonly Clauses[],
  named: readonly Named[],
  pronouns: readonly PronounThing[],
  strangers: StrangerNames,
): Move[] {
  const known = new Map<Mention['part'], Named>(named.map((one) => [one.mention.part, one]));
  const meant = groupByClause(pronouns);
  const moves: Move[] = [];
  for (const clause of clauses) {
    if (clause.sentence.kind !== 'action') continue;
    const ground = { clause, strangers };
    for (const part of clause.parts) {
      const one = part.role === 'object' && part.deed ? known.get(part) : undefined;
      const { head, end } = part.phrase;
      const move = one && part.deed ? moveOf({ ...one, head, end }, part.deed, ground) : null;
      if (move) moves.push(move);
    }
    for (const { deed, at, meant: thing } of meant.get(clause) ?? []) {
      // "Pockets it." leaves out who does it: the one who has it.
      const holder = deed.subject === null ? thing.find.by : null;
      const move = moveOf({ ...thing.named, head: at, end: at + 1, holder }, deed, ground);
      if (move) moves.push(move);
    }
    moves.push(...leavings(ground, known), ...donnings(ground, known));
  }
  return moves;
}

/** A sentence, and how its nameless people are called. */
interface Ground {
  readonly clause: Clauses;
  readonly strangers: StrangerNames;
}

/** A thing where a sentence names it or means it by a pronoun: place of its head, and of the word behind it. */
interface Placed extends Named {
  readonly head: number;
  readonly end: number;
  /** Who has it, where the words leave out who does it. */
  readonly holder?: string | null;
}

function groupByClause(pronouns: readonly PronounThing[]): Map<Clauses, PronounThing[]> {
  const groups = new Map<Clauses, PronounThing[]>();
  for (const one of pronouns) groups.set(one.clause, [...(groups.get(one.clause) ?? []), one]);
  return groups;
}

function moveOf(thing: Placed, deed: Deed, ground: Ground): Move | null {
  if (deed.unreal || deed.passive) return null;
  const { clause } = ground;
  const who = doerOf(deed, ground) ?? thing.holder ?? null;
  const particle = deed.particle ?? particleBehind(clause.sentence.tokens, thing.end);
  const make = (kind: MoveKind, from: string | null, to: string | null) => moveAt(kind, from, to, thing, deed, clause);
  const receiver = giving.test(deed.lemma) ? receiverOf(deed, thing, ground) : null;
  if (receiver) return make('handed over', who, receiver);
  const garment = thing.mention.category === 'costumes' || wornByPronoun(thing, deed);
  const row = moveRows.find(
    (one) => one.verb.test(deed.lemma) && (!one.particle || one.particle.test(particle)) && (!one.garment || garment),
  );
  if (!row) return null;
  if (row.kind === 'put down')
    return isPutDown(deed, thing, clause) ? make('put down', who, placeOf(thing, clause)) : null;
  if (row.kind === 'put on') return make('put on', null, who);
  return make(row.kind, who, row.kind === 'carried off' ? who : null);
}

/** Who does it: somebody of a name, or the entry of somebody without. */
function doerOf({ subject }: Deed, { clause, strangers }: Ground): string | null {
  if (subject === null) return null;
  const stranger = subject.person === null ? strangerIn(subject, clause) : null;
  return subject.person ?? (stranger ? (strangers.get(stranger) ?? null) : null);
}

/** "puts it on", of a thing that can be worn and was in hand. */
function wornByPronoun({ mention, head }: Placed, deed: Deed): boolean {
  return (
    head !== mention.part.phrase.head && mention.kind.letters.includes('c') && /^(?:on|off)$/.test(deed.particle ?? '')
  );
}

/** The place of a move: from the verb or the thing, whichever comes first, to the end of both. */
function moveAt(
  kind: MoveKind,
  from: string | null,
  to: string | null,
  { name, head: place }: Placed,
  deed: Deed,
  { sentence }: Clauses,
): Move {
  const verb = sentence.tokens[deed.at] as Token;
  const head = sentence.tokens[place] as Token;
  const start = Math.min(verb.start, head.start);
  const end = Math.max(verb.end, head.end);
  return {
    scene: sentence.scene,
    name,
    kind,
    from,
    to,
    words: sentence.text.slice(start, end),
    at: sentence.place(start, end),
  };
}

/** "hands NORA the key", "hands the key to Nora", "gives her the key". */
function receiverOf(deed: Deed, thing: Placed, ground: Ground): string | null {
  const { tokens } = ground.clause.sentence;
  const next = tokens[deed.at + 1];
  if (next && (next.person || (next.tag === 'pronoun' && /^(?:him|her)$/.test(next.lower))))
    return whoIsAt(deed.at + 1, ground);
  const given = ground.clause.parts.find(({ phrase }) => phrase.start === deed.at + 1);
  if (given && given.phrase.end <= thing.head && given.phrase.head !== thing.head)
    return whoIsAt(given.phrase.start, ground);
  for (let at = thing.end; at < tokens.length; at++) {
    const token = tokens[at] as Token;
    if (/^[.;,]/.test(token.text) || token.tag === 'verb') return null;
    if (/^(?:to|into)$/.test(token.lower)) {
      return tokens[at + 1] ? whoIsAt(at + 1, ground) : null;
    }
  }
  return null;
}

/** Whom the words at a place name or mean, or null. */
function whoIsAt(at: number, { clause, strangers }: Ground): string | null {
  const { tokens } = clause.sentence;
  const token = tokens[at] as Token;
  if (token.person !== null) return token.person;
  const phrase = clause.parts.find((part) => part.phrase.start === at && part.preposition !== "'s")?.phrase;
  const head = token.tag === 'pronoun' ? clause.stranger(at) : (tokens[phrase?.head ?? at] as Token);
  const named = head ? (strangers.get(head) ?? null) : null;
  return (
    named ??
    (token.tag === 'pronoun' || token.tag === 'possessive'
      ? (clause.resolve(at) ?? nameAt(clause.stranger(at), strangers))
      : null)
  );
}

const nameAt = (head: Token | null, strangers: StrangerNames) => (head ? (strangers.get(head) ?? null) : null);

/** It is put somewhere: down, aside, or on, in, against something. */
function isPutDown(deed: Deed, thing: Placed, clause: Clauses): boolean {
  if (/^(?:drop|leave|dump|abandon|park|hide|bury|stash)$/.test(deed.lemma)) return true;
  const place = placeOf(thing, clause);
  return /^(?:down|aside|up|back|out|away)$/.test(deed.particle ?? '') || (place !== null && !onBody.test(place));
}

/** "puts it on his head": still on somebody. */
const onBody = /\b(?:heads?|hands?|arms?|shoulders?|back|lap|knees?|neck|chest|hips?|wrists?|ears?|finger)$/;

/** The words of the place after the thing: "on the counter". */
function placeOf(thing: Placed, clause: Clauses): string | null {
  const { sentence } = clause;
  const preposition = sentence.tokens[thing.end];
  if (
    !preposition ||
    !/^(?:on|onto|in|into|under|behind|beside|against|by|over|at|inside|beneath)$/.test(preposition.lower)
  )
    return null;
  const place = clause.parts.find((part) => part.phrase.start === thing.end + 1);
  if (!place) return null;
  return sentence.text.slice(preposition.start, (sentence.tokens[place.phrase.head] as Token).end);
}

/** "leaves with the bag", "runs off, the bag in her hand": the thing goes with the person. */
function leavings(ground: Ground, known: ReadonlyMap<Mention['part'], Named>): Move[] {
  const { clause } = ground;
  return clause.parts.flatMap((part) => {
    if (part.preposition !== 'with' || !part.deed || part.deed.unreal) return [];
    const { deed } = part;
    const one = known.get(part);
    const who = doerOf(deed, ground);
    if (!one || who === null) return [];
    const goes =
      /^(?:leave|exit|depart|flee|escape|vanish)$/.test(deed.lemma) ||
      (/^(?:go|run|walk|hurry|slip|rush|march|storm|stride|ride|drive)$/.test(deed.lemma) &&
        /^(?:off|out|away)$/.test(deed.particle ?? ''));
    return goes
      ? [moveAt('carried off', who, who, { ...one, head: part.phrase.head, end: part.phrase.end }, deed, clause)]
      : [];
  });
}

/** "shrugs into a coat", "changes into a blue dress": it is on from here. */
function donnings(ground: Ground, known: ReadonlyMap<Mention['part'], Named>): Move[] {
  return ground.clause.parts.flatMap((part) => {
    const one = known.get(part);
    if (part.preposition !== 'into' || !part.deed || part.deed.unreal || one?.mention.category !== 'costumes')
      return [];
    if (!/^(?:shrug|slip|change|climb|get|wriggle|struggle|step|pull|dress)$/.test(part.deed.lemma)) return [];
    // "Slips the coin into her glove" puts on no glove.
    if (ground.clause.parts.some((one) => one.deed === part.deed && one.role === 'object')) return [];
    const placed = { ...one, head: part.phrase.head, end: part.phrase.end };
    return [moveAt('put on', null, doerOf(part.deed, ground), placed, part.deed, ground.clause)];
  });
}
