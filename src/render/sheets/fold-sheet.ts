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

/** A section as it is set now. */
interface Part {
  readonly strips: readonly Strip[];
  readonly height: number;
}

/**
 * Folds sections step by step until they and the note about it fit the room; then unfolds again what turned out to need
 * no folding, the most important first.
 */
export function foldToFit(set: SetSection, room: Room): Folded {
  const partOf = rememberParts(set);
  const parts = new Map(sectionOrder.map((name) => [name, partOf(name, 0)]));
  const folds = new Map<SectionName, number>();
  let height = 0;
  for (const part of parts.values()) height += part.height;
  let note = 0;
  const fits = (free = false) => height + note + (free ? room.lines : 0) <= room.height;
  const put = ({ section }: FoldStep, fold: number) => {
    const part = partOf(section, fold);
    height += part.height - (parts.get(section)?.height ?? 0);
    parts.set(section, part);
    if (fold === 0) folds.delete(section);
    else folds.set(section, fold);
    note = folds.size === 0 ? 0 : room.note(saidOf(folds));
  };
  const taken: FoldStep[] = [];
  for (const step of fits(true) ? [] : foldSteps) {
    if (fits(step.free)) continue;
    if (partOf(step.section, step.fold).height >= (parts.get(step.section)?.height ?? 0)) continue;
    put(step, step.fold);
    taken.push(step);
  }
  const done = fits();
  // Where not all the lines to write on can be had, no word is given up for some of them.
  const lines = fits(true);
  const back = done ? taken.reverse() : [];
  for (const step of [...back.filter((one) => !isLast(one)), ...back.filter(isLast)]) {
    if (folds.get(step.section) !== step.fold || (isLast(step) && losesOthers(folds))) continue;
    put(step, step.fold - 1);
    if (!fits(step.says === null || (step.free && lines))) put(step, step.fold);
  }
  return { strips: sectionOrder.flatMap((name) => parts.get(name)?.strips ?? []), folds, fits: done };
}

/** True for the step that hides the tasks: they come back last of all. */
function isLast({ section, says }: FoldStep): boolean {
  return section === 'tasks' && says !== null;
}

function losesOthers(folds: ReadonlyMap<SectionName, number>): boolean {
  return saidOf(new Map([...folds].filter(([name]) => name !== 'tasks'))).length > 0;
}

/** Sets each section at each fold at most once. */
function rememberParts(set: SetSection): (name: SectionName, fold: number) => Part {
  const parts = new Map<string, Part>();
  return (name, fold) => {
    const key = `${name} ${fold}`;
    let part = parts.get(key);
    if (!part) {
      const strips = set(name, fold);
      part = { strips, height: heightOf(strips) };
      parts.set(key, part);
    }
    return part;
  };
}

/** What is said of each section by its fold. */
const words = new Map<SectionName, Map<number, string | null>>();
for (const { section, fold, says } of foldSteps) {
  const known = words.get(section) ?? new Map<number, string | null>();
  words.set(section, known.set(fold, says));
}

/** What a sheet says was folded, in the order of importance. */
export function saidOf(folds: ReadonlyMap<SectionName, number>): string[] {
  const said: string[] = [];
  for (const name of folds.size === 0 ? [] : sectionOrder) {
    const fold = folds.get(name);
    const word = fold === undefined ? null : words.get(name)?.get(fold);
    if (word) said.push(word);
  }
  return said;
}
