import { matchEntries } from '../book/match-entries.js';
import type { Book } from '../book/types.js';
import type { Breakdown } from '../breakdown/types.js';
import type { PlanLine } from './line-types.js';

/** Someone near a thing must not touch or eat it. The names are private to whoever hands the thing out. */
export interface AllergyWatch {
  /** Id of the thing. */
  readonly element: string;
  readonly name: string;
  /** As the book writes it: `egg`. */
  readonly allergy: string;
  /** Parts, or names of helpers. */
  readonly people: readonly string[];
  /** Ids of the scenes where such a person and the thing are together. */
  readonly scenes: readonly string[];
}

/** Every thing whose name, material or note holds a word of an allergy of somebody in the same scene. Helpers are in every scene. */
export function watchAllergies(breakdown: Breakdown, book: Book, lines: readonly PlanLine[]): AllergyWatch[] {
  const entries = matchEntries(book.people, breakdown.cast).byThing;
  const cast = breakdown.cast.flatMap(({ id, name }) =>
    (entries.get(id)?.privately.allergies ?? []).map((allergy) => ({ name, allergy, id })),
  );
  const helpers = book.helpers.flatMap(({ name, allergies }) =>
    allergies.map((allergy) => ({ name, allergy, id: null })),
  );
  return lines.flatMap((line) => {
    const text = [namedAs(line), line.note, line.element?.material, ...materialsOf(line)].join(' ');
    const met = [...cast, ...helpers].flatMap((one) => {
      if (!holds(text, one.allergy)) return [];
      const scenes = line.need.uses
        .map((use) => use.scene)
        .filter((id) => one.id === null || isIn(one.id, id, breakdown));
      return scenes.length > 0 ? [{ ...one, scenes }] : [];
    });
    return [...new Set(met.map((one) => one.allergy))].map((allergy) => {
      const same = met.filter((one) => one.allergy === allergy);
      return {
        element: line.id,
        name: line.name,
        allergy,
        people: [...new Set(same.map((one) => one.name))],
        scenes: [...new Set(same.flatMap((one) => one.scenes))],
      };
    });
  });
}

/** Food is all that its name says; of other things the last word tells what they are: an egg cup is no egg. */
function namedAs({ name, description, need }: PlanLine): string {
  if (need.category === 'food') return `${name} ${description ?? ''}`;
  return (
    name
      .split(/\s+of\s+/u)[0]
      ?.split(/\s+/u)
      .at(-1) ?? ''
  );
}

function materialsOf({ element }: PlanLine): string[] {
  return (element?.materials ?? []).map((one) => one.what);
}

function isIn(person: string, sceneId: string, breakdown: Breakdown): boolean {
  const scene = breakdown.scenes.find((one) => one.id === sceneId);
  return scene?.cast.some((one) => one.id === person && one.presence === 'seen') ?? false;
}

/** The first word of an allergy tells what it is of: "egg", "latex gloves", "lanolin on the skin". */
function holds(text: string, allergy: string): boolean {
  const [wanted] = wordsOf(allergy);
  return wanted !== undefined && wordsOf(text).includes(wanted);
}

function wordsOf(text: string): string[] {
  return text
    .toLowerCase()
    .split(/[^\p{L}]+/u)
    .filter((word) => word.length > 1)
    .map((word) => word.replace(/(?<=\p{L}{2})(?:e?s|e)$/u, ''));
}
