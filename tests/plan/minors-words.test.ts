import { expect, it } from 'vitest';
import { compileText } from '../support/compile-text.js';

const script = `---
title: The Party
draft: A
---

## 1. INT. KITCHEN - DAY

> extras: 4 kids

ADA claps. Four kids dance.
`;
const book = `days:
  - { date: 2027-03-12, call: 8:00, wrap: 18:00, scenes: [1] }
`;

it('speaks of several children in the plural', async () => {
  const { production } = await compileText(script, ['plan'], { text: book, file: 'book.yaml' });
  const questions = production?.plan.days.flatMap((day) => day.minors.map((minor) => minor.question)) ?? [];
  expect(questions.join(' ')).toContain('4 kids are under age and would be on set about');
});
