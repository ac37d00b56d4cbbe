import { describe, expect, it } from 'vitest';
import { main } from '../../src/cli/main.js';
import { compileText } from '../support/compile-text.js';
import { createTestHost } from '../support/test-host.js';
import { questionsOf, reviewText } from './review-text.js';

const script = `## 1. INT. HALL - NIGHT

A crowd of guests looks up. A splash outside.
Nobody moves.

NORA
What was that?

## 2. EXT. POND - NIGHT

> day: 1

Nora kneels in the reeds.
`;

const about = (word: string, answer: string) => (question: string) => (question.includes(word) ? answer : '');

async function sceneOf(text: string, at = 0) {
  const { breakdown } = await compileText(text);
  const scene = breakdown?.scenes[at];
  if (!scene) throw new Error('no such scene');
  return scene;
}

const thingsOf = async (text: string, at = 0) =>
  (await sceneOf(text, at)).elements.map(({ name, known }) => `${name}, ${known}`);

describe('a no', () => {
  it('is a note under the paragraph, and the thing is gone', async () => {
    expect(await thingsOf(script)).toContain('splash, found');
    const { text, out, exit } = await reviewText(script, about('splash', 'n'));
    expect(text).toBe(script.replace('Nobody moves.\n', 'Nobody moves.\n\n> no: splash\n'));
    expect(await thingsOf(text)).not.toContain('splash, found');
    expect([...(await questionsOf(text)).keys()]).not.toContain('need-splash-int-hall-night');
    expect(out).toContain('1 of 2 settled in script.md.');
    expect(exit).toBe(0);
  });

  it('outlives other words around it, and a move to another place in the script', async () => {
    const { text } = await reviewText(script, about('splash', 'no'));
    const reworded = text.replace('A splash outside.', 'Then, out in the dark, a long splash. It fades.');
    expect(await thingsOf(reworded)).not.toContain('splash, found');
    const [first = '', second = ''] = text.split(/(?=## 2)/);
    const moved = `${second.replace('2.', '1.')}\n${first.replace('1.', '2.')}`;
    expect(await thingsOf(moved, 1)).not.toContain('splash, found');
    const later = text.replace('A splash outside.', '').replace('What was that?', 'What was that?\n\nA splash.');
    expect(await thingsOf(later)).not.toContain('splash, found');
  });

  it('holds in its own scene only', async () => {
    const { text } = await reviewText(script, about('splash', 'n'));
    expect(await thingsOf(`${text}\nA splash.\n`, 1)).toContain('splash, found');
  });
});

describe('a yes', () => {
  it('puts brackets round the name where it stands in the text, with its category', async () => {
    const { text } = await reviewText(script, about('splash', 'YES'));
    expect(text).toBe(script.replace('A splash', 'A [splash](sound)'));
    expect(await thingsOf(text)).toContain('splash, marked');
  });

  it('is a note where the name is not typed as it is called', async () => {
    const starred = script.replace('A splash', 'A *splash*');
    const { text } = await reviewText(starred, about('splash', 'y'));
    expect(text).toBe(starred.replace('Nobody moves.', 'Nobody moves.\n\n> sound: splash'));
    expect(await thingsOf(text)).toContain('splash, noted');
  });
});

describe('an answer in words', () => {
  it('settles the question as it is typed', async () => {
    const { text } = await reviewText(script, about('How many guests', '  about   thirty '));
    expect(text).toContain('Nobody moves.\n\n> answer: count-guests; about thirty\n');
    expect([...(await questionsOf(text)).keys()]).not.toContain('count-guests-int-hall-night');
    expect((await sceneOf(text)).notes).toContainEqual(expect.objectContaining({ kind: 'answer' }));
  });

  it('is asked for again when it does not settle the question, and never written', async () => {
    const typed = ['a good many', 'yes', '30'];
    const { text, out } = await reviewText(script, (question) =>
      question.includes('How many guests') ? (typed.shift() ?? '') : '',
    );
    expect(out).toContain('“a good many” does not settle it. Type a number; Enter leaves it open.');
    expect(text).toBe(script.replace('Nobody moves.\n', 'Nobody moves.\n\n> answer: count-guests; 30\n'));
    expect(out).toContain('1 of 2 settled');
  });

  it('holds when the heading of its scene is changed', async () => {
    const { text } = await reviewText(script, about('How many guests', '30'));
    const renamed = text.replace('INT. HALL - NIGHT', 'INT. BALLROOM - NIGHT');
    expect((await sceneOf(renamed)).extras).toEqual([expect.objectContaining({ name: 'guests', count: 30 })]);
    expect([...(await questionsOf(renamed)).keys()].filter((id) => id.startsWith('count-'))).toEqual([]);
  });

  it('counts a group, the greater number where two are named', async () => {
    for (const [answer, count] of [
      ['about thirty', 30],
      ['12-15', 15],
      ['two hundred', 200],
    ] as const) {
      const { text } = await reviewText(script, about('How many guests', answer));
      expect((await sceneOf(text)).extras[0]?.count).toBe(count);
    }
  });

  it('counts a group', async () => {
    const { text } = await reviewText(script, about('How many guests', '30'));
    expect((await sceneOf(text)).extras).toEqual([expect.objectContaining({ name: 'guests', count: 30 })]);
  });
});

describe('a note typed as an answer', () => {
  const days = '## INT. HALL - DAY\n\nNora waits.\n\n## EXT. POND - DAY\n\nNora kneels.\n';

  it('is written as it is when the list of questions recommends it', async () => {
    const { text, out } = await reviewText(days, about('Is this still D1?', '> day: 2'));
    expect(text).toBe(days.replace('POND - DAY\n', 'POND - DAY\n\n> day: 2\n'));
    expect((await sceneOf(text, 1)).storyDay.label).toBe('D2');
    expect(out).toContain('writes > day: 2 under line 5');
  });

  it('is refused when it is another one, or one with dots to fill in, and the right one is named', async () => {
    for (const typed of ['> time: 2', '> day: …']) {
      const { text, out } = await reviewText(days, about('Is this still D1?', typed));
      expect(text).toBe(days);
      expect(out).toContain(`“${typed}” does not settle it. Type y or n, or a note such as > day: …;`);
    }
  });
});

describe('a review', () => {
  it('names scenes as paper does, and says what each answer writes', async () => {
    const unnumbered = script.replace('## 2. EXT', '## EXT');
    const { out } = await reviewText(unnumbered, (question) => (question.includes('splash') ? 'y' : 'n'));
    expect(out).toContain('of 2, scene 1, line 3\n');
    expect(out).toContain('writes [splash](sound) in line 3');
    const second = await reviewText(`${unnumbered}\nA splash.\n`, about('splash', 'n'));
    expect(second.out).toContain(', scene 2nd, line ');
    expect(second.out).toContain('writes > no: splash under line ');
  });

  it('keeps line ends and a byte-order mark', async () => {
    const windows = `\ufeff${script.replaceAll('\n', '\r\n')}`;
    const { text } = await reviewText(windows, about('splash', 'n'));
    expect(text).toBe(windows.replace('Nobody moves.\r\n', 'Nobody moves.\r\n\r\n> no: splash\r\n'));
  });

  it('writes nothing into private text or into the next scene', async () => {
    const crowded = '## INT. HALL - NIGHT\n\nA splash. <!-- ask\n\nIvo --> Silence.\n## INT. BARN - DAY\n\nRain.\n';
    const { text } = await reviewText(crowded, about('splash', 'n'));
    expect(text).toBe(crowded.replace('Silence.\n', 'Silence.\n\n> no: splash\n\n'));
  });

  it('leaves for later what is passed over, and stops when told to or at the end of what is typed', async () => {
    for (const typed of ['', 's', 'stop', null]) {
      const { text, exit, out } = await reviewText(script, () => typed);
      expect(text).toBe(script);
      expect(exit).toBe(0);
      expect(out).toContain('0 of 2 settled');
    }
  });

  it('says when nothing is open', async () => {
    const { out, text } = await reviewText('## INT. HALL - NIGHT\n\nNora waits.\n', () => 'n');
    expect(out).toBe('Nothing is open.\n');
    expect(text).toContain('Nora waits.');
  });

  it('does not begin on a script with errors', async () => {
    const { exit, error, text } = await reviewText('Once upon a time.\n', () => 'n');
    expect(exit).toBe(1);
    expect(error).toContain('[no-scene]');
    expect(text).toBe('Once upon a time.\n');
  });

  it('says when the script cannot be written, and loses nothing', async () => {
    const host = createTestHost({ 'a.md': script, 'a.md/b.md': script, '-': 'n\n30\n' });
    expect(await main(['review', 'a.md/b.md'], host)).toBe(3);
    expect(host.printed.error).toContain('[file-not-written]');
    expect(host.written.size).toBe(0);
  });
});
