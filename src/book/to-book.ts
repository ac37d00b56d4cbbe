import type { CalendarDate } from '../base/calendar-date.js';
import type { Diagnostic } from '../base/diagnostic.js';
import { parsePercent, type Ratio } from '../base/ratio.js';
import { quantityDefaults } from '../trade/quantity-defaults.js';
import { dayLimits } from '../trade/shooting-times.js';
import { goldenHour } from '../trade/sun-heights.js';
import { type AmountReader, createAmountReader, fallbackCurrency, readRates } from './amounts.js';
import type { Path, PlacedDocument } from './book-places.js';
import type { WrittenBook } from './book-shape.js';
import { checkZone, choose, texts, toNumber } from './choices.js';
import { toElement } from './to-element.js';
import {
  toBackground,
  toDays,
  toHelpers,
  toLocations,
  toPeople,
  toPlaces,
  toScenes,
  toSuppliers,
} from './to-entries.js';
import type { Book, BookMoney } from './types.js';

/** Turns a checked book into what the plan reads: every figure that the book leaves out is a default known as one. */
export function toBook(
  written: WrittenBook,
  file: string,
  placed: PlacedDocument,
): { book: Book; messages: Diagnostic[] } {
  const messages: Diagnostic[] = [];
  const home = written.money?.currency ?? fallbackCurrency;
  const rates = readRates(written.money?.rates, placed, messages);
  const amounts = createAmountReader(home, rates, placed, messages);
  const elements = (key: 'elements' | 'kit') =>
    Object.entries(written[key] ?? {}).map(([id, entry]) => toElement(id, entry, [key, id], placed, amounts));
  const book: Book = {
    file,
    money: toMoney(written, home, rates, amounts, placed),
    ...toUsual(written, placed, messages),
    days: toDays(written, placed, messages),
    locations: toLocations(written, placed, messages),
    places: toPlaces(written, placed),
    people: toPeople(written, placed),
    background: toBackground(written, placed),
    helpers: toHelpers(written, placed, amounts),
    suppliers: toSuppliers(written, placed, amounts),
    scenes: toScenes(written, placed),
    elements: elements('elements'),
    kit: elements('kit'),
    refused: texts(written.refused).map((id, index) => ({ id, at: placed.at(['refused', index]) })),
    answers: Object.entries(written.answers ?? {}).map(([question, text]) => ({
      question,
      text: text === true ? 'yes' : text === false ? 'no' : String(text),
      at: placed.keyAt(['answers', question]),
    })),
  };
  return { book, messages };
}

function toMoney(
  written: WrittenBook,
  home: string,
  rates: BookMoney['rates'],
  amounts: AmountReader,
  placed: PlacedDocument,
): BookMoney {
  const money = written.money;
  const other = (money?.['other costs'] ?? []).flatMap((entry, index) => {
    const path: Path = ['money', 'other costs', index];
    const cost = entry ? amounts.read(entry.cost, [...path, 'cost']) : null;
    if (!entry || !cost) return [];
    const paid = amounts.read(entry.paid, [...path, 'paid']);
    return [
      { what: entry.what, cost, per: entry.per ?? 'once', paid, on: entry['paid on'] ?? null, at: placed.at(path) },
    ];
  });
  return {
    currency: choose(money?.currency, home),
    budget: amounts.read(money?.budget, ['money', 'budget']),
    contingency: money?.contingency ?? null,
    tax: money?.tax ?? null,
    pricesIncludeTax: choose(money?.['prices include tax'], true),
    rates,
    otherCosts: other,
    at: placed.keyAt(['money']),
    budgetAt: placed.keyAt(['money', 'budget']),
  };
}

function toUsual(written: WrittenBook, placed: PlacedDocument, messages: Diagnostic[]) {
  const usual = written.usual;
  return {
    prepStarts: written.prep?.starts ?? null,
    prepHoursADay: choose(toNumber(written.prep?.['hours a day']), 4),
    drier: choose(written.prep?.drier, false),
    workingDays: choose<readonly number[]>(written['working days'], [1, 2, 3, 4, 5]),
    holidays: (written.holidays ?? []).filter((date): date is CalendarDate => typeof date === 'string'),
    takes: choose<number>(usual?.takes, quantityDefaults.takes.value),
    setups: choose<number>(usual?.setups, quantityDefaults.setups.value),
    rehearsals: choose<number>(usual?.rehearsals, quantityDefaults.rehearsals.value),
    spare: choose(usual?.spare, parsePercent(quantityDefaults.spare.value) as Ratio),
    restHours: choose<number>(toNumber(usual?.['rest hours']), dayLimits.restHours),
    goldenHour: choose(usual?.['golden hour'], { from: goldenHour.from as number, to: goldenHour.to as number }),
    zone: checkZone(usual?.zone, ['usual', 'zone'], placed, messages),
  };
}
