import type { Book, HelperJob } from '../book/types.js';

const jobs: Readonly<Record<string, readonly HelperJob[]>> = {
  props: ['props'],
  costume: ['costume'],
  'make-up': ['make-up', 'costume'],
  art: ['props'],
  effects: ['props'],
  transport: ['transport', 'production'],
  animals: ['production'],
  kit: ['props'],
};

/** The helper who looks after a department, or null: nobody is named. */
export function helperFor(department: string, book: Book): string | null {
  const wanted = jobs[department] ?? ['production'];
  return wanted.flatMap((job) => book.helpers.filter((helper) => helper.does.includes(job)))[0]?.id ?? null;
}
