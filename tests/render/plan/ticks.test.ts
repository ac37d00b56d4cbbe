import { describe, expect, it } from 'vitest';
import { tick } from '../../../src/render/layout/kit.js';
import { tickedWords } from '../../../src/render/plan/work-calendar.js';

const task = {
  id: 'pack',
  date: null,
  until: null,
  what: 'pack: lamp, 2 × rope, tin',
  things: ['lamp', '2 × rope', 'tin'],
  kind: 'pack',
  who: null,
  elements: [],
  late: false,
  done: false,
} as const;

describe('a task about many things', () => {
  it('has a box for each of them, beside its name', () => {
    const words = tickedWords(task);
    expect(words.filter((one) => one === tick)).toHaveLength(3);
    expect(words.map((one) => (typeof one === 'string' ? one : '☐')).join('')).toBe(
      'pack: ☐\u00a0lamp, ☐\u00a02\u00a0×\u00a0rope, ☐\u00a0tin',
    );
  });

  it('has no boxes in it when it is about one or two', () => {
    expect(tickedWords({ ...task, what: 'pack: lamp, tin', things: ['lamp', 'tin'] })).toEqual(['pack: lamp, tin']);
    expect(tickedWords({ ...task, what: 'order a lamp', things: [] })).toEqual(['order a lamp']);
  });
});
