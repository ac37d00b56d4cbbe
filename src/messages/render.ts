import { define, type MessageTable, speaker } from './define.js';

/** Messages of the render layer. */
export const renderMessages = {
  'font-glyph-missing': define<{ readonly character: string; readonly codePoint: number }>(
    'warning',
    'A character that the printed faces do not have',
    ({ character, codePoint }) => {
      const number = `U+${codePoint.toString(16).toUpperCase().padStart(4, '0')}`;
      return {
        reason: `Expected characters that the printed sheets can show, found "${character}" (${number}): the PDFs show its number or an empty square.`,
        hint: 'Write it in Latin, Greek or Cyrillic letters, or in words; the JSON and CSV files keep it as typed.',
        actual: character,
      };
    },
  ),
  'sheet-overfull': define<{ readonly scene: string; readonly lines: number }>(
    'warning',
    'A scene too full for its sheet',
    ({ scene, lines }) => ({
      reason: `Expected the sheet of scene ${scene} to fit one page, found ${lines} lines too many even when folded: they stand at the end under “Left over”.`,
      hint: 'Split the scene in two with a heading of its own for the second half; then each half has a sheet of its own.',
    }),
  ),
} as const satisfies MessageTable;

export const sayRender = speaker('render', renderMessages);
