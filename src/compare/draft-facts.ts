import { labelScenes } from '../breakdown/scene-label.js';
import type { Breakdown, BreakdownScene } from '../breakdown/types.js';
import type { DayFacts, DraftFacts, SceneFacts } from './types.js';

/** What a breakdown and its shooting days say, as far as drafts are compared. Things that are only a question are left out. */
export function factsOf(breakdown: Breakdown, days: readonly DayFacts[] | null): DraftFacts {
  const labels = labelScenes(breakdown.scenes);
  return {
    title: breakdown.title,
    draft: breakdown.draft,
    date: breakdown.date,
    scenes: breakdown.scenes.map((scene) => sceneFacts(scene, labels.get(scene.id) ?? scene.id)),
    people: breakdown.cast,
    things: breakdown.elements.filter(isNoQuestion),
    days,
  };
}

function sceneFacts(scene: BreakdownScene, label: string): SceneFacts {
  return {
    ...scene,
    label,
    storyDay: scene.storyDay.label,
    things: scene.elements.filter(isNoQuestion),
    dangers: distinct(scene.hazards.map((hazard) => hazard.title)),
  };
}

/** False for what is not in the text and was only asked about: it comes and goes with every rewording. */
export function isNoQuestion(thing: { readonly known: string; readonly strength: string | null }): boolean {
  return thing.known !== 'implied' || thing.strength !== 'ask';
}

/** Each title once, in the order of the first. */
export function distinct(titles: readonly string[]): string[] {
  return [...new Set(titles)];
}
