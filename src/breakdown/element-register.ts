import { foldName, foldThing, withoutArticle } from '../base/slug.js';
import type { Definition, Script } from '../script/types.js';
import type { CategoryName } from '../trade/categories.js';
import { pushTo } from './grouping.js';
import { headOf } from './same-thing.js';
import type { Known } from './types.js';

/** Where a category comes from, the strongest first. */
export const categorySources = ['on the spot', 'definition', 'note', 'find', 'default'] as const;
export type CategorySource = (typeof categorySources)[number];

/** A thing through the whole script, under one canonical name. */
export interface Identity {
  readonly name: string;
  /** Every name it goes or went by, the canonical one first. */
  readonly names: readonly string[];
  /** The person whose garment it is, when others wear one of the same name. */
  readonly owner: string | null;
  readonly definition: Definition | null;
  /** Everything that spoke of its category; the strongest source decides, and of equals the first. */
  readonly categories: { readonly name: CategoryName; readonly source: CategorySource }[];
  /** The strongest way in which it is known anywhere. */
  known: Known;
}

/** All things of a script by name. Marks and notes declare by name; finds are found again by name, category and owner. */
export class ElementRegister {
  private readonly declared = new Map<string, Identity>();
  private readonly found = new Map<string, Identity>();
  private readonly heads = new Map<string, Identity[]>();

  constructor(script: Script) {
    for (const definition of script.definitions) {
      const identity = makeIdentity(definition.name, definition.was, definition);
      if (definition.category) identity.categories.push({ name: definition.category, source: 'definition' });
      for (const name of identity.names)
        if (!this.declared.has(foldThing(name))) this.declared.set(foldThing(name), identity);
    }
  }

  /** The thing that a mark or a note names, made when it is new. */
  declare(name: string, known: 'marked' | 'noted'): Identity {
    const key = foldThing(name);
    const identity = this.declared.get(key) ?? makeIdentity(name, [], null);
    this.declared.set(key, identity);
    if (identity.known !== 'marked' && identity.known !== 'noted') pushTo(this.heads, headOf(name), identity);
    strengthen(identity, known);
    return identity;
  }

  /** The declared thing of exactly this name, or null. */
  declaredAs(name: string): Identity | null {
    return this.declared.get(foldThing(name)) ?? null;
  }

  /** True for a definition whose thing no mark and no note has named. */
  definedUnnamed(name: string): boolean {
    const identity = this.declaredAs(name);
    return identity?.definition?.name === name && identity.known === 'implied';
  }

  /** The finder has found a thing that is only defined. */
  meet(identity: Identity): void {
    strengthen(identity, 'found');
  }

  /** Declared things whose head is this word. */
  declaredWithHead(head: string): readonly Identity[] {
    return this.heads.get(head) ?? [];
  }

  /** Declares a garment that notes put on one person only. */
  declareGarment(name: string, owner: string): void {
    const key = foldThing(name);
    const identity = this.declared.get(key) ?? makeIdentity(name, [], null, owner);
    identity.categories.push({ name: 'costumes', source: 'note' });
    if (!this.declared.has(key)) pushTo(this.heads, headOf(name), identity);
    this.declared.set(key, identity);
    strengthen(identity, 'noted');
  }

  /** A garment that a note puts on someone: one for each name and wearer. */
  garment(name: string, owner: string): Identity {
    const identity = this.find(name, 'costumes', owner, 'found');
    identity.categories.push({ name: 'costumes', source: 'note' });
    strengthen(identity, 'noted');
    return identity;
  }

  /** The thing that the finder names, one for each name and category, and for each wearer when it is worn. */
  find(name: string, category: CategoryName, owner: string | null, known: 'found' | 'implied'): Identity {
    const key = `${foldName(name)}\u0000${category}\u0000${owner ?? ''}`;
    const identity = this.found.get(key) ?? makeIdentity(name, [], null, owner);
    if (!this.found.has(key)) identity.categories.push({ name: category, source: 'find' });
    this.found.set(key, identity);
    strengthen(identity, known);
    return identity;
  }
}

function makeIdentity(
  written: string,
  was: readonly string[],
  definition: Definition | null,
  owner: string | null = null,
): Identity {
  const name = withoutArticle(written);
  return { name, names: [name, ...was], owner, definition, categories: [], known: 'implied' };
}

const rank: Record<Known, number> = { marked: 0, noted: 1, found: 2, implied: 3 };

/** Keeps the stronger of two ways of knowing. */
export function strongerOf(a: Known, b: Known): Known {
  return rank[a] <= rank[b] ? a : b;
}

function strengthen(identity: Identity, known: Known): void {
  identity.known = strongerOf(identity.known, known);
}

/** The category that the strongest source gives; a thing without any is a prop. */
export function categoryOfIdentity(identity: Identity): CategoryName {
  for (const source of categorySources) {
    const said = identity.categories.find((one) => one.source === source);
    if (said) return said.name;
  }
  return 'props';
}
