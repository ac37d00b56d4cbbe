import { isMap, isScalar, isSeq, type YAMLMap } from 'yaml';
import { foldName } from '../base/slug.js';
import { sayScript } from '../messages/script.js';
import type { Person } from './types.js';
import { type FrontReader, scalarText } from './yaml-values.js';

/** Reads `cast:`, a mapping of names to what is known of them; a plain list of names is understood too. */
export function readCast(node: unknown, reader: FrontReader): Person[] {
  if (node === null || (isScalar(node) && node.value === null)) return [];
  const people: Person[] = [];
  const taken = new Map<string, string>();
  for (const [key, value] of entries(node, reader)) {
    const name = scalarText(key);
    if (name === null || name === '') reader.messages.push(unreadable(key, reader));
    else people.push(readPerson(name, key, value, taken, reader));
  }
  return people;
}

function entries(node: unknown, reader: FrontReader): [unknown, unknown][] {
  if (isMap(node)) return node.items.map((pair) => [pair.key, pair.value]);
  if (!isSeq(node)) {
    reader.messages.push(unreadable(node, reader));
    return [];
  }
  // `- NORA` is a name; `- NORA: {age: 34}` is a mapping of one.
  return node.items.flatMap((item) =>
    isMap(item)
      ? item.items.map((pair): [unknown, unknown] => [pair.key, pair.value])
      : [[item, null] as [unknown, unknown]],
  );
}

function unreadable(node: unknown, reader: FrontReader) {
  return sayScript('cast-unreadable', { found: scalarText(node) ?? 'something else' }, reader.place(node));
}

function readPerson(
  name: string,
  key: unknown,
  value: unknown,
  taken: Map<string, string>,
  reader: FrontReader,
): Person {
  const map = isMap(value) ? value : null;
  if (map === null && scalarText(value) !== null) reader.messages.push(unreadable(value, reader));
  if (map) checkKeys(map, reader);
  const was = names(field(map, 'was'));
  const all = [name, ...names(field(map, 'aliases')), ...was];
  return {
    name,
    names: claimNames(all, name, key, taken, reader),
    was,
    age: scalarText(field(map, 'age')),
    background: isTrue(field(map, 'background')),
    from: 'cast',
    at: reader.place(key),
  };
}

const keys = ['aliases', 'age', 'was', 'background'] as const;

function checkKeys(map: YAMLMap, reader: FrontReader): void {
  for (const pair of map.items) {
    const key = scalarText(pair.key) ?? '';
    const known = keys.some((one) => one === key.toLowerCase()) || key.toLowerCase() === 'alias';
    if (!known) reader.messages.push(sayScript('front-key-unknown', { key, known: keys }, reader.place(pair.key)));
  }
}

function field(map: YAMLMap | null, key: (typeof keys)[number]): unknown {
  const written = key === 'aliases' ? ['aliases', 'alias'] : [key];
  return map?.items.find((pair) => written.includes((scalarText(pair.key) ?? '').toLowerCase()))?.value ?? null;
}

function names(node: unknown): string[] {
  const texts = isSeq(node) ? node.items.map(scalarText) : (scalarText(node) ?? '').split(',');
  return texts.map((name) => name?.trim() ?? '').filter((name) => name !== '');
}

function isTrue(node: unknown): boolean {
  return /^(?:true|yes)$/i.test(scalarText(node) ?? '');
}

/** The names that are still free; one that another person has stays theirs, with a message. */
function claimNames(
  all: string[],
  person: string,
  key: unknown,
  taken: Map<string, string>,
  reader: FrontReader,
): string[] {
  const own = new Map<string, string>();
  for (const name of all) {
    const folded = foldName(name);
    const owner = taken.get(folded);
    if (owner !== undefined)
      reader.messages.push(sayScript('cast-name-twice', { name, person: owner }, reader.place(key)));
    else if (!own.has(folded)) own.set(folded, name);
  }
  for (const folded of own.keys()) taken.set(folded, person);
  return own.size > 0 ? [...own.values()] : [person];
}
