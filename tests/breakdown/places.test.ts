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

  it('are asked about where one has only a word more in front, and are one after a yes', () => {
    const headings = ['INT. HOLLOWAY KITCHEN - DAY', 'EXT. YARD - DAY', 'INT. KITCHEN - DAY'];
    const { scenes } = breakDown(script(...headings));
    const asked = scenes.flatMap(({ questions }) => questions.filter(({ id }) => id.startsWith('place-')));
    expect(asked.map(({ text }) => text)).toEqual(['Are "HOLLOWAY KITCHEN" and "KITCHEN" one place?']);
    expect(asked[0]?.settle).toContain('"> answer: place-kitchen yes"');
    const one = breakDown(`${script(...headings)}\n\n> answer: place-kitchen yes\n`);
    expect(one.breakdown.places.map(({ name }) => name)).toEqual(['HOLLOWAY KITCHEN', 'YARD']);
    const two = breakDown(`${script(...headings)}\n\n> answer: place-kitchen no\n`);
    expect(two.breakdown.places).toHaveLength(3);
    expect(two.codes).toEqual([]);
  });

  it('are asked about where one has an area behind a comma', () => {
    const headings = ['INT. LIGHTHOUSE - CELLAR - DAY', 'EXT. LIGHTHOUSE, ROCKS - DAY'];
    const { scenes } = breakDown(script(...headings));
    const asked = scenes.flatMap(({ questions }) => questions.filter(({ id }) => id.startsWith('place-')));
    expect(asked.map(({ text }) => text)).toEqual(['Are "LIGHTHOUSE" and "LIGHTHOUSE, ROCKS" one place?']);
    const one = breakDown(`${script(...headings)}\n\n> answer: place-lighthouse-rocks yes\n`);
    expect(one.breakdown.places.map(({ name }) => name)).toEqual(['LIGHTHOUSE']);
  });

  it('are not asked about where several have such a word, or a number', () => {
    for (const headings of [
      ['INT. ROOM - DAY', 'INT. LIVING ROOM - DAY', 'INT. DINING ROOM - DAY'],
      ['INT. PLATFORM - DAY', 'INT. 2 PLATFORM - DAY'],
    ]) {
      const { scenes } = breakDown(script(...headings));
      expect(scenes.flatMap(({ questions }) => questions.filter(({ id }) => id.startsWith('place-')))).toEqual([]);
    }
  });

  it('that differ by a number are two', () => {
    const { scenes } = breakDown(script('INT. PLATFORM 1 - DAY', 'INT. PLATFORM 2 - DAY'));
    expect(scenes[1]?.questions.filter(({ id }) => id.startsWith('place-'))).toEqual([]);
  });
});
