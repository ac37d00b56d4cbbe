import { matchEntries } from '../../book/match-entries.js';
import type { Book } from '../../book/types.js';
import type { Plan } from '../../plan/plan-types.js';
import { type Block, bold, type Inline } from '../layout/kit.js';

/** A reset that takes longer than this must be known to whoever plans the day. */
const longReset = 5;

/** One card a scene: what is put back after each take, in order, with the minutes it takes. */
export function resetBlocks(plan: Plan, book: Book): Block[] {
  const entries = matchEntries(
    book.scenes,
    plan.slots.map((slot) => ({ id: slot.scene, names: [] })),
  ).byThing;
  const cards = plan.slots.flatMap((slot): Block[] => {
    const entry = entries.get(slot.scene);
    if (!entry || entry.reset.length === 0) return [];
    const minutes = entry.resetMinutes === null ? '' : `, ${entry.resetMinutes} minutes`;
    const long =
      (entry.resetMinutes ?? 0) > longReset ? [bold('  More than 5 minutes: tell whoever plans the day.')] : [];
    const steps = entry.reset.map((step, index): Inline => `${index + 1}. ${step}`);
    return [
      {
        kind: 'frame',
        blocks: [
          { kind: 'paragraph', text: [bold(`Scene ${slot.label}. After "cut"`), minutes, ...long], keepWithNext: true },
          { kind: 'entries', entries: steps, ticks: true },
        ],
      },
      { kind: 'space', height: 8 },
    ];
  });
  if (cards.length === 0) return [];
  return [
    { kind: 'heading', level: 2, text: 'Reset cards', bookmark: 'Reset cards' },
    { kind: 'paragraph', text: 'Cut them out and put them in your pocket.' },
    ...cards,
  ];
}
