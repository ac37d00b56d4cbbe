import { type CategoryName, categories } from '../../trade/categories.js';

const namesOf = (group: string): ReadonlySet<CategoryName> =>
  new Set(categories.filter((category) => category.group === group).map((category) => category.name));

/** Categories of things in hand. */
export const handledCategories = namesOf('in hand');

/** Categories of things that stand in a place. */
export const placeCategories = namesOf('the place');
