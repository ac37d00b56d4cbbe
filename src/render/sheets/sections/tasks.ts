import type { SceneTask } from '../../../breakdown/types.js';
import type { Strength } from '../../../find/types.js';
import { bold, type Inline, italic, tick } from '../../layout/inline.js';
import type { Section } from '../sheet-context.js';
import { foldedWords } from '../sheet-words.js';

const strengths: readonly Strength[] = ['certain', 'likely', 'ask'];

/** Work that the words imply, by how sure it is. Folded once, doubtful work is a count; folded twice, all of it. */
export const writeTasks: Section = (scene, _context, fold) => {
  if (scene.tasks.length === 0) return [];
  const entries =
    fold > 1 ? [folded(scene.tasks)] : strengths.flatMap((strength) => strengthEntries(scene.tasks, strength, fold));
  return [{ kind: 'section', label: 'To prepare (implied)', blocks: [{ kind: 'entries', entries }] }];
};

function strengthEntries(tasks: readonly SceneTask[], strength: Strength, fold: number): Inline[] {
  const mine = tasks.filter((task) => task.strength === strength);
  if (mine.length === 0) return [];
  if (fold > 0 && strength === 'ask') return [folded(mine)];
  return mine.map((task): Inline => [tick, ' ', bold(`${strength}: `), task.text, ' ', italic(`“${task.words}”`)]);
}

function folded(tasks: readonly SceneTask[]): Inline {
  return foldedWords(tasks.length, 'task');
}
