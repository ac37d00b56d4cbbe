import { formatCsv } from '../csv/format-csv.js';
import type { Render } from '../types.js';
import { sceneRows } from './scenes-csv.js';

/** Writes `scenes.csv`: the scene list for a spreadsheet. The same list stands on paper before the scene sheets. */
export const renderScenes: Render = async ({ breakdown }) => ({
  files: [{ name: 'scenes.csv', content: formatCsv(sceneRows(breakdown)) }],
  messages: [],
});
