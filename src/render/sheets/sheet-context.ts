import { labelScenes, type SceneLabels } from '../../breakdown/scene-label.js';
import type { Breakdown, BreakdownScene } from '../../breakdown/types.js';
import type { Block } from '../layout/blocks.js';
import type { Production, RenderInput } from '../types.js';
import { type BookNotes, readBookNotes } from '../words/book-notes.js';
import { changesByScene, type SceneChangesOnPaper } from '../words/scene-changes.js';

/** What every part of the sheets may ask. */
export interface SheetContext {
  readonly breakdown: Breakdown;
  readonly labels: SceneLabels;
  /** Null when the script has no production book. */
  readonly production: Production | null;
  /** What the book notes of each thing. */
  readonly notes: BookNotes;
  /** What changed since the draft that the reader holds; null when nothing was compared. */
  readonly changes: SceneChangesOnPaper | null;
}

/**
 * Writes one section of a scene's sheet; an empty list when there is nothing to say. `fold` is how far it must be
 * folded to leave room: 0 is everything.
 */
export type Section = (scene: BreakdownScene, context: SheetContext, fold: number) => readonly Block[];

export function createContext(
  breakdown: Breakdown,
  production: Production | null = null,
  comparison: RenderInput['comparison'] | null = null,
): SheetContext {
  return {
    breakdown,
    labels: labelScenes(breakdown.scenes),
    production,
    notes: readBookNotes(production),
    changes: comparison?.kind === 'compared' ? changesByScene(comparison.changes) : null,
  };
}

/** A scene's label on paper. */
export function labelOf(scene: Pick<BreakdownScene, 'id'>, context: SheetContext): string {
  return context.labels.get(scene.id) as string;
}
