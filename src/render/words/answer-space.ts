import type { Question } from '../../breakdown/types.js';
import { blank, type InlineRun, tick } from '../layout/inline.js';

/** Where an open question is answered by hand: two boxes and a short blank for a yes or no, else a blank of so many points. */
export function answerSpace({ kind, element }: Question, width: number): (string | InlineRun)[] {
  const yesNo = kind === 'element' && element !== null;
  return yesNo ? ['  yes\u00a0', tick, '  no\u00a0', tick, ' ', blank(30)] : [' ', blank(width)];
}
