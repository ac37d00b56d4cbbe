import { type MessageTable, speaker } from './define.js';

/** Messages of the render layer. */
export const renderMessages = {} as const satisfies MessageTable;

export const sayRender = speaker('render', renderMessages);
