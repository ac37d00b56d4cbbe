import { copyWords } from '../../plan/copy-words.js';
import type { PlanDay } from '../../plan/day-types.js';
import { comesByItself } from '../../plan/line-status.js';
import type { PlanLine } from '../../plan/line-types.js';
import type { Use } from '../../plan/need-types.js';
import type { Plan } from '../../plan/plan-types.js';
import { listRoughCopies } from '../../plan/rough-copies.js';
import { countNeeded, shortWords } from '../../plan/short-copies.js';
import { listEating } from '../../plan/used-up.js';
import { type Block, bold, inlineRuns, joinInline, stateWords, type TableRow, tick } from '../layout/kit.js';
import type { Production } from '../types.js';
import { callWords } from '../words/call-words.js';
import { hasCard } from './has-card.js';
import { amountWords, dayHead } from './plan-words.js';
import { thingNotes } from './thing-notes.js';

const columns = [
  { head: 'Out', width: 22 },
  { head: 'On\nset', width: 20 },
  { head: 'Back', width: 26 },
  { head: 'Scenes', width: 40 },
  { head: 'What, and which copies', share: 3.4 },
  { head: 'How it looks', share: 1.2 },
  { head: 'Who has it', share: 1.3 },
];

/** What is pulled for each shooting day, in shooting order, by box: tick out, on set, back. */
export function pullListBlocks(production: Production, isMine: (line: PlanLine) => boolean): Block[] {
  const { plan } = production;
  const lines = plan.lines.filter((line) => isMine(line) && line.status !== 'done without');
  const days = plan.days.map((day): Block[] => [
    { kind: 'heading', level: 3, text: dayHead(day) },
    dayTable(day, lines, plan),
  ]);
  const head: Block = { kind: 'heading', level: 2, text: 'What to pull, day by day', bookmark: 'Pull lists' };
  if (days.length === 0)
    return [head, { kind: 'paragraph', text: 'No shooting days yet: pull by the list scene by scene.' }];
  const call: Block = { kind: 'paragraph', text: [...inlineRuns(callWords(production)), '.'], after: 0 };
  return [head, call, ...days.flat()];
}

function dayTable(day: PlanDay, lines: readonly PlanLine[], plan: Plan): Block {
  const scenes = new Set(day.scenes.map((slot) => slot.scene));
  const pulled = lines.filter((line) => !isThere(line));
  const there = thereRows(lines.filter(isThere), scenes, plan);
  const boxes = [...new Set(pulled.flatMap((line) => line.box ?? []))].sort((a, b) => a.localeCompare(b, 'en'));
  const rows = [...boxes, null].flatMap((box): TableRow[] => {
    const own = pulled.filter((line) => line.box === box).flatMap((line) => rowsOf(line, scenes, plan));
    if (own.length === 0 || boxes.length === 0) return own;
    return [{ cells: [bold(box === null ? 'IN NO BOX' : `BOX ${box}`)], keepWithNext: true }, ...own];
  });
  return rows.length + there.length === 0
    ? { kind: 'paragraph', text: 'Nothing to pull.' }
    : { kind: 'table', columns, rows: [...rows, ...there], tight: true };
}

function isThere({ need, element, source }: PlanLine): boolean {
  return comesByItself(need, element) && source.value !== 'buy' && source.value !== 'make';
}

/** What nobody carries out, because it stands in the place or its owner brings it: one row, to look at on the day. */
function thereRows(lines: readonly PlanLine[], scenes: ReadonlySet<string>, plan: Plan): TableRow[] {
  const words = lines.flatMap((line) => {
    const labels = line.need.uses.filter((use) => scenes.has(use.scene)).map((use) => use.slot.label);
    if (labels.length === 0) return [];
    const notes = thingNotes(line, plan, scenes).flatMap((note) => ['; ', ...inlineRuns(note)]);
    return [[tick, `\u00a0${line.name} (sc ${labels.join(', ')}`, ...notes, ')']];
  });
  return words.length === 0
    ? []
    : [{ cells: [[bold('There already, or brought by its owner: '), ...inlineRuns(joinInline(words))]] }];
}

/** One row for each thing and look on that day: its scenes, the copies that go, who has it in hand. */
function rowsOf(line: PlanLine, scenes: ReadonlySet<string>, plan: Plan): TableRow[] {
  if (line.department === 'kit') return [];
  const here = line.need.uses
    .map((use, index) => ({ use, copies: line.need.copies[index] ?? [] }))
    .filter(({ use }) => scenes.has(use.scene));
  const looks = [...new Set(here.map(({ use }) => stateWords(use)))];
  return looks.map((look, place) => {
    const same = here.filter(({ use }) => stateWords(use) === look);
    const copies = [...new Set(same.flatMap((one) => one.copies))];
    const count = Math.max(copies.length, ...same.map(({ use }) => use.count));
    const used = same.map(({ use }) => use);
    const shown = tellsCopies(line, copies) ? copyWords(copies) : '';
    const what = {
      stack: [
        [bold(whatWords(line, count, place === 0, used)), shown === '' ? '' : ` ${shown}`],
        ...(place === 0 ? [...roughWords(line), ...exactWords(line, plan), ...thingNotes(line, plan, scenes)] : []),
      ],
    };
    const who = [...new Set(used.flatMap((use) => use.by))].join(', ');
    return {
      cells: [tick, tick, tick, used.map((use) => use.slot.label).join(', '), what, look, who],
    };
  });
}

/** True when the labels say more than the name: the book's own, or numbers that tell copies apart. */
function tellsCopies({ need, element }: PlanLine, copies: readonly string[]): boolean {
  return (need.recommended > 1 && copies.some((copy) => /-\d+$/.test(copy))) || Boolean(element?.label);
}

/** The stand-ins and background copies that go along. */
function roughWords(line: PlanLine): string[] {
  const rough = listRoughCopies(line);
  return rough === null ? [] : [`and ${rough.words} (${copyWords([...rough.standIns, ...rough.background])})`];
}

/** What is written on it, unless its card or the list of papers says so. */
function exactWords(line: PlanLine, plan: Plan): string[] {
  const words = line.element?.words ?? null;
  return words === null || line.need.category === 'graphics' || hasCard(line, plan) ? [] : [`“${words}”`];
}

/** How many go: of what is used up, how many a take and in all; of all else the spares go too, for nobody knows which take needs them. */
function whatWords(line: PlanLine, count: number, isFirst: boolean, uses: readonly Use[]): string {
  const { name, need, element } = line;
  if (need.uncounted) return `${name} (how many?)`;
  const short = shortWords(line);
  if (short !== null && isFirst)
    return need.decided === 1 ? `${name}: ${short}` : `${need.decided} × ${name}: ${short}`;
  const wanted = countNeeded(need);
  const eating = need.usedUp ? listEating(need.uses, element) : [];
  if (uses.some((use) => eating.includes(use))) {
    const each = element?.perTake?.text ?? String(count);
    return `${name}, ${each} a take; ${amountWords(wanted, need.unit)} in all`;
  }
  const spares = isFirst && !need.usedUp ? countSpares(need) : 0;
  const all = Math.max(count, Math.min(wanted, count + spares));
  return all > 1 ? `${all} × ${name}` : name;
}

/** How many are wanted beside the copies that the scenes name. */
export function countSpares({ copies, decided, recommended }: PlanLine['need']): number {
  return Math.max(0, (decided ?? recommended) - new Set(copies.flat()).size);
}
