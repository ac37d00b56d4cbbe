import { compareText } from '../base/diagnostic.js';
import { labelScenes } from '../breakdown/scene-label.js';
import type { Breakdown, ElementEntry } from '../breakdown/types.js';
import { categories, categoryOf } from '../trade/categories.js';
import type { PurchaseLine } from './types.js';
import { isUsedUpByWords } from './used-up-by-words.js';

/**
 * Lists what must be got: one line for each thing of a category that is bought. A thing that the words only imply, or that is
 * asked about wherever it is found, is no purchase until a mark, a note or an answer accepts it. Lines stand by department in the order of the categories, then by first scene, then by name.
 */
export function listPurchases(breakdown: Breakdown): PurchaseLine[] {
  const order = new Map(breakdown.scenes.map(({ id }, index) => [id, index] as const));
  const labels = labelScenes(breakdown.scenes);
  const ids = breakdown.scenes.map(({ id }) => id);
  const accepted = listAccepted(breakdown);
  const lines = breakdown.elements
    .filter((one) => isBought(one) && accepted.has(one.id))
    .map((element) => {
      const scenes = element.scenes.map((id) => order.get(id) ?? 0).sort((a, b) => a - b);
      return {
        first: scenes[0] ?? 0,
        line: writeLine(
          element,
          scenes.map((index) => labels.get(ids[index] ?? '') ?? ''),
        ),
      };
    });
  return lines
    .sort(
      (a, b) =>
        departments.indexOf(a.line.department) - departments.indexOf(b.line.department) ||
        a.first - b.first ||
        compareText(a.line.name, b.line.name),
    )
    .map(({ line }) => line);
}

const departments: readonly string[] = [...new Set(categories.map(({ department }) => department))];

/** Ids of the things that stand in some scene without a question whether they are needed. */
function listAccepted({ scenes }: Breakdown): Set<string> {
  return new Set(
    scenes.flatMap(({ elements, wears, questions }) => {
      const asked = new Set(questions.map(({ element }) => element));
      const here = [...elements, ...wears.flatMap(({ garments }) => garments)];
      return here.filter(({ id, carried }) => !carried && !asked.has(id)).map(({ id }) => id);
    }),
  );
}

function isBought({ category, known }: ElementEntry): boolean {
  return categoryOf(category).bought && known !== 'implied';
}

function writeLine(element: ElementEntry, scenes: readonly string[]): PurchaseLine {
  const { id, name, category, description, count, by, known } = element;
  return {
    id,
    department: categoryOf(category).department,
    category,
    name,
    description,
    scenes,
    firstScene: scenes[0] ?? '',
    states: [...new Set(element.states.map(({ state }) => state))],
    inScript: count,
    usedBy: by,
    known,
    usedUp: isUsedUpByWords(element),
  };
}
