import { layOutDocument } from '../layout/document.js';
import { footOf, missingOf, openType, paint } from '../pdf/render-document.js';
import type { Render } from '../types.js';
import { indexScenes } from '../words/scene-list-words.js';
import { callSheetBlocks } from './call-sheet.js';

/** Writes `callsheets.pdf`: one side for each shooting day of the book. */
export const renderCallSheets: Render = async (input) => {
  const { production, breakdown } = input;
  if (production === null) return { files: [], messages: [] };
  const type = openType(input);
  const index = indexScenes(breakdown.scenes);
  const foot = footOf(
    breakdown,
    'Call sheet',
    'Times in the column "About" are reckoned from call, wrap and the work of each scene: the day decides.',
  );
  const { days } = production.plan;
  const none = [
    {
      kind: 'paragraph',
      text: 'The book has no shooting days yet. Write one under "days:", with its date and its scenes.',
    } as const,
  ];
  const sides = days.length === 0 ? [none] : days.map((day) => callSheetBlocks(day, { input, production, index }));
  const pages = sides.flatMap((blocks) => layOutDocument({ paper: breakdown.paper, foot, blocks }, type));
  return {
    files: [{ name: 'callsheets.pdf', content: await paint(input, 'Call sheets', pages) }],
    messages: missingOf(input, type),
  };
};
