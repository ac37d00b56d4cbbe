import { describe, expect, it } from 'vitest';
import { findsOf, foundIn, listOf } from './finds-of.js';

describe('names of things', () => {
  it('keep colour, material, pattern and kind, and no size, age, beauty or state', () => {
    expect(listOf('Nora, in a yellow oilskin, holds gold scissors and a red ribbon.')).toEqual([
      'yellow oilskin (costumes)',
      'gold scissors (props)',
      'red ribbon (props)',
    ]);
    expect(listOf('Felix, in striped pyjamas, waves a plastic sword.')).toEqual([
      'striped pyjamas (costumes)',
      'plastic sword (props)',
    ]);
    expect(listOf('Nora lifts a rusty old lantern.')).toEqual(['lantern (props)']);
  });

  it('are the fuller one for a bare later mention, and two where colours differ', () => {
    expect(listOf('Nora takes a yellow oilskin. She puts on the oilskin.')).toEqual(['yellow oilskin (costumes)']);
    expect(listOf('Nora takes a red scarf. Felix takes a blue scarf.')).toHaveLength(2);
    expect(listOf('Nora opens a logbook. She closes the book.')).toEqual(['logbook (props)']);
  });

  it('are those of animals that the action calls by name', () => {
    expect(listOf('The dog, BISCUIT, sleeps. Felix pats Biscuit.')).toEqual(['Biscuit the dog (animals)']);
  });
});

describe('states that begin on camera', () => {
  const stateIn = (text: string) =>
    foundIn(text)
      .filter((one) => one.stateBegins)
      .map(({ name, state, words }) => [name, state, words]);

  it('come from verbs, a pronoun meaning the thing last in hand', () => {
    expect(stateIn('Nora tears the letter in two.')).toEqual([['letter', 'torn', 'the letter']]);
    expect(stateIn('Nora takes a letter from her bag. She tears it in two.')).toEqual([['letter', 'torn', 'tears it']]);
    expect(stateIn('Felix opens the envelope. A rope snaps.')).toEqual([
      ['envelope', 'opened', 'the envelope'],
      ['rope', 'broken', 'A rope'],
    ]);
  });

  it('come from what gets on a garment or a thing', () => {
    expect(stateIn("Felix wears a white shirt. Blood runs onto Felix's white shirt.")).toEqual([
      ['white shirt', 'bloody', "Felix's white shirt"],
    ]);
    expect(stateIn('Felix pours brandy into three cups.').filter(([name]) => name === 'cups')).toEqual([]);
    expect(stateIn('Nora spills wine on her dress.')).toEqual([['dress', 'stained', 'her dress']]);
    expect(stateIn('Mud splashes over his trousers.')).toEqual([['trousers', 'muddy', 'his trousers']]);
    expect(stateIn('Blood drips on the floor. Nora runs in her coat. Nora rubs soap on her coat.')).toEqual([]);
  });

  it('are eaten where somebody eats food, and not where it is put down', () => {
    expect(stateIn('Two KIDS shove cake into their mouths. Nora takes a bun. She eats it.')).toEqual([
      ['cake', 'eaten', 'cake'],
      ['bun', 'eaten', 'eats it'],
    ]);
    expect(stateIn('Felix bites into an apple.')).toEqual([['apple', 'eaten', 'an apple']]);
    expect(stateIn("Felix puts an iced bun on the desk. Nora licks the spoon. Nora doesn't eat the bread.")).toEqual(
      [],
    );
  });

  it('come from a second verb, and from where it shatters', () => {
    expect(stateIn('The wing mirror falls off and shatters on the kerb.')).toEqual([
      ['wing mirror', 'shattered', 'The wing mirror'],
    ]);
    expect(stateIn('The cake slides off and splatters across the floor.')).toEqual([['cake', 'smashed', 'The cake']]);
    expect(stateIn('Nora snaps the lamp on. Soup splatters the wall.')).toEqual([]);
  });

  it('do not where the thing stays whole', () => {
    expect(stateIn('Nora snaps the suitcase shut. She opens the door. She tears off her coat.')).toEqual([]);
  });

  it('leave the wearer of wet things in them', () => {
    expect(foundIn('Felix, soaked, in a suit, drips.').find(({ name }) => name === 'suit')?.state).toBe('soaked');
    expect(foundIn('FELIX (45), soaked, in a suit, drips.').find(({ name }) => name === 'suit')?.state).toBe('soaked');
  });
});

describe('words for people', () => {
  it('are known in small letters and without the apostrophe', () => {
    expect(foundIn('Felixs knee is bleeding.').map(({ name, by }) => [name, by])).toEqual([['bleeding knee', 'FELIX']]);
    expect(findsOf('Her son felix, 7, sits.').hazards.map(({ hazard }) => hazard)).toContain('H15');
  });

  it('name nothing to get, nor do drawings and cuts', () => {
    expect(listOf('Felix draws a dinosaur. Mum, it is from dad.')).toEqual([]);
    expect(listOf('CUT TO')).toEqual([]);
    expect(listOf('The wall is bare where the bell was.')).toEqual([]);
  });

  it('keep a nameless holder from lending the thing to somebody named', () => {
    const text = 'Felix waits. A stranger stands on the landing, a bundle in his arms.';
    expect(foundIn(text).find(({ name }) => name === 'bundle')?.by).toBe('stranger');
  });
});
