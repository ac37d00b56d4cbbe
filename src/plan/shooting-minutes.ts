import type { BookScene, Choice } from '../book/types.js';
import type { BreakdownScene } from '../breakdown/types.js';
import { shootingTimes, usualSetups } from '../trade/shooting-times.js';
import { findStateChanges } from '../trade/state-changes.js';

/** Camera setups of a scene: counted in the book, else by its shot lines, else three to six a page. */
export function countSetups(scene: BreakdownScene, entry: BookScene | null): Choice<number> {
  if (entry?.setups) return { value: entry.setups, given: true };
  if (entry && entry.shots.length > 0) return { value: entry.shots.length, given: true };
  return { value: usualSetups(scene.eighths), given: false };
}

/**
 * Minutes it takes to shoot a scene: light and rig for each setup, and each take with slate, talk and reset.
 * A take is reckoned over the share of the scene that its setup covers: twice the scene's seconds over its setups, at
 * most the whole scene. A wet or bloody change on camera adds the time to dress someone again.
 */
export function reckonMinutes(scene: BreakdownScene, entry: BookScene | null, usualTakes: number): number {
  const setups = countSetups(scene, entry).value;
  const takes = entry?.takes ?? usualTakes;
  const isOutside = scene.setting === 'EXT';
  const light = isOutside
    ? setups * shootingTimes.exteriorSetup
    : shootingTimes.firstSetup + (setups - 1) * shootingTimes.nextSetup;
  const covered = Math.min(scene.screenTime.seconds, (2 * scene.screenTime.seconds) / setups);
  const takeMinutes =
    (covered * shootingTimes.takeFactor + shootingTimes.takeTalkSeconds) / 60 + (entry?.resetMinutes ?? 0);
  return Math.round(light + setups * takes * takeMinutes + countWetChanges(scene) * shootingTimes.wetChange);
}

function countWetChanges(scene: BreakdownScene): number {
  const people = scene.wears.filter((wears) =>
    wears.garments.some(
      (garment) =>
        garment.stateOut !== null &&
        garment.stateOut !== garment.stateIn &&
        findStateChanges(garment.stateOut).some((row) => row.kind === 'wet' || row.kind === 'bloody'),
    ),
  );
  return people.length;
}
