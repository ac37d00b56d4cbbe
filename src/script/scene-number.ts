import { compareText } from '../base/diagnostic.js';

/** A scene number as scripts write it: `12`, `12A`, `A12`, `10aA`. */
export const sceneNumber = '[A-Z]{0,2}\\d{1,4}[A-Za-z]{0,3}';

const leading = new RegExp(`^(?:(?:SCENE|SC\\.?)\\s+)?(${sceneNumber})(?:\\s*[.):]+\\s*|\\s*[-–—]\\s+|\\s+)`, 'i');
const form = /^([A-Za-z]*)(\d+)([A-Za-z]*)$/;

/** Takes a number off the start of a heading (rule L4); null when none stands there. */
export function takeSceneNumber(text: string): { number: string; length: number } | null {
  const found = leading.exec(text);
  return found ? { number: found[1] as string, length: found[0].length } : null;
}

/**
 * Orders scene numbers: A12 < 12 < 12A < 12B < 13 and 10 < 10aA < 10A. A letter before the number stands before the scene, one
 * behind it after the scene; a small letter makes room before a capital. Numbers of another form come last, as text.
 */
export function compareSceneNumbers(a: string, b: string): number {
  const one = form.exec(a);
  const two = form.exec(b);
  if (!one || !two) return one ? -1 : two ? 1 : compareText(a, b);
  return (
    Number(one[2]) - Number(two[2]) ||
    compareText(one[1] || '~', two[1] || '~') ||
    compareText(swapCase(one[3] as string), swapCase(two[3] as string))
  );
}

/** Code units put capitals first; inserted scenes need small letters first. */
function swapCase(text: string): string {
  return text.replace(/[A-Za-z]/g, (letter) =>
    letter === letter.toUpperCase() ? letter.toLowerCase() : letter.toUpperCase(),
  );
}
