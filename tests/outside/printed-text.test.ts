import { toString as textOf } from 'mdast-util-to-string';
import remarkParse from 'remark-parse';
import { unified } from 'unified';
import { describe, expect, it } from 'vitest';
import { readScriptText } from '../../src/script/read-script.js';

/** What the reference library for Markdown trees gives as the text of each block: mdast-util-to-string. */
function referenceText(markdown: string): string[] {
  return unified()
    .use(remarkParse)
    .parse(markdown)
    .children.map((node) => textOf(node));
}

const paragraphs = [
  'Nora lifts the *storm* lantern and **waits**.',
  'Caf&eacute; lights &mdash; a \\*star\\* on the glass.',
  'She reads the letter twice\nand folds it.',
  'A sign: 5 &lt; 6, nobody laughs.',
  'He *almost **really** means* it.',
];

describe('the printed text of action without marks', () => {
  it.each(paragraphs)('is what mdast-util-to-string gives: %j', (paragraph) => {
    const { script } = readScriptText(`## 1. INT. KITCHEN - DAY\n\n${paragraph}\n`, 'film.md');
    const [block] = script?.scenes[0]?.blocks ?? [];
    expect(block?.kind).toBe('action');
    const lines = block?.kind === 'action' ? block.lines.map((line) => line.text) : [];
    expect([lines.join('\n')]).toEqual(referenceText(paragraph));
  });
});
