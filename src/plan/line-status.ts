import type { CalendarDate } from '../base/calendar-date.js';
import type { BookElement } from '../book/types.js';
import type { LineStatus } from './line-types.js';
import type { Need } from './need-types.js';

/** How far a thing has come, by the marks in the book. A mark further on wins; trouble wins over progress until it is solved. */
export function judgeStatus(need: Need, element: BookElement | null, today: CalendarDate): LineStatus {
  if (element?.source === 'cut') return 'done without';
  if (element?.problem && !element.checked) return element.problem;
  const arrived = judgeArrived(element);
  if (arrived !== null) return arrived;
  if (need.toGet === 0) return need.have > 0 ? 'here already' : 'not needed';
  if (element?.ordered) return element.promised !== null && element.promised < today ? 'late' : 'ordered';
  return element?.source ? 'decided' : 'needed';
}

function judgeArrived(element: BookElement | null): LineStatus | null {
  if (element?.depositReturned) return 'returned';
  if (element?.ready) return 'ready';
  if (element?.checked) return 'checked';
  return element?.received ? 'received' : null;
}
