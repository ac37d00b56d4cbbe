import { describe, expect, it } from 'vitest';
import { planOf } from './fixture.js';

describe('allergies near things', () => {
  const scenes = [
    { cast: ['ADA', 'BEN'], things: { eggs: { count: 2 }, 'egg cup': {}, gloves: {} } },
    { cast: ['BEN'], things: { eggs: { count: 2 } } },
  ];
  const book = [
    'people:',
    '  ada: { allergies: [egg] }',
    'helpers:',
    '  cy: { name: Cy, does: [props], allergies: [latex] }',
    'elements:',
    '  gloves: { note: thin latex }',
  ].join('\n');

  it('are raised in the scenes where the person and the thing meet, and for helpers everywhere', () => {
    // An egg cup is no egg; Ada is not in scene 2; Cy carries the gloves whatever the scene.
    const { allergies } = planOf({ scenes, categories: { eggs: 'food' } }, `${book}\n`);
    expect(allergies.map(({ element, allergy, people, scenes: where }) => [element, allergy, people, where])).toEqual(
      [
        ['gloves', 'latex', ['Cy'], ['s1']],
        ['eggs', 'egg', ['ADA'], ['s1']],
      ].sort(),
    );
  });
});
