import { describe, expect, it } from 'vitest';
import { readScriptText } from '../../src/script/read-script.js';
import type { Heading } from '../../src/script/types.js';

/** Headings, numbers and cue extensions as published handbooks and courses describe them; the source stands in each title. */
function read(text: string) {
  const { script, messages } = readScriptText(text, 'script.md');
  return { scenes: script?.scenes ?? [], messages };
}

function heading(line: string): Heading | undefined {
  return read(`## ${line}\n`).scenes[0]?.heading;
}

describe('scene headings', () => {
  it('are INT. or EXT., a place and a time, joined by dashes (BBC Writersroom, Carless 2004; Storysense)', () => {
    expect(heading('INT. LIGHTHOUSE - NIGHT')).toMatchObject({
      text: 'INT. LIGHTHOUSE - NIGHT',
      setting: 'INT',
      place: 'LIGHTHOUSE',
      time: 'NIGHT',
    });
  });

  it.each(['INT/EXT.', 'INT./EXT.', 'EXT./INT.', 'I/E', 'I./E.'])(
    'join inside and outside as %s (Storysense: INT/EXT.; Stage 32: the others; I/E is common practice)',
    (setting) => expect(heading(`${setting} BARN - DAY`)?.setting).toBe('INT/EXT'),
  );

  it.each([
    'DAY',
    'NIGHT',
    'DAWN',
    'DUSK',
    'MORNING',
    'AFTERNOON',
    'EVENING',
    'SUNRISE',
    'SUNSET',
    'LATER',
    'MOMENTS LATER',
    'CONTINUOUS',
    'SAME',
    'SAME TIME',
    'MAGIC HOUR',
  ])('take %s as a time (words met in published texts; MAGIC HOUR is common practice)', (word) => {
    const { scenes, messages } = read(`## INT. BARN - ${word}\n`);
    expect(scenes[0]?.heading).toMatchObject({ time: word, placeParts: ['BARN'] });
    expect(messages).toEqual([]);
  });

  it.each([
    ['MORNING', 'day'],
    ['AFTERNOON', 'day'],
    ['DAWN', 'dawn'],
    ['DUSK', 'dusk'],
  ])('are scheduled by light: %s is shot as %s (Stage 32 on headings; common practice)', (word, light) => {
    expect(heading(`EXT. BARN - ${word}`)?.light).toBe(light);
  });

  it.each(['CONTINUOUS', 'SAME', 'LATER', 'MOMENTS LATER'])(
    'carry the light of the last real time word over %s (ScreenPlayground, GeeksMedia, TWUnroll)',
    (word) => {
      const { scenes } = read(`## INT. A - NIGHT\n\n## EXT. B - ${word}\n\n## EXT. C - ${word}\n`);
      expect(scenes.map(({ heading: one }) => [one.light, one.lightInherited])).toEqual([
        ['night', false],
        ['night', true],
        ['night', true],
      ]);
    },
  );

  it('warn when a long run of them has lost the time (screenwriting forum on continuous headings)', () => {
    const run = ['B', 'C', 'D', 'E'].map((place) => `## INT. ${place} - CONTINUOUS\n\n`).join('');
    expect(read(`## INT. A - NIGHT\n\n${run}`).messages.map((message) => message.code)).toEqual(['light-carried-far']);
  });

  it('give both places of an intercut a heading once (J. August, 2005; ScreenReads)', () => {
    const { scenes } = read(
      '## 10 INT. A - DAY\n\n## 11 INT. B - DAY (INTERCUT WITH 10)\n\nINTERCUT\n\nNORA\nHello?\n',
    );
    expect(scenes[1]?.heading.qualifiers).toEqual(['INTERCUT WITH 10']);
    expect(scenes[1]?.blocks.map((block) => block.kind)).toEqual(['action', 'speech']);
  });
});

describe('scene numbers', () => {
  it('stand in both margins (Riley; Academy Nicholl format sample, 1998)', () => {
    expect(heading('12 INT. BARN - DAY 12')).toMatchObject({ number: '12', text: 'INT. BARN - DAY', time: 'DAY' });
  });

  it('between 10 and 11 are 10A; 10A moved on by another insert is 10aA (Wikipedia, Shooting script)', () => {
    const { messages } = read(
      '## 10 INT. A - DAY\n\n## 10aA INT. B - DAY\n\n## 10A INT. C - DAY\n\n## 11 INT. D - DAY\n',
    );
    expect(messages).toEqual([]);
  });

  it('of a cut scene stay with OMITTED and are not used again (Wikipedia, Shooting script; Padubaeh)', () => {
    const { scenes, messages } = read('## 1 INT. A - DAY\n\n2 OMITTED\n\n## 3 INT. B - DAY\n\n## 2 INT. C - DAY\n');
    expect(scenes[1]?.lead).toMatchObject([{ kind: 'omitted', number: '2' }]);
    expect(messages.map((message) => message.code)).toEqual(['scene-number-omitted', 'scene-number-order']);
  });
});

describe('cue extensions', () => {
  it.each([
    ['V.O.', 'voice-over'],
    ['O.S.', 'off-screen'],
    ["CONT'D", 'on-screen'],
    ['FILTERED', 'phone'],
  ])('(%s) is %s (Academy Nicholl format sample, 1998; IndieFictions; OC Screenwriters)', (extension, voice) => {
    const { scenes } = read(`## INT. A - DAY\n\nNORA (${extension})\nHello?\n`);
    expect(scenes[0]?.blocks[0]).toMatchObject({
      kind: 'speech',
      cue: { name: 'NORA', voice, extensions: [extension] },
    });
  });
});
