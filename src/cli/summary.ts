import pc from 'picocolors';
import { formatDuration } from '../base/duration.js';
import { formatEighths } from '../base/eighths.js';
import { labelScenes } from '../breakdown/scene-label.js';
import type { Breakdown, BreakdownScene } from '../breakdown/types.js';
import type { OutputFile } from '../render/types.js';

/** What a run says at its end: what the script weighs, what is dangerous, what is open, what was written. */
export function summarize(breakdown: Breakdown, files: readonly OutputFile[], folder: string, colour: boolean): string {
  const colours = pc.createColors(colour);
  const draft = breakdown.draft ? `, draft ${breakdown.draft}` : '';
  const questions = breakdown.scenes.reduce((sum, scene) => sum + scene.questions.length, 0);
  const lines = [
    `${colours.bold(breakdown.title)}${draft}`,
    measure(breakdown),
    countThings(breakdown),
    ...warnOfHazards(breakdown.scenes),
    ...(questions > 0 ? [`${count(questions, 'question')} open: see questions.md`] : []),
    written(files, folder),
  ];
  return `${lines.join('\n')}\n`;
}

/** Only the list of changes can come out empty. */
function written(files: readonly OutputFile[], folder: string): string {
  if (files.length === 0) return 'No file: there is no earlier draft to compare with (see prepwright compile --help).';
  return `${count(files.length, 'file')} in ${folder}/: ${files.map((file) => file.name).join(', ')}`;
}

function measure({ scenes, eighths, pages, screenTime }: Breakdown): string {
  const range = `${formatDuration(screenTime.low)} to ${formatDuration(screenTime.high)}`;
  return `${count(scenes.length, 'scene')}, ${formatEighths(eighths)} pages in eighths (${count(pages, 'page')} laid out); on screen about ${formatDuration(screenTime.seconds)} (${range}; a minute a page gives ${formatDuration(screenTime.pageRule)})`;
}

function countThings({ cast, elements, places }: Breakdown): string {
  const seen = cast.filter((person) => !person.background);
  const known = elements.filter((element) => element.known !== 'implied');
  const implied = elements.length - known.length;
  const kinds = known.length > 0 ? ` (${tally(known.map((element) => element.category))})` : '';
  const more = implied > 0 ? `; ${implied} more only implied` : '';
  return `${count(seen.length, 'person', 'people')}, ${count(places.length, 'place')}, ${count(known.length, 'element')}${kinds}${more}`;
}

/** `12 props, 9 costumes, …`: the largest first. */
function tally(names: readonly string[]): string {
  const counts = new Map<string, number>();
  for (const name of names) counts.set(name, (counts.get(name) ?? 0) + 1);
  return [...counts]
    .sort((a, b) => b[1] - a[1])
    .map(([name, size]) => `${name} ${size}`)
    .join(', ');
}

function warnOfHazards(scenes: readonly BreakdownScene[]): string[] {
  const raised = new Map<string, string[]>();
  const labels = labelScenes(scenes);
  for (const scene of scenes) {
    for (const hazard of scene.hazards) {
      const where = raised.get(hazard.title) ?? [];
      raised.set(hazard.title, [...where, labels.get(scene.id) as string]);
    }
  }
  if (raised.size === 0) return [];
  const list = [...raised].map(([title, where]) => `${title.toLowerCase()} (${[...new Set(where)].join(', ')})`);
  return [`Cautions raised, with their scenes: ${list.join('; ')}`];
}

function count(size: number, one: string, many = `${one}s`): string {
  return `${size} ${size === 1 ? one : many}`;
}
