import { imagesIn } from './montage.js';
import type { Garment } from './types.js';

type Acted = Pick<Garment, 'action' | 'absent'>;

/** True for what belongs to the change in which a person comes into the scene: not put on here, nor left off only here. */
export function isOnBefore({ action }: Acted): boolean {
  return action === null || !/^(?:put on|left off)/.test(action);
}

/** True for what belongs to the change in which a person leaves the scene. */
export function isOnAfter({ action, absent }: Acted): boolean {
  if (imagesIn(action).length > 0) return false;
  return action === 'left off' || (!absent && !/(?:taken off|handed to .*)$/.test(action ?? ''));
}
