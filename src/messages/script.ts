import { type MessageTable, speaker } from './define.js';
import { elementMessages } from './script-elements.js';
import { frontMessages } from './script-front.js';
import { lineMessages } from './script-lines.js';
import { noteMessages } from './script-notes.js';
import { sceneMessages } from './script-scenes.js';

/** Messages of the reader. */
export const scriptMessages = {
  ...frontMessages,
  ...sceneMessages,
  ...lineMessages,
  ...elementMessages,
  ...noteMessages,
} as const satisfies MessageTable;

export const sayScript = speaker('script', scriptMessages);
