import type { Diagnostic } from '../base/diagnostic.js';
import { findNearest } from '../base/nearest.js';
import { sayCommand } from '../messages/command.js';
import { outputNames, renderers } from '../render/renderers.js';
import type { OutputName } from '../render/types.js';

/** The names of the outputs, as the help shows them. */
export const outputList = outputNames.join(', ');

/** The outputs that `--only` names, in their usual order, or all that can be made; a message when one does not exist or has no book to rest on. */
export function chooseOutputs(only: string | undefined, hasBook: boolean): readonly OutputName[] | Diagnostic {
  const possible = outputNames.filter((name) => hasBook || !renderers[name].needsBook);
  if (only === undefined) return possible;
  const asked = only
    .split(',')
    .map((name) => name.trim().toLowerCase())
    .filter((name) => name !== '');
  const wrong = asked.find((name) => !outputNames.some((known) => known === name));
  if (wrong !== undefined || asked.length === 0) {
    const name = wrong ?? only;
    return sayCommand('output-unknown', { name, nearest: findNearest(name, outputNames), known: outputNames });
  }
  const chosen = outputNames.filter((name) => asked.includes(name));
  const bookless = chosen.find((name) => !possible.includes(name));
  return bookless ? sayCommand('output-needs-book', { name: bookless }) : chosen;
}

/** The help text about outputs. */
export function describeOutputs(): string {
  const rows = outputNames.map((name) => {
    const { title, files, filesOfRevision = [], needsBook } = renderers[name];
    const all = [...files, ...filesOfRevision.map((file) => `${file} when there is an earlier draft`)];
    return `  ${name.padEnd(10)} ${title} (${all.join('; ')})${needsBook ? '; needs a book' : ''}`;
  });
  return `
Outputs:
${rows.join('\n')}

Examples:
  prepwright compile my-film.md
  prepwright compile my-film.md --out printed --only sheets,costumes
  prepwright compile - --only json --out model < my-film.md

What changed: give each draft that you hand out its own letter (draft: B at the top of the script) and compile into the
same folder. The breakdown of the draft before is kept there as previous.json, and the papers tell what differs.

All files of a run are written together or not at all. With an error in the script or the book nothing is written.
`;
}
