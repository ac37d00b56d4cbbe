import type { PlanLine } from '../../plan/line-types.js';
import type { Plan } from '../../plan/plan-types.js';

/** A thing has a card of its own from so many scenes in somebody's hands. */
const scenesForCard = 3;

/** True for a thing that matters: it changes its look between scenes, has stand-ins, or is often in hand; and, where no list of a day tells them, has exact words. */
export function hasCard({ need, element, known }: PlanLine, { days }: Plan): boolean {
  if (element?.standIns || element?.backgroundCopies) return true;
  if ((element?.words ?? null) !== null && days.length === 0) return true;
  const handled = need.uses.filter((use) => use.by.length > 0).length;
  const isNamed = known === 'marked' || known === 'noted';
  const looks = new Set(need.uses.flatMap((use) => [use.stateIn, use.stateOut]));
  const changes = looks.size > 1 && need.uses.length > 1 && !need.usedUp;
  return changes || (isNamed && handled >= scenesForCard);
}
