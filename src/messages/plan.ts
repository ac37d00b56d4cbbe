import { type MessageTable, speaker } from './define.js';

/** Messages of the plan layer. */
export const planMessages = {} as const satisfies MessageTable;

export const sayPlan = speaker('plan', planMessages);
