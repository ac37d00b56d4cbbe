import { describe, expect, it } from 'vitest';
import type { Breakdown } from '../../../src/breakdown/types.js';
import { renderQuestions } from '../../../src/render/questions/render-questions.js';
import { breadVan } from '../../support/bread-van.js';
import { makeBreakdown, makeElement, makeQuestion, makeScene } from '../../support/make-breakdown.js';
import { pdfLines } from '../../support/pdf-lines.js';
import { makeRenderInput } from '../../support/render-input.js';

async function render(breakdown: Breakdown, source = '') {
  const input = makeRenderInput(breakdown);
  return renderQuestions({ ...input, script: { ...input.script, source } });
}
const markdownOf = async (breakdown: Breakdown, source = '') =>
  (await render(breakdown, source)).files[0]?.content as string;
const oneScene = (part: Parameters<typeof makeScene>[0]) => makeBreakdown({ title: 'T', scenes: [makeScene(part)] });

describe('questions.md', () => {
  it('lists by scene, each with the line that settles it', async () => {
    const source = `${'\n'.repeat(21)}Nora lights the lantern.\n`;
    expect(await markdownOf(breadVan, source)).toBe(
      [
        '# Questions about The Bread Van, draft B, 2026-11-02',
        '',
        '3 questions wait for an answer. Each is settled by one edit of the script. What begins with `>` goes',
        'on a line of its own in that scene, with a blank line above and below. What stands in brackets replaces the word in',
        'the line named; if a thing is of another category, type yours in place of the one in round brackets (props, costumes,',
        'dressing, sound …). Then compile again: what is answered does not come back.',
        '',
        '## Scene 2: EXT. YARD - CONTINUOUS',
        '',
        '- **Does Nora light the lantern with matches?**',
        '  Line 22: “Nora lights the lantern.”',
        '  - Yes: `> props: matches`',
        '  - No: `> no: matches`',
        '- **Who brings and handles the dog?**',
        '  Line 23',
        '  - Answer: `> answer: yard-dog; your answer`',
        '',
        '## Scene 4A: EXT. HARBOUR ROAD - DAWN',
        '',
        '- **Is this the morning after scene 2?**',
        '  Line 1',
        '  - Answer: `> day: 2`',
        '',
      ].join('\n'),
    );
  });

  it('takes up what is implied though nobody asked', async () => {
    const element = makeElement({
      name: 'towel',
      known: 'implied',
      strength: 'ask',
      words: 'soaked',
      count: 2,
      by: 'Bo',
    });
    const text = await markdownOf(oneScene({ order: 1, place: 'Yard', elements: [element] }));
    expect(text).toContain('"soaked": does this scene need towel? (implied, ask)');
    expect(text).toContain('- Yes: `> props: 2 towel (Bo)`');
  });

  it('shows the mark that confirms what was found, when its name stands once in the line', async () => {
    const crate = makeElement({ name: 'crate', known: 'found', line: 1 });
    const question = makeQuestion({ id: 'q', text: 'Is crate a thing?', kind: 'element', element: 'crate' });
    const breakdown = oneScene({ order: 1, place: 'Yard', elements: [crate], questions: [question] });
    expect(await markdownOf(breakdown, 'A crate.')).toContain('- Yes: `[crate](props)`');
    for (const line of ['A crate on a crate.', 'A *crate*.', 'A box.']) {
      expect(await markdownOf(breakdown, line)).toContain('- Yes: `> props: crate`');
    }
  });

  it('quotes the neighbourhood of the words', async () => {
    const crate = makeElement({ name: 'crate', known: 'found', line: 1 });
    const question = makeQuestion({ id: 'q', text: 'Is crate a thing?', kind: 'element', element: 'crate' });
    const breakdown = oneScene({ order: 1, place: 'Yard', elements: [crate], questions: [question] });
    const text = await markdownOf(breakdown, `${'far '.repeat(40)}near crate near ${'far '.repeat(40)}`);
    expect(text).toMatch(/Line 1: “… (?:far ){13,15}near crate near (?:far ){13,15}…”/);
  });

  it('takes what to type out of the advice', async () => {
    const settle = 'Type "> day: 1", or the right day.';
    const question = makeQuestion({ id: 'q', text: 'Still day 1?', settle });
    const text = await markdownOf(oneScene({ order: 1, place: 'Yard', questions: [question] }));
    expect(text).toContain('- Answer: `> day: 1`, or the right day.');
  });

  it('gives advice as it is when no one line settles it', async () => {
    const question = makeQuestion({ id: 'q', text: 'Part or scene?', settle: 'Add a place to the heading.' });
    const text = await markdownOf(oneScene({ order: 1, place: 'Yard', questions: [question] }));
    expect(text).toContain('  - Add a place to the heading.');
  });

  it('sets what is to be typed inside advice as code', async () => {
    const settle = 'Mark it with its name: [key][van key]. No: "> no: key".';
    const question = makeQuestion({ id: 'q', text: 'Which?', settle });
    const text = await markdownOf(oneScene({ order: 1, place: 'Yard', questions: [question] }));
    expect(text).toContain('  - Mark it with its name: `[key][van key]`. No: `> no: key`.');
  });

  it('keeps signs of Markdown as typed', async () => {
    const question = makeQuestion({ id: 'q', text: 'Is *it* [x] <b>?', settle: '> no: a `b` c' });
    const text = await markdownOf(oneScene({ order: 1, place: 'Yard', questions: [question] }));
    expect(text).toContain('**Is \\*it\\* \\[x\\] \\<b\\>?**');
  });

  it('says when nothing is open', async () => {
    expect(await markdownOf(makeBreakdown({ title: 'T' }))).toBe('# Questions about T\n\nNothing is open.\n');
  });
});

describe('questions.pdf', () => {
  it('has boxes or a line for each answer, and what to type', async () => {
    const lines = await pdfLines((await render(breadVan)).files[1]?.content);
    expect(lines).toContain('? Does Nora light the lantern with matches? yes no');
    expect(lines).toContain('line 22 yes: > props: matches no: > no: matches');
    expect(lines).toContain('line 23 type > answer: yard-dog; your answer');
  });
});

describe('the line that a question is about', () => {
  it('stands in the list as it is typed, signs and all', async () => {
    const scene = makeScene({
      order: 1,
      place: 'Yard',
      questions: [makeQuestion({ id: 'q', text: 'What now?', line: 3 })],
    });
    const source = 'EXT. YARD - DAY\n\nAda has changed into a [dressing gown](costume).\n';
    const { files } = await render(makeBreakdown({ scenes: [scene] }), source);
    const text = String(files.find(({ name }) => name === 'questions.md')?.content);
    expect(text).toContain('Line 3: `Ada has changed into a [dressing gown](costume).`');
  });
});
