import type { Diagnostic } from '../base/diagnostic.js';
import { buildBreakdown } from '../breakdown/build-breakdown.js';
import type { Breakdown } from '../breakdown/types.js';
import { findElements } from '../find/find-elements.js';
import { type Lexicon, openLexicon } from '../find/lexicon.js';
import type { Finds } from '../find/types.js';
import type { Host } from '../host/types.js';
import { paginate } from '../page/paginate.js';
import type { Pages } from '../page/types.js';
import { readScript } from '../script/read-script.js';
import type { Script } from '../script/types.js';

/** What the text says, before anything is printed. */
export interface Analysis {
  readonly script: Script;
  readonly pages: Pages;
  readonly finds: Finds;
  readonly breakdown: Breakdown;
}

export interface Analysed {
  /** Null when the text cannot be read at all; the messages say why. */
  readonly analysis: Analysis | null;
  readonly messages: readonly Diagnostic[];
}

/** Reads a script and breaks it down: text, script, pages, finds, breakdown. */
export function analyse(bytes: Uint8Array, file: string, lexicon: Lexicon): Analysed {
  const read = readScript(bytes, file);
  if (!read.script) return { analysis: null, messages: read.messages };
  const laid = paginate(read.script);
  const found = findElements(read.script, lexicon);
  const broken = buildBreakdown(read.script, laid.pages, found.finds);
  return {
    analysis: { script: read.script, pages: laid.pages, finds: found.finds, breakdown: broken.breakdown },
    messages: [...read.messages, ...laid.messages, ...found.messages, ...broken.messages],
  };
}

/** The lexicon that ships with the package. */
export function readLexicon(host: Pick<Host, 'readData'>): Lexicon {
  return openLexicon(host.readData('src/find/data/lexicon.bin'));
}
