import { type Diagnostic, sortDiagnostics } from '../base/diagnostic.js';
import type { EarlierFiles } from '../compare/choose-baseline.js';
import type { Host } from '../host/types.js';
import { analyse, readLexicon } from './analyse.js';
import { nothingEarlier } from './compare-earlier.js';
import type { BookText } from './production.js';

/** All messages about a script, and about its book and the plan that follows from it on a day (an ISO date), in order; nothing is printed or written. */
export async function check(
  bytes: Uint8Array,
  file: string,
  host: Pick<Host, 'readData'>,
  planned: { readonly book: BookText; readonly today: string; readonly earlier?: EarlierFiles } | null = null,
): Promise<readonly Diagnostic[]> {
  const { analysis, messages } = analyse(bytes, file, readLexicon(host));
  if (!analysis || !planned) return sortDiagnostics(messages);
  const { makeProduction } = await import('./production.js');
  const { book, today, earlier = nothingEarlier } = planned;
  return sortDiagnostics([...messages, ...makeProduction(book, analysis.breakdown, today, earlier).messages]);
}
