import type { Diagnostic } from '../../base/diagnostic.js';
import type { Breakdown } from '../../breakdown/types.js';
import type { Block } from '../layout/blocks.js';
import { type Foot, layOutDocument } from '../layout/document.js';
import { knownKey } from '../layout/known-words.js';
import type { Orientation } from '../layout/measures.js';
import type { PageTree } from '../layout/page-tree.js';
import { createTypesetter, type Typesetter } from '../layout/typesetter.js';
import type { Rendered, RenderInput } from '../types.js';
import { fontBookOf } from './font-book.js';
import { sayMissingGlyphs } from './missing-glyphs.js';
import { paintPdf } from './paint.js';

/** A PDF made of blocks. */
export interface BlockDocument {
  /** The file's name: `props.pdf`. */
  readonly file: string;
  /** What the foot of each page calls it: `Props`. */
  readonly name: string;
  readonly blocks: readonly Block[];
  readonly orientation?: Orientation;
  /** The line that explains words and signs at the foot of each page; left out, the usual one; null for none. */
  readonly key?: string | null;
}

/** Lays out and paints a document of blocks; messages tell of characters that could not be printed. */
export async function renderDocument(input: RenderInput, document: BlockDocument): Promise<Rendered> {
  const type = openType(input);
  const foot = footOf(input.breakdown, document.name, document.key);
  const orientation = document.orientation ?? 'portrait';
  const pages = layOutDocument({ paper: input.breakdown.paper, orientation, foot, blocks: document.blocks }, type);
  return {
    files: [{ name: document.file, content: await paint(input, document.name, pages) }],
    messages: missingOf(input, type),
  };
}

/** A typesetter over the faces of the run. */
export function openType(input: RenderInput): Typesetter {
  return createTypesetter(fontBookOf(input.fonts));
}

/** The running foot of an output: title, draft and date of the script, the output's name, the key. */
export function footOf(breakdown: Breakdown, name: string, key: string | null = knownKey): Foot {
  const draft = breakdown.draft ? `draft ${breakdown.draft}` : 'no draft named';
  return { title: breakdown.title, version: `${draft} · ${breakdown.date ?? 'undated'}`, middle: name, key };
}

/** Paints pages with the title and author of the script. */
export function paint(input: RenderInput, name: string, pages: readonly PageTree[]): Promise<Uint8Array> {
  const { title, author } = input.breakdown;
  return paintPdf(
    pages,
    { title: `${title}: ${name}`, author, creationDate: input.creationDate },
    fontBookOf(input.fonts),
  );
}

/** Messages about what the typesetter could not print. */
export function missingOf(input: RenderInput, type: Typesetter): Diagnostic[] {
  return sayMissingGlyphs(type.missing, input.script.source);
}
