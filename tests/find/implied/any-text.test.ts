import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { raiseHazards } from '../../../src/find/hazards.js';
import { imply } from '../../../src/find/imply.js';
import { implications } from '../../../src/trade/implications/implications.js';
import { wordGroups } from '../../../src/trade/implications/word-groups.js';
import { readAll } from './read-one.js';
import { rowCases } from './rows.js';

const words = [
  ...new Set([
    ...rowCases.flatMap(({ yes, no }) => `${yes} ${no}`.split(/\s+/)),
    ...(wordGroups.ANIMALS ?? '').split(/\s+/),
  ]),
];
const soup = fc.array(fc.oneof(fc.constantFrom(...words), fc.constantFrom(',', '.', '"', '(9)', '\n\n', 'TOM\n')), {
  maxLength: 60,
});

function judge(text: string) {
  const { script, sentences } = readAll(text);
  const { elements, tasks, questions } = imply(sentences, script, []);
  return { script, elements, tasks, questions, hazards: raiseHazards(sentences, script, elements) };
}

describe('any text at all', () => {
  it('is read without a throw', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 200 }), (text) => {
        judge(`## INT. ROOM - DAY\n\n${text}\n`);
      }),
      { numRuns: 150 },
    );
  });

  it('made of the table’s own words keeps every promise', () => {
    fc.assert(
      fc.property(soup, (parts) => {
        const { script, elements, tasks, questions, hazards } = judge(`## EXT. ROOF - NIGHT\n\n${parts.join(' ')}\n`);
        for (const one of [...elements, ...tasks, ...questions, ...hazards]) {
          expect(one.words).not.toBe('');
          expect(script.scenes[one.scene]).toBeDefined();
          expect(one.at.start.offset).toBeLessThanOrEqual(one.at.end.offset);
          expect(one.at.end.offset).toBeLessThanOrEqual(script.source.length);
        }
        for (const { text } of [...tasks, ...questions]) expect(text).not.toMatch(/\{/);
        for (const { name } of elements) expect(name).not.toMatch(/\{/);
        const hazardKeys = hazards.map(({ scene, hazard }) => `${scene} ${hazard}`);
        expect(new Set(hazardKeys).size).toBe(hazardKeys.length);
        const ids = questions.map(({ scene, id }) => `${scene} ${id}`);
        expect(new Set(ids).size).toBe(ids.length);
      }),
      { numRuns: 150 },
    );
  });
});

describe('the word lists', () => {
  it('name only groups that exist', () => {
    const lists = implications.flatMap(({ cues, elements }) => [
      ...cues.flatMap((cue) => ('limits' in cue ? [cue.words, ...Object.values(cue.limits)] : [])),
      ...elements.map(({ unless }) => unless),
    ]);
    const named = lists.flatMap((list) => (typeof list === 'string' ? (list.match(/\b[A-Z]{3,}\b/g) ?? []) : []));
    const known = new Set(['PERSON', 'NONE', 'EXT', 'INT', ...Object.keys(wordGroups)]);
    expect([...new Set(named)].filter((name) => !known.has(name))).toEqual([]);
  });
});
