import type { Setting } from '../script/types.js';
import { categoryOf } from '../trade/categories.js';
import { categoryOfIdentity, type Identity } from './element-register.js';
import type { SceneGround } from './ground.js';
import { obtain } from './grouping.js';
import { confidenceOf, doubtful, type Thing } from './merge-sightings.js';
import { sameThing } from './same-thing.js';
import { isPartOfVehicle, stoodBefore } from './standing.js';

/** What the dressing pass is told of a scene, in story order within its series. */
export interface DressingInput {
  readonly ground: SceneGround;
  /** Key of the set: setting, place and areas. */
  readonly set: string;
  /** `D` for the main line, the label of the flashback otherwise. */
  readonly series: string;
  /** True for a flashback of which the writer answered that what stands there today stood there then. */
  readonly borrows: boolean;
  readonly things: readonly Thing[];
  readonly refuses: (name: string) => boolean;
}

interface Standing {
  readonly thing: Thing;
  readonly scene: SceneGround;
  readonly order: number;
  /** False for what may have come only with its first mention. */
  readonly before: boolean;
}

/**
 * Carries the dressing of a set to every scene that plays in it, those before its first mention too: what belongs to a room stands there
 * from the first scene on; what somebody may have brought only from its first mention on, and parts of a vehicle go with the vehicle. A set is one setting, place and area: what hangs in the kitchen is neither in the yard nor in the hall. A scene
 * played INT/EXT (a car on the road, a doorway) is dressed as the inside. What someone carries off is gone from then on. The main line and flashbacks keep apart: it may be another year.
 */
export function carryDressing(inputs: readonly DressingInput[]): Thing[][] {
  const sets = new Map<string, Map<Identity, Standing>>();
  const gone = new Map<string, Map<Identity, number>>();
  inputs.forEach(({ ground, set, series, things }, order) => {
    const key = `${series} ${set}`;
    const standing = obtain(sets, key, () => new Map<Identity, Standing>());
    for (const thing of things) {
      if (!isDressing(thing.identity) || thing.known === 'implied' || isDoubtful(thing)) continue;
      if (standing.has(thing.identity) || isPartOfVehicle(thing, ground, things)) continue;
      standing.set(thing.identity, { thing, scene: ground, order, before: stoodBefore(thing, ground) });
    }
    for (const move of ground.finds.moves) {
      if (move.kind !== 'carried off') continue;
      const taken = [...standing.keys()].find((identity) => sameThing(identity.name, move.name));
      if (taken) obtain(gone, key, () => new Map<Identity, number>()).set(taken, order);
    }
  });
  return inputs.map(({ set, series, borrows, things, refuses }, order) => {
    const key = `${series} ${set}`;
    const here = new Set(things.map(({ identity }) => identity));
    const today = borrows ? [...(sets.get(`D ${set}`)?.values() ?? [])] : [];
    const own = sets.get(key) ?? new Map<Identity, Standing>();
    const all = [...own.values(), ...today.filter(({ thing }) => !own.has(thing.identity))];
    const standing = all.filter((one) => !here.has(one.thing.identity) && (one.before || one.order <= order));
    const left = standing.filter(({ thing }) => order <= (gone.get(key)?.get(thing.identity) ?? order));
    return left.filter(({ thing }) => !refuses(thing.identity.name)).map(carry);
  });
}

function isDressing(identity: Identity): boolean {
  return categoryOf(categoryOfIdentity(identity)).group === 'the place';
}

function isDoubtful({ known, sightings }: Thing): boolean {
  return known === 'found' && (confidenceOf(known, sightings) ?? 1) < doubtful;
}

function carry({ thing, scene }: Standing): Thing {
  return { ...thing, carried: true, from: scene.id, by: null, worn: false };
}

/** The key of a set: setting, place and areas. */
export function setKey(setting: Setting, place: string): string {
  return `${setting} ${place}`;
}

/** The key of what is dressed as one: INT/EXT is dressed as the inside. */
export function dressingKey(setting: Setting, place: string): string {
  return setKey(setting === 'INT/EXT' ? 'INT' : setting, place);
}
