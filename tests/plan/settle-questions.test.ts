import { describe, expect, it } from 'vitest';
import { readBook } from '../../src/book/read-book.js';
import type { Book } from '../../src/book/types.js';
import type { Breakdown, Question } from '../../src/breakdown/types.js';
import { settleQuestions } from '../../src/plan/settle-questions.js';
import { sketch } from './fixture.js';

const ask = (id: string, element: string | null): Question => ({
  id,
  key: id,
  text: 'Is it?',
  line: 7,
  settle: 'Say so.',
  kind: 'story',
  element,
  wants: 'words, yes or no',
  choices: [],
});

function asked(): Breakdown {
  const made = sketch({ scenes: [{ things: { rope: {}, lamp: {} } }] });
  const questions = [ask('day-s1', null), ask('need-rope-s1', 'rope')];
  return { ...made, scenes: made.scenes.map((scene) => ({ ...scene, questions })) };
}

const settle = (yaml: string) => settleQuestions(asked(), readBook(yaml, 'b.yaml').book as Book);

describe('questions that the book settles', () => {
  it('are no longer open, and their answers stand among the notes', () => {
    const [scene] = settle('answers:\n  day-s1: the same day\n').breakdown.scenes;
    expect(scene?.questions.map((one) => one.id)).toEqual(['need-rope-s1']);
    expect(scene?.notes).toEqual([{ kind: 'answer', text: 'day-s1: the same day', line: 7 }]);
  });

  it('are those about refused things too, which leave with them', () => {
    const { breakdown } = settle('refused: [rope]\n');
    expect(breakdown.scenes[0]?.questions.map((one) => one.id)).toEqual(['day-s1']);
    expect(breakdown.scenes[0]?.elements.map((one) => one.id)).toEqual(['lamp']);
    expect(breakdown.elements.map((one) => one.id)).toEqual(['lamp']);
  });

  it('are reported when nothing asks them, with the one that is a slip of the pen away', () => {
    expect(settle('answers:\n  day-s2: no\n').messages.map((one) => [one.code, one.place?.start.line])).toEqual([
      ['book-reference-unknown', 2],
    ]);
    const [unknown] = settle('answers:\n  bell-on-bridge: yes\n').messages;
    expect([unknown?.code, unknown?.place?.start.line]).toEqual(['book-entry-without-script', 2]);
    expect(unknown?.reason).toContain('a question of the script under "bell-on-bridge"');
    expect(settle('answers:\n  day-s1: yes\n').messages).toEqual([]);
  });

  it('are reported when a refused thing is nowhere', () => {
    const [gone] = settle('refused: [rope, gone]\n').messages;
    expect([gone?.code, gone?.place?.start.line]).toEqual(['book-entry-without-script', 1]);
    expect(settle('refused: [rope]\n').messages).toEqual([]);
  });
});
