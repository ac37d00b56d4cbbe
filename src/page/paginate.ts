import type { Diagnostic } from '../base/diagnostic.js';
import { sumEighths } from '../base/eighths.js';
import { sayPage } from '../messages/page.js';
import type { Script } from '../script/types.js';
import { papers } from '../trade/page-measures.js';
import { breakPages } from './break-pages.js';
import { printLine } from './print-lines.js';
import { countSceneLines, linesToEighths } from './scene-lengths.js';
import type { Page, Pages, SceneLength } from './types.js';
import { type TypesetBlock, typesetScript } from './typeset.js';
import { tieBlocks } from './units.js';

/**
 * Lays a script out on the standard page: Courier, 10 characters and 6 lines to the inch, on its paper.
 * Gives the pages line by line, and each scene's start page, counted lines and eighths. Never fails.
 */
export function paginate(script: Script): { pages: Pages; messages: Diagnostic[] } {
  const { paper, eighths: rounding } = script.front;
  const height = papers[paper].bodyLines;
  const blocks = typesetScript(script);
  const broken = breakPages(tieBlocks(blocks), height);
  const pages = broken.pages.map((rows, index): Page => ({ number: index + 1, lines: rows.map(printLine) }));
  const starts = findStartPages(pages, script.scenes.length);
  const scenes = countSceneLines(blocks, script.scenes.length).map(
    (lines, index): SceneLength => ({
      page: starts[index] ?? 1,
      lines,
      eighths: linesToEighths(lines, height, rounding),
    }),
  );
  return {
    pages: { pages, scenes, eighths: sumEighths(scenes.map((scene) => scene.eighths)), paper },
    messages: [
      ...reportCutWords(blocks),
      ...broken.forced.map(({ block, page }) => sayPage('page-sentence-split', { page }, block.at)),
    ],
  };
}

/** The page on which each scene's heading stands. */
function findStartPages(pages: readonly Page[], scenes: number): number[] {
  const starts = new Array<number>(scenes).fill(0);
  for (const page of pages) {
    for (const { scene } of page.lines) {
      if (scene !== null && starts[scene] === 0) starts[scene] = page.number;
    }
  }
  return starts;
}

function reportCutWords(blocks: readonly TypesetBlock[]): Diagnostic[] {
  return blocks.flatMap(({ paragraphs, at }) =>
    paragraphs.flatMap(({ tokens: { cut } }) => (cut === null ? [] : [sayPage('page-word-cut', { word: cut }, at)])),
  );
}
