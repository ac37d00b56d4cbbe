import { foldName } from '../base/slug.js';
import { nameTitles, titlesInFull } from '../trade/cue-extensions.js';
import { jointCue } from '../trade/cue-words.js';
import { singularWord } from '../trade/plural-words.js';
import type { Person } from './types.js';

const titles = new Set(nameTitles);
/** Titles written out, by their short form: DOCTOR PATEL is DR PATEL. */
const shortTitles: ReadonlyMap<string, string> = new Map(titlesInFull.map((row) => [row.inFull, row.short]));

/** A person's name as scripts spell it now so, now so: without article and stops, a dash is a space (rule E6). */
export function foldPerson(name: string): string {
  const folded = foldName(name).replace(/^(?:the|an?) (?=\S)/, '');
  const plain = folded.replace(/\.(?=\s|$)|(?<=\b\p{L})\.(?=\p{L}\b)/gu, '').replace(/[-\s]+/g, ' ');
  return plain.trim() || folded;
}

/** A name as `foldPerson` has it, with a title in its short form: DOCTOR PATEL and Dr. Patel are one. */
export function foldTitled(name: string): string {
  return joinTitle(splitTitle(foldPerson(name)));
}

interface PeopleIndex {
  /** By folded name; titles stand there without their stop. */
  readonly byName: ReadonlyMap<string, Person>;
  /** By name however it is spelt. */
  readonly bySpelling: ReadonlyMap<string, Person>;
  /** By name without its title; null where two people share it. */
  readonly byPlainName: ReadonlyMap<string, Person | null>;
}

const indexes = new WeakMap<readonly Person[], PeopleIndex>();

/**
 * The person a name means, or null: by any of their names, whatever the case, white space and quotes (rule E6), else without a
 * title (`Dr. Osei`, `OSEI`) when only one person fits. The list must not change after the first call with it.
 */
export function findPerson(people: readonly Person[], name: string): Person | null {
  const index = indexes.get(people) ?? makeIndex(people);
  const plain = splitTitle(foldName(name));
  const exact = index.byName.get(joinTitle(plain)) ?? index.bySpelling.get(foldPerson(name));
  if (exact) return exact;
  const person = index.byPlainName.get(plain.name) ?? null;
  if (person === null || plain.title === null) return person;
  return person.names.some((one) => agrees(splitTitle(foldName(one)), plain)) ? person : null;
}

/** Everyone a cue means: one person, or all of `NORA AND TOM` when each of them is known. Empty when nobody is. */
export function findSpeakers(people: readonly Person[], cueName: string): readonly Person[] {
  const one = findPerson(people, cueName);
  if (one) return [one];
  const parts = cueName.split(/\s*[/&+,]\s*|\s+and\s+/i).filter((part) => part !== '');
  const all = parts.map((part) => findPerson(people, part));
  return parts.length > 1 && all.every((person) => person !== null) ? [...new Set(all)] : [];
}

function makeIndex(people: readonly Person[]): PeopleIndex {
  const byName = new Map<string, Person>();
  const bySpelling = new Map<string, Person>();
  const byPlainName = new Map<string, Person | null>();
  for (const person of people) {
    for (const name of person.names) {
      const titled = splitTitle(foldName(name));
      if (!byName.has(joinTitle(titled))) byName.set(joinTitle(titled), person);
      if (!bySpelling.has(foldPerson(name))) bySpelling.set(foldPerson(name), person);
      const other = byPlainName.get(titled.name);
      byPlainName.set(titled.name, other === undefined || other === person ? person : null);
    }
  }
  const index = { byName, bySpelling, byPlainName };
  indexes.set(people, index);
  return index;
}

/** People by their names without the title before them, however spelt: MRS KOWALSKI by KOWALSKI. */
export function groupByUntitled(people: readonly Person[]): ReadonlyMap<string, ReadonlySet<Person>> {
  const groups = new Map<string, Set<Person>>();
  for (const person of people) {
    for (const written of person.names) {
      const { title, name } = splitTitle(foldName(written));
      if (title === null) continue;
      const key = foldPerson(name);
      groups.set(key, (groups.get(key) ?? new Set()).add(person));
    }
  }
  return groups;
}

interface TitledName {
  readonly title: string | null;
  readonly name: string;
}

/** Splits a folded name: `dr. osei` is title `dr` and name `osei`. A title alone is the name. */
function splitTitle(folded: string): TitledName {
  const found = /^([^\s.]+)\.?\s+(.+)$/.exec(folded);
  if (!found || !titles.has(found[1] as string)) return { title: null, name: folded };
  const title = found[1] as string;
  return { title: shortTitles.get(title) ?? title, name: found[2] as string };
}

function joinTitle({ title, name }: TitledName): string {
  return title === null ? name : `${title} ${name}`;
}

function agrees(one: TitledName, other: TitledName): boolean {
  return one.name === other.name && (one.title === null || one.title === other.title);
}

/** The people whom a script tells apart by a number alone: COP 1 and COP 2 for `cops`. */
export function numberedPeople(people: readonly Person[], plural: string): readonly Person[] {
  const wanted = singularName(plural);
  return people.filter(({ names }) =>
    names.some((name) => {
      const found = /^(.+?) (?:#|no\.? )?\d+$/.exec(foldName(name));
      return found !== null && singularName(found[1] as string) === wanted;
    }),
  );
}

/** What a cue of several people calls them: `BOTH COPS`, `THE TWO COPS` and `COPS` are cops; null for a name in the singular. */
export function groupInCue(name: string): string | null {
  const group = jointCue.exec(name)?.[1] ?? name;
  return singularName(group) === foldName(group).replace(/^the /, '') ? null : group;
}

/** A name in the singular: `police officers` is POLICE OFFICER. */
export function singularName(name: string): string {
  const words = foldName(name).replace(/^the /, '').split(' ');
  return [...words.slice(0, -1), singularWord(words.at(-1) as string)].join(' ');
}
