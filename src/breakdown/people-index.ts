import { foldName, slug } from '../base/slug.js';
import type { Range } from '../base/text-range.js';
import { isUnderAge } from '../find/implied/age-words.js';
import { readAges } from './ages.js';
import { kindOfCue } from './cue-people.js';
import type { Ground } from './ground.js';
import { notesOf } from './ground.js';
import { obtain } from './grouping.js';

/** A person of the script under one canonical name. */
export interface KnownPerson {
  readonly id: string;
  readonly name: string;
  readonly names: readonly string[];
  readonly age: string | null;
  readonly minor: boolean;
  readonly background: boolean;
  /** True when a cue or `cast:` names the person; false when only a note, a mark or the finder does. */
  readonly listed: boolean;
  readonly at: Range;
}

/** Everyone the script knows, by any of their names. */
export interface PeopleIndex {
  readonly all: readonly KnownPerson[];
  readonly find: (name: string) => KnownPerson | null;
}

/** Gathers people from `cast:` and cues, then from notes, marks and the finder. One person under two names is one. */
export function gatherPeople(ground: Ground): PeopleIndex {
  const byName = new Map<string, KnownPerson>();
  const all: KnownPerson[] = [];
  const ids = new Set<string>();
  const add = (person: Omit<KnownPerson, 'id'>) => {
    if (byName.has(foldName(person.name))) return;
    const known = { id: freeId(slug(person.name), ids), ...person };
    all.push(known);
    for (const name of known.names) if (!byName.has(foldName(name))) byName.set(foldName(name), known);
  };
  const ages = readAges(ground);
  for (const person of ground.script.people) {
    if (person.from === 'cue' && isNobody(person.name, byName)) continue;
    const names = distinctNames([...person.names, ...person.was]);
    const age = person.age ?? names.map((name) => ages.get(foldName(name))).find((one) => one !== undefined) ?? null;
    add({ ...pickListed(person), names, age, minor: age !== null && isUnderAge(age), listed: true });
  }
  for (const { name, at } of unlistedPeople(ground)) {
    const age = ages.get(foldName(name)) ?? null;
    add({ name, names: [name], age, minor: age !== null && isUnderAge(age), background: false, listed: false, at });
  }
  // Cues repeat a handful of spellings thousands of times: each is folded once.
  const asked = new Map<string, KnownPerson | null>();
  return { all, find: (name) => obtain(asked, name, () => byName.get(foldName(name)) ?? null) };
}

/** Each name once, whatever its case: a former name may stand among the others already. */
function distinctNames(names: readonly string[]): string[] {
  const folded = names.map(foldName);
  return names.filter((_, index) => folded.indexOf(folded[index] as string) === index);
}

function pickListed({ name, background, at }: Ground['script']['people'][number]) {
  return { name, background, at };
}

/** A cue that is no person: everyone at once, a crowd, or the voice of somebody known. */
function isNobody(name: string, known: ReadonlyMap<string, KnownPerson>): boolean {
  const owner = /^(.+)['\u2019]s voice$/i.exec(name)?.[1];
  return kindOfCue(name) !== 'person' || (owner !== undefined && known.has(foldName(owner)));
}

function* unlistedPeople(ground: Ground): Generator<{ name: string; at: Range }> {
  for (const definition of ground.script.definitions) if (definition.category === 'cast') yield definition;
  for (const { scene, finds } of ground.scenes) {
    for (const note of notesOf(scene.notes, 'items')) if (note.category === 'cast') yield* note.items;
    for (const block of scene.blocks) {
      if (block.kind !== 'action') continue;
      for (const line of block.lines) for (const mark of line.marks) if (mark.category === 'cast') yield mark;
    }
    for (const find of finds.people) if (find.kind === 'cast') yield find;
  }
}

/** An id nobody has yet: the wanted one, else with a running count. */
export function freeId(wanted: string, taken: Set<string>): string {
  let id = wanted;
  for (let count = 2; taken.has(id); count++) id = `${wanted}-${count}`;
  taken.add(id);
  return id;
}
