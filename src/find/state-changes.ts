import { openingVerbs, sealedThings, stateVerbs } from '../trade/state-verbs.js';
import type { Clauses, Deed } from './clause-types.js';
import type { Token } from './reading.js';
import type { Named } from './same-element.js';
import type { Find } from './types.js';

/** A listed mention with the find that was made of it. */
interface Listed {
  readonly named: Named;
  readonly find: Find;
}

/**
 * Gives finds the states into which verbs bring them on camera ("tears the letter in two"), and adds a find where a
 * pronoun means the thing last in hand ("tears it in two"). `named` and `finds` stand in the same order.
 */
export function changeStates(clauses: readonly Clauses[], named: readonly Named[], finds: readonly Find[]): Find[] {
  const listed = named.map((one, at): Listed => ({ named: one, find: finds[at] as Find }));
  const bySentence = new Map<Clauses['sentence'], Listed[]>();
  for (const one of listed) {
    const { sentence } = one.named.mention;
    const group = bySentence.get(sentence);
    if (group) group.push(one);
    else bySentence.set(sentence, [one]);
  }
  const changed = new Map<Find, Find>();
  const added: Find[] = [];
  let last: Listed[] = [];
  for (const clause of clauses) {
    const here = bySentence.get(clause.sentence) ?? [];
    if (clause.sentence.kind === 'action') {
      for (const { deed, state, byItself } of changesOf(clause)) {
        const things = here.filter((one) => isHit(one, deed, byItself, clause));
        for (const { find } of things) {
          const after = stateAfter(deed, find.name, state);
          if (after) changed.set(find, { ...find, state: after, stateBegins: true });
        }
        const meant = things.length === 0 ? pronounThing(deed, clause, here, last) : null;
        const after = meant && stateAfter(deed, meant.find.name, state);
        if (meant && after) added.push(findOfPronoun(meant.find, after, deed, clause));
      }
    }
    if (here.length > 0) last = here;
  }
  return [...finds.map((find) => changed.get(find) ?? find), ...added];
}

interface Change {
  readonly deed: Deed;
  readonly state: string | null;
  readonly byItself: boolean;
}

function changesOf(clause: Clauses): Change[] {
  return clause.deeds.flatMap((deed): Change[] => {
    if (deed.unreal || deed.passive || /^(?:off|away|down|into|through)$/.test(deed.particle ?? '')) return [];
    const verb = stateVerbs[deed.lemma];
    if (verb) return isShutting(deed, clause) ? [] : [{ deed, state: verb.state, byItself: verb.byItself }];
    return openingVerbs.has(deed.lemma) ? [{ deed, state: null, byItself: false }] : [];
  });
}

/** "snaps the case shut", "cracks the door open", "breaks off", "rips it from the wall" leave the thing whole. */
function isShutting({ at, lemma }: Deed, { sentence }: Clauses): boolean {
  const rest = sentence.tokens.slice(at + 1, at + 7).map(({ lower }) => lower);
  const tears = lemma === 'tear' || lemma === 'rip';
  return rest.some((word) => /^(?:shut|closed|on|off|from)$/.test(word) || (word === 'open' && !tears));
}

function stateAfter({ lemma }: Deed, name: string, state: string | null): string | null {
  if (state !== null) return state;
  const head = name.split(' ').at(-1) ?? name;
  return openingVerbs.has(lemma) && sealedThings.has(head) ? 'opened' : null;
}

const lasting = /^(?:props|costumes|dressing|food|vehicles)$/;

/** The thing is the object of the verb, or does it by itself. */
function isHit({ named, find }: Listed, deed: Deed, byItself: boolean, clause: Clauses): boolean {
  const { part } = named.mention;
  if (!lasting.test(find.category)) return false;
  if (part.role === 'object' && part.deed === deed && part.ofPart === null) return true;
  const hasObject = clause.parts.some((one) => one.role === 'object' && one.deed === deed);
  return byItself && !hasObject && deed.subject?.phrase === part.phrase;
}

/** "it" right behind the verb means the only thing in hand of the sentence before or of this one. */
function pronounThing(deed: Deed, clause: Clauses, here: readonly Listed[], last: readonly Listed[]): Listed | null {
  const { tokens, scene, paragraph } = clause.sentence;
  if (tokens[deed.at + 1]?.lower !== 'it') return null;
  const before = here.filter(
    ({ named }) => (tokens[named.mention.part.phrase.head] as Token).end <= (tokens[deed.at] as Token).start,
  );
  const near = last.filter(
    ({ named: { mention } }) => mention.sentence.scene === scene && paragraph - mention.sentence.paragraph <= 1,
  );
  const held = (before.length > 0 ? before : near).filter(
    ({ find, named }) => lasting.test(find.category) && named.mention.inHand,
  );
  const names = new Set(held.map(({ find }) => find.name));
  return names.size === 1 ? (held.at(-1) as Listed) : null;
}

function findOfPronoun(meant: Find, state: string, deed: Deed, { sentence }: Clauses): Find {
  const { tokens } = sentence;
  const start = (tokens[deed.at] as Token).start;
  const end = (tokens[deed.at + 1] as Token).end;
  return {
    ...meant,
    scene: sentence.scene,
    by: deed.subject?.person ?? meant.by,
    count: null,
    state,
    stateBegins: true,
    words: sentence.text.slice(start, end),
    at: sentence.place(start, end),
    rules: ['a pronoun means the thing last in hand', 'a verb changes its state'],
  };
}
