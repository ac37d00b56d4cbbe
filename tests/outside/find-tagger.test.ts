import { describe, expect, it } from 'vitest';
import { readSentences } from '../../src/find/read-sentences.js';
import { lexicon, scriptOf } from '../find/finds-of.js';

// The word classes of compromise, a general-purpose tagger for English, on plain sentences of our own.
interface Term {
  readonly text: string;
  readonly tags: readonly string[];
}
const library = (await import('compromise' as string)) as {
  default: (text: string) => { json(): { readonly terms: readonly Term[] }[] };
};

const sentences = [
  'A woman carries a heavy basket through the market.',
  'The old clock stands on a wooden shelf.',
  'Two children run across the wet grass.',
  'He opens the drawer and takes a silver key.',
  'The kettle whistles in the empty kitchen.',
  'She puts a clean glass on the table.',
  'A small dog sleeps under the bench.',
  'The driver stops the bus and opens the doors.',
  'They carry three wooden boxes into the house.',
  'An old man reads a newspaper near the window.',
  'The nurse washes her hands and dries them with a towel.',
  'A letter lies on the mat behind the door.',
  'He writes a short note with a blunt pencil.',
  'The children paint the fence with bright colours.',
  'She drinks cold water from a paper cup.',
  'A black car waits outside the hotel.',
  'The waiter brings a bottle of red wine.',
  'Someone knocks and the singing stops.',
  'The farmer loads the hay onto a cart.',
  'A bright lamp hangs above the counter.',
];

type Class = 'noun' | 'verb' | 'adjective' | 'other';

function theirs({ tags }: Term): Class {
  if (tags.includes('Adjective')) return 'adjective';
  if (tags.includes('Noun') && !tags.includes('Pronoun')) return 'noun';
  return tags.includes('Verb') ? 'verb' : 'other';
}

const ours: Readonly<Record<string, Class>> = {
  noun: 'noun',
  name: 'noun',
  verb: 'verb',
  participle: 'verb',
  adjective: 'adjective',
};

describe('word classes against a general-purpose tagger', () => {
  it('agree on plain sentences', () => {
    const disagreements: string[] = [];
    let size = 0;
    for (const text of sentences) {
      const own = readSentences(scriptOf(text, []), lexicon).filter((one) => one.kind === 'action');
      const tokens = own.flatMap((one) => one.tokens).filter((token) => token.tag !== 'punctuation');
      const terms = library
        .default(text)
        .json()
        .flatMap((one) => one.terms);
      expect(
        terms.map((term) => term.text),
        text,
      ).toEqual(tokens.map((token) => token.text));
      tokens.forEach((token, at) => {
        const [a, b] = [ours[token.tag] ?? 'other', theirs(terms[at] as Term)];
        size++;
        if (a !== b) disagreements.push(`${token.text}: ${a}, not ${b}, in "${text}"`);
      });
    }
    console.log(`${size - disagreements.length} of ${size} words agree:\n${disagreements.join('\n')}`);
    expect(disagreements.length / size).toBeLessThan(0.06);
  });
});
