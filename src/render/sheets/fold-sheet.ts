import { heightOf, type Strip } from '../layout/strips.js';
import { type FoldStep, foldSteps, type SectionName, sectionOrder } from './fold-steps.js';

/** Sets one section at a fold. */
export type SetSection = (name: SectionName, fold: number) => readonly Strip[];

/** A sheet's sections, folded as far as its room asks. */
export interface Folded {
  readonly strips: readonly Strip[];
  /** The fold of each section that is folded at all. */
  readonly folds: ReadonlyMap<SectionName, number>;
  readonly fits: boolean;
}

/** The room on a sheet, in points. */
export interface Room {
  readonly height: number;
  /** What the lines to write on ask for, as long as nothing need be folded to keep them. */
  readonly lines: number;
  /** Height of the note that says what was folded. */
  readonly note: (said: readonly string[]) => number;
}

/**
 * Folds sections step by step until they and the note about it fit the room; then unfolds again what turned out to need
 * no folding, the most important first.
 */
export function foldToFit(set: SetSection, room: Room): Folded {
  const parts = new Map(sectionOrder.map((name) => [name, set(name, 0)]));
  const folds = new Map<SectionName, number>();
  const fits = (free = false) => {
    const height = heightOfAll(parts) + room.note(saidOf(folds)) + (free ? room.lines : 0);
    return height <= room.height;
  };
  const put = ({ section }: FoldStep, fold: number) => {
    parts.set(section, set(section, fold));
    if (fold === 0) folds.delete(section);
    else folds.set(section, fold);
  };
  const taken: FoldStep[] = [];
  for (const step of foldSteps) {
    if (fits(step.free)) continue;
    if (heightOf(set(step.section, step.fold)) >= heightOf(parts.get(step.section) ?? [])) continue;
    put(step, step.fold);
    taken.push(step);
  }
  const done = fits();
  for (const step of done ? taken.reverse() : []) {
    if (folds.get(step.section) !== step.fold) continue;
    put(step, step.fold - 1);
    if (!fits(step.free)) put(step, step.fold);
  }
  return { strips: sectionOrder.flatMap((name) => parts.get(name) ?? []), folds, fits: done };
}

function heightOfAll(parts: ReadonlyMap<SectionName, readonly Strip[]>): number {
  let sum = 0;
  for (const strips of parts.values()) sum += heightOf(strips);
  return sum;
}

/** What a sheet says was folded, in the order of importance. */
export function saidOf(folds: ReadonlyMap<SectionName, number>): string[] {
  return sectionOrder.flatMap((name) => {
    const step = foldSteps.find((one) => one.section === name && one.fold === folds.get(name));
    return step?.says ? [step.says] : [];
  });
}
