import type { Plan } from '../../plan/plan-types.js';
import { shortWords } from '../../plan/short-copies.js';
import { type Block, bold, type Inline } from '../layout/kit.js';

/** What there will be too few of for the scenes, though the book has decided how many; nothing when there is enough of all. */
export function shortBlocks({ lines }: Plan): Block[] {
  const entries = lines.flatMap((line): Inline[] => {
    const short = line.status === 'done without' ? null : shortWords(line);
    if (short === null) return [];
    const scenes = [...new Set(line.need.uses.map((use) => use.slot.label))];
    return [[bold(line.name), scenes.length > 0 ? ` (sc ${scenes.join(', ')}): ` : ': ', short]];
  });
  if (entries.length === 0) return [];
  return [
    { kind: 'heading', level: 3, text: 'Too few' },
    { kind: 'entries', entries },
  ];
}
