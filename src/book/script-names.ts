import { type CategoryName, categoryOf } from '../trade/categories.js';
import type { Named } from './match-entries.js';

/** What the book must know of a breakdown: ids and names. A breakdown is one of these. */
export interface ScriptNames {
  readonly scenes: readonly {
    readonly id: string;
    readonly synopsis: string;
    readonly extras: readonly { readonly id: string; readonly name: string; readonly count: number | null }[];
  }[];
  readonly cast: readonly { readonly id: string; readonly name: string; readonly names: readonly string[] }[];
  readonly places: readonly { readonly id: string; readonly name: string }[];
  readonly elements: readonly {
    readonly id: string;
    readonly name: string;
    readonly names: readonly string[];
    readonly category: CategoryName;
    readonly known: 'marked' | 'noted' | 'found' | 'implied';
  }[];
}

/** The sections of the book that hold one entry for each thing of the script. */
export type ScriptSection = 'people' | 'background' | 'places' | 'scenes' | 'elements';

/** One thing that a section should have an entry for, with a remark to print beside a new one. */
export interface Wanted extends Named {
  readonly remark: string;
  /** The earlier id, which the book goes by without an entry of its own. */
  readonly was?: string;
}

/** All things of the script, by the section of the book they belong to, in script order. */
export function listThings(names: ScriptNames): Record<ScriptSection, readonly Wanted[]> {
  return {
    people: names.cast.map((one) => ({ id: one.id, names: one.names, remark: one.name })),
    background: listGroups(names),
    places: names.places.map((one) => ({ id: one.id, names: [one.name], remark: one.name })),
    scenes: names.scenes.map((one) => ({ id: one.id, names: [], remark: one.synopsis })),
    elements: names.elements.map((one) => ({ id: one.id, names: one.names, remark: categoryOf(one.category).label })),
  };
}

/** Every group in the background once, with its largest number. */
function listGroups({ scenes }: ScriptNames): Wanted[] {
  const all = scenes.flatMap((scene) => scene.extras);
  return [...new Set(all.map((one) => one.id))].map((id) => {
    const same = all.filter((one) => one.id === id);
    const most = Math.max(0, ...same.map((one) => one.count ?? 0));
    const name = same[0]?.name ?? id;
    return { id, names: [name], remark: most > 0 ? `${most} ${name}` : `${name}, how many?` };
  });
}

/** The things that a new entry is written for: of the elements those to be got, and implied ones only once accepted. */
export function listNewThings(names: ScriptNames): Record<ScriptSection, readonly Wanted[]> {
  const got = names.elements.filter((one) => categoryOf(one.category).bought && one.known !== 'implied');
  return listThings({ ...names, elements: got });
}
