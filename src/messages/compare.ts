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
  'names-carried': define<{ names: readonly string[] }>(
    'info',
    'headings that changed since the book was written',
    ({ names }) => ({
      reason: `Expected each scene and place of the book under its own name, found new headings in the script: ${names.join('; ')}. What happens there is the same, so their days, addresses, times and answers go on to count.`,
      hint: 'Type `prepwright book FILE` to write the new names into the book (with --out FOLDER, where the papers are in another folder than usual). Until then they are known from the papers of the last run: do not delete their folder.',
    }),
  ),
  'name-doubtful': define<{ what: string; from: string; to: string; label: string; section: string }>(
    'warning',
    'a scene or place of the book that may have a new heading',
    ({ what, from, to, label, section }) => ({
      reason: `Expected ${what} of the script under "${from}", found none. It may be ${label} now ("${to}"), but too little of it is the same, so nothing is carried over and the entry is kept.`,
      hint: `If it is, write "${to}: { was: ${from} }" under "${section}"; otherwise put another one in its place.`,
      actual: from,
      expected: [to],
    }),
  ),
  'name-slipped': define<{ name: string; meant: string; label: string; synopsis: string }>(
    'warning',
    'a scene of a shooting day that is another one now',
    ({ name, meant, label, synopsis }) => ({
      reason: `Expected "${name}" to be the scene that it was in the run before, found another one or none under that name, for scenes were put in or taken out before it. The one it meant is scene ${label} now, "${meant}" (${synopsis}), and stands in no day.`,
      hint: `Write "${meant}" in its place, or both if both are shot that day.`,
      actual: name,
      expected: [meant],
    }),
  ),
} as const satisfies MessageTable;

export const sayCompare = speaker('compare', compareMessages);
