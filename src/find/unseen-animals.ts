import type { Mention } from './mentions.js';
import type { Sentence } from './reading.js';
import { speaksOf } from './wider-words.js';

/** An animal that a sentence only lets hear: the sentence, and the place of its word. */
export interface Heard {
  readonly sentence: Sentence;
  readonly at: number;
}

/**
 * Leaves out animals that are only heard: "A dog howls." needs no dog. One that the scene shows elsewhere, and "the dog" that the script
 * shows elsewhere, is there.
 */
export function leaveOutHeard(mentions: readonly Mention[], heard: readonly Heard[]): readonly Mention[] {
  if (heard.length === 0) return mentions;
  const isHeard = (one: Mention) =>
    heard.some(({ sentence, at }) => sentence === one.sentence && at === one.part.phrase.head);
  const unseen = new Set(mentions.filter(isHeard));
  const seen = mentions.filter((one) => one.category === 'animals' && !unseen.has(one));
  return mentions.filter((one) => !unseen.has(one) || seen.some((other) => isSame(one, other)));
}

/** The dog of the scene, or the one that "the dog" speaks of. */
function isSame(one: Mention, other: Mention): boolean {
  const known = other.name.singular === one.name.singular || speaksOf(one.name.singular, other.name.singular);
  if (one.sentence.scene === other.sentence.scene) return known;
  return known && (one.part.phrase.determiner?.lower === 'the' || one.part.phrase.owner !== null);
}
