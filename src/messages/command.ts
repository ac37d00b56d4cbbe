import { type MessageTable, speaker } from './define.js';

/** Messages of the command layer. */
export const commandMessages = {} as const satisfies MessageTable;

export const sayCommand = speaker('command', commandMessages);
