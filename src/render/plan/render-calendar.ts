import { writeCalendar } from '../../plan/calendar-file.js';
import type { Render } from '../types.js';
import { helperWords } from './plan-words.js';

/** Writes `tasks.ics`: everything to do, for anyone's phone. */
export const renderCalendar: Render = async ({ production }) => {
  if (production === null) return { files: [], messages: [] };
  const { plan, book } = production;
  const open = plan.tasks.filter((task) => !task.done);
  const content = writeCalendar(plan.title, open, plan.today, (id) => helperWords(id, book));
  return { files: [{ name: 'tasks.ics', content }], messages: [] };
};
