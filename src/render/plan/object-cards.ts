import { copyWords } from '../../plan/copy-words.js';
import type { PlanLine } from '../../plan/line-types.js';
import type { Plan } from '../../plan/plan-types.js';
import { listRoughCopies } from '../../plan/rough-copies.js';
import { type Block, blank, bold, type Inline, stateWords } from '../layout/kit.js';
import { hasCard } from './has-card.js';
import { amountWords, sourceWords } from './plan-words.js';
import { countSpares } from './pull-lists.js';

/** Common practice of prop departments. */
const handling =
  'The first copy is for close-ups: right weight, readable, whole. A spare stands beside it. Rehearse, light and throw with a stand-in of the same shape; what is more than three metres away may be rough.';

/** Room for a picture the size of a small print at the left of each card, in points. */
const photoWidth = 170;
const photoHeight = 96;

/** One card for each thing that matters most: scenes, states, copies, where it comes from and lives, a place for a picture. */
export function objectCardBlocks(plan: Plan, isMine: (line: PlanLine) => boolean): Block[] {
  const lines = plan.lines.filter((line) => isMine(line) && line.status !== 'done without' && hasCard(line, plan));
  if (lines.length === 0) return [];
  return [
    { kind: 'heading', level: 2, text: 'Cards of the things that matter most', bookmark: 'Cards' },
    { kind: 'paragraph', text: handling },
    ...lines.flatMap(card),
  ];
}

function card(line: PlanLine): Block[] {
  const { need, element } = line;
  const chain = need.uses.map((use, index): Inline => {
    const copies = need.copies[index] ?? [];
    const looks = stateWords(use);
    return [
      `sc ${use.slot.label}: `,
      looks === '' ? 'as it is' : looks,
      use.by.length > 0 ? `, ${use.by.join(', ')}` : '',
      copies.length > 0 && need.recommended > 1 ? ` (${copyWords(copies)})` : '',
    ];
  });
  const rough = listRoughCopies(line);
  const facts: Inline[] = [
    [
      bold('Hero and spares: '),
      need.uncounted ? blank(60) : goodWords(need),
      bold('  Stand-in:\u00a0'),
      rough && rough.standIns.length > 0 ? copyWords(rough.standIns) : blank(40),
    ],
    ...(rough && rough.background.length > 0 ? [[bold('Background: '), copyWords(rough.background)]] : []),
    [
      bold('From: '),
      `${sourceWords(line.source.value)}${line.from ? `, ${line.from}` : line.owner ? `, ${line.owner}` : ''}`,
      bold('  Lives in:\u00a0'),
      line.box ?? blank(90),
    ],
    ...(element && element.pictures.length > 0 ? [[bold('Pictures: '), element.pictures.join(', ')]] : []),
    ...(element?.words ? [[bold('Exact words: '), element.words]] : []),
    ...(line.note ? [[bold('Note: '), line.note]] : []),
  ];
  const title: Inline = line.description ? `${line.name}: ${line.description}` : line.name;
  return [
    {
      kind: 'keep',
      blocks: [
        { kind: 'heading', level: 3, text: title },
        {
          kind: 'frame',
          blocks: [
            {
              kind: 'section',
              label: 'Picture of it as it must look:',
              labelWidth: photoWidth,
              least: photoHeight,
              ruled: false,
              blocks: [
                { kind: 'paragraph', text: bold('In shooting order'), after: 0 },
                { kind: 'entries', entries: [...chain, ...facts] },
              ],
            },
          ],
        },
      ],
    },
  ];
}

/** The labels of the copies, and how many stand beside them as spares. */
function goodWords(need: PlanLine['need']): string {
  const labelled = [...new Set(need.copies.flat())];
  const wanted = need.decided ?? need.recommended;
  if (labelled.length === 0) return `${amountWords(wanted, need.unit)}, all alike`;
  const spares = countSpares(need);
  return `${copyWords(labelled)}${spares > 0 ? ` and ${spares} to spare` : ''}`;
}
