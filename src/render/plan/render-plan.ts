import { formatDate } from '../../base/calendar-date.js';
import { renderDocument } from '../pdf/render-document.js';
import type { Render } from '../types.js';
import { moneyBlocks } from './money-sheet.js';
import { continuityBlocks, dayLoadBlocks, defaultBlocks, trackBlocks } from './plan-sheet.js';
import { taskBlocks } from './work-calendar.js';

/** Writes `plan.pdf`, for whoever makes the film: days, everything to do, money and cash, continuity in both orders, what was assumed. */
export const renderPlan: Render = async (input) => {
  const { production } = input;
  if (production === null) return { files: [], messages: [] };
  const { plan, book } = production;
  const byPerson = book.helpers.flatMap((helper) =>
    taskBlocks(plan, book, `To do: ${helper.name}`, (task) => task.who === helper.id, false),
  );
  const nobody = taskBlocks(
    plan,
    book,
    'To do: nobody named yet',
    (task) => task.who === null && task.kind !== 'shoot',
    false,
  );
  return renderDocument(input, {
    file: 'plan.pdf',
    name: 'Plan',
    key: null,
    blocks: [
      { kind: 'heading', level: 1, text: `The plan: ${plan.title}`, bookmark: 'Plan' },
      { kind: 'paragraph', text: `As of ${formatDate(plan.today)}.` },
      ...dayLoadBlocks(plan),
      ...moneyBlocks(plan.money),
      ...taskBlocks(plan, book, 'Everything to do, by date', () => true, true),
      ...byPerson,
      ...nobody,
      ...continuityBlocks(plan),
      ...trackBlocks(plan),
      ...defaultBlocks(plan),
    ],
  });
};
