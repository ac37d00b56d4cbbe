import { formatCsv } from '../csv/format-csv.js';
import { renderDocument } from '../pdf/render-document.js';
import { planPurchaseBlocks, planPurchaseRows } from '../plan/plan-purchases.js';
import type { Render } from '../types.js';
import { draftWords } from '../words/story-words.js';
import { purchaseBlocks } from './purchases-blocks.js';
import { purchaseRows } from './purchases-csv.js';

/** Writes the purchase list twice: `purchases.pdf` to carry, `purchases.csv` for a spreadsheet; with all that the book says, when there is one. */
export const renderPurchases: Render = async (input) => {
  const { production } = input;
  const pdf = await renderDocument(input, {
    file: 'purchases.pdf',
    name: 'What to get',
    orientation: 'landscape',
    blocks: production
      ? planPurchaseBlocks(production, draftWords(input.breakdown))
      : purchaseBlocks(input.purchases, draftWords(input.breakdown)),
  });
  const csv = {
    name: 'purchases.csv',
    content: formatCsv(production ? planPurchaseRows(production) : purchaseRows(input.purchases)),
  };
  return { files: [...pdf.files, csv], messages: pdf.messages };
};
