import { describe, expect, it } from 'vitest';
import { makePlan } from '../../src/plan/make-plan.js';
import { tellNamesakesApart } from '../../src/plan/namesakes.js';
import { bookOf, sketch } from './fixture.js';

describe('two things of one name', () => {
  it('have the name of whoever has each behind their own', () => {
    const blouses = [
      { id: 'blouse-ada', name: 'white blouse', by: ['ADA'] },
      { id: 'blouse-bo', name: 'white blouse', by: ['BO'] },
      { id: 'blouse', name: 'white blouse', by: [] },
      { id: 'cap', name: 'cap', by: ['BO'] },
    ];
    expect([...tellNamesakesApart(blouses, []).values()]).toEqual([
      'white blouse (ADA)',
      'white blouse (BO)',
      'white blouse',
      'cap',
    ]);
    expect(tellNamesakesApart(blouses.slice(3), ['cap']).get('cap')).toBe('cap (BO)');
  });

  it('have labels of their own', () => {
    const scenes = [{ things: { 'red cap': { by: 'ADA' } } }];
    const drawn = sketch({ scenes });
    const owned = { ...drawn, elements: drawn.elements.map((one) => ({ ...one, by: ['ADA'] })) };
    const labels = (kit: string) =>
      makePlan(owned, bookOf(kit), '2027-01-10').plan.needs.find((one) => one.id === 'red-cap')?.copies;
    expect(labels('')).toEqual([['RED-CAP']]);
    expect(labels('kit:\n  spare: { name: red cap }\n')).toEqual([['RED-CAP-ADA']]);
  });
});
