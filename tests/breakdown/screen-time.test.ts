import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { eighths } from '../../src/base/eighths.js';
import { estimateScreenTime, totalScreenTime } from '../../src/breakdown/screen-time.js';
import { splitSentences } from '../../src/breakdown/screen-time-action.js';
import { countWords } from '../../src/breakdown/screen-time-speech.js';
import type { Block } from '../../src/script/types.js';
import { action, heading, item, pageBreak, scene, speech, timeNote, transition } from '../support/script-builder.js';

function time(...blocks: Block[]) {
  return estimateScreenTime(scene('INT. STORE - DAY', blocks), eighths(1));
}

const seconds = (...blocks: Block[]) => time(...blocks).seconds;

/** So many words of speech. */
const talk = (words: number) => Array.from({ length: words }, () => 'word').join(' ');

describe('speech', () => {
  it('counts 2.5 words a second', () => {
    expect(seconds(speech('NORA', talk(25)))).toBe(10);
  });
  it('slows down and speeds up where a parenthetical says so', () => {
    expect(seconds(speech('NORA', '(slowly)', talk(30)))).toBe(15);
    expect(seconds(speech('NORA', '(shouting)', talk(30)))).toBe(10);
    expect(seconds(speech('NORA', '(pouring tea)', talk(30)))).toBe(12);
  });
  it('adds beats and pauses, on their own line or inside one', () => {
    expect(seconds(speech('NORA', talk(25), '(beat)', talk(25)))).toBe(21);
    expect(seconds(speech('NORA', `${talk(25)} (beat) ${talk(25)}`))).toBe(21);
    expect(seconds(speech('NORA', '(pause)', talk(25)))).toBe(12.5);
  });
  it('leaves room to listen to a voice that nobody hears', () => {
    expect(seconds(speech('NORA', '(into phone)', talk(25)))).toBe(12);
  });
  it('adds speeches one after the other', () => {
    expect(seconds(speech('NORA', talk(25)), speech('IVO', talk(25)))).toBe(20);
  });
  it('counts words in any alphabet, and ideographs by the syllable', () => {
    expect(countWords("She's “here”, isn't she? Ναι, ждём 2 часа — ok")).toBe(9);
    expect(countWords('…—!')).toBe(0);
    expect(seconds(speech('NORA', '灯台の中で待っている灯台の中で待っている'.repeat(3)))).toBeCloseTo(60 / 5.1, 0);
  });
});

describe('action', () => {
  it('takes 2 to 4 seconds a sentence, more for a longer one', () => {
    const short = time(action('She sits. He nods. They eat.'));
    expect(short).toMatchObject({ seconds: 6, low: 4.2, high: 12 });
    const long = 'She lifts the lid of the box with one finger and looks for the key under the folded sails.';
    expect(seconds(action(long))).toBeCloseTo(4, 0);
    expect(seconds(action(long, long, long))).toBeLessThanOrEqual(12);
  });
  it('takes a sentence of many words as several actions', () => {
    const words = Array.from({ length: 57 }, () => 'word').join(' ');
    expect(time(action(`${words}.`))).toMatchObject({ seconds: 8.8, low: 6, high: 12 });
  });
  it('takes longer over slow verbs', () => {
    expect(seconds(action('She slowly lifts the lid.'))).toBe(9);
    expect(seconds(action('Ivo watches the boats.'))).toBe(9);
  });
  it('knows beats and pauses', () => {
    expect(seconds(action('She sits. He nods. A beat.'))).toBe(5);
    expect(seconds(action('She sits. He nods. Silence.'))).toBe(6.5);
    expect(seconds(action('She sits. He nods. A long pause.'))).toBe(8.5);
  });
  it('gives a fight in two words its length, and not to tears or shadows', () => {
    expect(seconds(action('They fight.'))).toBe(40);
    expect(seconds(action('On the deck, between the nets, a fight breaks out.'))).toBe(40);
    expect(seconds(action('She fights tears.'))).toBeLessThan(5);
    expect(seconds(action('Shadows dance.'))).toBeLessThan(5);
    expect(seconds(action('They fight with the rope until one of them lets go.'))).toBeLessThan(5);
  });
  it('lets the audience read what is quoted', () => {
    const words = talk(20);
    const without = seconds(action('She sits. He nods.', 'The letter:'));
    expect(seconds(action('She sits. He nods.', `The letter: "${words}. ${words}"`))).toBe(without + 20);
    expect(seconds(action('The letter: “Come.” She sits. He nods.'))).toBe(6.5);
  });
  it('counts each image of a montage, as a list or under a heading that says so', () => {
    expect(seconds(item('- A wet rope.'), item('- Ivo runs. He falls.'))).toBe(14);
    const head = heading('INT. STORE - DAY (MONTAGE)', null, { qualifiers: ['MONTAGE'] });
    expect(estimateScreenTime(scene(head, [action('A wet rope.'), action('A bell.')]), eighths(1)).seconds).toBe(14);
  });
  it('adds fades, and nothing for a cut or a page break', () => {
    const still = seconds(action('She sits. He nods.'));
    expect(seconds(action('She sits. He nods.'), transition('FADE OUT.'))).toBe(still + 2);
    expect(seconds(action('She sits. He nods.'), transition('CUT TO:'), pageBreak)).toBe(still);
  });
  it('reads sentences over line ends, and a line in capitals or numbers as one of its own', () => {
    expect(splitSentences(['She lifts the', 'lid. Dr. Bell nods.', 'A rope', '2 knots'])).toEqual([
      'She lifts the lid.',
      'Dr. Bell nods.',
      'A rope',
      '2 knots',
    ]);
    expect(splitSentences(['...', '—'])).toEqual([]);
    expect(splitSentences(['雨が降る。船が出る。'])).toEqual(['雨が降る。', '船が出る。']);
  });
});

describe('speech and action at once', () => {
  const fourActions = action('She sits. He nods. They eat. She stands.');
  it('takes the longer of a recorded voice and the picture under it', () => {
    expect(seconds(fourActions, speech('NORA (V.O.)', talk(25)))).toBe(10);
    expect(seconds(fourActions, speech('NORA (V.O.)', talk(10)))).toBe(8);
    expect(seconds(speech('NORA (V.O.)', talk(25)), fourActions)).toBe(10);
  });
  it('adds a voice that is called that day', () => {
    expect(seconds(fourActions, speech('NORA (O.S.)', talk(25)))).toBe(18);
  });
  it('counts what happens during a speech once', () => {
    const plain = seconds(speech('NORA', talk(50)));
    expect(seconds(speech('NORA', talk(50)), action('Ivo peels an orange while she talks.'))).toBe(plain);
    expect(seconds(speech('NORA', talk(50)), action('Ivo peels an orange.'))).toBeGreaterThan(plain);
  });
});

describe('a scene', () => {
  it('shows the page rule beside the estimate', () => {
    expect(estimateScreenTime(scene('INT. STORE - DAY', []), eighths(3)).pageRule).toBe(22.5);
  });
  it('is never shorter than one shot', () => {
    expect(time()).toEqual({ seconds: 3, low: 2, high: 4, pageRule: 7.5, noted: false });
  });
  it('takes the time that a note gives, the last if there are two', () => {
    const noted = scene('INT. STORE - DAY', [action('They fight.')], { notes: [timeNote(12), timeNote(55)] });
    expect(estimateScreenTime(noted, eighths(1))).toEqual({
      seconds: 55,
      low: 55,
      high: 55,
      pageRule: 7.5,
      noted: true,
    });
    const none = scene('INT. STORE - DAY', [action('They fight.')], { notes: [timeNote(0)] });
    expect(estimateScreenTime(none, eighths(1)).seconds).toBe(0);
  });
  it('has ends at least 30 % from its middle', () => {
    const { seconds: middle, low, high } = time(speech('NORA', talk(100)));
    expect(low).toBeLessThanOrEqual(middle * 0.7);
    expect(high).toBeGreaterThanOrEqual(middle * 1.3);
  });
});

describe('a script', () => {
  it('sums its scenes and says when a note spoke', () => {
    const one = time(speech('NORA', talk(25)));
    const two = { seconds: 40, low: 40, high: 40, pageRule: 15, noted: true };
    expect(totalScreenTime([one, two])).toEqual({ seconds: 50, low: 47, high: 53, pageRule: 22.5, noted: true });
    expect(totalScreenTime([])).toEqual({ seconds: 0, low: 0, high: 0, pageRule: 0, noted: false });
  });
});

describe('any text', () => {
  const block = fc.oneof(
    fc.string({ unit: 'grapheme' }).map((text) => action(text)),
    fc.string({ unit: 'grapheme' }).map((text) => speech('NORA', text)),
    fc.string({ unit: 'grapheme' }).map((text) => speech('NORA (V.O.)', text)),
    fc.string({ unit: 'grapheme' }).map((text) => item(text)),
    fc
      .constantFrom('She slowly turns.', 'They fight.', 'Beat.', 'He nods while she talks.')
      .map((text) => action(text)),
  );
  it('gives finite seconds between its ends', () => {
    fc.assert(
      fc.property(fc.array(block), (blocks) => {
        const { seconds: middle, low, high } = time(...blocks);
        expect(Number.isFinite(middle)).toBe(true);
        expect(low).toBeLessThanOrEqual(middle);
        expect(high).toBeGreaterThanOrEqual(middle);
        expect(low).toBeGreaterThan(0);
      }),
    );
  });
  it('never gets shorter by one more action', () => {
    const more = fc.constantFrom('Ivo runs.', 'She waits for a long time.', 'They dance.', 'Ivo eats as she speaks.');
    fc.assert(
      fc.property(fc.array(block), more, fc.nat(), (blocks, text, at) => {
        const longer = blocks.toSpliced(at % (blocks.length + 1), 0, action(text));
        expect(seconds(...longer)).toBeGreaterThanOrEqual(seconds(...blocks));
      }),
    );
  });
});
