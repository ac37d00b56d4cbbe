import type { BreakdownScene, SceneElement } from '../../breakdown/types.js';
import { type CategoryName, categories } from '../../trade/categories.js';

const handled = new Set<CategoryName>(categories.filter(({ group }) => group === 'in hand').map(({ name }) => name));

/** The things in hand of a scene, as they come. What a costume change lists as worn stands there instead. */
export function thingsInHand(scene: BreakdownScene): SceneElement[] {
  const worn = new Set(scene.wears.flatMap((wears) => wears.garments.map((garment) => garment.id)));
  return scene.elements.filter((element) => handled.has(element.category) && !(element.worn && worn.has(element.id)));
}
