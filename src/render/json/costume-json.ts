import type { Garment, Wears } from '../../breakdown/types.js';

/** A garment as plain data. */
export function garmentJson(garment: Garment) {
  return {
    id: garment.id,
    name: garment.name,
    known: garment.known,
    carried: garment.carried,
    from: garment.from,
    stateIn: garment.stateIn,
    stateOut: garment.stateOut,
    statesBetween: garment.statesBetween,
    absent: garment.absent,
    action: garment.action,
  };
}

/** What a person wears in a scene, as plain data. */
export function wearsJson(wears: Wears) {
  return {
    person: wears.person,
    change: wears.change,
    changeOut: wears.changeOut,
    garments: wears.garments.map(garmentJson),
  };
}
