import type { ElementEntry } from '../breakdown/types.js';
import { burnsDown, namesLiquid } from '../trade/used-up-words.js';

/** What the rule needs to know of a thing. */
export type Eatable = Pick<ElementEntry, 'category' | 'known' | 'name' | 'states'>;

/**
 * True for what each take uses up by the words of the script alone: food that somebody eats, what is poured, what a mark or a note
 * calls food, and what is struck or burnt down. Every paper goes by this until the book says otherwise.
 */
export function isUsedUpByWords(thing: Eatable, eaten = isEaten(thing)): boolean {
  const { category, known, name } = thing;
  if (burnsDown(name)) return true;
  return category === 'food' && (known !== 'found' || namesLiquid(name) || eaten);
}

function isEaten({ states }: Eatable): boolean {
  return states.some((one) => one.state === 'eaten' && one.onCamera);
}
