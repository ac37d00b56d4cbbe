import { layOutDocument } from '../layout/document.js';
import type { Block, PageTree } from '../layout/kit.js';
import { footOf, missingOf, openType, paint } from '../pdf/render-document.js';
import type { Render } from '../types.js';
import { indexScenes } from '../words/scene-list-words.js';
import { callSheetBlocks } from './call-sheet.js';
import { type Folding, foldings } from './call-sheet-types.js';

const key = 'Times under "About" are reckoned from call, wrap and the work of each scene: the day decides.';
const none: Block = {
  kind: 'paragraph',
  text: 'The book has no shooting days yet. Write one under "days:", with its date and its scenes.',
};

/** Writes `callsheets.pdf`: one side for each shooting day of the book. */
export const renderCallSheets: Render = async (input) => {
  const { production, breakdown } = input;
  if (production === null) return { files: [], messages: [] };
  const type = openType(input);
  const foot = footOf(breakdown, 'Call sheet', key);
  const lay = (blocks: readonly Block[]) => layOutDocument({ paper: breakdown.paper, foot, blocks }, type);
  const ground = { input, production, index: indexScenes(breakdown.scenes) };
  const { days } = production.plan;
  const sides = days.map((day) => fitOneSide((folding) => lay(callSheetBlocks(day, ground, folding))));
  const pages = days.length === 0 ? lay([none]) : sides.flat();
  const content = await paint(input, 'Call sheets', pages);
  return { files: [{ name: 'callsheets.pdf', content }], messages: missingOf(input, type) };
};

/** The fullest form of a day that fits one side; when none does, the shortest, on two. */
function fitOneSide(lay: (folding: Folding) => PageTree[]): PageTree[] {
  let pages: PageTree[] = [];
  for (const folding of foldings) {
    pages = lay(folding);
    if (pages.length <= 1) break;
  }
  return pages;
}
