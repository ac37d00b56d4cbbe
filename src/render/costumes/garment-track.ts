import { imagesIn } from '../../breakdown/montage.js';
import type { CostumeChange, Garment } from '../../breakdown/types.js';
import { changesState, stateWords } from '../layout/known-words.js';
import { labelOf, pickScenes, type SceneIndex, scenesWords } from '../words/scene-list-words.js';

/** A garment of a change: in which of the change's scenes it is worn, and how it looks there, in words. */
export interface GarmentTrack {
  /** `sc 2: clean → soaked`, only where something is told that the scene before did not tell. */
  readonly lines: readonly string[];
}

interface Seen {
  readonly scene: string;
  readonly garment: Garment;
}

/** Follows one garment of a person's change through the scenes in which the change is worn. */
export function trackGarment(
  person: string,
  change: CostumeChange,
  garment: CostumeChange['garments'][number],
  index: SceneIndex,
): GarmentTrack {
  const seen = sightings(person, change, garment, index);
  const there = seen.map((one) => one.scene);
  const partly = there.length > 0 && there.length < change.scenes.length;
  const lines = seen.length > 0 ? stateLines(seen, index) : listedStates(garment, index);
  return { lines: partly ? [`only in ${scenesWords(there, index)}`, ...lines] : lines };
}

function sightings(
  person: string,
  change: CostumeChange,
  garment: Pick<Garment, 'id' | 'absent'>,
  index: SceneIndex,
): Seen[] {
  return pickScenes(change.scenes, index).flatMap((scene) => {
    const wears = scene.wears.find((one) => one.person === person);
    const found = wears?.garments.find((one) => one.id === garment.id && one.absent === garment.absent);
    return found ? [{ scene: scene.id, garment: found }] : [];
  });
}

function stateLines(seen: readonly Seen[], index: SceneIndex): string[] {
  let last = '';
  return seen.flatMap(({ scene, garment }) => {
    const words = lookWords(garment);
    const same = !changesState(garment) && garment.action === null && (words === last || words === '');
    last = garment.stateOut ?? garment.stateIn ?? last;
    return same ? [] : [`sc ${labelOf(scene, index)}: ${words}`];
  });
}

function listedStates(garment: CostumeChange['garments'][number], index: SceneIndex): string[] {
  return garment.states.map(({ scene, state }) => `from sc ${labelOf(scene, index)}: ${state}`);
}

/** An image of a montage is named by itself; all else happens in the scene. */
function actionWords({ action }: Garment): string {
  if (action === null) return '';
  return imagesIn(action).length > 0 ? action : `${action} in the scene`;
}

/** What a garment looks like in a scene and what is done with it on camera: `clean → soaked, put on in the scene`. */
export function lookWords(garment: Garment): string {
  return [stateWords(garment), actionWords(garment)].filter((part) => part !== '').join(', ');
}
