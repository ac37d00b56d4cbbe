import { type MessageTable, speaker } from './define.js';

/** Messages of the reader. */
export const scriptMessages = {} as const satisfies MessageTable;

export const sayScript = speaker('script', scriptMessages);
