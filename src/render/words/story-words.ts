import type { Breakdown } from '../../breakdown/types.js';

/** A story day as every sheet names it: `story day D1`, `flashback day F2`. */
export function dayWords(label: string): string {
  return `${label.startsWith('F') ? 'flashback day' : 'story day'} ${label}`;
}

/** Which paper this is: title, draft, date. */
export function draftWords({ title, draft, date }: Breakdown): string {
  return [title, draft === null ? null : `draft ${draft}`, date].filter((part) => part !== null).join(', ');
}

/** The first letter as a capital. */
export function capitalize(text: string): string {
  const [first = '', ...rest] = text;
  return first.toUpperCase() + rest.join('');
}

/** A name with how many: `6 × crate`. */
export function countWords(name: string, count: number | null): string {
  return count === null || count === 1 ? name : `${count} × ${name}`;
}
