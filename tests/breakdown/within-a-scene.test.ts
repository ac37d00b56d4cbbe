import { describe, expect, it } from 'vitest';
import { breakDown } from '../support/break-down.js';

const front = '---\ncast: { NORA: { was: [ANNA], aliases: [Anna, MISS BELL] } }\n---\n\n';

function statesOver(body: string, name: string): string[] {
  const { breakdown } = breakDown(front + body);
  const entry = breakdown.elements.find((one) => one.name === name);
  return (entry?.states ?? []).map(({ state, scene, onCamera }) => `${scene}: ${state}${onCamera ? ' on camera' : ''}`);
}

describe('states passed through within one scene', () => {
  it('are all in the index, so that a piece is got for each', () => {
    const body = [
      '## 1. INT. BAR - DAY',
      '> letter: sealed',
      'Nora opens the [letter].',
      '> letter: open',
      'She lights it.',
      '> letter: burnt',
      '## 2. INT. BAR - CONTINUOUS',
      'Nora holds the [letter].',
    ].join('\n\n');
    expect(statesOver(body, 'letter')).toEqual([
      'int-bar-day: sealed',
      'int-bar-day: open on camera',
      'int-bar-day: burnt on camera',
    ]);
  });

  it('count when a thing ends as it began', () => {
    const body = '## 1. INT. BAR - DAY\n\n> lamp: lit\n\nNora lifts the [lamp].\n\n> lamp: out\n\nNora.\n\n> lamp: lit';
    expect(statesOver(body, 'lamp')).toEqual([
      'int-bar-day: lit',
      'int-bar-day: out on camera',
      'int-bar-day: lit on camera',
    ]);
  });

  it('stand in the list of a costume change', () => {
    const body = [
      '## 1. INT. BAR - DAY',
      '> Nora: wears coat',
      '> coat: clean',
      'Nora falls.',
      '> coat: muddy',
      'Nora falls again.',
      '> coat: torn',
    ].join('\n\n');
    const { breakdown } = breakDown(front + body);
    const coat = breakdown.cast[0]?.changes[0]?.garments[0];
    expect(coat?.states.map(({ state }) => state)).toEqual(['clean', 'muddy', 'torn']);
  });
});

describe('story days around what is remembered or dreamt', () => {
  it('give a dream right after a flashback a day of its own', () => {
    const { scenes } = breakDown(
      '## INT. A - DAY\n\nNora.\n\n## INT. B - DAY - FLASHBACK\n\nNora.\n\n## INT. B - DAY - DREAM\n\nNora.\n\n## INT. A - DAY\n\nNora.',
    );
    expect(scenes.map(({ storyDay }) => storyDay.label)).toEqual(['D1', 'F1', 'F2', 'D1']);
  });

  it('read the end of a flashback as its end', () => {
    const { scenes } = breakDown(
      '## INT. A - DAY\n\nNora.\n\n## INT. B - NIGHT (FLASHBACK)\n\nNora.\n\n## INT. A - DAY (END OF FLASHBACK)\n\nNora.',
    );
    expect(scenes.map(({ storyDay }) => storyDay.label)).toEqual(['D1', 'F1', 'D1']);
  });
});

describe('names of a person', () => {
  it('stand once in the index, though a former name is also an alias', () => {
    const { breakdown } = breakDown(`${front}## INT. A - DAY\n\nNora waits.`);
    expect(breakdown.cast[0]?.names).toEqual(['NORA', 'Anna', 'MISS BELL']);
  });
});

describe('an article before a name', () => {
  it('makes no second thing and is not printed in lists', () => {
    const body =
      '## INT. A - DAY\n\n> props: a letter, The Harbour Post\n\nNora opens the [letter].\n\n> the letter: torn\n';
    const { breakdown, codes, readMessages } = breakDown(`${front}${body}\n[the letter]: prop "blue"\n`);
    expect(breakdown.elements.map(({ name }) => name).sort()).toEqual(['The Harbour Post', 'letter']);
    expect(breakdown.elements.find(({ name }) => name === 'letter')).toMatchObject({
      known: 'marked',
      description: 'blue',
      states: [{ state: 'torn' }],
    });
    expect(codes).toEqual([]);
    expect(readMessages.map(({ code }) => code)).toEqual([]);
  });
});

describe('words that writers use for one meaning', () => {
  it('are heard on the line, and listed under their category', () => {
    const body = '## INT. A - DAY\n\n> hair and make-up: wig (Nora)\n> VFX: glow\n\nVOICE ON THE PHONE\nHello.\n';
    const { breakdown, scenes, readMessages } = breakDown(front + body);
    expect(scenes[0]?.cast.map(({ name, voice }) => [name, voice])).toContainEqual(['VOICE ON THE PHONE', 'phone']);
    expect(breakdown.elements.map(({ name, category }) => `${name}: ${category}`).sort()).toEqual([
      'glow: visual-effects',
      'wig: makeup',
    ]);
    expect(readMessages).toEqual([]);
  });
});

describe('a count in a note of extras', () => {
  it('wins over one background person of that name', () => {
    const body =
      '---\ncast: { GUARD: { background: true } }\n---\n\n## INT. A - DAY\n\n> extras: 2 guards\n\nGUARD\nHalt!';
    const { scenes } = breakDown(body);
    expect(scenes[0]?.extras.map(({ name, count }) => [name, count])).toEqual([['GUARD', 2]]);
  });
});
