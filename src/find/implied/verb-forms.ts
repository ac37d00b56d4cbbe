import type { Token } from '../reading.js';

/** "Nora and Tom smoke by the door": a word taken for a noun right after a person, with no thing to follow. */
export function isVerbAfterAll(tokens: readonly Token[], at: number): boolean {
  const [before, token, next] = [tokens[at - 1], tokens[at] as Token, tokens[at + 1]];
  if (token.tag !== 'noun' || !before) return false;
  if (before.lower === 'and' && isSecondVerb(tokens, at)) return true;
  const person = before.person !== null || (before.tag === 'pronoun' && /^(?:he|she|they|we|who)$/.test(before.lower));
  return person && (next === undefined || !/^(?:noun|name|adjective|verb|auxiliary)$/.test(next.tag));
}

/** "stands at the window and smokes": many beside one that is bare, in a sentence with a verb before it. */
function isSecondVerb(tokens: readonly Token[], at: number): boolean {
  const [token, one] = [tokens[at] as Token, tokens[at - 2]];
  if (token.lower === token.lemma || one?.tag !== 'noun' || one.lower !== one.lemma) return false;
  let verb = at - 3;
  while (verb >= 0 && tokens[verb]?.tag !== 'verb') verb--;
  return tokens[verb + 1]?.tag === 'preposition' || tokens[verb + 1]?.tag === 'particle';
}

/** "has smashed", but not "has been smashed". */
export function isPerfect(tokens: readonly Token[], at: number): boolean {
  const before = tokens.slice(Math.max(0, at - 2), at).map(({ lower }) => lower);
  return before.some((word) => /^(?:has|have|had|['’]ve)$/.test(word)) && !before.includes('been');
}

/** "is caught", "gets hit". */
export function isPassive(tokens: readonly Token[], at: number): boolean {
  const before = tokens.slice(Math.max(0, at - 2), at);
  return before.some(({ tag, lower }) => tag === 'auxiliary' || /^(?:get|gets|got|getting)$/.test(lower));
}

/** "Flame runs up the cable": a word in -s taken for a noun, in a sentence without a verb. */
export function isOnlyVerb(tokens: readonly Token[], { lower, lemma }: Token): boolean {
  return lower !== lemma && lower.endsWith('s') && !tokens.some(({ tag }) => tag === 'verb' || tag === 'auxiliary');
}
