import { describe, expect, it } from 'vitest';
import { findsOf, foundIn, listOf } from './finds-of.js';

const names = (text: string) => [...new Set(foundIn(text, ['ANNA', 'BILL']).map(({ name }) => name))];

describe('one thing under several words', () => {
  it('is the lamp that stands there and is blown out', () => {
    expect(names('A brass lamp swings from the beam. Anna blows out the lamp.')).toEqual(['brass lamp']);
  });

  it('is "the dog" of a later scene, unless the script has another', () => {
    const later = (dog: string) => `INT. BARN - DAY\n\nA terrier sits in the straw.\n\nINT. BARN - NIGHT\n\n${dog}`;
    expect(names(later('Bill strokes the dog.'))).toEqual(['terrier']);
    expect(names(later('A dog runs past Bill. The dog stops.'))).toContain('dog');
  });

  it('is the dog that has a name, and the chicken that is roast', () => {
    expect(names('Anna feeds REX, a shaggy brown dog. Rex barks.').filter((name) => name.includes('dog'))).toEqual([
      'Rex the dog',
    ]);
    expect(names('Roast chicken on the table. Bill carves the chicken.')).toContain('roast chicken');
    expect(names('Roast chicken on the table. Bill carves the chicken.')).not.toContain('chicken');
  });

  it('is never a ring on a finger and one to box in', () => {
    const both = listOf('A boxing ring. Anna climbs into the ring. Bill wears a ring. His ring shines.', [
      'ANNA',
      'BILL',
    ]);
    expect(both).toContain('boxing ring (dressing)');
    expect(both).toContain('ring (costumes)');
    expect(both).not.toContain('boxing ring (costumes)');
  });

  it('is the photo and the photograph, the saddle-bags and the bags', () => {
    expect(names('Anna takes a photograph from her purse. Bill kisses the photo.')).toEqual(['photograph', 'purse']);
    expect(names('Bill fills the saddle-bags. Anna lifts the bags.')).toEqual(['saddle-bags']);
  });

  it('is one of each where both stand', () => {
    const counts = foundIn('Bill uses both pick and shovel. Anna lifts both buckets.', ['ANNA', 'BILL']);
    expect(counts.map(({ name, count }) => [name, count])).toEqual([
      ['pick', null],
      ['shovel', null],
      ['buckets', 2],
    ]);
  });

  it('is a wardrobe that somebody hauls, where it also only lies there', () => {
    expect(listOf('A wardrobe lies across the road. Anna and Bill haul the wardrobe away.', ['ANNA', 'BILL'])).toEqual([
      'wardrobe (props)',
    ]);
  });
});

describe('people whom words only describe', () => {
  const people = (text: string) => findsOf(text, ['LEN']).people.map(({ name }) => name);

  it('are no further people', () => {
    expect(people('LEN PEARSON, forty-five, miner, coal dust on his face, sits.')).toEqual([]);
    expect(people('The RENT MAN, a thin fellow with a ledger, waits.')).toEqual(['rent man']);
    expect(people('The rent man nods. A boy with a ledger waits.')).toEqual(['rent man', 'boy']);
  });
});

describe('what a picture shows besides', () => {
  it('is not there, but what stands by the picture is', () => {
    const words = names('On the desk, a photograph of an old man in overalls beside a racing car.');
    expect(words).toEqual(['desk', 'photograph']);
    expect(names('Anna puts the photograph of her father in a suitcase.')).toEqual(['photograph', 'suitcase']);
  });
});

describe('a dog told by its kind, and a glove of a pair', () => {
  it('are one thing', () => {
    expect(names('Her dog, a fat old spaniel, sleeps. Bill strokes the dog.')).toEqual(['spaniel']);
    expect(names('Bill wears driving gloves. He drops the glove.')).toEqual(['driving glove']);
  });
});

it('takes words that JavaScript knows too for words', () => {
  expect(() => names('The constructor lifts the prototype. Bill opens the valueOf. The toString falls.')).not.toThrow();
});
