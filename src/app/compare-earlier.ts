import type { Diagnostic } from '../base/diagnostic.js';
import type { Breakdown } from '../breakdown/types.js';
import { type Baseline, chooseBaseline, type EarlierFile, type EarlierFiles } from '../compare/choose-baseline.js';
import type { Comparison } from '../compare/types.js';
import { sayCompare } from '../messages/compare.js';
import { daysJson } from '../render/json/days-json.js';
import type { Production } from '../render/types.js';

/** What a run that finds nothing of an earlier one hands in. */
export const nothingEarlier: EarlierFiles = { written: null, previous: null, since: null };

export interface Compared {
  readonly comparison: Comparison;
  /** The text to keep as `previous.json`, or null. */
  readonly previous: string | null;
  readonly messages: readonly Diagnostic[];
}

/** Compares a breakdown with that of the draft handed out before, when there is one. */
export async function compareEarlier(
  earlier: EarlierFiles,
  breakdown: Breakdown,
  production: Production | null,
): Promise<Compared> {
  const draft = breakdown.draft?.trim() || null;
  const baseline = chooseBaseline(earlier, draft);
  const { comparison, messages } = await compareWith(baseline, breakdown, production);
  const broken = baseline.broken ? [sayEarlier(baseline.broken, 'it is no JSON')] : [];
  return { comparison, previous: baseline.keep?.text ?? null, messages: [...broken, ...messages] };
}

/** The code that compares is loaded only when there is something to compare with. */
async function compareWith(
  { file, isNamed }: Baseline,
  breakdown: Breakdown,
  production: Production | null,
): Promise<Pick<Compared, 'comparison' | 'messages'>> {
  if (!file) {
    const why = breakdown.draft?.trim() ? 'nothing earlier' : 'no label';
    return { comparison: { kind: 'not compared', why }, messages: [] };
  }
  const { readFacts } = await import('../compare/read-facts.js');
  const before = readFacts(file.text);
  if ('why' in before) {
    const message = isNamed
      ? sayCompare('since-not-read', { path: file.file, why: before.why })
      : sayEarlier(file, before.why);
    return { comparison: { kind: 'not compared', why: 'not readable' }, messages: [message] };
  }
  const [{ compareDrafts }, { factsOf }] = await Promise.all([
    import('../compare/compare-drafts.js'),
    import('../compare/draft-facts.js'),
  ]);
  const after = factsOf(breakdown, daysJson(production));
  return { comparison: { kind: 'compared', changes: compareDrafts(before, after) }, messages: [] };
}

function sayEarlier({ file }: EarlierFile, why: string): Diagnostic {
  return sayCompare('earlier-not-read', { path: file, why });
}
