import type { TypesetBlock } from './typeset.js';

/** Blocks that a page end may part only inside an action or a speech. */
export type Unit = readonly TypesetBlock[];

/**
 * Ties blocks together: a heading (or the name of a part) to what follows it, a transition to what it ends.
 * A heading without a description stands alone and may be last on its page; FADE IN belongs to what it opens. A
 * forced page break parts everything.
 */
export function tieBlocks(blocks: readonly TypesetBlock[]): Unit[] {
  const units: TypesetBlock[][] = [];
  let before: TypesetBlock | null = null;
  for (const block of blocks) {
    const open = units.at(-1);
    if (open && before && areTied(before, block)) open.push(block);
    else units.push([block]);
    before = block;
  }
  return units;
}

function areTied(before: TypesetBlock, block: TypesetBlock): boolean {
  if (before.kind === 'page break' || block.kind === 'page break') return false;
  if (before.kind === 'part' || isOpeningFade(before)) return true;
  if (before.kind === 'heading') return block.scene === before.scene;
  return block.kind === 'transition' && !isOpeningFade(block);
}

function isOpeningFade(block: TypesetBlock): boolean {
  return block.paragraphs[0]?.measure === 'opening fade';
}
