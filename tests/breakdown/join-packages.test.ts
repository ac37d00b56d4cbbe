import { describe, expect, it } from 'vitest';
import { joinPackages } from '../../src/breakdown/join-packages.js';
import { findsOf } from '../find/finds-of.js';

const listed = (text: string) => [
  ...new Set(
    joinPackages(findsOf(text, ['ANNA', 'BILL'])).elements.flatMap(({ known, name, category }) =>
      known === 'found' ? [`${name} (${category})`] : [],
    ),
  ),
];

describe('a package and what is in it', () => {
  it('are one thing to get, under either word', () => {
    expect(listed('A tube of glue stands by the lamp. Anna takes the glue. She squeezes the tube.')).toEqual([
      'tube of glue (props)',
      'lamp (dressing)',
    ]);
    expect(listed('Bill opens a tin of sardines. Anna eats the sardines.')).toEqual(['tin of sardines (food)']);
  });

  it('are counted in packages', () => {
    const [rum] = joinPackages(findsOf('Anna carries three bottles of rum.', ['ANNA'])).elements;
    expect(rum).toMatchObject({ name: 'bottles of rum', category: 'food', count: 3 });
  });

  it('stay two where each is got apart', () => {
    expect(listed('Anna carries a tray of mugs. Bill sets down a box of tools.')).toEqual([
      'tray (props)',
      'mugs (props)',
      'box (props)',
      'tools (props)',
    ]);
  });

  it('take no other bottle for theirs', () => {
    expect(listed('Anna opens a bottle of rum. Bill brings a bottle. Anna drinks the rum.')).toEqual([
      'bottle of rum (food)',
      'bottle (props)',
    ]);
  });
});
