import { describe, expect, it } from 'vitest';
import { compileText } from '../../support/compile-text.js';
import { pdfLines } from '../../support/pdf-lines.js';

const script = (thing: string) =>
  `## 1. INT. KITCHEN - DAY\n\nAda lifts the [${thing}](prop) and points it at the door.\n`;

async function sheetOf(thing: string, id: string) {
  const book = `elements:\n  ${id}:\n    weapon: { kind: replica, blunted by: Kim, blunted on: 2027-03-02, key holder: Sam, notice given: yes }\n`;
  const { files } = await compileText(script(thing), ['props'], { text: book, file: 'book.yaml' });
  const lines = await pdfLines(files[0]?.content);
  return lines.slice(lines.findIndex((line) => /^(Weapons and blades|Blades)$/.test(line))).join(' ');
}

describe('the weapons sheet with a book', () => {
  it('fills in what the book knows, and speaks of edges where there is a blade', async () => {
    const text = await sheetOf('bread knife', 'bread-knife');
    expect(text).toContain('One adult keeps them and nobody else: Sam');
    expect(text).toContain('Blunted, or a soft copy, by Kim on Tue 2 March');
    expect(text).toContain('Neighbours and the authority told: yes');
    expect(text).toContain('Edges and points blunted or soft');
    expect(text).not.toMatch(/live|cartridge|unloaded/);
    expect(text).toMatch(/Count out, count in.*bread knife 1/);
  });

  it('speaks of what is live where there is a gun', async () => {
    const text = await sheetOf('old rifle', 'old-rifle');
    expect(text).toContain('Nothing live on the premises');
    expect(text).not.toContain('Edges and points');
  });
});
