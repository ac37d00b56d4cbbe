import { describe, expect, it } from 'vitest';
import { compileText } from '../support/compile-text.js';

const script = `---
title: The Hat
cast:
  ANNA: { age: 30 }
  MIA: { age: 28 }
---

## 1. EXT. SQUARE - DAY

ANNA and MIA wait.

> Anna: wears blue coat, green hat

## 2. EXT. SQUARE - CONTINUOUS

Anna takes off the blue coat. Mia looks away.

## 3. INT. SHED - DAY

Anna gives Mia her green hat. Mia looks at it.

> Anna: without blue coat

## 4. INT. SHED - DAY

Anna waits. Mia wears the green hat.

> Anna: wears blue coat
`;

describe('a garment that is lent or taken off', () => {
  it('is told with what happens to it, and nobody matches the scene before to the scene after', async () => {
    const { production } = await compileText(script, ['plan'], {
      text: 'money: { currency: EUR }\n',
      file: 'book.yaml',
    });
    const tracks = production?.plan.tracks ?? [];
    const told = (id: string) =>
      tracks
        .find((one) => one.id === id)
        ?.inStory.map(({ slot, by, absent, action, duties }) => {
          const ties = duties.map((duty) => `${duty.kind} ${duty.scene.label}`).join(', ');
          return `${slot.label} ${absent ? 'NOT worn' : by.join()} ${action ?? '-'}: ${ties}`;
        });
    expect(told('blue-coat')).toEqual([
      '1 ANNA -: sets 2',
      '2 ANNA taken off: match 1',
      '3 NOT worn -: ',
      '4 ANNA -: ',
    ]);
    expect(told('green-hat')).toEqual([
      '1 ANNA -: sets 2',
      '2 ANNA -: match 1, sets 3',
      '3 ANNA handed to MIA: match 2, sets 4',
      '4 MIA -: match 3',
    ]);
  });
});
