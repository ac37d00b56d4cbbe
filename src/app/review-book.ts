import type { Diagnostic } from '../base/diagnostic.js';
import type { Breakdown } from '../breakdown/types.js';
import type { EarlierFiles } from '../compare/choose-baseline.js';
import { nothingEarlier } from './compare-earlier.js';
import type { BookText } from './production.js';

/** What is still open once the book has spoken. */
export interface SettledByBook {
  readonly breakdown: Breakdown;
  /** How many questions of the script the book answers or makes idle. */
  readonly answered: number;
  /** Questions that only lines of the book can answer: `id: question`. */
  readonly forTheBook: readonly string[];
}

/** Settles a script's questions by its book before anyone is asked. A book that cannot be read settles nothing: its messages say why. */
export async function settleByBook(
  breakdown: Breakdown,
  book: BookText | null,
  today: string,
  earlier: EarlierFiles = nothingEarlier,
): Promise<SettledByBook | { readonly unreadable: readonly Diagnostic[] }> {
  if (book === null) return { breakdown, answered: 0, forTheBook: [] };
  const { makeProduction } = await import('./production.js');
  const made = makeProduction(book, breakdown, today, earlier);
  if (!made.production) return { unreadable: made.messages };
  return {
    breakdown: made.breakdown,
    answered: countQuestions(breakdown) - countQuestions(made.breakdown),
    forTheBook: made.production.plan.needs.flatMap(({ id, questions }) => questions.map((words) => `${id}: ${words}`)),
  };
}

function countQuestions({ scenes }: Breakdown): number {
  return scenes.reduce((sum, scene) => sum + scene.questions.length, 0);
}
