import { formatDate } from '../base/calendar-date.js';
import type { Diagnostic } from '../base/diagnostic.js';
import { formatMoney } from '../base/money.js';
import { findNearest } from '../base/nearest.js';
import type { Book } from '../book/types.js';
import { sayPlan } from '../messages/plan.js';
import { sumLooks } from './background.js';
import { checkDates } from './check-dates.js';
import { checkSources } from './check-sources.js';
import { checkTime } from './check-time.js';
import { lacksPack } from './line-money.js';
import type { Plan } from './plan-types.js';

type Check = (plan: Plan, book: Book) => Diagnostic[];

/** What speaks against a plan, one check after the other. */
const checks: readonly Check[] = [
  checkLocations,
  checkOpenPlaces,
  checkLooks,
  checkHelpers,
  checkTime,
  checkDates,
  checkSources,
  checkDays,
  checkLight,
  checkDrying,
  checkMess,
  checkCopies,
  checkPacks,
  checkMoney,
];

/** Runs every check over a finished plan. */
export function checkPlan(plan: Plan, book: Book): Diagnostic[] {
  return checks.flatMap((check) => check(plan, book));
}

function checkLocations(_: Plan, book: Book): Diagnostic[] {
  const known = book.locations.map((one) => one.id);
  const named = [
    ...book.days.flatMap((day) => day.locations.map((id) => ({ id, at: day.at }))),
    ...book.places.flatMap((place) => place.locations.map((id) => ({ id, at: place.at }))),
  ];
  return named
    .filter(({ id }) => !known.includes(id))
    .map(({ id, at }) => sayPlan('plan-location-unknown', { id, near: findNearest(id, known) }, at));
}

/** A place with several real locations, on a day that names none of them: people would be sent somewhere in silence. */
function checkOpenPlaces(plan: Plan, book: Book): Diagnostic[] {
  return plan.days.flatMap(({ number, scenes, openPlaces }) =>
    openPlaces.map(({ scene, place, choices, taken }) => {
      const label = scenes.find((slot) => slot.scene === scene)?.label ?? scene;
      return sayPlan('plan-place-open', { scenes: `scene ${label}`, place, choices, taken }, book.days[number - 1]?.at);
    }),
  );
}

function checkLooks(plan: Plan): Diagnostic[] {
  return plan.background.flatMap(({ name, count, entry }) => {
    const looks = sumLooks(entry);
    if (looks === null || count === null || looks === count) return [];
    return [sayPlan('plan-looks-count', { name, count, looks }, entry?.at)];
  });
}

function checkHelpers(_: Plan, book: Book): Diagnostic[] {
  const known = book.helpers.map((one) => one.id);
  const elements = [...book.elements, ...book.kit];
  const named = [
    ...elements.flatMap((one) => [one.who, ...one.prep.map((task) => task.who)].map((id) => ({ id, at: one.at }))),
    ...book.scenes.map((one) => ({ id: one.inCharge, at: one.at })),
  ];
  return named.flatMap(({ id, at }) =>
    id === null || known.includes(id) ? [] : [sayPlan('plan-helper-unknown', { id, near: findNearest(id, known) }, at)],
  );
}

function checkDays(plan: Plan, book: Book): Diagnostic[] {
  return plan.days.flatMap((day, index) =>
    day.warnings.length === 0
      ? []
      : [sayPlan('plan-day-heavy', { day: day.number, words: `${day.warnings.join('; ')}.` }, book.days[index]?.at)],
  );
}

function checkLight(plan: Plan, book: Book): Diagnostic[] {
  return plan.days.flatMap((day, index) =>
    day.sun.flatMap((sun) =>
      sun.clashes.map((words) => sayPlan('plan-light', { day: day.number, words }, book.days[index]?.at)),
    ),
  );
}

function checkDrying(plan: Plan, book: Book): Diagnostic[] {
  return plan.overnight
    .filter((one) => one.short)
    .map((one) =>
      sayPlan(
        'plan-drying-short',
        { name: one.name, words: `${one.words}.` },
        book.elements.find((entry) => entry.id === one.element)?.at,
      ),
    );
}

function checkMess(plan: Plan, book: Book): Diagnostic[] {
  // Too few copies for the states have a warning of their own.
  const few = new Set(
    plan.needs.filter((one) => one.decided !== null && one.decided < one.minimum).map((one) => one.id),
  );
  return plan.messes.flatMap(({ words, sure, things, scene }) => {
    if (sure && things.some((id) => few.has(id))) return [];
    const entry = book.elements.find((one) => one.id === things[0]) ?? book.days[(scene.day ?? 0) - 1];
    return [sayPlan(sure ? 'plan-mess-first' : 'plan-mess-near', { words }, entry?.at)];
  });
}

function checkCopies(plan: Plan): Diagnostic[] {
  return plan.lines.flatMap(({ need, element }) => {
    const { decided, minimum } = need;
    if (decided === null || decided >= minimum || element?.source === 'cut') return [];
    return [sayPlan('plan-copies-few', { name: need.name, decided, minimum, why: need.minimumReason }, element?.at)];
  });
}

/** A price that cannot be multiplied: nobody says how much it buys. */
function checkPacks(plan: Plan): Diagnostic[] {
  return plan.lines.flatMap(({ element, need, name, unitPrice }) => {
    if (element === null || unitPrice === null || need.toGet === 0 || !lacksPack(element)) return [];
    const amount =
      need.unit === 'piece' ? `${need.toGet} × ${element.perTake?.text ?? ''}` : `${need.toGet} ${need.unit}`;
    return [sayPlan('plan-pack-unknown', { name, price: formatMoney(unitPrice), amount }, element.at)];
  });
}

function checkMoney(plan: Plan, book: Book): Diagnostic[] {
  const { budget, forecast, headroom, peak } = plan.money;
  const printed = budget === null ? '' : formatMoney(budget);
  const at = book.money.budgetAt;
  return [
    ...(headroom !== null && headroom.minor < 0
      ? [sayPlan('plan-over-budget', { forecast: formatMoney(forecast), budget: printed }, at)]
      : []),
    ...(budget !== null && peak !== null && peak.out.minor > budget.minor
      ? [sayPlan('plan-cash-short', { peak: formatMoney(peak.out), budget: printed, date: formatDate(peak.date) }, at)]
      : []),
    ...(budget !== null && book.money.otherCosts.length === 0
      ? [sayPlan('plan-other-costs-missing', undefined, book.money.at)]
      : []),
  ];
}
