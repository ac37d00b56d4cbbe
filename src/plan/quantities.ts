import { type Ratio, ratio } from '../base/ratio.js';
import type { Book, BookElement } from '../book/types.js';
import type { Breakdown, ElementEntry } from '../breakdown/types.js';
import { fragileWords, quantityDefaults } from '../trade/quantity-defaults.js';
import { findStateChanges } from '../trade/state-changes.js';
import { burnsAgain, burnsDown } from '../trade/used-up-words.js';
import { type CopyPlan, labelCopies, planCopies } from './copies.js';
import { askHowMany, askTogether, askWhoWears, isUncounted } from './how-many.js';
import type { Need, Use } from './need-types.js';
import { counted, countPieces, countTakes, describeSpare, spareOf, type TakeCount } from './per-take.js';
import type { ShootingOrder } from './shooting-order.js';
import { nameSlot } from './shooting-order.js';
import { keepThere } from './short-copies.js';
import { conversionGround } from './state-conversion.js';
import { askWhereEaten, askWhetherEaten, countUsedUp, type Figures, tellsEaten } from './used-up.js';
import { isUsedUpByWords } from './used-up-by-words.js';
import { type Appearance, listUses } from './uses.js';

/** All that the count of one thing rests on. */
export interface NeedGround {
  readonly breakdown: Breakdown;
  readonly book: Book;
  readonly order: ShootingOrder;
  /** The name that tells it from others of its name. */
  readonly name: string;
}

/** How many of one element are needed: at least, and with what experience adds, each with its reason in words. */
export function countNeed(
  entry: ElementEntry,
  appearances: readonly Appearance[],
  element: BookElement | null,
  ground: NeedGround,
): Need {
  const takes = (scene: string) =>
    countTakes(ground.book, element, ground.order.bookScenes.get(scene) ?? null, entry.names);
  const spare = spareOf(ground.book, element);
  const uses = listUses(entry, appearances, element, ground.order, (scene) => {
    const { times } = takes(scene);
    return { atLeast: times, advised: countPieces(times, ratio(1), spare) };
  });
  const isUsedUp =
    element?.usedUp ??
    (isUsedUpByWords(entry, uses.some(tellsEaten)) || (element?.perTake ?? element?.usedUpIn[0] ?? null) !== null);
  const figures = isUsedUp
    ? countUsedUp(uses, element, takes, spare, burnsDown(entry.name) ? 'struck or burnt down in each take' : undefined)
    : countKept(entry, uses, element, takes, spare, ground);
  const decided = element?.source === 'cut' ? 0 : (element?.copies ?? null);
  const have = element?.have ?? 0;
  const uncounted = isUncounted(entry, element, ground.breakdown);
  return {
    id: entry.id,
    name: ground.name,
    category: entry.category,
    uses,
    usedUp: isUsedUp,
    uncounted,
    ...figures,
    decided,
    have,
    toGet: Math.max(0, (decided ?? figures.recommended) - have),
    states: [...new Set(uses.flatMap((use) => [use.stateIn, use.stateOut]).filter((state) => state !== null))],
    questions: [
      ...(uncounted ? [askHowMany(entry, have)] : []),
      ...askWhoWears(entry, element, ground.breakdown),
      ...askTogether(entry, uses, element),
      ...(!isUsedUp && entry.category === 'food' ? askWhetherEaten(uses, element) : []),
      ...(isUsedUp ? askWhereEaten(uses, element, entry.category === 'food') : []),
      ...askAboutStates(uses, element),
    ],
  };
}

/** A thing of the kit: the book says how many. */
export function countKit(kit: BookElement): Need {
  const needed = kit.need ?? 1;
  return {
    id: kit.id,
    name: kit.name ?? kit.id.replace(/-/g, ' '),
    category: null,
    uses: [],
    usedUp: kit.usedUp ?? false,
    uncounted: false,
    unit: 'piece',
    minimum: needed,
    minimumReason: kit.need === null ? 'the book does not say how many: one is assumed' : 'as the book says',
    recommended: needed,
    recommendedReason: 'as the strict minimum',
    decided: kit.copies,
    have: kit.have,
    toGet: Math.max(0, (kit.copies ?? needed) - kit.have),
    conversions: [],
    copies: [],
    states: [],
    questions: [],
  };
}

function countKept(
  entry: ElementEntry,
  uses: readonly Use[],
  element: BookElement | null,
  takes: (scene: string) => TakeCount,
  spare: Ratio,
  ground: NeedGround,
): Figures {
  const convert = conversionGround(entry, element, ground.book.drier.value);
  const label = labelCopies(ground.name, element);
  const best = planCopies(uses, 'at best', convert, label);
  const careful = planCopies(uses, 'careful', convert, label);
  // Whoever gets fewer than is advised hopes for the best, and is told what that takes.
  const isTight = (element?.copies ?? careful.count) < careful.count;
  const plan = isTight ? best : careful;
  const decided = element?.copies ?? null;
  const there = decided === null || decided >= best.count ? null : Math.max(decided, element?.have ?? 0);
  const extra = listSpares(entry, uses, element, ground);
  const spares = extra.length > 0 ? Math.max(...extra.map((one) => one.count)) : 0;
  return {
    unit: 'piece',
    minimum: best.count,
    minimumReason: `${explainMinimum(uses, best, takes)}${burnsAgain(entry.name) ? '; lit again for each take' : ''}`,
    recommended: careful.count + spares,
    recommendedReason: explainRecommended(uses, best, careful, extra, takes, spare),
    conversions: plan.conversions.map((one) => ({ ...one, copies: keepThere(one.copies, there) })),
    copies: plan.copies.map((labels) => keepThere(labels, there)),
  };
}

interface Spare {
  readonly count: number;
  readonly reason: string;
}

/** Spares that experience adds to what is not used up. */
function listSpares(
  entry: ElementEntry,
  uses: readonly Use[],
  element: BookElement | null,
  ground: NeedGround,
): Spare[] {
  const spare = quantityDefaults.fragileSpare.value;
  const found: Spare[] = [];
  const isHeld = entry.category === 'props' || entry.category === 'graphics';
  const words = entry.name.toLowerCase().split(/[^\p{L}]+/u);
  const changesEachTake = uses.some((use) => use.onCamera === 'copy each take');
  if (element?.fragile === false || changesEachTake) return [];
  if (element?.fragile === true) found.push({ count: spare, reason: 'it breaks easily' });
  else if (isHeld && words.some((word) => fragileWords.includes(word)))
    found.push({ count: spare, reason: 'such a thing breaks or spoils easily' });
  if (isHeld && isCheap(element, ground.book)) found.push({ count: spare, reason: 'it is cheap' });
  const handled = uses.filter((use) => use.by.length > 0).length;
  if (isHeld && handled >= quantityDefaults.storyStopsFrom.value)
    found.push({ count: spare, reason: `in hand in ${handled} scenes: the story stops without it` });
  if (entry.category === 'costumes') {
    const minors = new Set(
      ground.breakdown.cast.filter((person) => person.minor).flatMap((person) => [person.id, person.name]),
    );
    if (uses.some((use) => use.by.some((name) => minors.has(name))))
      found.push({ count: spare, reason: 'worn by a child, who spills and grows' });
    const most = Math.max(0, ...uses.map((use) => use.count));
    if (most >= 5) found.push({ count: Math.ceil(most / 5), reason: quantityDefaults.crowdSpare.words });
  }
  return found;
}

/** Cheap: at most one hundredth of the budget, when both are known and in one currency. The price of a hire is not that of a second piece. */
function isCheap(element: BookElement | null, book: Book): boolean {
  if (element?.source === 'hire') return false;
  const [price, budget] = [element?.price ?? null, book.money.budget];
  return price !== null && budget !== null && price.currency === budget.currency && price.minor * 100 <= budget.minor;
}

function explainMinimum(uses: readonly Use[], plan: CopyPlan, takes: (scene: string) => TakeCount): string {
  const changes = uses.flatMap((use) => {
    if (use.onCamera === 'copy each take') {
      return [
        `${use.stateOut} on camera in ${nameSlot(use.slot)}: ${takes(use.scene).words} = ${use.atLeast}${use.count > 1 ? ` for ${use.count}` : ''}`,
      ];
    }
    if (use.onCamera === 'a pair')
      return [`${use.stateOut} on camera in ${nameSlot(use.slot)}: ${quantityDefaults.wornDoubles.words}`];
    return use.count > 1 ? [`${use.count} at one time in ${nameSlot(use.slot)}`] : [];
  });
  const reasons = [...new Set([...changes, ...plan.blocks])];
  if (reasons.length > 0) return reasons.slice(0, 4).join('; ');
  return uses.length > 1 ? `one serves all ${uses.length} scenes` : 'one serves its scene';
}

function explainRecommended(
  uses: readonly Use[],
  best: CopyPlan,
  careful: CopyPlan,
  extra: readonly Spare[],
  takes: (scene: string) => TakeCount,
  spare: Ratio,
): string {
  const changed = uses.filter((use) => use.onCamera === 'copy each take');
  const onCamera = changed.map((use) => {
    const words = describeSpare(takes(use.scene).times * use.count, ratio(1), spare);
    return changed.length > 1 ? `${nameSlot(use.slot)}: ${words}` : words;
  });
  // The same obstacle with hours at their worst is said once.
  const obstacle = (block: string) => block.slice(0, block.lastIndexOf(': '));
  const said = new Set(best.blocks.map(obstacle));
  const blocks = careful.blocks.filter((block) => !said.has(obstacle(block)));
  const reasons = [...onCamera, ...blocks, ...extra.map((one) => `${counted(one.count, 'spare')}: ${one.reason}`)];
  return reasons.length > 0 ? [...new Set(reasons)].join('; ') : 'as the strict minimum';
}

/** A change on camera of which it is not known whether it can be undone: 1 copy and 11 copies are both possible. */
function askAboutStates(uses: readonly Use[], element: BookElement | null): string[] {
  return uses.flatMap((use) => {
    if (use.onCamera !== 'reset' || use.stateOut === null || findStateChanges(use.stateOut).length > 0) return [];
    if (element?.states.some((one) => one.state === use.stateOut)) return [];
    return [
      `"${use.stateOut}" in ${nameSlot(use.slot)}: can it be put back after each take, or does each take use one up?`,
    ];
  });
}
