import { mainsDevices, wetPlaces } from '../../trade/mains-words.js';
import type { Sentence } from '../reading.js';
import type { Reason } from './reason.js';

/**
 * Raises the hazard of electricity where a scene has water that reaches the floor or a body, and a thing on mains power,
 * though no sentence names both.
 */
export function raiseMainsNearWater(sentences: readonly Sentence[], raised: readonly Reason[]): Reason[] {
  const wet = new Set(raised.flatMap(({ hazard, scene, sentence }) => (hazard === 'H7' && sentence ? [scene] : [])));
  if (wet.size === 0) return [];
  const reached = new Set<number>();
  const devices = new Map<number, Reason>();
  for (const sentence of sentences) {
    const { scene, kind, tokens } = sentence;
    if (kind !== 'action' || !wet.has(scene)) continue;
    for (const { tag, lower, lemma, start, end } of tokens) {
      if (wetPlaces.has(lower) || wetPlaces.has(lemma)) reached.add(scene);
      if (tag !== 'noun' || devices.has(scene) || !mainsDevices.has(lemma)) continue;
      const words = sentence.text.slice(start, end);
      const because = 'the action, with water in the same scene';
      const at = sentence.place(start, end);
      devices.set(scene, { scene, hazard: 'H16', words, at, because, rank: 5, sentence, child: null });
    }
  }
  return [...devices.values()].filter(({ scene }) => reached.has(scene));
}
