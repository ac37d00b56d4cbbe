import type { Diagnostic } from '../base/diagnostic.js';
import { slug } from '../base/slug.js';
import { sayBreakdown } from '../messages/breakdown.js';
import type { Scene, Script } from '../script/types.js';

/**
 * Gives every scene an id that is unique and outlives revisions.
 *
 * A number is a label: until it is locked it shifts with every scene put in before it, so it is no identity. What a writer
 * changes least is where and when a scene plays. The id is therefore setting, place and time as words (`int-kitchen-night`),
 * and only among scenes with an equal heading a running count (`int-kitchen-night-2`): a scene put in before moves the ids of
 * its namesakes at most. In a script with locked numbers the number is frozen by the writer's own word, and is the id (`s12a`).
 */
export function nameScenes(script: Script): string[] {
  const locked = script.front.numbers === 'locked';
  const taken = new Map<string, number>();
  const used = new Set<string>();
  return script.scenes.map((scene) => {
    const base = locked && scene.heading.number ? `s${slug(scene.heading.number)}` : nameByHeading(scene);
    let count = (taken.get(base) ?? 0) + 1;
    let id = count === 1 ? base : `${base}-${count}`;
    while (used.has(id)) id = `${base}-${++count}`;
    taken.set(base, count);
    used.add(id);
    return id;
  });
}

/** Tells, once in a script, of two scenes without numbers whose ids differ by a count only. */
export function tellSharedNames(script: Script): Diagnostic[] {
  const first = new Map<string, Scene>();
  for (const scene of script.scenes) {
    if (scene.heading.number !== null) continue;
    const name = nameByHeading(scene);
    const { text, at } = scene.heading;
    const other = first.get(name)?.heading.at.start.line;
    if (other !== undefined) return [sayBreakdown('scenes-share-name', { heading: text, other }, at)];
    first.set(name, scene);
  }
  return [];
}

function nameByHeading({ heading }: Scene): string {
  const flashback = heading.qualifiers.some((word) => /flashback|dream|memory/i.test(word)) ? 'flashback' : '';
  return slug([heading.setting, heading.place, heading.time ?? '', flashback].join(' '));
}
