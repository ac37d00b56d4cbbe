import type { Diagnostic } from '../base/diagnostic.js';
import { foldName } from '../base/slug.js';
import { sayScript } from '../messages/script.js';
import { findCategory } from '../trade/categories.js';
import { checkShortWord } from './category-words.js';
import { findPerson } from './people.js';
import type { WrittenDefinition } from './read-definitions.js';
import type { Definition, Person } from './types.js';

/** Understands definitions (rule E5). The first of two for one name counts. */
export function buildDefinitions(
  written: readonly WrittenDefinition[],
  people: readonly Person[],
  messages: Diagnostic[],
): Definition[] {
  const first = new Map<string, WrittenDefinition>();
  const definitions: Definition[] = [];
  for (const one of [...written].sort((a, b) => a.at.start.offset - b.at.start.offset)) {
    const earlier = first.get(foldName(one.name));
    if (earlier) {
      const related = [{ place: earlier.at, reason: 'first defined here' }];
      messages.push(sayScript('definition-twice', { name: one.name }, one.at, related));
      continue;
    }
    first.set(foldName(one.name), one);
    definitions.push(buildOne(one, people, messages));
  }
  return definitions;
}

function buildOne(written: WrittenDefinition, people: readonly Person[], messages: Diagnostic[]): Definition {
  const category = findCategory(written.category);
  const named = written.category !== '' && written.category !== '<>';
  if (named && !category) messages.push(sayScript('category-unknown', { written: written.category }, written.at));
  checkShortWord(written.category, written.at, messages);
  const segments = written.text
    .split(';')
    .map((segment) => segment.trim())
    .filter((segment) => segment !== '');
  let count: number | null = null;
  let carriedBy: string | null = null;
  let wornBy: string | null = null;
  const was: string[] = [];
  const description: string[] = [];
  for (const segment of segments) {
    const found = /^(carried by|worn by|was)\s+(\S.*)$/i.exec(segment);
    const value = found?.[2] ?? '';
    if (/^\d+$/.test(segment) && count === null) count = Number(segment);
    else if (!found) description.push(segment);
    else if (/^was$/i.test(found[1] as string)) was.push(value);
    else if (/^worn/i.test(found[1] as string)) wornBy = personName(value, people, written, messages);
    else carriedBy = personName(value, people, written, messages);
  }
  return {
    name: written.name,
    category: category?.name ?? null,
    count,
    carriedBy,
    wornBy,
    was,
    description: description.length > 0 ? description.join('; ') : null,
    at: written.at,
  };
}

function personName(
  name: string,
  people: readonly Person[],
  written: WrittenDefinition,
  messages: Diagnostic[],
): string {
  const person = findPerson(people, name);
  if (!person) messages.push(sayScript('definition-person-unknown', { name }, written.at));
  return person?.name ?? name;
}
