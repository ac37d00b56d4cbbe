import { bookMessages } from './book.js';
import { breakdownMessages } from './breakdown.js';
import { commandMessages } from './command.js';
import { compareMessages } from './compare.js';
import type { MessageTable } from './define.js';
import { findMessages } from './find.js';
import { pageMessages } from './page.js';
import { planMessages } from './plan.js';
import { renderMessages } from './render.js';
import { scriptMessages } from './script.js';

/** Every message code of Prepwright. */
export const messageRegistry: MessageTable = {
  ...scriptMessages,
  ...pageMessages,
  ...findMessages,
  ...breakdownMessages,
  ...bookMessages,
  ...compareMessages,
  ...planMessages,
  ...renderMessages,
  ...commandMessages,
};
