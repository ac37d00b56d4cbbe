import type { Render } from '../types.js';
import { buildBreakdownJson } from './breakdown-json.js';

/** Writes `breakdown.json`: the whole breakdown for other programs, by the schema beside this file. */
export const renderJson: Render = async ({ breakdown }) => ({
  files: [{ name: 'breakdown.json', content: `${JSON.stringify(buildBreakdownJson(breakdown), null, 2)}\n` }],
  messages: [],
});
