import { openingVerbs, sealedThings, stateVerbs } from '../trade/state-verbs.js';
import { namesLiquid } from '../trade/used-up-words.js';
import type { Clauses, Deed } from './clause-types.js';
import { eats, isEaten } from './eating.js';
import type { Listed, PronounThing } from './pronoun-things.js';
import type { Token } from './reading.js';
import { soilingOf } from './soiled.js';
import type { Find } from './types.js';

/**
 * Gives finds the states into which verbs bring them on camera ("tears the letter in two"), and adds a find where a pronoun means the
 * thing last in hand ("tears it in two").
 */
export function changeStates(
  clauses: readonly Clauses[],
  listed: readonly Listed[],
  pronouns: readonly PronounThing[],
): Find[] {
  const bySentence = new Map<Clauses['sentence'], Listed[]>();
  for (const one of listed) {
    const { sentence } = one.named.mention;
    const group = bySentence.get(sentence);
    if (group) group.push(one);
    else bySentence.set(sentence, [one]);
  }
  const meant = new Map(pronouns.map((one) => [one.deed, one]));
  const changed = new Map<Find, Find>();
  const added: Find[] = [];
  for (const clause of clauses) {
    if (clause.sentence.kind !== 'action') continue;
    const here = bySentence.get(clause.sentence) ?? [];
    for (const { named, find } of here) {
      const after = soilingOf(named.mention.part, find.category, clause);
      if (after !== null) changed.set(find, { ...find, state: after, stateBegins: true });
      if (isEaten(named.mention.part, find.category, clause))
        changed.set(find, { ...find, state: 'eaten', stateBegins: true });
    }
    for (const deed of clause.deeds.filter(eats)) {
      const pronoun = meant.get(deed);
      if (pronoun?.meant.find.category === 'food') added.push(findOfPronoun(pronoun, 'eaten'));
    }
    for (const { deed, state, byItself, alone } of changesOf(clause)) {
      for (const { find } of here.filter((one) => isHit(one, { deed, byItself, alone }, clause))) {
        const after = stateAfter(deed, find.name, state);
        if (after) changed.set(find, { ...find, state: after, stateBegins: true });
      }
      const pronoun = meant.get(deed);
      const after =
        pronoun && lasting.test(pronoun.meant.find.category) && stateAfter(deed, pronoun.meant.find.name, state);
      if (pronoun && after) added.push(findOfPronoun(pronoun, after));
    }
  }
  return [...listed.map(({ find }) => changed.get(find) ?? find), ...added];
}

interface Change {
  readonly deed: Deed;
  readonly state: string | null;
  readonly byItself: boolean;
  readonly alone: boolean;
}

function changesOf(clause: Clauses): Change[] {
  return clause.deeds.flatMap((deed): Change[] => {
    if (deed.unreal || deed.passive || /^(?:off|away|down|into|through)$/.test(deed.particle ?? '')) return [];
    const verb = stateVerbs[deed.lemma];
    if (verb)
      return isShutting(deed, clause)
        ? []
        : [{ deed, state: verb.state, byItself: verb.byItself, alone: verb.alone === true }];
    return openingVerbs.has(deed.lemma) ? [{ deed, state: null, byItself: false, alone: false }] : [];
  });
}

/** "snaps the case shut", "cracks the door open", "breaks off", "rips it from the wall" leave the thing whole. */
function isShutting({ at, lemma }: Deed, { sentence }: Clauses): boolean {
  const rest = sentence.tokens.slice(at + 1, at + 7).map(({ lower }) => lower);
  const tears = lemma === 'tear' || lemma === 'rip';
  return rest.some(
    (word, place) =>
      /^(?:shut|closed|off|from)$/.test(word) ||
      // "snaps the light on", but "shatters on the kerb".
      (word === 'on' && !/^(?:the|a|an|his|her|its|their)$/.test(rest[place + 1] ?? '')) ||
      (word === 'open' && !tears),
  );
}

function stateAfter({ lemma }: Deed, name: string, state: string | null): string | null {
  if (state !== null) return state;
  const head = name.split(' ').at(-1) ?? name;
  return openingVerbs.has(lemma) && sealedThings.has(head) ? 'opened' : null;
}

const lasting = /^(?:props|costumes|dressing|food|vehicles)$/;

/** The thing is the object of the verb, or does it by itself. */
function isHit({ named, find }: Listed, { deed, byItself, alone }: Omit<Change, 'state'>, clause: Clauses): boolean {
  const { part } = named.mention;
  if (!lasting.test(find.category)) return false;
  if (!alone && part.role === 'object' && part.deed === deed && part.ofPart === null) return true;
  // A drink that splatters is not broken by it.
  if (alone && namesLiquid(find.name)) return false;
  const hasObject = clause.parts.some((one) => one.role === 'object' && one.deed === deed);
  return byItself && !hasObject && deed.subject?.phrase === part.phrase;
}

function findOfPronoun({ meant: { find }, deed, clause: { sentence }, at }: PronounThing, state: string): Find {
  const start = (sentence.tokens[deed.at] as Token).start;
  const end = (sentence.tokens[at] as Token).end;
  return {
    ...find,
    scene: sentence.scene,
    by: deed.subject?.person ?? find.by,
    count: null,
    state,
    stateBegins: true,
    words: sentence.text.slice(start, end),
    at: sentence.place(start, end),
    rules: ['a pronoun means the thing last in hand', 'a verb changes its state'],
  };
}
