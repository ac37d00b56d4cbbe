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

const checkText = (text: string) => check(new TextEncoder().encode(text), 'script.md', createTestHost());

describe('check', () => {
  it('gives the messages of every layer in the order of the script', () => {
    const messages = checkText(script);
    expect(messages.map(({ place, severity, code }) => `${place?.start.line} ${severity} ${code}`)).toEqual([
      '1 warning heading-no-time',
      '3 info element-without-category',
      '5 info refusal-without-effect',
      '9 warning cue-alone',
    ]);
    expect(new Set(messages.map(({ source }) => source))).toEqual(new Set(['script', 'breakdown']));
  });

  it('says the same twice, and nothing of a script that is as it should be', () => {
    expect(checkText(script)).toEqual(checkText(script));
    expect(checkText('## 1. INT. KITCHEN - DAY\n\nNora pours tea.\n')).toEqual([]);
  });

  it('gives the reader’s errors alone when there is nothing to break down', () => {
    const codes = check(new Uint8Array([0x49, 0xe9, 0x0a]), 'script.md', createTestHost()).map(({ code }) => code);
    expect(codes.toSorted(compareText)).toEqual(['not-utf-8']);
  });
});
