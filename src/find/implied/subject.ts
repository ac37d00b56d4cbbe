import type { Sentence } from '../reading.js';
import type { Evidence } from './evidence.js';
import { openWordList } from './word-list.js';

const ownParts = openWordList('BODY GARMENT');

/** The sentences of each paragraph, by scene and paragraph. */
export type Paragraphs = ReadonlyMap<string, readonly Sentence[]>;

/** Groups sentences by paragraph, so that a pronoun is looked up where it stands. */
export function groupParagraphs(sentences: readonly Sentence[]): Paragraphs {
  const groups = new Map<string, Sentence[]>();
  for (const sentence of sentences) {
    const key = keyOf(sentence);
    const group = groups.get(key);
    if (group) group.push(sentence);
    else groups.set(key, [sentence]);
  }
  return groups;
}

function keyOf({ scene, paragraph }: Sentence): string {
  return `${scene} ${paragraph}`;
}

/**
 * The person who does or suffers what raised an implication, by canonical name: a name, or a pronoun when the
 * paragraph has named one person only so far. Null when that is not plain.
 */
export function nameSubject<Owner>(
  { token, subject, object, sentence, words }: Evidence<Owner>,
  paragraphs: Paragraphs,
  sufferer: boolean,
): string | null {
  if (!sentence) return null;
  if (token?.person) return token.person;
  const first = sufferer && object && (object.person !== null || object.tag === 'pronoun') ? object : subject;
  if (first?.person) return first.person;
  // Who says "you’re bleeding" means somebody else.
  if (sentence.kind === 'speech' && !/^I\b/.test(words)) return null;
  if (sentence.speaker !== null) return sentence.speaker;
  if (first !== null && first.tag !== 'pronoun' && !ownParts.words.has(first.lemma)) return null;
  return onlyPerson(sentence, paragraphs);
}

/** The one person whom the paragraph has named so far, or null when there are more or none. */
export function onlyPerson(sentence: Sentence, paragraphs: Paragraphs): string | null {
  const named = new Set<string>();
  for (const one of paragraphs.get(keyOf(sentence)) ?? []) {
    for (const { person } of one.tokens) if (person !== null) named.add(person);
    if (one === sentence) break;
  }
  return named.size === 1 ? ([...named][0] as string) : null;
}
