import { type CalendarDate, earliest } from '../base/calendar-date.js';
import { comesByItself, isHere, isOpenAgain, isOwnShort } from './line-status.js';
import type { PlanLine } from './line-types.js';
import type { Task } from './plan-types.js';

/** A task before it is known whether it is late; `late: true` is late whatever its dates say. */
export type TaskDraft = Omit<Task, 'late' | 'things'> & { readonly late?: true; readonly things?: readonly string[] };

/** Adds one task of a thing. */
export type Add = (kind: Task['kind'], date: CalendarDate | null, words: string, rest?: Partial<TaskDraft>) => void;

/** Ordering, asking, fetching and putting aside of one thing, with all that shares its packs, and of its raw material. `isFromAnother`: false for what belongs to the helper who looks after it. */
export function addGetting(line: PlanLine, lines: readonly PlanLine[], isFromAnother: boolean, add: Add): void {
  for (const [index, one] of line.dates.materials.entries()) {
    const amount = one.pieces > 1 ? `${one.pieces} × ${one.what}` : one.what;
    add('order', one.recommended, `order ${amount} for ${line.name}${placed(one.from)}`, {
      id: `material-${index + 1}`,
      done: one.ordered,
    });
  }
  const isOpen = isOpenAgain(line.element);
  if ((line.need.toGet > 0 || isOpen) && line.pooledWith === null) addThing(line, lines, isOpen, isFromAnother, add);
}

function addThing(line: PlanLine, lines: readonly PlanLine[], isOpen: boolean, isFromAnother: boolean, add: Add): void {
  const source = line.source.value;
  const at = placed(line.from ?? line.owner);
  // Only what is bought comes in packs.
  const what = source === 'buy' ? nameAmount(line, lines) : nameWanted(line);
  const has = isHere(line.element);
  const again = isOpen ? ` again (${line.status})` : '';
  const mates = poolOf(line, lines);
  const shared = mates.length > 0 ? { elements: [line, ...mates].map((one) => one.id) } : {};
  const done = { done: !isOpen && (line.ordered !== null || has), ...shared };
  const date = mates.reduce((first, one) => earliest(first, one.dates.recommended), line.dates.recommended);
  if (source === 'buy') add('order', date, `order${again} ${what}${at}`, done);
  if (source === 'hire') add('order', date, `book the hire of${again} ${what}${at}`, done);
  // Nobody asks himself: what is the helper's own is only brought.
  if (source === 'borrow' && isFromAnother) add('ask', date, `ask to borrow${again} ${what}${at}`, done);
  if (source === 'make' && (line.dates.materials.length === 0 || isOpen)) {
    add('order', date, `get the material${again} for ${what}${at}`, done);
  }
  if (source === 'hire' || source === 'borrow') {
    const comes = comesByItself(line.need, line.element);
    const words = comes
      ? `see that ${what} comes${at}`
      : isFromAnother
        ? `fetch ${what}${at}`
        : `bring ${what}, your own`;
    add('fetch', line.collect ?? line.dates.inHand, `${words}, photograph its condition`, { done: has });
  }
  if (source === 'own') {
    const mine = isOwnShort(line.need, line.element) ? nameCount(line, line.need.have) : what;
    add('fetch', line.dates.inHand, `put ${mine} aside`, { done: has });
  }
}

function placed(from: string | null): string {
  return from === null ? '' : ` (${from})`;
}

/** The lines that share the packs of one. */
export function poolOf(line: PlanLine, lines: readonly PlanLine[]): PlanLine[] {
  return lines.filter((one) => one.pooledWith === line.id);
}

/** What is to be got, in words for whoever gets it: `11 × letter`, `273 ml of blood`, `6 packs of 10 eggs (53 needed)`, `3 × 5 m for 3 × 1.2 m rope and 4 × 2 m string`. */
export function nameAmount(line: PlanLine, lines: readonly PlanLine[]): string {
  const pack = line.element?.pack ?? null;
  if (line.need.uncounted || pack === null || line.packs === 0) return nameWanted(line);
  const sharing = [line, ...poolOf(line, lines)].map((one) => (one.need.uncounted ? one.name : nameCut(one)));
  const wanted = sharing.length > 1 ? `${sharing.slice(0, -1).join(', ')} and ${sharing.at(-1)}` : sharing[0];
  return pack.unit === 'piece'
    ? `${line.packs} ${line.packs === 1 ? 'pack' : 'packs'} of ${pack.text} for ${wanted}`
    : `${line.packs} × ${pack.text} for ${wanted}`;
}

function nameWanted(line: PlanLine): string {
  return line.need.uncounted ? `${line.name} (how many?)` : nameCount(line, line.need.toGet);
}

/** `3 × 1.2 m rope` of what is cut, else a count. */
function nameCut(line: PlanLine): string {
  const piece = line.element?.piece ?? null;
  if (piece === null || line.need.unit !== 'piece') return nameCount(line, line.need.toGet);
  return `${line.need.toGet} × ${piece.text} ${line.name}`;
}

function nameCount({ need, name }: PlanLine, count: number): string {
  if (need.unit !== 'piece') return `${count} ${need.unit} of ${name}`;
  return count > 1 ? `${count} × ${name}` : name;
}
