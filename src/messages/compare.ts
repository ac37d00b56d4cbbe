import { define, type MessageTable, speaker } from './define.js';

/** Messages of the comparison with an earlier draft. */
export const compareMessages = {
  'earlier-not-read': define<{ path: string; why: string }>(
    'warning',
    'the breakdown of an earlier draft cannot be read',
    ({ path, why }) => ({
      reason: `Expected the breakdown of an earlier run in ${path}, found a file that cannot be compared: ${why}. The papers do not say what changed since then.`,
      hint: 'Delete the file if you do not need it, or name another with --since.',
    }),
  ),
  'since-not-read': define<{ path: string; why: string }>(
    'error',
    'the file after --since is no breakdown',
    ({ path, why }) => ({
      reason: `Expected a breakdown.json of an earlier run after --since, found ${path}, which cannot be compared: ${why}.`,
      hint: 'Name the breakdown.json of the draft that was handed out, or leave --since out.',
      actual: path,
    }),
  ),
} as const satisfies MessageTable;

export const sayCompare = speaker('compare', compareMessages);
