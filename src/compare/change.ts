import type { Change, ChangeKind, SceneFacts } from './types.js';

/** A change from its kind and what is told of it; what is left out is null. */
export function changed(kind: ChangeKind, told: Partial<Omit<Change, 'kind'>>): Change {
  return {
    kind,
    scene: null,
    subject: null,
    wearer: null,
    category: null,
    before: null,
    after: null,
    whole: false,
    ...told,
  };
}

/** The change of one value, or none when it is the same. */
export function differs(
  kind: ChangeKind,
  before: string | number | null,
  after: string | number | null,
  told: Partial<Omit<Change, 'kind'>>,
): Change[] {
  if (before === after) return [];
  return [changed(kind, { ...told, before: toWords(before), after: toWords(after) })];
}

function toWords(value: string | number | null): string | null {
  return value === null ? null : String(value);
}

/** Two lists brought together by a key: each key once, those of the later list first. */
export function byKey<T>(
  before: readonly T[],
  after: readonly T[],
  keyBefore: (one: T) => string,
  keyAfter: (one: T) => string,
): { readonly key: string; readonly one: T | null; readonly other: T | null }[] {
  const earlier = new Map(before.map((one) => [keyBefore(one), one]));
  const later = new Map(after.map((one) => [keyAfter(one), one]));
  return [...new Set([...later.keys(), ...earlier.keys()])].map((key) => ({
    key,
    one: earlier.get(key) ?? null,
    other: later.get(key) ?? null,
  }));
}

/** A scene with nothing in it: the other side of one that is new or gone. */
export const noScene: Pick<SceneFacts, 'cast' | 'extras' | 'things' | 'wears' | 'dangers'> = {
  cast: [],
  extras: [],
  things: [],
  wears: [],
  dangers: [],
};
