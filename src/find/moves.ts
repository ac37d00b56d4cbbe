import type { Clauses, Deed } from './clause-types.js';
import type { Mention } from './mentions.js';
import type { Token } from './reading.js';
import type { Named } from './same-element.js';
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
export function findMoves(clauses: readonly Clauses[], named: readonly Named[]): Move[] {
  const known = new Map<Mention['part'], Named>(named.map((one) => [one.mention.part, one]));
  const moves: Move[] = [];
  for (const clause of clauses) {
    if (clause.sentence.kind !== 'action') continue;
    for (const part of clause.parts) {
      const one = part.role === 'object' && part.deed ? known.get(part) : undefined;
      const move = one && part.deed ? moveOf(one, part.deed, clause) : null;
      if (move) moves.push(move);
    }
    moves.push(...leavings(clause, known));
  }
  return moves;
}

function moveOf({ mention, name }: Named, deed: Deed, clause: Clauses): Move | null {
  if (deed.unreal || deed.passive) return null;
  const who = deed.subject?.person ?? null;
  const make = (kind: MoveKind, from: string | null, to: string | null) =>
    moveAt(kind, from, to, { mention, name }, deed, clause);
  const receiver = giving.test(deed.lemma) ? receiverOf(deed, mention, clause) : null;
  if (receiver) return make('handed over', who, receiver);
  const garment = mention.category === 'costumes';
  const row = moveRows.find(
    (one) =>
      one.verb.test(deed.lemma) &&
      (!one.particle || one.particle.test(deed.particle ?? '')) &&
      (!one.garment || garment),
  );
  if (!row) return null;
  if (row.kind === 'put down')
    return isPutDown(deed, mention, clause) ? make('put down', who, placeOf(mention, clause)) : null;
  if (row.kind === 'put on') return make('put on', null, who);
  return make(row.kind, who, row.kind === 'carried off' ? who : null);
}

/** The place of a move: from the verb or the thing, whichever comes first, to the end of both. */
function moveAt(
  kind: MoveKind,
  from: string | null,
  to: string | null,
  { mention, name }: Named,
  deed: Deed,
  { sentence }: Clauses,
): Move {
  const verb = sentence.tokens[deed.at] as Token;
  const head = sentence.tokens[mention.part.phrase.head] as Token;
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
function receiverOf(deed: Deed, mention: Mention, clause: Clauses): string | null {
  const { tokens } = clause.sentence;
  const next = tokens[deed.at + 1];
  if (next && (next.person || (next.tag === 'pronoun' && /^(?:him|her)$/.test(next.lower))))
    return next.person ?? clause.resolve(deed.at + 1);
  for (let at = mention.part.phrase.end; at < tokens.length; at++) {
    const token = tokens[at] as Token;
    if (/^[.;,]/.test(token.text) || token.tag === 'verb') return null;
    if (/^(?:to|into)$/.test(token.lower)) {
      const who = tokens[at + 1];
      if (!who) return null;
      return who.person ?? (who.tag === 'pronoun' || who.tag === 'possessive' ? clause.resolve(at + 1) : null);
    }
  }
  return null;
}

/** It is put somewhere: down, aside, or on, in, against something. */
function isPutDown(deed: Deed, mention: Mention, clause: Clauses): boolean {
  if (/^(?:drop|leave|dump|abandon|park|hide|bury|stash)$/.test(deed.lemma)) return true;
  return /^(?:down|aside|up|back|out|away)$/.test(deed.particle ?? '') || placeOf(mention, clause) !== null;
}

/** The words of the place after the thing: "on the counter". */
function placeOf(mention: Mention, clause: Clauses): string | null {
  const { sentence } = clause;
  const preposition = sentence.tokens[mention.part.phrase.end];
  if (
    !preposition ||
    !/^(?:on|onto|in|into|under|behind|beside|against|by|over|at|inside|beneath)$/.test(preposition.lower)
  )
    return null;
  const place = clause.parts.find((part) => part.phrase.start === mention.part.phrase.end + 1);
  if (!place) return null;
  return sentence.text.slice(preposition.start, (sentence.tokens[place.phrase.head] as Token).end);
}

/** "leaves with the bag", "runs off, the bag in her hand": the thing goes with the person. */
function leavings(clause: Clauses, known: ReadonlyMap<Mention['part'], Named>): Move[] {
  return clause.parts.flatMap((part) => {
    if (part.preposition !== 'with' || !part.deed || part.deed.unreal) return [];
    const { deed } = part;
    const one = known.get(part);
    const who = deed.subject?.person ?? null;
    if (!one || who === null) return [];
    const goes =
      /^(?:leave|exit|depart|flee|escape|vanish)$/.test(deed.lemma) ||
      (/^(?:go|run|walk|hurry|slip|rush|march|storm|stride|ride|drive)$/.test(deed.lemma) &&
        /^(?:off|out|away)$/.test(deed.particle ?? ''));
    return goes ? [moveAt('carried off', who, who, one, deed, clause)] : [];
  });
}
