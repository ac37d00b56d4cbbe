import { foldName } from '../base/slug.js';
import { findSpeakers } from './people.js';
import type { Block, Note, Person } from './types.js';

/** Everyone known to the script: the people of `cast:`, then each new name over a speech, in order of appearance. */
export function gatherPeople(cast: readonly Person[], blocks: Iterable<Block>): Person[] {
  const people = [...cast];
  const known = new Set(cast.flatMap((person) => person.names.map(foldName)));
  const together: Person[] = [];
  for (const block of blocks) {
    if (block.kind !== 'speech') continue;
    const folded = foldName(block.cue.name);
    if (known.has(folded)) continue;
    known.add(folded);
    const person: Person = { ...nobody, name: block.cue.name, names: [block.cue.name], from: 'cue', at: block.cue.at };
    if (/\s*[/&+,]\s*|\sand\s/i.test(block.cue.name)) together.push(person);
    people.push(person);
  }
  if (together.length === 0) return people;
  // NORA AND TOM is nobody new when both are known, wherever they first speak.
  const singles = people.filter((person) => !together.includes(person));
  const groups = new Set(together.filter((person) => findSpeakers(singles, person.name).length > 1));
  return people.filter((person) => !groups.has(person));
}

const nobody = { was: [], age: null, background: false } as const;

/** People whom a `cast:` note names and nobody knows yet. */
export function peopleOfNotes(people: readonly Person[], notes: readonly Note[]): Person[] {
  const known = new Set(people.flatMap((person) => person.names.map(foldName)));
  const found: Person[] = [];
  for (const note of notes) {
    if (note.kind !== 'items' || note.category !== 'cast') continue;
    for (const item of note.items) {
      const folded = foldName(item.name);
      if (known.has(folded) || item.count !== null) continue;
      known.add(folded);
      found.push({ ...nobody, name: item.name, names: [item.name], from: 'cast', at: item.at });
    }
  }
  return found;
}
