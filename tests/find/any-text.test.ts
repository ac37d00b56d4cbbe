import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findElements } from '../../src/find/find-elements.js';
import { readSentences } from '../../src/find/read-sentences.js';
import { readScript } from '../../src/script/read-script.js';
import { lexicon } from './finds-of.js';

const words = fc.constantFrom(
  ...'Nora lifts the storm lantern , and drops it . A dog barks ; six crates of apples — his coat is soaked ! "Stop" she (quietly) says : [key] *red* hat , too … O\'Brien\'s \u{1f600} é 12'.split(
    ' ',
  ),
);
const text = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 200 }),
  fc.array(words, { maxLength: 40 }).map((list) => list.join(' ')),
);

function scriptOf(body: string) {
  const { script } = readScript(new TextEncoder().encode(`## 1 INT. ROOM - DAY\n\n${body}\n`), 'any.md');
  return script;
}

describe('any text at all', () => {
  it('is read without a throw, twice to the same finds, with every place inside the source', () => {
    fc.assert(
      fc.property(text, (body) => {
        const script = scriptOf(body);
        if (!script) return;
        const { finds } = findElements(script, lexicon);
        expect(findElements(script, lexicon).finds).toEqual(finds);
        for (const { at, confidence } of finds.elements) {
          expect(at.start.offset).toBeGreaterThanOrEqual(0);
          expect(at.end.offset).toBeLessThanOrEqual(script.source.length);
          expect(at.start.offset).toBeLessThanOrEqual(at.end.offset);
          expect(confidence).toBeGreaterThan(0);
          expect(confidence).toBeLessThanOrEqual(1);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('keeps every word of a sentence in its tokens, in order', () => {
    fc.assert(
      fc.property(text, (body) => {
        const script = scriptOf(body);
        if (!script) return;
        for (const { text: own, tokens } of readSentences(script, lexicon)) {
          let at = 0;
          for (const token of tokens) {
            expect(own.slice(at, token.start).trim()).toBe('');
            expect(own.slice(token.start, token.end)).toBe(token.text);
            at = token.end;
          }
          expect(own.slice(at).trim()).toBe('');
        }
      }),
      { numRuns: 200 },
    );
  });

  it('points at its words in the source', () => {
    const script = scriptOf('Nora lifts the *storm* [lantern] and drops\nher **old** coat.');
    const { finds } = findElements(script as NonNullable<typeof script>, lexicon);
    const shown = finds.elements
      .filter((one) => one.known === 'found')
      .map(({ at }) => (script?.source ?? '').slice(at.start.offset, at.end.offset));
    expect(shown).toEqual(['the *storm* [lantern', 'her **old** coat']);
    expect(finds.elements.find((one) => one.name === 'coat')?.at.start.line).toBe(4);
  });
});
