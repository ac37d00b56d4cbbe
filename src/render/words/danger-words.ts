import type { BreakdownScene } from '../../breakdown/types.js';
import { danger, type Inline } from '../layout/kit.js';

/** The dangers of a scene by name, in one line after the danger sign; an empty list when the script raises none. */
export function dangerLines(scene: BreakdownScene): Inline[] {
  const titles = [...new Set(scene.hazards.map((hazard) => hazard.title))];
  return titles.length === 0 ? [] : [[danger, ` ${titles.join(' · ')}`]];
}
