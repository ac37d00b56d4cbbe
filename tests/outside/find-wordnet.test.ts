import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { lexicon } from '../find/finds-of.js';

// WordNet 3.1 (Princeton University) as read by another library, wordpos: what it calls our words a kind of.
interface Synset {
  readonly ptrs: readonly { readonly pointerSymbol: string; readonly synsetOffset: string; readonly pos: string }[];
  readonly synonyms: readonly string[];
}
interface Reader {
  lookupNoun(word: string): Promise<Synset[]>;
  seek(offset: string, pos: string): Promise<Synset>;
}

const library = (await import('wordpos' as string)) as { default: new (options: object) => Reader };
const reader = new library.default({});

const kinds: Readonly<Record<string, readonly string[]>> = {
  costumes: [
    'clothing',
    'footwear',
    'headdress',
    'jewelry',
    'garment',
    'adornment',
    'mask',
    'spectacles',
    'armor',
    'uniform',
    'protective_garment',
    'belt',
    'strap',
    'timepiece',
  ],
  animals: ['animal', 'animal_group', 'biological_group'],
  vehicles: ['vehicle', 'craft', 'conveyance', 'machine', 'instrumentality'],
  food: ['food', 'beverage', 'foodstuff', 'nutriment', 'plant_part', 'plant', 'animal'],
  extras: ['person', 'group', 'gathering', 'people'],
  weapons: ['weapon', 'ammunition', 'instrumentality', 'explosive'],
  dressing: ['furnishing', 'furniture', 'artifact', 'plant', 'decoration'],
  props: ['artifact', 'communication', 'substance', 'plant', 'natural_object', 'possession', 'matter'],
};

/** Every word that stands above any meaning of a noun, the noun's own synonyms included. */
async function above(word: string): Promise<Set<string>> {
  const found = new Set<string>();
  let level = await reader.lookupNoun(word.replaceAll('-', '_'));
  for (let depth = 0; depth < 14 && level.length > 0; depth++) {
    const offsets = new Set<string>();
    for (const { synonyms, ptrs } of level) {
      for (const synonym of synonyms) found.add(synonym.toLowerCase());
      for (const pointer of ptrs) if (pointer.pointerSymbol === '@') offsets.add(pointer.synsetOffset);
    }
    level = await Promise.all([...offsets].map((offset) => reader.seek(offset, 'n')));
  }
  return found;
}

/** Every n-th single word of a list. */
function sample(list: string, size: number): string[] {
  const text = readFileSync(new URL(`../../src/find/data/lists/${list}.txt`, import.meta.url), 'utf8');
  const words = text.split(/\s+/).filter((word) => /^[a-z]{4,}$/.test(word) && lexicon.find(word)?.wordnet);
  const step = Math.max(1, Math.floor(words.length / size));
  return words.filter((_, i) => i % step === 0).slice(0, size);
}

describe('categories of common nouns against WordNet', () => {
  it.each(Object.keys(kinds))('%s', async (list) => {
    const disagreements: string[] = [];
    const words = sample(list, 60);
    for (const word of words) {
      const over = await above(word);
      if (!(kinds[list] as readonly string[]).some((kind) => over.has(kind))) disagreements.push(word);
    }
    console.log(
      `${list}: ${words.length - disagreements.length} of ${words.length} agree; not: ${disagreements.join(', ')}`,
    );
    expect(words.length).toBeGreaterThan(25);
    expect(disagreements.length / words.length).toBeLessThan(0.2);
  });
});
