import type { Question } from '../../breakdown/types.js';
import type { CategoryName } from '../../trade/categories.js';

/** What a decision about the story concerns, by the first word of its key. */
const byKind: Readonly<Record<string, CategoryName>> = {
  clothes: 'costumes',
  change: 'costumes',
  wet: 'costumes',
  dirty: 'costumes',
};

/** Kinds of questions whose key goes on with the id of a thing. */
const ofThings: ReadonlySet<string> = new Set(['state', 'still', 'along', 'which', 'need']);

/** The category of what a question is about; null for one about people, days or places. `kinds` gives it by id and by name. */
export function concernOf(
  { element, key }: Pick<Question, 'element' | 'key'>,
  kinds: ReadonlyMap<string, CategoryName>,
): CategoryName | null {
  if (element !== null) return kinds.get(element) ?? null;
  const [, kind = '', rest = ''] = /^([a-z]+)-(.+)$/.exec(key) ?? [];
  return byKind[kind] ?? (ofThings.has(kind) ? (kinds.get(rest) ?? null) : null);
}
