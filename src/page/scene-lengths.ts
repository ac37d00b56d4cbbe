import { type Eighths, eighths } from '../base/eighths.js';
import { eighthRules } from '../trade/page-measures.js';
import type { TypesetBlock } from './typeset.js';

/** How a length is brought to whole eighths. */
export type Rounding = 'nearest' | 'up';

/** Lines as eighths of a page that holds `bodyLines`: to the nearest with halves up, or always up; never under one. */
export function linesToEighths(lines: number, bodyLines: number, rounding: Rounding): Eighths {
  const { perPage, least } = eighthRules;
  const count =
    rounding === 'up'
      ? Math.ceil((lines * perPage) / bodyLines)
      : Math.floor((2 * lines * perPage + bodyLines) / (2 * bodyLines));
  return eighths(Math.max(least, count));
}

/**
 * Counted lines of each scene, by its place in the script: from its heading to its last line, with the one blank
 * line that stands before each of its blocks. What a page break adds is not counted, so the sum of scenes and the
 * pages differ: by the blank line between scenes, by the white foot of a page (never more than a third of it), by
 * (MORE) and a repeated cue, and by each scene's rounding to at least one eighth.
 */
export function countSceneLines(blocks: readonly TypesetBlock[], scenes: number): number[] {
  const counts = new Array<number>(scenes).fill(0);
  for (const block of blocks) {
    if (block.scene === null) continue;
    const blank = block.kind === 'heading' ? 0 : 1;
    counts[block.scene] = (counts[block.scene] ?? 0) + block.lines + blank;
  }
  return counts;
}
