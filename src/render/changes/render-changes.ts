import type { Render } from '../types.js';
import { changesMarkdown } from './changes-markdown.js';

/** Writes `changes.md`: all that differs from the earlier draft, by scene; nothing when there is none to compare with. */
export const renderChanges: Render = async ({ breakdown, comparison }) => {
  if (comparison.kind === 'not compared') return { files: [], messages: [] };
  return { files: [{ name: 'changes.md', content: changesMarkdown(breakdown, comparison.changes) }], messages: [] };
};
