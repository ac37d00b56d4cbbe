import type { Render } from '../types.js';
import { buildBreakdownJson } from './breakdown-json.js';
import { daysJson } from './days-json.js';

/**
 * Writes `breakdown.json`: the whole breakdown for other programs, by the schema beside this file; and, when it takes the
 * place of another draft's, that one as `previous.json`.
 */
export const renderJson: Render = async ({ breakdown, production, previous }) => {
  const built = buildBreakdownJson(breakdown, daysJson(production), production?.renames ?? null);
  const json = JSON.stringify(built, null, 2);
  const kept = previous === null ? [] : [{ name: 'previous.json', content: previous }];
  return { files: [{ name: 'breakdown.json', content: `${json}\n` }, ...kept], messages: [] };
};
