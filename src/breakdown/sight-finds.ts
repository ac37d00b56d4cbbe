import type { Find } from '../find/types.js';
import type { ElementRegister, Identity } from './element-register.js';
import { pushTo } from './grouping.js';
import { coreName, headOf, indexOfWords, sameThing, singular } from './same-thing.js';
import { type Sighting, sight } from './sighting.js';

/** Names under which the finder met declared things: `null` when one name met two. */
export type FoundNames = Map<string, Identity | null>;

/** A find that may mean one of several declared things of its scene: `the key`, with a brass key and an iron key at hand. */
export interface Unclear {
  readonly find: Find;
  readonly meant: readonly Identity[];
}

export interface Joined {
  readonly sightings: readonly Sighting[];
  /** Finds that mean nothing declared in the scene. */
  readonly left: readonly Find[];
  readonly unclear: readonly Unclear[];
}

/**
 * Joins the finds of a scene with its marks and notes. A find that a mark covers, or that can only mean a declared thing of the
 * scene, is that thing: it gives category, person, count and state, and never doubles it. The rest is returned as left over. `answered`
 * gives the writer's answer to which of several things a find is.
 */
export function joinFinds(
  finds: readonly Find[],
  declared: readonly Sighting[],
  names: FoundNames,
  answered: (find: Find) => string | null,
): Joined {
  const sightings: Sighting[] = [];
  const left: Find[] = [];
  const unclear: Unclear[] = [];
  const covered = givenByMark(finds, declared);
  for (const find of finds) {
    if (find.category === 'cast' || find.category === 'extras') continue;
    const mark = find.known === 'found' ? covering(find, declared) : null;
    const meant = mark ? [mark.identity] : choose(meanings(find, declared), answered(find));
    const [identity, ...others] = meant;
    if (!identity) {
      left.push(find);
      continue;
    }
    if (others.length > 0) {
      if (find.known === 'found') unclear.push({ find, meant });
      continue;
    }
    if (!mark || covered.get(mark) === find) {
      identity.categories.push({ name: find.category, source: find.known === 'found' ? 'find' : 'default' });
      sightings.push(sightFind(find, identity));
    }
    if (find.known === 'found' && !isAnother(find)) learnName(find.name, identity, names);
  }
  return { sightings, left, unclear };
}

/** The one of several things that an answer names; all of them without one. */
function choose(meant: readonly Identity[], answer: string | null): readonly Identity[] {
  const named = answer === null ? [] : meant.filter(({ name }) => indexOfWords(answer, name) >= 0);
  return named.length === 1 ? named : meant;
}

/** Names what is left over: a thing of that name declared elsewhere, else a found thing of its own. */
export function sightFinds(left: readonly Find[], register: ElementRegister, names: FoundNames): Sighting[] {
  return left.map((find) => {
    const elsewhere = isAnother(find) ? null : declaredElsewhere(find, register, names);
    if (elsewhere) elsewhere.categories.push({ name: find.category, source: 'find' });
    const owner = find.category === 'costumes' && find.worn ? find.by : null;
    return sightFind(find, elsewhere ?? register.find(find.name, find.category, owner, find.known));
  });
}

/** The find as a sighting of a thing. */
export function sightFind(find: Find, identity: Identity): Sighting {
  const { by, worn, confidence, strength, rules } = find;
  // What its very name says is no state: a rusty van is not rusty besides.
  const state = find.state !== null && indexOfWords(identity.name, find.state) >= 0 ? null : find.state;
  const count = find.count === 1 && isOneOfMore(find.name, identity.name) ? null : find.count;
  const seen = find.known === 'found';
  return sight(identity, find.known, find.words, find.at, {
    by,
    worn,
    count,
    state,
    stateBegins: find.stateBegins === true,
    confidence,
    strength,
    rules,
    seen,
  });
}

/** One shoe of the black shoes does not count them. */
function isOneOfMore(found: string, name: string): boolean {
  const last = coreName(name).split(' ').at(-1) ?? '';
  return last !== singular(last) && coreName(found).split(' ').at(-1) !== last;
}

function declaredElsewhere(find: Find, register: ElementRegister, names: FoundNames): Identity | null {
  const exact = register.declaredAs(find.name) ?? register.declaredAs(coreName(find.name));
  if (exact) return belongsToOther(exact, find) ? null : exact;
  const learnt = names.get(coreName(find.name)) ?? null;
  if (learnt) return belongsToOther(learnt, find) ? null : learnt;
  if (find.known !== 'found' || names.get(coreName(find.name)) === null || /^an? /i.test(find.words)) return null;
  const meant = register
    .declaredWithHead(headOf(find.name))
    .filter((one) => sameThing(one.name, find.name) && !belongsToOther(one, find));
  return meant.length === 1 ? (meant[0] as Identity) : null;
}

/** Two people's coats are two coats. */
function belongsToOther(identity: Identity, find: Find): boolean {
  const owner = identity.owner ?? identity.definition?.wornBy ?? null;
  return find.category === 'costumes' && find.worn && owner !== null && find.by !== null && owner !== find.by;
}

/** `another lantern`, `a second lantern` are never the one spoken of before. */
function isAnother(find: Find): boolean {
  return /^(?:another|a second|a third|a different|a new)\b/i.test(find.words);
}

function learnName(name: string, identity: Identity, names: FoundNames): void {
  const key = coreName(name);
  const known = names.get(key);
  names.set(key, known === undefined || known === identity ? identity : null);
}

/** For each mark, the one find that tells its category: of equal head, else the only one inside the brackets. */
function givenByMark(finds: readonly Find[], declared: readonly Sighting[]): Map<Sighting, Find> {
  const inside = new Map<Sighting, Find[]>();
  for (const find of finds) {
    const mark = find.known === 'found' ? covering(find, declared) : null;
    if (mark) pushTo(inside, mark, find);
  }
  const given = new Map<Sighting, Find>();
  for (const [mark, [first, ...others]] of inside) {
    const all = first ? [first, ...others] : [];
    const telling =
      all.find((find) => headOf(find.name) === headOf(mark.words)) ?? (others.length === 0 ? first : undefined);
    if (telling) given.set(mark, telling);
  }
  return given;
}

function covering(find: Find, declared: readonly Sighting[]): Sighting | null {
  return (
    declared.find(({ known, at, words }) => {
      if (known !== 'marked') return false;
      const overlaps = find.at.start.offset < at.end.offset && at.start.offset < find.at.end.offset;
      const inside = find.at.start.offset >= at.start.offset && find.at.end.offset <= at.end.offset;
      return overlaps && (inside || headOf(find.name) === headOf(words));
    }) ?? null
  );
}

function meanings(find: Find, declared: readonly Sighting[]): Identity[] {
  if (isAnother(find)) return [];
  const here = [...new Set(declared.map(({ identity }) => identity))].filter((one) => !belongsToOther(one, find));
  const exact = here.find((one) => one.names.some((name) => coreName(name) === coreName(find.name)));
  return exact ? [exact] : here.filter((one) => one.names.some((name) => sameThing(name, find.name)));
}
