import { papers } from '../../trade/page-measures.js';
import { fontBookOf } from '../pdf/font-book.js';
import { createGlyphSplitter } from '../pdf/glyph-runs.js';
import { sayMissingGlyphs } from '../pdf/missing-glyphs.js';
import { paintPdf } from '../pdf/paint.js';
import type { Render } from '../types.js';
import { layOutScriptPage } from './script-page.js';
import { layOutTitlePage } from './title-page.js';

/** Writes `script.pdf`: the screenplay on the standard page, after a title page when there is a title or an author. */
export const renderScriptPages: Render = async ({ script, pages, fonts, creationDate }) => {
  const { front, source, file } = script;
  const book = fontBookOf(fonts);
  const glyphs = createGlyphSplitter(book);
  const paper = papers[pages.paper];
  const title = layOutTitlePage(front, paper, glyphs);
  const trees = [...(title ? [title] : []), ...pages.pages.map((page) => layOutScriptPage(page, paper, glyphs))];
  const info = { title: front.title ?? file, author: front.author, creationDate };
  const content = await paintPdf(trees, info, book);
  return { files: [{ name: 'script.pdf', content }], messages: sayMissingGlyphs(glyphs.missing, source) };
};
