import type { Sentence, Token } from '../reading.js';
import type { Evidence } from './evidence.js';
import { openWordList } from './word-list.js';

const ownParts = openWordList('BODY GARMENT');

/**
 * The person who does or suffers what raised an implication, by canonical name: a name, or a pronoun when the
 * paragraph has named one person only so far. Null when that is not plain.
 */
export function nameSubject<Owner>(
  { token, subject, object, sentence }: Evidence<Owner>,
  sentences: readonly Sentence[],
  sufferer: boolean,
): string | null {
  if (!sentence) return null;
  if (token?.person) return token.person;
  const first = sufferer && object && (object.person !== null || object.tag === 'pronoun') ? object : subject;
  if (first?.person) return first.person;
  if (sentence.speaker !== null) return sentence.speaker;
  if (first !== null && first.tag !== 'pronoun' && !ownParts.words.has(first.lemma)) return null;
  return onlyPerson(sentence, sentences);
}

function onlyPerson(sentence: Sentence, sentences: readonly Sentence[]): string | null {
  const named = new Set<string>();
  for (const one of sentences) {
    if (one.scene !== sentence.scene || one.paragraph !== sentence.paragraph) continue;
    for (const token of one.tokens) addPerson(named, token);
    if (one === sentence) break;
  }
  return named.size === 1 ? ([...named][0] as string) : null;
}

function addPerson(named: Set<string>, { person }: Token): void {
  if (person !== null) named.add(person);
}
