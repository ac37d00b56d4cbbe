import { hazardOf } from '../trade/hazards.js';
import { severityOf } from '../trade/hazards-order.js';
import { saidByDanger } from '../trade/implications/said-by-danger.js';
import { notesOf, type SceneGround } from './ground.js';
import type { Presence } from './presence.js';
import type { SceneHazard, SceneTask } from './types.js';

/**
 * The hazards of a scene, the gravest first: the writer's own safety notes, then what the finder raised, each row of the
 * table once, and children whom only continuity puts there.
 */
export function listHazards({ scene, finds }: SceneGround, presences: readonly Presence[]): SceneHazard[] {
  const raised = new Map<string, SceneHazard>();
  const add = (hazard: string, words: string, line: number, because: string, children: readonly string[] = []) => {
    const { id, title, precaution, reading, qualified } = hazardOf(hazard);
    if (!raised.has(id)) raised.set(id, { id, title, words, line, because, children, precaution, reading, qualified });
  };
  for (const { hazard, words, at, because, children } of finds.hazards)
    add(hazard, words, at.start.line, because, children);
  for (const { person, cast } of presences) {
    if (!person.minor || cast.presence !== 'seen') continue;
    const line = cast.mentions[0]?.at.start.line ?? scene.heading.line.at.start.line;
    add('H15', person.name, line, `the age of ${person.name}: ${person.age ?? 'under 18'}`);
  }
  const notes = notesOf(scene.notes, 'safety').map(({ line, at }) => ({
    id: 'note',
    title: line,
    words: line,
    line: at.start.line,
    because: 'a note of the script',
    children: [],
    precaution: '',
    reading: '',
    qualified: '',
  }));
  return [...notes, ...[...raised.values()].sort((a, b) => severityOf(a.id) - severityOf(b.id))];
}

/** The work that the words of a scene imply, and the cautions that go with it; not what its danger box says already. */
export function listTasks({ finds }: SceneGround): SceneTask[] {
  const known = new Set<string>();
  const dangers = new Set(finds.hazards.map(({ hazard }) => hazard));
  return finds.tasks.flatMap(({ kind, text, strength, words, at, rule }) => {
    const danger = saidByDanger[/: (\S+)$/.exec(rule)?.[1] ?? ''];
    if (kind === 'question' || known.has(text) || (danger !== undefined && dangers.has(danger))) return [];
    known.add(text);
    const written = kind === 'caution' ? `Caution: ${text}` : text;
    return [{ text: written, strength, words, line: at.start.line, rule }];
  });
}
