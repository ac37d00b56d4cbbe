import type { Range } from '../base/text-range.js';
import type { Line, Script } from '../script/types.js';

/** Makes the function that tells whether a place of the script touches a mark in brackets. */
export function markedPlaces(script: Script): (at: Range) => boolean {
  const marks = script.scenes
    .flatMap(({ blocks }) => blocks.flatMap(linesOf))
    .flatMap((line) => line.marks.map((mark) => mark.at))
    .sort((a, b) => a.start.offset - b.start.offset);
  return (at) => {
    const next = firstEndingAfter(marks, at.start.offset);
    return next !== undefined && next.start.offset < at.end.offset;
  };
}

function linesOf(block: Script['scenes'][number]['blocks'][number]): readonly Line[] {
  if (block.kind === 'action') return block.lines;
  return block.kind === 'speech' ? block.lines.map(({ line }) => line) : [];
}

/** The first of sorted marks that ends after an offset, found by halving. */
function firstEndingAfter(marks: readonly Range[], offset: number): Range | undefined {
  let low = 0;
  let high = marks.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((marks[middle] as Range).end.offset > offset) high = middle;
    else low = middle + 1;
  }
  return marks[low];
}
