import { type MessageTable, speaker } from './define.js';

/** Messages of the find layer. */
export const findMessages = {} as const satisfies MessageTable;

export const sayFind = speaker('find', findMessages);
