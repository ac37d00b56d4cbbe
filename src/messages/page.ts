import { type MessageTable, speaker } from './define.js';

/** Messages of the page layer. */
export const pageMessages = {} as const satisfies MessageTable;

export const sayPage = speaker('page', pageMessages);
