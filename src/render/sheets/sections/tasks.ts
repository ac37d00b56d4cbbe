import type { SceneTask } from '../../../breakdown/types.js';
import type { Strength } from '../../../find/types.js';
import type { Block } from '../../layout/blocks.js';
import { type Inline, type InlineRun, italic, tick } from '../../layout/inline.js';
import type { Section } from '../sheet-context.js';
import { foldedWords, quoteWords } from '../sheet-words.js';

const strengths: readonly Strength[] = ['certain', 'likely', 'ask'];

/**
 * Work that the words imply, by how sure it is. Folded once, it stands in running text; twice, without the words behind
 * it; three times, doubtful work is a count; four times, all of it.
 */
export const writeTasks: Section = (scene, _context, fold) => {
  if (scene.tasks.length === 0) return [];
  const label = 'To prepare (implied)';
  if (fold > 0) return [{ kind: 'section', label, blocks: runIn(scene.tasks, fold).map(writeParagraph) }];
  const entries = strengths.flatMap((strength) => ofStrength(scene.tasks, strength).map(taskWords));
  return [{ kind: 'section', label, blocks: [{ kind: 'entries', ticks: true, entries }] }];
};

function ofStrength(tasks: readonly SceneTask[], strength: Strength): SceneTask[] {
  return tasks.filter((task) => task.strength === strength);
}

function writeParagraph(text: Inline): Block {
  return { kind: 'paragraph', after: 1, text };
}

function runIn(tasks: readonly SceneTask[], fold: number): Inline[] {
  if (fold > 3) return [foldedWords(tasks.length, 'task')];
  const some = strengths.filter((strength) => ofStrength(tasks, strength).length > 0);
  return [some.flatMap((strength) => runInOf(strength, ofStrength(tasks, strength), fold))];
}

function runInOf(strength: Strength, tasks: readonly SceneTask[], fold: number): (string | InlineRun)[] {
  if (fold > 2 && strength === 'ask') return [foldedWords(tasks.length, 'doubtful task')];
  if (fold > 1) return [italic(`${strength}: `), ...tasks.flatMap((task) => [tick, `\u00a0${task.text}  `])];
  return tasks.flatMap((task) => [tick, '\u00a0', ...taskWords(task), '  ']);
}

/** `Fog: still air. “Fog” (likely)`. */
function taskWords(task: SceneTask): (string | InlineRun)[] {
  return [`${task.text} `, italic(quoteWords(task.words)), ` (${task.strength})`];
}
