import { matchEntries } from '../book/match-entries.js';
import type { Book } from '../book/types.js';
import type { PlanLine } from './line-types.js';
import type { Use } from './need-types.js';
import { conversionGround, reckonConversion } from './state-conversion.js';

/** One state of a thing: how it comes, whether it goes again, and which copies are in it. */
export interface StateStep {
  readonly state: string;
  readonly starts: string;
  /** Whether and how fast it can be undone, in words. */
  readonly undo: string;
  /** Minutes that the scene of the change needs to be put back, as the book has them. */
  readonly resetMinutes: number | null;
  readonly copies: readonly string[];
}

/** The states of a thing in the order of the story; empty when it has one look from beginning to end. */
export function chainStates({ need, element, name }: PlanLine, book: Book): StateStep[] {
  const uses = need.uses.map((use, at) => ({ use, copies: need.copies[at] ?? [] }));
  const inStory = [...uses].sort((a, b) => a.use.storyOrder - b.use.storyOrder).map((one) => one.use);
  const states = [...new Set(inStory.flatMap((use) => [use.stateIn, use.stateOut]).filter((one) => one !== null))];
  const scenes = matchEntries(
    book.scenes,
    inStory.map((use) => ({ id: use.scene, names: [] })),
  ).byThing;
  return states.map((state) => {
    const first = inStory.find((use) => use.stateIn === state || use.stateOut === state) as Use;
    const onCamera = first.stateIn !== state;
    const back = reckonConversion(state, null, false, conversionGround({ ...need, name }, element, book.drier.value));
    const minutes = onCamera ? (scenes.get(first.scene)?.resetMinutes ?? null) : null;
    return {
      state,
      starts: onCamera
        ? `on camera in sc ${first.slot.label}`
        : first === inStory[0]
          ? 'from the start'
          : `between scenes, before sc ${first.slot.label}`,
      undo: undoWords(back),
      resetMinutes: minutes,
      copies: sortLabels(
        uses.flatMap(({ use, copies }) => (use.stateIn === state || use.stateOut === state ? copies : [])),
      ),
    };
  });
}

/** `LOG-2` before `LOG-10`, each once. */
function sortLabels(labels: readonly string[]): string[] {
  return [...new Set(labels)].sort((a, b) => a.localeCompare(b, 'en', { numeric: true }));
}

function undoWords(back: ReturnType<typeof reckonConversion>): string {
  if (back === null) return 'no way back';
  if (back.guessed) return 'not known: ask';
  const words = (hours: number) =>
    hours < 1 ? `${Math.max(1, Math.round(hours * 60))} min` : `${Math.round(hours * 10) / 10} h`;
  const [low, high] = [words(back.low), words(back.high)];
  return low === high ? `yes, ${low}` : `yes, ${low} to ${high}`;
}
