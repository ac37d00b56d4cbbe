import { hazardOf } from '../trade/hazards.js';
import { notesOf, type SceneGround } from './ground.js';
import type { SceneHazard, SceneTask } from './types.js';

/** The hazards of a scene: what the finder raised, each row of the table once, then the writer's own safety notes. */
export function listHazards({ scene, finds }: SceneGround): SceneHazard[] {
  const raised = new Map<string, SceneHazard>();
  for (const { hazard, words, at, because } of finds.hazards) {
    if (raised.has(hazard)) continue;
    const { id, title, precaution, reading, qualified } = hazardOf(hazard);
    raised.set(hazard, { id, title, words, line: at.start.line, because, precaution, reading, qualified });
  }
  const notes = notesOf(scene.notes, 'safety').map(({ line, at }) => ({
    id: 'note',
    title: line,
    words: line,
    line: at.start.line,
    because: 'a note of the script',
    precaution: '',
    reading: '',
    qualified: '',
  }));
  return [...[...raised.values()].sort((a, b) => Number(a.id.slice(1)) - Number(b.id.slice(1))), ...notes];
}

/** The work that the words of a scene imply, and the cautions that go with it. */
export function listTasks({ finds }: SceneGround): SceneTask[] {
  const known = new Set<string>();
  return finds.tasks.flatMap(({ kind, text, strength, words, at, rule }) => {
    if (kind === 'question' || known.has(text)) return [];
    known.add(text);
    const written = kind === 'caution' ? `Caution: ${text}` : text;
    return [{ text: written, strength, words, line: at.start.line, rule }];
  });
}
