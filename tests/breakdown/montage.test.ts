import { describe, expect, it } from 'vitest';
import { breakDown, clothesOf } from '../support/break-down.js';

const worn = (name: string) => ({ name, category: 'costumes' as const, words: name, by: 'NORA', worn: true });
const head =
  '---\ncast: { NORA: {} }\n---\n\n## 1. INT. BOATHOUSE - DAY\n\n> Nora: wears dress\n\nNora opens the door.\n\n';
const after = '\n\n## 3. EXT. RIVER - LATER\n\nNora rows.\n';
const told = { elements: [worn('overalls'), worn('raincoat')] };

const written = {
  'letters after a title within a scene': `${head}MONTAGE - NORA MENDS THE BOAT\n\nA) Nora paints in overalls.\n\nB) Nora hammers in a raincoat.\n\nEND MONTAGE${after}`,
  'lettered lines of one paragraph': `${head}MONTAGE:\n\nA. Nora paints in overalls.\nB. Nora hammers in a raincoat.\n\nEND OF MONTAGE${after}`,
  'a numbered list under a heading': `${head}## 2. EXT. VARIOUS - DAY - MONTAGE\n\n1. Nora paints in overalls.\n2. Nora hammers in a raincoat.${after}`,
  'bullets under a heading': `${head}## 2. EXT. VARIOUS - DAY (SERIES OF SHOTS)\n\n- Nora paints in overalls.\n- Nora hammers in a raincoat.${after}`,
  'paragraphs under a heading': `${head}## 2. EXT. VARIOUS - MONTAGE - DAY\n\nNora paints in overalls.\n\nNora hammers in a raincoat.${after}`,
};

describe.each(Object.entries(written))('a montage of %s', (_, text) => {
  const { scenes } = breakDown(text, told);
  const montage = scenes[scenes.length - 2];

  it('shows clothes in their own images only, and leaves the clothes of the day as they were', () => {
    const labels = text.includes('A') && /A[.)]/.test(text) ? ['A', 'B'] : ['1', '2'];
    const shown = `overalls (only in image ${labels[0]}), raincoat (only in image ${labels[1]})`;
    expect(clothesOf(montage ? [montage] : [], 'NORA')[0]).toContain(shown);
    expect(clothesOf(scenes, 'NORA').at(-1)).toBe('1: dress (carried)');
  });

  it('asks once about the days and clothes of all its images', () => {
    const ids = montage?.questions.map(({ key }) => key);
    expect(ids).toEqual(['images']);
    expect(montage?.questions[0]?.text).toContain('A montage of 2 images, all read as D1');
    const answered = breakDown(`${text.replace('\n\n## 3.', '\n\n> answer: images yes\n\n## 3.')}`, told);
    expect(answered.scenes.flatMap(({ questions }) => questions)).toEqual([]);
    expect(answered.codes).toEqual([]);
  });
});

it('is none where a scene only has a list or one paragraph', () => {
  const { scenes } = breakDown(
    `${head.replace('> Nora: wears dress\n\n', '')}- Nora paints in overalls.\n- Nora hammers in a raincoat.`,
    told,
  );
  expect(clothesOf(scenes, 'NORA')).toEqual(['1: overalls, raincoat']);
  expect(scenes[0]?.questions).toEqual([]);
});

describe('scenes between MONTAGE and END MONTAGE', () => {
  const text = `${head}## MONTAGE

- INT. SHED - NIGHT: Nora paints in overalls.
- EXT. YARD - DAY: Nora hammers in a raincoat.

## END MONTAGE

## EXT. RIVER - DAY

Nora rows.
`;

  it('are images: their clothes and their light hold in them alone, and one question asks about their days', () => {
    const { scenes } = breakDown(text, told);
    expect(clothesOf(scenes, 'NORA')).toEqual([
      '1: dress',
      '1: dress (carried), overalls',
      '1: dress (carried), raincoat',
      '1: dress (carried)',
    ]);
    expect(scenes.map(({ storyDay }) => storyDay.label)).toEqual(['D1', 'D1', 'D1', 'D1']);
    expect(scenes.flatMap(({ questions }) => questions.map(({ key }) => key))).toEqual(['day']);
  });

  it('are none without the end', () => {
    const { scenes } = breakDown(text.replace('## END MONTAGE\n\n', ''), told);
    expect(scenes.map(({ storyDay }) => storyDay.label)).toEqual(['D1', 'D1', 'D2', 'D2']);
  });
});
