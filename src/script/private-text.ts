import type { Diagnostic } from '../base/diagnostic.js';
import { sayScript } from '../messages/script.js';
import { lineAt, rangeAt, type SourceText } from './source-text.js';

/** The noncharacter that stands for private text until a line is printed. */
export const privateCharacter = '\uFFFF';

/** The source as the parser gets it, in the same length: what is private is blank. */
export interface Masked {
  /** For the Markdown parser: private text is spaces. */
  readonly forParser: string;
  /** For printing: private text is `privateCharacter`. */
  readonly forPrint: string;
  /** Lines that lie wholly inside private text: none of them is a blank line. */
  readonly privateLines: ReadonlySet<number>;
  readonly messages: readonly Diagnostic[];
}

/** Blanks the front matter (up to `bodyStart`) and every `<!-- … -->` (rule L12), so that neither is ever read as script. */
export function maskPrivateText(source: SourceText, bodyStart: number): Masked {
  const { text } = source;
  const head = blank(text.slice(0, bodyStart), ' ');
  if (!text.includes('<!--', bodyStart)) {
    const whole = head + text.slice(bodyStart);
    return { forParser: whole, forPrint: whole, privateLines: new Set(), messages: [] };
  }
  const parts: string[] = [];
  const prints: string[] = [];
  const messages: Diagnostic[] = [];
  const privateLines = new Set<number>();
  let from = bodyStart;
  for (let open = findOpen(text, from); open !== -1; open = findOpen(text, from)) {
    const close = text.indexOf('-->', open + 4);
    const end = close === -1 ? text.length : close + 3;
    if (close === -1) messages.push(sayScript('comment-open', undefined, rangeAt(source, open, open + 4)));
    const hidden = text.slice(open, end);
    parts.push(text.slice(from, open), blank(hidden, ' '));
    prints.push(text.slice(from, open), blank(hidden, privateCharacter));
    for (let line = lineAt(source, open) + 1; line < lineAt(source, end); line += 1) privateLines.add(line);
    from = end;
  }
  const tail = text.slice(from);
  return { forParser: head + parts.join('') + tail, forPrint: head + prints.join('') + tail, privateLines, messages };
}

function blank(text: string, filler: string): string {
  return text.replace(/[^\n]/g, filler);
}

/** Where the next comment opens, past `<` signs that a backslash makes text. */
function findOpen(text: string, from: number): number {
  let open = text.indexOf('<!--', from);
  while (open !== -1 && isEscaped(text, open)) open = text.indexOf('<!--', open + 1);
  return open;
}

function isEscaped(text: string, at: number): boolean {
  let slashes = 0;
  while (text[at - 1 - slashes] === '\\') slashes += 1;
  return slashes % 2 === 1;
}
