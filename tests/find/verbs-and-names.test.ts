import { describe, expect, it } from 'vitest';
import { readSentences } from '../../src/find/read-sentences.js';
import { lexicon, listOf, scriptOf } from './finds-of.js';

/** `word/tag` of the words of a text that can be a verb or a name and something else. */
function tagsOf(text: string, words: string): string[] {
  const wanted = words.split(' ');
  return readSentences(scriptOf(text), lexicon)
    .filter(({ kind }) => kind === 'action')
    .flatMap(({ tokens }) =>
      tokens.filter(({ text }) => wanted.includes(text)).map(({ text, tag }) => `${text}/${tag}`),
    );
}

describe('a word that can be verb or noun', () => {
  it('is a verb after a pronoun that is only ever a subject, even when a clause has its verb already', () => {
    expect(tagsOf('Before she leaves they board the train.', 'board')).toEqual(['board/verb']);
    expect(tagsOf('Taking the mail bags they leave.', 'bags')).toEqual(['bags/noun']);
  });

  it('is a verb after "one of the" and "the other"', () => {
    expect(tagsOf('One of the guards stands watch while the other tries the lock.', 'stands tries')).toEqual([
      'stands/verb',
      'tries/verb',
    ]);
  });

  it('is a verb in a clause of "who", and the verb that the main clause still owes', () => {
    expect(tagsOf('The woman who saw him knocks on the door.', 'saw knocks')).toEqual(['saw/verb', 'knocks/verb']);
  });

  it('opens a sentence without a subject as a verb, before a bare object, an adverb, or a second verb', () => {
    expect(tagsOf('Leaves horse standing by the house.', 'Leaves')).toEqual(['Leaves/verb']);
    expect(tagsOf('Creeps forward, gun in hand.', 'Creeps')).toEqual(['Creeps/verb']);
    expect(tagsOf('Swings into the saddle and rides off.', 'Swings')).toEqual(['Swings/verb']);
    expect(tagsOf('Draws gun, stands at the door.', 'Draws stands')).toEqual(['Draws/verb', 'stands/verb']);
  });

  it('opens a sentence as a plural noun before its verb', () => {
    expect(tagsOf('Leaves fall. Alarms shriek. Cups hop on the dresser.', 'Leaves Alarms Cups')).toEqual([
      'Leaves/noun',
      'Alarms/noun',
      'Cups/noun',
    ]);
    expect(tagsOf('Boots on steel.', 'Boots')).toEqual(['Boots/noun']);
  });

  it('belongs to the phrase before a form that a noun follows', () => {
    expect(tagsOf('They reach the regular watering stop.', 'regular')).toEqual(['regular/adjective']);
  });
});

describe('a given name that is a word too', () => {
  it('is a name where it opens a sentence without an article', () => {
    for (const name of ['Rose', 'Tom', 'Penny', 'Mark', 'Jack', 'Bob', 'Will', 'May']) {
      expect(tagsOf(`${name} opens the door.`, name)).toEqual([`${name}/name`]);
    }
    expect(tagsOf('Will and May wait.', 'Will May')).toEqual(['Will/name', 'May/name']);
    expect(listOf('Rose picks up the phone.')).toEqual(['phone (props)']);
  });

  it('is the thing with an article, and what grows is no name', () => {
    expect(tagsOf('A rose falls. Ivy climbs the wall.', 'rose Ivy')).toEqual(['rose/noun', 'Ivy/noun']);
  });
});

describe('the words of a phrase', () => {
  it('are two things where one is given to somebody', () => {
    expect(listOf('Nora gives the driver money. Felix hands the nurse flowers.')).toEqual([
      'money (props)',
      'flowers (props)',
    ]);
    expect(listOf('Nora drinks the coffee from the nurse station.')).not.toContain('nurse (props)');
  });

  it('end with the thing, though what follows can be a noun too: "blows the safe open"', () => {
    expect(listOf('Felix blows the safe open.')).toContain('safe (props)');
    expect(tagsOf('The safe lies open.', 'safe lies')).toEqual(['safe/noun', 'lies/verb']);
  });

  it('tell where, after a verb of showing and "to"', () => {
    expect(tagsOf('She gives him the pills, pointing to watch.', 'watch')).toEqual(['watch/noun']);
  });
});
