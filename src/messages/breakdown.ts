import { type MessageTable, speaker } from './define.js';

/** Messages of the breakdown layer. */
export const breakdownMessages = {} as const satisfies MessageTable;

export const sayBreakdown = speaker('breakdown', breakdownMessages);
