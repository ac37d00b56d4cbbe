import { formatClockTime } from '../../base/clock-time.js';
import { formatAmount, formatMoney } from '../../base/money.js';
import type { BookHelper } from '../../book/types.js';
import { toHome } from '../../plan/line-money.js';
import type { PlanLine } from '../../plan/line-types.js';
import { type Block, blank, bold, type Inline, tick } from '../layout/kit.js';
import type { Production } from '../types.js';
import { dateWords, dayHead, locationOf, locationWords } from './plan-words.js';
import { whenWords } from './work-calendar.js';

/** Tasks and questions on the front page: what comes first. */
const nextTasks = 5;
const frontQuestions = 4;

/** What the book adds to the front page of a helper's pack: their days, their next tasks, their money, their dangers. */
export function packFrontBlocks(
  production: Production,
  job: BookHelper['does'][number],
  isMine: (line: PlanLine) => boolean,
): Block[] {
  const helpers = production.book.helpers.filter((one) => one.does.includes(job));
  const names = helpers.map((one) => one.name);
  return [
    {
      kind: 'heading',
      level: 2,
      text: names.length > 0 ? `For ${names.join(' and ')}` : 'Your days and your tasks',
      bookmark: 'Your days',
    },
    { kind: 'section', label: 'Shooting days', blocks: [{ kind: 'entries', entries: dayEntries(production) }] },
    { kind: 'section', label: 'Phone', blocks: [{ kind: 'entries', entries: phoneEntries(production, helpers) }] },
    {
      kind: 'section',
      label: 'Next for you',
      blocks: [{ kind: 'entries', entries: taskEntries(production, helpers) }],
    },
    {
      kind: 'section',
      label: 'Your money',
      blocks: [
        {
          kind: 'entries',
          entries:
            helpers.length > 0
              ? helpers.map((one) => cashEntry(production, one))
              : [['Given ', blank(60), '  spent ', blank(60), '  left ', blank(60)]],
        },
      ],
    },
    {
      kind: 'section',
      label: 'You answer for',
      blocks: [{ kind: 'entries', entries: chargeEntries(production, helpers) }],
    },
    ...askBlocks(production, isMine),
  ];
}

/** What the plan waits to be told of a pack's own things; the rest stands under "How many of each". */
function askBlocks({ plan }: Production, isMine: (line: PlanLine) => boolean): Block[] {
  const questions = plan.lines
    .filter((line) => isMine(line) && line.status !== 'done without')
    .flatMap(({ need }) => need.questions.map((words): Inline => [bold('? '), `${need.name}: ${words}`]));
  if (questions.length === 0) return [];
  const rest = questions.length - frontQuestions;
  const more: Inline[] = rest > 0 ? [`and ${rest} more under “How many of each, and why”`] : [];
  return [
    {
      kind: 'section',
      label: 'Asked of you',
      blocks: [{ kind: 'entries', entries: [...questions.slice(0, frontQuestions), ...more] }],
    },
  ];
}

function dayEntries({ plan, book }: Production): Inline[] {
  if (plan.days.length === 0) return ['No shooting days yet.'];
  return plan.days.map((day) => {
    const places = day.locations.map((id) =>
      [locationWords(id, book), locationOf(id, book)?.address].filter(Boolean).join(', '),
    );
    return [
      bold(dayHead(day)),
      `: call ${formatClockTime(day.call.value)}${places.length > 0 ? `, ${places.join('; then ')}` : ''}`,
    ];
  });
}

function phoneEntries({ book }: Production, own: readonly BookHelper[]): Inline[] {
  const others = book.helpers.filter((one) => !own.includes(one) && one.phone !== null);
  return others.length > 0
    ? others.map((one) => `${one.name} (${one.does.join(', ')}): ${one.phone}`)
    : [['Ask, or phone ', blank(160)]];
}

function taskEntries({ plan }: Production, helpers: readonly BookHelper[]): Inline[] {
  const ids = new Set(helpers.map((one) => one.id));
  const mine = plan.tasks.filter((task) => !task.done && task.who !== null && ids.has(task.who)).slice(0, nextTasks);
  if (mine.length === 0) return ['Nothing with a date yet.'];
  return mine.map((task) => [tick, ' ', bold(task.late ? 'LATE ' : ''), ...[whenWords(task)].flat(), `: ${task.what}`]);
}

/** Given, spent as far as the book knows, left. */
function cashEntry({ plan, book }: Production, helper: BookHelper): Inline {
  if (helper.cash === null) return [`${helper.name}: given `, blank(60), '  spent ', blank(60), '  left ', blank(60)];
  const given = toHome(helper.cash, book);
  const spent = plan.lines
    .filter((line) => line.paidBy === helper.id && line.paid !== null)
    .reduce((sum, line) => sum + toHome(line.paid as NonNullable<typeof line.paid>, book).minor, 0);
  const owed = plan.lines.filter((line) => line.paidBy === helper.id && line.paid !== null && line.receipt === null);
  const left = { minor: given.minor - spent, currency: given.currency };
  return [
    `${helper.name}: given ${formatMoney(given)}, spent ${formatAmount({ minor: spent, currency: given.currency })}, left `,
    bold(formatAmount(left)),
    owed.length === 0 ? '. Keep every receipt.' : `. Receipts owed: ${owed.map((line) => line.name).join(', ')}.`,
  ];
}

function chargeEntries({ plan, book }: Production, helpers: readonly BookHelper[]): Inline[] {
  const ids = new Set(helpers.map((one) => one.id));
  const scenes = book.scenes
    .filter((entry) => entry.inCharge !== null && ids.has(entry.inCharge))
    .map((entry) => entry.id);
  const slots = plan.slots.filter((slot) => scenes.includes(slot.scene));
  if (slots.length === 0) return ['No danger is given to you by name. If you see one, say so.'];
  return slots.map((slot) => [
    bold(`Scene ${slot.label}`),
    slot.date === null ? '' : `, ${dateWords(slot.date)}`,
    ': you are the one who says stop.',
  ]);
}
