import { type MessageTable, speaker } from './define.js';

/** Messages of the book layer. */
export const bookMessages = {} as const satisfies MessageTable;

export const sayBook = speaker('book', bookMessages);
