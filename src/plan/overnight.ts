import { formatHours } from './copies.js';
import type { Overnight } from './day-types.js';
import type { Need } from './need-types.js';
import { nameSlot } from './shooting-order.js';

/** What must be washed, dried or changed between two scenes that are shot: hours needed against hours there. */
export function listOvernight(needs: readonly Need[]): Overnight[] {
  return needs.flatMap((need) =>
    need.conversions
      .filter((conversion) => conversion.hoursNeeded.high >= 0.25 || !conversion.wayBack)
      .map((conversion) => {
        const { hoursNeeded, hoursThere, after, before } = conversion;
        const short = hoursThere !== null && hoursThere < hoursNeeded.high;
        const range =
          hoursNeeded.low === hoursNeeded.high
            ? formatHours(hoursNeeded.low)
            : `${formatHours(hoursNeeded.low)} to ${formatHours(hoursNeeded.high)}`;
        const there = hoursThere === null ? 'the days are not fixed' : `${formatHours(hoursThere)} there`;
        const back = conversion.wayBack ? '' : '; no way back';
        const words = `${conversion.copies.join(', ')}: from ${conversion.from} to ${conversion.to} after ${nameSlot(after)}, for ${nameSlot(before)}: ${range} needed, ${there}${back}`;
        return { element: need.id, name: need.name, conversion, short, words };
      }),
  );
}
