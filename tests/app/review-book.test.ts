import { describe, expect, it } from 'vitest';
import { settleByBook } from '../../src/app/review-book.js';
import { compileText } from '../support/compile-text.js';

const script =
  '## 1. INT. HALL - NIGHT\n\nA crowd of guests looks up. A splash outside. Nora counts the [coins](prop).\n';

async function settle(book: string | null) {
  const { breakdown } = await compileText(script);
  if (!breakdown) throw new Error('no breakdown');
  return settleByBook(breakdown, book === null ? null : { text: book, file: 'hall.book.yaml' }, '2027-02-01');
}

describe('the book before a review', () => {
  it('settles what it answers, refuses and counts, and keeps for itself what only it can answer', async () => {
    const open = await settle('');
    const done = await settle('refused: [splash]\nbackground: { guests: { count: 12 } }\n');
    if ('unreadable' in open || 'unreadable' in done) throw new Error('the book is readable');
    expect([open.answered, done.answered]).toEqual([0, 2]);
    expect(open.forTheBook).toEqual(['coins: how many "coins"? The script gives no number.']);
  });

  it('settles nothing where there is no book, and nothing by one that cannot be read', async () => {
    expect(await settle(null)).toMatchObject({ answered: 0, forTheBook: [] });
    expect(await settle('refused: [\n')).toMatchObject({ unreadable: [{ code: 'book-not-readable' }] });
  });
});
