import type { SceneTask } from '../../../breakdown/types.js';
import type { Strength } from '../../../find/types.js';
import { bold, type Inline, type InlineRun, italic, tick } from '../../layout/inline.js';
import type { Section } from '../sheet-context.js';
import { foldedWords } from '../sheet-words.js';

const strengths: readonly Strength[] = ['certain', 'likely', 'ask'];

/**
 * Work that the words imply, by how sure it is. Folded once, it stands in running text; twice, doubtful work is a count;
 * three times, all of it.
 */
export const writeTasks: Section = (scene, _context, fold) => {
  if (scene.tasks.length === 0) return [];
  const entries =
    fold > 2
      ? [foldedWords(scene.tasks.length, 'task')]
      : strengths.flatMap((strength) => strengthEntries(scene.tasks, strength, fold));
  return [{ kind: 'section', label: 'To prepare (implied)', blocks: [{ kind: 'entries', entries }] }];
};

function strengthEntries(tasks: readonly SceneTask[], strength: Strength, fold: number): Inline[] {
  const mine = tasks.filter((task) => task.strength === strength);
  if (mine.length === 0) return [];
  if (fold > 1 && strength === 'ask') return [foldedWords(mine.length, 'doubtful task')];
  if (fold > 0) return [[bold(`${strength}: `), ...mine.flatMap((task) => [...taskWords(task), '  '])]];
  return mine.map((task): Inline => [bold(`${strength}: `), ...taskWords(task)]);
}

function taskWords(task: SceneTask): (string | InlineRun)[] {
  return [tick, ` ${task.text} `, italic(`“${task.words}”`)];
}
