import { type Diagnostic, sortDiagnostics } from '../base/diagnostic.js';
import type { Breakdown } from '../breakdown/types.js';
import type { EarlierFiles } from '../compare/choose-baseline.js';
import type { Host } from '../host/types.js';
import { listPurchases } from '../plan/purchase-lines.js';
import { renderers } from '../render/renderers.js';
import type { OutputFile, OutputName, Production } from '../render/types.js';
import { type Analysis, analyse, readLexicon } from './analyse.js';
import { type Compared, compareEarlier, nothingEarlier } from './compare-earlier.js';
import type { BookText } from './production.js';

export interface CompileRequest {
  readonly bytes: Uint8Array;
  /** The script's path as the user typed it, for messages. */
  readonly file: string;
  readonly outputs: readonly OutputName[];
  /** The production book, when there is one. */
  readonly book: BookText | null;
  /** An ISO date: what the plan calls late lies before it. */
  readonly today: string;
  /** What earlier runs left, to tell what changed; none when left out. */
  readonly earlier?: EarlierFiles;
}

export interface Compiled {
  readonly breakdown: Breakdown | null;
  readonly production: Production | null;
  /** Empty when any message is an error: then the old outputs stay. */
  readonly files: readonly OutputFile[];
  readonly messages: readonly Diagnostic[];
}

/**
 * The whole pipeline:
 *
 *     bytes ─read─▶ Script ─┬─ paginate ─▶ Pages ─┐
 *                           └─ find ─────▶ Finds ─┴─ break down ─▶ Breakdown ─┬─ list ─▶ purchases ─┐
 *     an earlier breakdown.json ──────────────────────────────────────────────┼─ compare ─▶ Changes ┤
 *     book ─read────────────────────────────────────────────────────▶ Book ───┴─ plan ─▶ Plan ──────┴─ render ─▶ files
 */
export async function compile(request: CompileRequest, host: Host): Promise<Compiled> {
  const { analysis, messages } = analyse(request.bytes, request.file, readLexicon(host));
  if (!analysis) return { breakdown: null, production: null, files: [], messages: sortDiagnostics(messages) };
  const planned = await plan(request, analysis.breakdown);
  const { production, breakdown } = planned;
  const compared = await compareEarlier(request.earlier ?? nothingEarlier, breakdown, production);
  const all = [...messages, ...planned.messages, ...compared.messages];
  if (hasErrors(all)) return { breakdown, production, files: [], messages: sortDiagnostics(all) };
  const given = { ...analysis, breakdown, production, comparison: compared.comparison, previous: compared.previous };
  const rendered = await renderAll(request.outputs, given, all, host);
  return { breakdown, production, ...rendered };
}

/** The book's code is loaded only when there is a book. */
async function plan({ book, today, earlier = nothingEarlier }: CompileRequest, breakdown: Breakdown) {
  if (!book) return { production: null, breakdown, messages: [] };
  const { makeProduction } = await import('./production.js');
  return makeProduction(book, breakdown, today, earlier);
}

/** What is known when the papers are made. */
interface Given extends Analysis, Pick<Compared, 'comparison' | 'previous'> {
  readonly production: Production | null;
}

async function renderAll(
  names: readonly OutputName[],
  given: Given,
  messages: readonly Diagnostic[],
  host: Host,
): Promise<Pick<Compiled, 'files' | 'messages'>> {
  const input = {
    ...given,
    purchases: listPurchases(given.breakdown),
    messages: sortDiagnostics(messages),
    fonts: host.readFont,
    creationDate: creationDate(host.env.SOURCE_DATE_EPOCH, given.breakdown.date),
  };
  const files: OutputFile[] = [];
  const all = new Map(messages.map((message) => [keyOf(message), message]));
  for (const name of names) {
    const render = await renderers[name].load();
    const rendered = await render(input);
    files.push(...rendered.files);
    for (const message of rendered.messages) all.set(keyOf(message), message);
  }
  return { files, messages: sortDiagnostics([...all.values()]) };
}

/** Two outputs may stumble over the same thing: it is said once. */
function keyOf(message: Diagnostic): string {
  return [message.file, message.code, message.place?.start.offset, message.reason].join('\u0000');
}

function hasErrors(messages: readonly Diagnostic[]): boolean {
  return messages.some((message) => message.severity === 'error');
}

/** The date inside a PDF: SOURCE_DATE_EPOCH (reproducible-builds.org), else the script's own date, else 1 January 2000. */
function creationDate(epoch: string | undefined, written: string | null): Date {
  if (epoch && /^\d+$/.test(epoch)) return new Date(Number(epoch) * 1000);
  const iso = /^(\d{4})-(\d{2})-(\d{2})$/.exec(written ?? '');
  return new Date(iso ? Date.UTC(Number(iso[1]), Number(iso[2]) - 1, Number(iso[3])) : Date.UTC(2000, 0, 1));
}
