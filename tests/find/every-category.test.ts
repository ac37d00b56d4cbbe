import { describe, expect, it } from 'vitest';
import { listOf } from './finds-of.js';

// What each category holds: common practice of a breakdown; the definitions stand in src/trade/categories.ts.
describe('plants', () => {
  it('are greenery that dresses a place', () => {
    expect(listOf('A potted fern stands by the door.')).toEqual(['potted fern (plants)']);
    expect(listOf('Tulips stand on the sill.')).toContain('tulips (plants)');
  });

  it('are props in hand, cut or in a pot, and then everywhere', () => {
    expect(listOf('Nora carries a bouquet of roses.')).toEqual(['bouquet (props)', 'roses (props)']);
    expect(listOf('A fern stands by the door. Felix lifts the fern.')).toEqual(['fern (props)']);
  });
});

describe('music', () => {
  it('is heard or played in the scene, and other sounds stay sounds', () => {
    expect(listOf('A waltz plays on the radio.')).toEqual(['waltz (music)', 'radio (props)']);
    expect(listOf('The band strikes up.')).toContain('band plays (music)');
    expect(listOf('Nora sings.')).toEqual(['sings (music)']);
    expect(listOf('A dog barks.')).toContain('dog barks (sound)');
  });
});

describe('graphics', () => {
  it('are lettering whose words the text gives, and what a screen shows', () => {
    expect(listOf('A sign reads CLOSED.')).toEqual(['sign (graphics)']);
    expect(listOf('A banner hangs across the street: WELCOME HOME.')).toEqual(['banner (graphics)']);
    expect(listOf('The screen reads ACCESS DENIED.')).toContain('words on the screen (graphics)');
    expect(listOf('A map fills the screen.')).toContain('map (graphics)');
    expect(listOf('SUPER: Three days later')).toEqual(['title on the picture (graphics)']);
  });

  it('are props where somebody handles them', () => {
    expect(listOf('Felix turns a sign over: CLOSED.')).toEqual(['sign (props)']);
    expect(listOf('Nora unfolds a map.')).toEqual(['map (props)']);
  });
});

describe('gear', () => {
  it('is the equipment that a shot of its own needs', () => {
    expect(listOf('CRANE SHOT of the quarry.')).toEqual(['crane shot (gear)']);
    expect(listOf('In slow motion, a glass falls.')).toContain('slow motion (gear)');
  });
});
