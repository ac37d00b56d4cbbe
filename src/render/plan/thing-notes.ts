import type { AllergyWatch } from '../../plan/allergy-watch.js';
import type { PlanLine } from '../../plan/line-types.js';
import type { Plan } from '../../plan/plan-types.js';
import { bold, danger, type Inline } from '../layout/kit.js';

/**
 * What stands under a thing wherever a helper takes it in hand: the note of the book, and by name whoever is allergic to it. Only a
 * pack says the name; a sheet that everyone gets says `allergyWithoutName`.
 */
export function thingNotes(line: PlanLine, plan: Plan, scenes: ReadonlySet<string>): Inline[] {
  const allergies = plan.allergies.filter((one) => one.element === line.id && one.scenes.some((id) => scenes.has(id)));
  return [
    ...(line.note === null ? [] : [line.note]),
    ...allergies.map(
      (one): Inline => [
        danger,
        ' ',
        bold(`Allergy to ${one.allergy}: ${one.people.join(', ')}.`),
        ' Ask before it is near them.',
      ],
    ),
  ];
}

/** The same for a sheet in everyone's hands: what it is about, and who knows whom it concerns. */
export function allergyWithoutName(one: AllergyWatch, plan: Plan, knows: string | null): Inline {
  const labels = plan.slots.filter((slot) => one.scenes.includes(slot.scene)).map((slot) => slot.label);
  const ask = knows === null ? 'ask whoever makes the film whom it concerns' : `ask ${knows} whom it concerns`;
  return [bold(`Allergy to ${one.allergy}`), `: ${one.name} in sc ${labels.join(', ')}; ${ask}.`];
}
