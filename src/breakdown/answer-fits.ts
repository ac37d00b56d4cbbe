import { readNumber } from '../trade/number-words.js';

/** What kind of answer settles a question. */
export type Wanted = 'yes or no' | 'number' | 'words' | 'words, yes or no';

/** The choice that a plain yes stands for, too. */
export const all = 'all';

/** True when an answer is of the kind that its question wants; `choices` are names of which one must stand in it. */
export function answerFits(wants: Wanted, choices: readonly string[], answer: string): boolean {
  // A note of another kind would be printed as the answer, sign and all.
  if (answer.trimStart().startsWith('>')) return false;
  if (choices.includes(all) && isYes(answer)) return true;
  if (choices.length > 0) return choices.some((name) => answer.toLowerCase().includes(name.toLowerCase()));
  if (wants === 'number') return readCount(answer) !== null;
  const yesOrNo = isYes(answer) || isNo(answer);
  if (wants === 'yes or no') return yesOrNo;
  return wants === 'words, yes or no' || !/^(?:y|yes|n|no)[.!]?$/i.test(answer.trim());
}

/** How many an answer says: `about thirty`; of `3-4` the greater, so that there are enough. Null when it says no number. */
export function readCount(answer: string): number | null {
  const numbers: number[] = [];
  for (const word of answer.split(/[^\p{L}\p{N}]+/u)) {
    const number = readNumber(word);
    const before = numbers.at(-1) ?? 0;
    if (word.toLowerCase() === 'hundred' && before > 0 && before < 10) numbers.push(before * 100);
    else if (number !== null) numbers.push(number);
  }
  return numbers.length > 0 ? Math.max(...numbers) : null;
}

/** What an open question of the words wants, by its first words: nobody answers "What does it say?" with a yes. */
export function wantedBy(question: string): Wanted {
  if (/^how many\b/i.test(question)) return 'number';
  return /^(?:what|who|whose|which|where|when|how|why)\b/i.test(question) ? 'words' : 'words, yes or no';
}

/** True for words that begin with a yes. */
export function isYes(line: string): boolean {
  return /^(?:y|yes|same|the same)\b/i.test(line);
}

/** True for words that begin with a no. */
export function isNo(line: string): boolean {
  return /^(?:n|no|none|not)\b/i.test(line);
}
