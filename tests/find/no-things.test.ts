import { describe, expect, it } from 'vitest';
import { listOf } from './finds-of.js';

const nothing: readonly (readonly [string, string])[] = [
  ['a light verb with a bare noun that is a verb too', 'One of them stands watch. Felix takes aim. Nora opens fire.'],
  ['a number behind a bare noun', 'Page 2.'],
  ['how much of a quality', 'Nora is a trifle late.'],
  ['a sake', 'They stay for the sake of peace.'],
  ['a mere quality', 'The sky has the colour of mustard.'],
  ['the size of a shot and the edge of the picture', 'CLOSE-UP. Felix rides into picture, then toward camera.'],
  ['a cut', 'SMASH CUT.'],
  ['what is said in a quotation of many words', 'Felix mouths: "We must have a horse and a gun."'],
];

describe('nouns that name nothing to get', () => {
  it.each(nothing)('%s: %s', (_, text) => expect(listOf(text)).toEqual([]));

  it('are things again in other company', () => {
    expect(listOf('Nora takes a watch.')).toEqual(['watch (costumes)']);
    expect(listOf('Nora takes pencil and writes.')).toContain('pencil (props)');
    expect(listOf('A trifle stands on the table.')).toContain('trifle (food)');
    expect(listOf('Felix hangs a picture on the wall.')).toHaveLength(1);
    expect(listOf('The "storm lantern" hangs on a nail.')).toContain('storm lantern (dressing)');
    expect(listOf('Felix picks up a camera.')).toEqual(['camera (props)']);
  });
});

describe('a verb that is done with a tool', () => {
  it('gives the tool under its own name', () => {
    expect(listOf('Felix tacks it up.')).toContain('hammer and tacks (props)');
    expect(listOf('Nora sweeps the floor.')).toContain('broom (props)');
    expect(listOf('Felix mops the floor.')).toContain('mop (props)');
  });

  it('gives what somebody is tied or held by', () => {
    expect(listOf('They bind and gag him.')).toContain('rope (props)');
    expect(listOf('Nora lies bound and gagged.')).toEqual(['rope (props)', 'gag (props)']);
    expect(listOf('Felix sits there, handcuffed.')).toContain('handcuffs (props)');
  });

  it('gives none where nothing is held: "sweeps the letters off the desk"', () => {
    expect(listOf('Nora sweeps the letters off the desk.')).not.toContain('broom (props)');
  });
});

describe('a thing that is not there, or is no thing here', () => {
  const none: readonly (readonly [string, string])[] = [
    ['worn by neither', 'Neither wears a life jacket.'],
    ['a gap', 'A coin rolls down a crack.'],
    ['a hairdo', 'Her hair is in a bun.'],
    ['what is only let sound', 'She lets it ring out.'],
  ];
  it.each(none)('%s: %s', (_, text) => {
    const names = listOf(text).filter((one) => !one.startsWith('coin'));
    expect(names).toEqual([]);
  });

  it('is there when nobody touches it, and when it is taken off', () => {
    expect(listOf('Nobody touches the soup.')).toEqual(['soup (food)']);
    expect(listOf('Nora kicks off her heels.')).toEqual(['heels (costumes)']);
  });
});

describe('what stands beside a noun', () => {
  it('tells its state or colour, and where it came from', () => {
    expect(listOf('Nora, apron white to the hem, waits.')).toContain('apron (costumes)');
    expect(listOf('Felix throws away the packet, empty.')).toEqual(['packet (props)']);
    expect(listOf('Nora hums out of tune.')).toEqual([]);
    expect(listOf('Nora (ninety) smokes. Felix, late twenties, waits.')).toEqual([]);
  });

  it('makes a verb of what follows a verb and "and"', () => {
    expect(listOf('Felix kneels and scoops yolk into a dustpan.')).toEqual(['yolk (food)', 'dustpan (props)']);
    expect(listOf('She kicks dirt, stamps, empties the bucket.')).toContain('bucket (props)');
  });

  it('is heard only where it is far off', () => {
    expect(listOf('Somewhere a horse neighs.')).toEqual(['horse neighs (sound)']);
    expect(listOf('From the yard, a dog barks.')).toEqual(['dog barks (sound)']);
    expect(listOf('A dog barks at Nora.')).toContain('dog (animals)');
  });
});
