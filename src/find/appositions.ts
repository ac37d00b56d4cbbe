import type { Mention } from './mentions.js';

/** The person whom a mention of somebody only describes: "Nora, a tall woman in a coat, ..." is Nora; "Nora, a nurse and a porter" are three. Null for somebody else. */
export function personBefore({ sentence, start, end }: Mention): string | null {
  const { text, tokens } = sentence;
  const after = text.slice(end);
  if (!/^an? /i.test(text.slice(start, end)) || /^ (?:and|or) |^, (?:and|or) (?:an?|the|his|her|two) /.test(after))
    return null;
  const before = text.slice(0, start).trimEnd();
  if (!before.endsWith(',')) return null;
  const head = before.slice(0, -1).replace(/\s*\([^)]*\)$|,\s*\d+s?$/, '');
  return tokens.find((token) => token.person !== null && token.end === head.length)?.person ?? null;
}
