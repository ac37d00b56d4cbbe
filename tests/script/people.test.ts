import { describe, expect, it } from 'vitest';
import { findPerson, findSpeakers } from '../../src/script/people.js';
import { readScriptText } from '../../src/script/read-script.js';

const script = readScriptText(
  `---
cast:
  Nora: {aliases: [Miss Bell, THE CLERK], was: LENA}
  DR. OSEI: {}
  MR. WELLS: {}
  MRS. WELLS: {}
---

## INT. KITCHEN - DAY

NORA
Who is it?

TOM
Me.

NORA AND TOM
Us.

TOM AND GHOST
Boo.

> cast: Edda
`,
  'script.md',
).script;
const people = script?.people ?? [];
const name = (text: string) => findPerson(people, text)?.name ?? null;

describe('finding a person', () => {
  it.each([
    ['Nora', 'Nora'],
    ['  NORA ', 'Nora'],
    ['miss\u00a0bell', 'Nora'],
    ['The Clerk', 'Nora'],
    ['Lena', 'Nora'],
    ['Tom', 'TOM'],
    ['edda', 'Edda'],
    ['Osei', 'DR. OSEI'],
    ['dr osei', 'DR. OSEI'],
    ['Mrs Wells', 'MRS. WELLS'],
    ['Mr. Wells', 'MR. WELLS'],
    ['Miss Nora', 'Nora'],
    ['Bell', 'Nora'],
  ])('knows %s as %s', (text, expected) => expect(name(text)).toBe(expected));

  it.each(['Wells', 'Mrs. Osei', 'Nor', ''])('does not guess who %s is', (text) => expect(name(text)).toBeNull());
});

describe('people of a script', () => {
  it('are those of cast:, of cues and of cast notes, in this order; two known people together are nobody new', () => {
    expect(people.map((person) => person.name)).toEqual([
      'Nora',
      'DR. OSEI',
      'MR. WELLS',
      'MRS. WELLS',
      'TOM',
      'TOM AND GHOST',
      'Edda',
    ]);
  });

  it('speak together when a cue names several who are all known', () => {
    expect(findSpeakers(people, 'NORA AND TOM').map((person) => person.name)).toEqual(['Nora', 'TOM']);
    expect(findSpeakers(people, 'NORA/TOM').map((person) => person.name)).toEqual(['Nora', 'TOM']);
    expect(findSpeakers(people, 'TOM AND GHOST').map((person) => person.name)).toEqual(['TOM AND GHOST']);
    expect(findSpeakers(people, 'NORA AND NOBODY')).toEqual([]);
  });
});
