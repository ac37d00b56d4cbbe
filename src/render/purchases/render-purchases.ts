import { formatCsv } from '../csv/format-csv.js';
import { renderDocument } from '../pdf/render-document.js';
import type { Render } from '../types.js';
import { draftWords } from '../words/story-words.js';
import { purchaseBlocks } from './purchases-blocks.js';
import { purchaseRows } from './purchases-csv.js';

/** Writes the purchase list twice: `purchases.pdf` to carry, `purchases.csv` for a spreadsheet. */
export const renderPurchases: Render = async (input) => {
  const pdf = await renderDocument(input, {
    file: 'purchases.pdf',
    name: 'What to get',
    orientation: 'landscape',
    blocks: purchaseBlocks(input.purchases, draftWords(input.breakdown)),
  });
  const csv = { name: 'purchases.csv', content: formatCsv(purchaseRows(input.purchases)) };
  return { files: [...pdf.files, csv], messages: pdf.messages };
};
