import { describe, expect, it } from 'vitest';
import { chooseBaseline } from '../../src/compare/choose-baseline.js';

const file = (text: string) => ({ text, file: 'breakdown.json' });
const draft = (label: string | null) => file(JSON.stringify({ draft: label }));
const none = { written: null, previous: null, since: null };
const [a, b, unnamed, broken] = [draft('A'), draft('B'), draft(null), file('{"draft": "A"')];

describe('the draft to compare with', () => {
  it.each([
    ['nothing is there', none, 'A', null, null],
    ['another draft was written last', { ...none, written: a }, 'B', a, a],
    ['this draft was written before, and one before it is kept', { ...none, written: b, previous: a }, 'B', a, null],
    ['this draft was written before, and none is kept', { ...none, written: a }, 'A', null, null],
    ['another draft takes the place of the kept one', { ...none, written: b, previous: a }, 'C', b, b],
    ['the last run named no draft', { ...none, written: unnamed }, 'A', null, null],
    ['the last run named no draft, but one is kept', { ...none, written: unnamed, previous: a }, 'B', a, null],
    ['this draft has no label: the other is kept, not compared', { ...none, written: a }, null, null, a],
    ['the kept one is this draft', { ...none, previous: a }, 'A', null, null],
    ['a file is named', { ...none, written: b, previous: b, since: a }, 'B', a, null],
    ['a file is named and the draft has no label', { ...none, since: a }, null, a, null],
    ['the kept one is damaged: it is chosen, so that it is told', { ...none, previous: broken }, 'B', broken, null],
  ])('when %s', (_, files, label, chosen, kept) => {
    expect(chooseBaseline(files, label)).toMatchObject({ file: chosen, keep: kept, broken: null });
  });

  it('is none when the last run’s file is damaged', () => {
    expect(chooseBaseline({ ...none, written: broken }, 'B')).toMatchObject({ file: null, keep: null, broken });
  });
});
