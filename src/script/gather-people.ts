import { foldName } from '../base/slug.js';
import { findSpeakers, foldTitled, groupInCue, numberedPeople } from './people.js';
import type { Block, Note, Person } from './types.js';

/**
 * Everyone known to the script: the people of `cast:`, then each new name over a speech, in order of appearance. Spellings of one name
 * (MARY-ANN and MARY ANN, DR. BELL and DR BELL, THE STRANGER and STRANGER, DR BELL and DOCTOR BELL) are one person.
 */
export function gatherPeople(cast: readonly Person[], blocks: Iterable<Block>): Person[] {
  const people = [...cast];
  const known = new Set(cast.flatMap((person) => person.names.map(foldName)));
  const spellings = new Map(
    cast.flatMap(({ names }, index) => names.map((name) => [foldTitled(name), index] as const)),
  );
  const together = new Set<string>();
  for (const block of blocks) {
    if (block.kind !== 'speech') continue;
    const { name, at } = block.cue;
    if (known.has(foldName(name))) continue;
    known.add(foldName(name));
    const index = spellings.get(foldTitled(name));
    const same = index === undefined ? undefined : people[index];
    if (index !== undefined && same) people[index] = { ...same, names: [...same.names, name] };
    else {
      spellings.set(foldTitled(name), people.length);
      if (/\s*[/&+,]\s*|\sand\s/i.test(name) || groupInCue(name) !== null) together.add(name);
      people.push({ ...nobody, name, names: [name], from: 'cue', at });
    }
  }
  return withoutGroups(people, together);
}

/** NORA AND TOM is nobody new when both are known, wherever they first speak; nor is BOTH COPS beside COP 1 and COP 2. */
function withoutGroups(people: readonly Person[], together: ReadonlySet<string>): Person[] {
  const singles = people.filter(({ name, from }) => from === 'cast' || !together.has(name));
  return people.filter(({ name, from }) => {
    if (from === 'cast' || !together.has(name)) return true;
    return findSpeakers(singles, name).length < 2 && numberedPeople(singles, groupInCue(name) ?? '').length < 2;
  });
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
