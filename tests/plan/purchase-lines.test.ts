import { describe, expect, it } from 'vitest';
import { listPurchases } from '../../src/plan/purchase-lines.js';
import { isUsedUpByWords } from '../../src/plan/used-up-by-words.js';
import { breakDown, type Told } from '../support/break-down.js';

const script = `---
cast: { NORA: {} }
---

## 1. INT. KITCHEN - DAY

> Nora: wears apron
> food: 2 apples (Nora)
> sound: thunder

Nora lights up under a [wall clock](dressing). She turns the [key](prop).

## 2. EXT. YARD - DAY

> apples: bitten

Nora lights up. Six apples. A [fern](plant). The [key](prop) shines.
`;

const matches = (words: string) => ({
  name: 'matches',
  category: 'props' as const,
  words,
  known: 'implied' as const,
  strength: 'certain' as const,
});
const told: Told = {
  elements: [
    matches('lights up'),
    matches('lights up#2'),
    { name: 'apples', category: 'food', words: 'Six apples', count: 6 },
    { name: 'thunder', category: 'sound', words: 'thunder' },
  ],
};

describe('the purchase list', () => {
  it('says what each take uses up as the words tell, and as the plan counts it', () => {
    const food = { category: 'food', words: 'it', known: 'found' } as const;
    const thing = (name: string, part: object = {}) =>
      ({ name, states: [], category: 'props', known: 'found', ...part }) as const;
    const eaten = { states: [{ state: 'eaten', scene: 's1', onCamera: true }] };
    expect([
      isUsedUpByWords(thing('cigarette')),
      isUsedUpByWords(thing('candle')),
      isUsedUpByWords(thing('bun', food)),
      isUsedUpByWords(thing('bun', { ...food, ...eaten })),
      isUsedUpByWords(thing('bun', { ...food, known: 'marked' })),
      isUsedUpByWords(thing('tea', food)),
    ]).toEqual([true, false, false, true, true, true]);
  });

  it('has one line a thing of a bought category, by department, then first scene', () => {
    const lines = listPurchases(breakDown(script, told).breakdown);
    expect(
      lines.map(({ department, name, scenes, inScript }) => `${department}: ${name}; ${scenes}; ${inScript}`),
    ).toEqual([
      'props: apples; 1,2; 6',
      'props: key; 1,2; null',
      'art: wall clock; 1; null',
      'art: fern; 2; null',
      'costume: apron; 1,2; null',
    ]);
    expect(lines.find(({ name }) => name === 'apples')).toMatchObject({
      id: 'apples',
      category: 'food',
      firstScene: '1',
      states: ['bitten'],
      usedBy: ['NORA'],
      known: 'noted',
    });
  });

  it('leaves out what is doubtful wherever it is found, and lists it once a scene is sure of it or an answer says yes', () => {
    const doubtful = (words: string, confidence = 0.5) => ({
      name: 'ribbon',
      category: 'props' as const,
      words,
      confidence,
    });
    const text = script.replace('Six apples.', 'Six apples, a ribbon.').replace('She turns', 'A ribbon. She turns');
    const listed = (text: string, ...elements: Told['elements'] & object) =>
      listPurchases(breakDown(text, { elements }).breakdown).map(({ name }) => name);
    expect(listed(text, doubtful('ribbon'), doubtful('ribbon#2'))).not.toContain('ribbon');
    expect(listed(text, doubtful('ribbon'), doubtful('ribbon#2', 0.9))).toContain('ribbon');
    const answered = text.replace('> food:', '> answer: need-ribbon-int-kitchen-day; yes\n> food:');
    expect(listed(answered, doubtful('ribbon'), doubtful('ribbon#2'))).toContain('ribbon');
  });

  it('leaves out what is implied until a note accepts it', () => {
    expect(listPurchases(breakDown(script, told).breakdown).map(({ name }) => name)).not.toContain('matches');
    const accepted = script.replace('> sound: thunder', '> props: matches');
    const lines = listPurchases(
      breakDown(accepted, { elements: [matches('lights up'), matches('lights up#2')] }).breakdown,
    );
    expect(lines.find(({ name }) => name === 'matches')).toMatchObject({ known: 'noted' });
  });
});
