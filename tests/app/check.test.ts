import { describe, expect, it } from 'vitest';
import { check } from '../../src/app/check.js';
import { compareText } from '../../src/base/diagnostic.js';
import { createTestHost } from '../support/test-host.js';

const script = `INT. KITCHEN

Nora thinks of the [old way].

> no: lamp

1. EXT. YARD - DAY

NORA

Hello.
`;

const checkText = (text: string, book: string | null = null) =>
  check(
    new TextEncoder().encode(text),
    'script.md',
    createTestHost(),
    book === null ? null : { book: { text: book, file: 'script.book.yaml' }, today: '2027-02-01' },
  );

describe('check', () => {
  it('gives the messages of every layer in the order of the script', async () => {
    const messages = await checkText(script);
    expect(messages.map(({ place, severity, code }) => `${place?.start.line} ${severity} ${code}`)).toEqual([
      '1 warning heading-no-time',
      '3 info element-without-category',
      '5 info refusal-without-effect',
      '9 warning cue-alone',
    ]);
    expect(new Set(messages.map(({ source }) => source))).toEqual(new Set(['script', 'breakdown']));
  });

  it('says the same twice, and nothing of a script that is as it should be', async () => {
    expect(await checkText(script)).toEqual(await checkText(script));
    expect(await checkText('## 1. INT. KITCHEN - DAY\n\nNora pours tea.\n')).toEqual([]);
  });

  it('reads the book too, and says where in it', async () => {
    const book = 'money:\n  currency: EUR\n  budget: 5\n  other costs: [{ what: food, cost: 9 }]\nelments:\n';
    const messages = await checkText('## 1. INT. KITCHEN - DAY\n\nNora pours tea.\n', book);
    expect(
      messages.map(({ file, place, code }) => `${file}:${place?.start.line}:${place?.start.column} ${code}`),
    ).toEqual([
      'script.book.yaml:3:3 plan-cash-short',
      'script.book.yaml:3:3 plan-over-budget',
      'script.book.yaml:5:1 book-key-unknown',
    ]);
  });

  it('gives the reader’s errors alone when there is nothing to break down', async () => {
    const messages = await check(new Uint8Array([0x49, 0xe9, 0x0a]), 'script.md', createTestHost());
    const codes = messages.map(({ code }) => code);
    expect(codes.toSorted(compareText)).toEqual(['not-utf-8']);
  });
});
