import type { CalendarDate } from '../base/calendar-date.js';
import type { BookElement } from '../book/types.js';
import type { LineStatus } from './line-types.js';
import type { Need } from './need-types.js';

/** How far a thing has come, by the marks in the book. A mark further on wins; trouble wins over progress until it is solved. What is `expected` before today and not marked is late. */
export function judgeStatus(
  need: Need,
  element: BookElement | null,
  expected: CalendarDate | null,
  today: CalendarDate,
): LineStatus {
  if (element?.source === 'cut') return 'done without';
  if (element?.problem && !element.checked) return element.problem;
  const arrived = judgeArrived(element);
  if (arrived !== null) return arrived;
  if (need.toGet === 0) return need.have > 0 ? 'here already' : 'not needed';
  const comes = element?.promised ?? expected;
  if (element?.ordered) return comes !== null && comes < today ? 'late' : 'ordered';
  return element?.source ? 'decided' : 'needed';
}

/** True for what came wrong or broken, or was cancelled, and must be got again: solved once it is marked as found right. */
export function isOpenAgain(element: BookElement | null): boolean {
  const problem = element?.problem ?? null;
  return problem !== null && problem !== 'late' && !element?.checked;
}

/** True for what has come and is not to be got again. */
export function isHere(element: BookElement | null): boolean {
  return Boolean(element?.received ?? element?.checked ?? element?.ready) && !isOpenAgain(element);
}

/** True when some are one's own, and fewer than are wanted: the rest must come from elsewhere. */
export function isOwnShort(need: Need, element: BookElement | null): boolean {
  return element?.source === 'own' && need.have > 0 && need.toGet > 0;
}

/** True when the last scene that wants it lies behind: nothing about getting it can be mended any more. */
export function isOver(need: Need, today: CalendarDate): boolean {
  return need.uses.length > 0 && need.uses.every(({ slot }) => slot.date !== null && slot.date < today);
}

/** Animals, vehicles and what stands in a room go in no box: they may come on the day itself. */
export function comesByItself(need: Need, element: BookElement | null): boolean {
  const { category } = need;
  return !element?.box && (category === 'animals' || category === 'vehicles' || category === 'dressing');
}

function judgeArrived(element: BookElement | null): LineStatus | null {
  if (element?.depositReturned) return 'returned';
  if (element?.ready) return 'ready';
  if (element?.checked) return 'checked';
  return element?.received ? 'received' : null;
}
