import { formatDate } from '../../base/calendar-date.js';
import type { Task } from '../../plan/plan-types.js';
import type { Block } from '../layout/kit.js';
import { renderDocument } from '../pdf/render-document.js';
import type { Production, Render } from '../types.js';
import { moneyBlocks } from './money-sheet.js';
import { packCalendars } from './pack-blocks.js';
import { continuityBlocks, dayLoadBlocks, defaultBlocks, trackBlocks } from './plan-sheet.js';
import { shortBlocks } from './short-blocks.js';
import { taskBlocks } from './work-calendar.js';

/** A list of what stands in nobody's pack, for each person, and of what nobody does yet; none when one list would say all of the calendar again. */
function personBlocks(production: Production): Block[] {
  const { plan, book } = production;
  const isInPack = packCalendars(production);
  const open = plan.tasks.filter((task) => !task.done && task.kind !== 'shoot');
  if (new Set(open.map((task) => task.who)).size < 2) return [];
  const isFor = (who: string | null) => (task: Task) => task.who === who && task.kind !== 'shoot';
  return [
    ...book.helpers.flatMap((helper) => {
      const isOpen = (task: Task) => isFor(helper.id)(task) && !isInPack(helper, task);
      const has = open.some((task) => task.who === helper.id && isInPack(helper, task))
        ? ' (beside the calendar of the pack)'
        : '';
      return taskBlocks(plan, book, `To do: ${helper.name}${has}`, isOpen, false);
    }),
    ...taskBlocks(plan, book, 'To do: nobody named yet', isFor(null), false),
  ];
}

/** Writes `plan.pdf`, for whoever makes the film: days, everything to do, money and cash, continuity in both orders, what was assumed. */
export const renderPlan: Render = async (input) => {
  const { production } = input;
  if (production === null) return { files: [], messages: [] };
  const { plan, book } = production;
  return renderDocument(input, {
    file: 'plan.pdf',
    name: 'Plan',
    key: null,
    blocks: [
      { kind: 'heading', level: 1, text: `The plan: ${plan.title}`, bookmark: 'Plan' },
      { kind: 'paragraph', text: `As of ${formatDate(plan.today)}.` },
      ...dayLoadBlocks(plan),
      ...shortBlocks(plan),
      ...moneyBlocks(plan.money),
      ...taskBlocks(plan, book, 'Everything to do, by date', () => true, true),
      ...personBlocks(production),
      ...continuityBlocks(plan),
      ...trackBlocks(plan),
      ...defaultBlocks(plan),
    ],
  });
};
