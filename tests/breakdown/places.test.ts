import { describe, expect, it } from 'vitest';
import { breakDown } from '../support/break-down.js';

function script(...headings: string[]): string {
  return headings.map((heading) => `## ${heading}\n\nA clock ticks.`).join('\n\n');
}

describe('places', () => {
  it('are one by their first part: case, stops, articles and apostrophes make no second', () => {
    const { breakdown } = breakDown(
      script(
        "INT. THE SMITH'S HOUSE - KITCHEN - DAY",
        'EXT. Smith’s house - NIGHT',
        'INT. SMITHS HOUSE - CELLAR - DAY',
        'INT. SMITH COTTAGE - DAY',
      ),
    );
    expect(
      breakdown.places.map(({ id, settings, areas, scenes }) => ({ id, settings, areas, count: scenes.length })),
    ).toEqual([
      { id: 'the-smith-s-house', settings: ['INT', 'EXT'], areas: ['KITCHEN', 'CELLAR'], count: 3 },
      { id: 'smith-cottage', settings: ['INT'], areas: [], count: 1 },
    ]);
  });

  it('are dressed with what is sure only: what is asked about stands in no list of dressing', () => {
    const { breakdown } = breakDown(script('INT. BAR - DAY', 'INT. BAR - NIGHT'), {
      elements: [
        { name: 'clock', category: 'dressing', words: 'clock' },
        { name: 'mirror', category: 'dressing', words: 'ticks', confidence: 0.5 },
      ],
    });
    expect(breakdown.places[0]?.dressing.map(({ name, scenes }) => [name, scenes.length])).toEqual([['clock', 2]]);
  });

  it('that differ by one letter are asked about, once', () => {
    const { scenes } = breakDown(
      script('INT. HARBOUR OFFICE - DAY', 'INT. HARBOR OFFICE - DAY', 'INT. HARBOR OFFICE - NIGHT'),
    );
    expect(
      scenes.map(({ questions }) => questions.filter(({ id }) => id.startsWith('place-')).map(({ id }) => id)),
    ).toEqual([[], ['place-harbor-office'], []]);
  });

  it('that differ by a number are two', () => {
    const { scenes } = breakDown(script('INT. PLATFORM 1 - DAY', 'INT. PLATFORM 2 - DAY'));
    expect(scenes[1]?.questions.filter(({ id }) => id.startsWith('place-'))).toEqual([]);
  });
});
