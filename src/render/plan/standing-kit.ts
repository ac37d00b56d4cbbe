import type { PlanLine } from '../../plan/line-types.js';
import { counted } from '../../plan/per-take.js';
import type { Plan } from '../../plan/plan-types.js';
import { type Block, bold, type InlineRun, tick } from '../layout/kit.js';

/** What every prop box holds, whatever the script: common practice of prop departments. */
const usualKit = [
  'tapes: gaffer, clear, double-sided',
  'scissors, cutter',
  'glue, super glue',
  'markers, pencils',
  'batteries',
  'wipes, towels',
  'needle and thread, safety pins',
  'fishing line',
  'bin bags',
  'work gloves',
  'fire blanket',
  'first-aid box',
];

/** The box that comes to every day: what the book lists, and what is usual. */
export function standingKitBlocks(plan: Plan): Block[] {
  const own = plan.lines.filter((line) => line.department === 'kit').map(kitEntry);
  return [
    { kind: 'heading', level: 2, text: 'The box for every day', bookmark: 'Box for every day' },
    ...(own.length > 0
      ? [{ kind: 'paragraph', text: [bold('From the book: '), ...own.flatMap(ticked)] } as const]
      : []),
    { kind: 'paragraph', text: [bold('Usual, whatever the script: '), ...usualKit.flatMap(ticked)] },
  ];
}

function ticked(words: string, place: number): (string | InlineRun)[] {
  return [place === 0 ? '' : '; ', tick, `\u00a0${words.replace(' × ', '\u00a0×\u00a0')}`];
}

function kitEntry({ need, packs, packText, status }: PlanLine): string {
  const what = `${need.decided ?? need.recommended} × ${need.name}`;
  return packText === null || packs === 0
    ? `${what} (${status})`
    : `${what}: ${counted(packs, 'pack')} of ${packText} (${status})`;
}
