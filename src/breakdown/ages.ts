import { foldName } from '../base/slug.js';
import type { Ground } from './ground.js';

/**
 * A person introduced in capitals with an age in digits: `PIP, 9,` or `PIP (about 9)`. The first one counts.
 */
const introduction =
  /(\p{Lu}[\p{Lu}\p{N}.'\u2019-]*(?: \p{Lu}[\p{Lu}\p{N}.'\u2019-]*){0,3})(?:,| \()\s?((?:about |around |aged? |early |mid-?|late )?\d{1,2}s?)(?=[),.;]| and\b| years?\b|-year)/gu;

/** Ages that the action tells when it brings someone in, by folded name, as written. */
export function readAges(ground: Ground): ReadonlyMap<string, string> {
  const ages = new Map<string, string>();
  for (const { actions, scene } of ground.scenes) {
    for (const block of scene.blocks) {
      const age = block.kind === 'speech' ? ageInCue(block.cue.extensions) : null;
      if (block.kind === 'speech' && age && !ages.has(foldName(block.cue.name)))
        ages.set(foldName(block.cue.name), age);
    }
    for (const { text } of actions) {
      for (const [, name = '', age = ''] of text.matchAll(introduction)) {
        if (!ages.has(foldName(name))) ages.set(foldName(name), age.trim());
      }
    }
  }
  return ages;
}

/** The age that a cue carries behind a name, `PIP (9)`, or null. */
function ageInCue(extensions: readonly string[]): string | null {
  return extensions.find((extension) => /^(?:AGED? )?\d{1,2}$/i.test(extension)) ?? null;
}
