import type { BookHelper } from '../../book/types.js';
import type { PlanLine } from '../../plan/line-types.js';
import type { Task } from '../../plan/plan-types.js';
import type { CategoryName } from '../../trade/categories.js';
import type { Block } from '../layout/kit.js';
import type { Production, RenderInput } from '../types.js';
import type { SceneIndex } from '../words/scene-list-words.js';
import { backgroundBlocks } from './background.js';
import { comfortBlocks } from './comfort-kit.js';
import { consumableBlocks } from './consumables.js';
import { dressingOrderBlocks } from './dressing-order.js';
import { fittingBlocks } from './fittings.js';
import { hireBlocks } from './hires.js';
import { measurementBlocks } from './measurements.js';
import { multiplesBlocks } from './multiples.js';
import { objectCardBlocks } from './object-cards.js';
import { overnightBlocks } from './overnight-table.js';
import { packFrontBlocks } from './pack-front.js';
import { photoFrameBlocks } from './photo-frames.js';
import { pullListBlocks } from './pull-lists.js';
import { resetBlocks } from './reset-cards.js';
import { standingKitBlocks } from './standing-kit.js';
import { stuntBlocks } from './stunt-copies.js';
import { taskBlocks } from './work-calendar.js';

const bodily: ReadonlySet<CategoryName | null> = new Set(['costumes', 'makeup']);
const isWorn = (line: PlanLine) => bodily.has(line.need.category);
const isThing = (line: PlanLine) => !isWorn(line);

/** What a pack prints after its first page, and after the rest, when there is a production book. */
export interface PackParts {
  readonly front: readonly Block[];
  readonly back: readonly Block[];
}

/** What the book and the plan add to the prop helper's pack. */
export function propPackParts({ production, breakdown }: RenderInput): PackParts {
  if (production === null) return { front: [], back: [] };
  const { plan, book } = production;
  return {
    front: packFrontBlocks(production, 'props', isThing),
    back: [
      { kind: 'page break' },
      ...pullListBlocks(production, isThing),
      ...multiplesBlocks(plan, book, isThing),
      ...consumableBlocks(plan, book, isThing),
      ...objectCardBlocks(plan, isThing),
      ...taskBlocks(plan, book, 'Your calendar', isTaskOf(production, isThing), true),
      ...overnightBlocks(production, (one) => plan.lines.some((line) => line.id === one.element && isThing(line))),
      ...hireBlocks(plan, isThing, null, breakdown),
      ...resetBlocks(plan, book),
      ...standingKitBlocks(plan),
    ],
  };
}

/** What the book and the plan add to the costume helper's pack. */
export function costumePackParts({ production, breakdown }: RenderInput, index: SceneIndex): PackParts {
  if (production === null) return { front: [], back: [] };
  const { plan, book } = production;
  return {
    front: packFrontBlocks(production, 'costume', isWorn),
    back: [
      { kind: 'page break' },
      ...dressingOrderBlocks(production, index),
      ...pullListBlocks(production, isWorn),
      ...multiplesBlocks(plan, book, isWorn),
      ...stuntBlocks(index),
      ...consumableBlocks(plan, book, isWorn),
      ...overnightBlocks(production, (one) => plan.lines.some((line) => line.id === one.element && isWorn(line))),
      ...fittingBlocks(plan, (line) => line.need.category === 'costumes'),
      ...backgroundBlocks(plan, index),
      ...comfortBlocks(production, index),
      ...taskBlocks(plan, book, 'Your calendar', isCostumeTask(production), true),
      ...hireBlocks(
        plan,
        isWorn,
        'Nothing hired is cut, dyed or let near blood; ask how it must be cleaned.',
        breakdown,
      ),
      ...photoFrameBlocks(breakdown, index),
      { kind: 'page break' },
      ...measurementBlocks(breakdown, production),
    ],
  };
}

/** Tasks about a pack's own things, and the shooting days. */
function isTaskOf({ plan }: Production, isMine: (line: PlanLine) => boolean) {
  const mine = new Set(plan.lines.filter(isMine).map((line) => line.id));
  return (task: Task) => (task.kind === 'shoot' ? true : task.elements.some((id) => mine.has(id)));
}

/** Tasks about clothes and make-up, and the asking for sizes. */
function isCostumeTask(production: Production) {
  const isAboutWorn = isTaskOf(production, isWorn);
  return (task: Task) => isAboutWorn(task) || (task.kind === 'ask' && task.elements.length === 0);
}

/** Tells whether a task stands in the calendar of the pack that a helper carries: nobody needs it on paper twice. */
export function packCalendars(production: Production): (helper: BookHelper, task: Task) => boolean {
  const [isProps, isCostume] = [isTaskOf(production, isThing), isCostumeTask(production)];
  return ({ does }, task) => (does.includes('props') && isProps(task)) || (does.includes('costume') && isCostume(task));
}

/** The first page of a pack with the book's front in place of its blanks to fill in by hand. */
export function withFront(first: readonly Block[], front: readonly Block[]): Block[] {
  if (front.length === 0) return [...first];
  const blanks = first.findIndex((block) => block.kind === 'section' && block.label === 'For');
  return [...first.slice(0, Math.max(0, blanks)), ...front, ...first.slice(blanks + 1)];
}
