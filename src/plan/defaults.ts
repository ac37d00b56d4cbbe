import { formatClockTime } from '../base/clock-time.js';
import { formatPercent } from '../base/ratio.js';
import type { Book } from '../book/types.js';
import { quantityDefaults } from '../trade/quantity-defaults.js';
import { goldenHour } from '../trade/sun-heights.js';
import type { PlanDay } from './day-types.js';
import type { PlanLine } from './line-types.js';
import type { MoneyPlan } from './money-types.js';
import { counted } from './per-take.js';

/** Every default that the plan rests on, in words: what nobody said and the tool assumed. */
export function listDefaults(
  book: Book,
  lines: readonly PlanLine[],
  days: readonly PlanDay[],
  money: MoneyPlan,
): string[] {
  const usedUp = lines.some(
    (line) => line.need.usedUp || line.need.uses.some((use) => use.onCamera === 'copy each take'),
  );
  const guessedSetups = days.flatMap((day) => day.scenes).filter((slot) => !slot.setups.given);
  const call = days.find((day) => !day.call.given);
  const wrap = days.find((day) => !day.wrap.given);
  const say = (when: boolean, words: string) => (when ? [words] : []);
  return [
    ...say(!money.currencyGiven, `Currency: ${money.currency}.`),
    ...say(money.budget === null, 'Budget: none given, so there is no headroom to show.'),
    ...say(!money.contingencyRate.given, `${capital(money.contingencyReason)}.`),
    ...say(!book.money.pricesIncludeTax.given, 'Prices are taken to include tax.'),
    ...say(usedUp && !book.takes.given, `Takes: ${book.takes.value} of each setup.`),
    ...say(usedUp && !book.setups.given, `Setups that see a thing used up: ${book.setups.value}.`),
    ...say(usedUp && !book.rehearsals.given, `Rehearsals with the real thing: ${book.rehearsals.value}.`),
    ...say(
      usedUp && !book.spare.given,
      `Spare for what is used up: ${formatPercent(book.spare.value)}, at least one whole piece.`,
    ),
    ...deliveryWords(lines),
    ...say(!book.workingDays.given, 'Suppliers work Monday to Friday.'),
    ...say(book.holidays.length === 0, 'Holidays: none given, so every weekday counts as a working day.'),
    ...say(
      lines.some((line) => line.dates.prepDays > 0) && !book.prepHoursADay.given,
      `Preparation: ${book.prepHoursADay.value} hours of work a day.`,
    ),
    ...say(
      lines.some((line) => line.dates.fittingAssumed),
      `Fittings without a date: ${counted(quantityDefaults.lastFitting.value, 'day')} before the first shooting day, at the latest.`,
    ),
    ...say(!book.drier.given, 'No drier machine.'),
    ...say(call !== undefined, `Call: ${call ? formatClockTime(call.call.value) : ''} where the day does not say.`),
    ...say(wrap !== undefined, `Wrap: ${wrap ? formatClockTime(wrap.wrap.value) : ''} where the day does not say.`),
    ...say(
      guessedSetups.length > 0,
      `Setups: three to six a page for ${guessedSetups.length} scenes that nobody counted.`,
    ),
    ...say(
      !book.restHours.given,
      `Rest between wrap and call: ${book.restHours.value} hours is called short below that; the law where you shoot may ask for more.`,
    ),
    ...say(
      !book.goldenHour.given && days.some((day) => day.sun.some((sun) => sun.times !== null)),
      `Golden hour: the Sun between ${goldenHour.from}° and ${goldenHour.to}° (there is no standard).`,
    ),
  ];
}

/** The days of delivery that were assumed, each with what it stands for. */
function deliveryWords(lines: readonly PlanLine[]): string[] {
  const deliveries = lines.flatMap(({ dates }) => [
    ...(dates.orderBy === null ? [] : [dates.deliveryDays]),
    ...dates.materials.map((material) => material.deliveryDays),
  ]);
  const guessed = deliveries.filter((one) => !one.given);
  const days = [...new Set(guessed.map((one) => one.value))].sort((a, b) => b - a);
  const usual = quantityDefaults.deliveryDays.value;
  const words = days.map(
    (count) =>
      `${counted(count, 'working day')} ${count === usual ? 'for what is bought' : 'to fetch what is borrowed or hired'}`,
  );
  return words.length > 0 ? [`Delivery: ${words.join(', ')}, where neither the line nor the supplier says.`] : [];
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
