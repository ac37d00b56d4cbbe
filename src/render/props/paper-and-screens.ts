import { type Block, blank, bold, type Inline, knownWords, tick } from '../layout/kit.js';
import type { RenderInput } from '../types.js';
import { listScenes, type SceneIndex } from '../words/scene-list-words.js';

type PaperInput = Pick<RenderInput, 'breakdown' | 'production'>;

/** Letters, forms, signs and screens: each with lines for its exact words. Nothing when the script has none. */
export function paperBlocks({ breakdown, production }: PaperInput, index: SceneIndex): Block[] {
  const wording = new Map(production?.plan.lines.map(({ id, element }) => [id, element?.words ?? null]));
  const papers = breakdown.elements.filter((element) => element.category === 'graphics');
  if (papers.length === 0) return [];
  return [
    { kind: 'heading', level: 2, text: 'Paper and screens', bookmark: 'Paper and screens' },
    { kind: 'paragraph', text: explanation },
    ...papers.map((paper): Block => {
      const known = knownWords(paper, index.labels);
      const details = [
        `sc ${listScenes(paper.scenes, index)}`,
        ...(paper.description === null ? [] : [paper.description]),
      ];
      const text = [bold(paper.name), known === '' ? '' : ` ${known}`, `: ${details.join('; ')}`];
      return {
        kind: 'keep',
        blocks: [
          { kind: 'paragraph', text, keepWithNext: true },
          wordingBlock(wording.get(paper.id) ?? null),
          { kind: 'paragraph', text: handWords, indent: 14, after: 8 },
        ],
      };
    }),
  ];
}

/** The exact words when the book has them, else lines to write them on. */
function wordingBlock(words: string | null): Block {
  return words === null ? { kind: 'lines', count: 2 } : { kind: 'paragraph', text: `“${words}”`, indent: 14, after: 8 };
}

const handWords: Inline = [
  tick,
  ' printed  ',
  tick,
  ' by hand, written by ',
  blank(110),
  '  spelling checked by ',
  blank(80),
];

const explanation =
  'Write the exact words before anything is printed, with the spelling of the period. No real names, numbers, addresses or brands. Big enough to read on camera: test it.';
