import { describe, expect, it } from 'vitest';
import { readSentences } from '../../src/find/read-sentences.js';
import { lexicon, scriptOf } from './finds-of.js';

const sentencesOf = (text: string) => readSentences(scriptOf(text), lexicon).filter((one) => one.kind !== 'heading');

/** `word/class` of every word of a text that is a noun, verb, participle or adjective. */
function classesOf(text: string): string {
  return sentencesOf(text)
    .flatMap((one) => one.tokens)
    .filter((token) => /^(?:noun|verb|participle|adjective|name)$/.test(token.tag))
    .map((token) => `${token.lower}/${token.tag}`)
    .join(' ');
}

describe('word classes in the present tense of a script', () => {
  it.each([
    ['Felix pockets the change.', 'felix/name pockets/verb change/noun'],
    ['Nora irons, folds and stacks the shirts.', 'nora/name irons/verb folds/verb stacks/verb shirts/noun'],
    ['A stagehand pumps the fog machine.', 'stagehand/noun pumps/verb fog/noun machine/noun'],
    ['An orderly holds it.', 'orderly/noun holds/verb'],
    ['A chipped mug stands open.', 'chipped/adjective mug/noun stands/verb open/adjective'],
    ['Rain hammering on the roof.', 'rain/noun hammering/participle roof/noun'],
    ['Glasses smash.', 'glasses/noun smash/verb'],
    ['A fox stole around her shoulders.', 'fox/noun stole/noun shoulders/noun'],
    ['The usher behind her carries a tray.', 'usher/noun carries/verb tray/noun'],
    ['A boy in mittens butters toast.', 'boy/noun mittens/noun butters/verb toast/noun'],
    ['A cook smokes.', 'cook/noun smokes/verb'],
    ['A guard unslings his bag.', 'guard/noun unslings/verb bag/noun'],
    ['An usher, young, waits.', 'usher/noun young/adjective waits/verb'],
    ['A home nurse waits.', 'home/noun nurse/noun waits/verb'],
    ['Behind the counter Nora eats crisps.', 'counter/noun nora/name eats/verb crisps/noun'],
    ['The usher with her keys waits.', 'usher/noun keys/noun waits/verb'],
    ['She feeds dry logs into the stove.', 'feeds/verb dry/adjective logs/noun stove/noun'],
    ['A burning tin can rolls past.', 'burning/adjective tin/noun can/noun rolls/verb'],
  ])('%s', (text, classes) => {
    expect(classesOf(text)).toBe(classes);
  });

  it('takes a possessive apart', () => {
    const [sentence] = sentencesOf("Nora's lantern.");
    expect(sentence?.tokens.map((token) => token.text)).toEqual(['Nora', "'s", 'lantern', '.']);
    expect(sentence?.tokens[0]?.person).toBe('NORA');
  });
});

describe('sentences', () => {
  it('end at stops, not at abbreviations or before small letters', () => {
    const text = 'Mrs. Cole waits. She counts ... and stops! "Well?" Nora asks.';
    expect(sentencesOf(text).map((one) => one.text)).toEqual([
      'Mrs. Cole waits.',
      'She counts ... and stops!',
      '"Well?"',
      'Nora asks.',
    ]);
  });

  it('know their kind, speaker and paragraph', () => {
    const kinds = sentencesOf('Nora waits.\n\nFELIX\n(quietly)\nCome in. Sit.').map((one) => [
      one.kind,
      one.speaker,
      one.paragraph,
    ]);
    expect(kinds).toEqual([
      ['action', null, 1],
      ['parenthetical', 'FELIX', 2],
      ['speech', 'FELIX', 3],
      ['speech', 'FELIX', 3],
    ]);
  });
});
