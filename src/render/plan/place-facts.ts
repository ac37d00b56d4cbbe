import { formatShortDate } from '../../base/calendar-date.js';
import { formatClockTime } from '../../base/clock-time.js';
import { listPlaceDays, locateScenes } from '../../plan/place-days.js';
import { type Block, blank, bold, type Inline, sizes, type TableRow } from '../layout/kit.js';
import type { Production, RenderInput } from '../types.js';
import { locationOf } from './plan-words.js';

/** Address, whom to ask, and the shooting days there with the Sun; blanks where nobody says. */
export function placeFactBlocks(
  location: string | null,
  input: Pick<RenderInput, 'breakdown' | 'production'>,
): Block[] {
  const { production } = input;
  const known = location && production ? locationOf(location, production.book) : null;
  const facts = known?.facts ?? [];
  const fact = (label: string) => facts.find((one) => one.label === label)?.text ?? null;
  const line = (label: string, text: string | null): Inline => [bold(`${label}: `), text ?? blank(260)];
  const more = facts.filter((one) => one.label !== 'contact' && one.label !== 'hospital');
  return [
    {
      kind: 'entries',
      entries: [
        line('Address', known?.address ?? null),
        line('Whom to ask', fact('contact')),
        line('Nearest hospital', fact('hospital')),
      ],
    },
    ...pairBlocks(more.map((one) => line(`${one.label.charAt(0).toUpperCase()}${one.label.slice(1)}`, one.text))),
    ...(location && production ? dayBlocks(location, production, input) : []),
  ];
}

/** Facts in two columns, in reading order from left to right. */
function pairBlocks(facts: readonly Inline[]): Block[] {
  if (facts.length === 0) return [];
  const rows = facts.flatMap((fact, at): TableRow[] => (at % 2 === 0 ? [{ cells: [fact, facts[at + 1] ?? ''] }] : []));
  const columns = [
    { head: '', share: 1 },
    { head: '', share: 1 },
  ];
  return [{ kind: 'table', columns, rows, headed: false, ruled: false, tight: true, size: sizes.body }];
}

function dayBlocks(location: string, production: Production, { breakdown }: Pick<RenderInput, 'breakdown'>): Block[] {
  const { book, plan } = production;
  const days = listPlaceDays(location, locateScenes(breakdown, book, plan), book, plan);
  if (days.length === 0) return [];
  const rows = days.map(
    ({ day, slots, sun }): TableRow => ({
      cells: [
        bold(`Day ${day.number}, ${formatShortDate(day.date)}`),
        formatClockTime(day.call.value),
        slots.map((slot) => slot.label).join(', '),
        { stack: sun },
      ],
    }),
  );
  const columns = [
    { head: 'Shooting day', share: 1.2 },
    { head: 'Call', width: 40 },
    { head: 'Scenes in order', share: 1 },
    { head: 'The Sun when we begin and when we end', share: 2.4 },
  ];
  return [
    { kind: 'space', height: 6 },
    { kind: 'table', columns, rows, tight: true },
  ];
}
