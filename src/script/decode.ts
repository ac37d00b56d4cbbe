import type { Diagnostic } from '../base/diagnostic.js';
import { sayScript } from '../messages/script.js';

/** Decodes bytes as UTF-8. Bytes that are no UTF-8 give a null text and one error at the first bad line. */
export function decodeText(bytes: Uint8Array): { text: string | null; messages: Diagnostic[] } {
  const text = tryDecode(bytes);
  if (text !== null) return { text, messages: [] };
  const line = firstBadLine(bytes);
  const point = { line, column: 1, offset: 0 };
  const wide = (bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff);
  return { text: null, messages: [sayScript('not-utf-8', { line, wide }, { start: point, end: point })] };
}

function tryDecode(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    // The decoder throws on bad bytes; the caller turns the null into a message with a place.
    return null;
  }
}

function firstBadLine(bytes: Uint8Array): number {
  let line = 1;
  for (let start = 0; start < bytes.length; line += 1) {
    const found = bytes.indexOf(0x0a, start);
    const end = found === -1 ? bytes.length : found;
    if (tryDecode(bytes.subarray(start, end)) === null) return line;
    start = end + 1;
  }
  return 1;
}
