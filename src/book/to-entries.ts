import type { Diagnostic } from '../base/diagnostic.js';
import { slug } from '../base/slug.js';
import { sayBook } from '../messages/book.js';
import { usualDay } from '../trade/shooting-times.js';
import type { AmountReader } from './amounts.js';
import type { PlacedDocument } from './book-places.js';
import { locationFacts, type WrittenBook } from './book-shape.js';
import { checkZone, choose, names, texts } from './choices.js';
import type {
  BookBackground,
  BookDay,
  BookHelper,
  BookLocation,
  BookPerson,
  BookPlace,
  BookScene,
  BookSupplier,
} from './types.js';

/** The shooting days in order of date. A day without a date gets a message and is left out. */
export function toDays(written: WrittenBook, placed: PlacedDocument, messages: Diagnostic[]): BookDay[] {
  const days = (written.days ?? []).flatMap((entry, index): BookDay[] => {
    const at = placed.at(['days', index]);
    if (!entry) return [];
    if (!entry.date) {
      // A date that cannot be read has its message already.
      if (!placed.isWritten(['days', index, 'date'])) messages.push(sayBook('book-day-without-date', undefined, at));
      return [];
    }
    const call = choose(entry.call ?? written.usual?.call, usualDay.call);
    const wrap = choose(entry.wrap ?? written.usual?.wrap, usualDay.wrap);
    return [
      {
        date: entry.date,
        call,
        wrap: { ...wrap, value: wrap.value <= call.value ? wrap.value + 1440 : wrap.value },
        locations: names(entry.at),
        scenes: (entry.scenes ?? []).flatMap((text, place) =>
          names([text]).map((name) => ({ text: name, at: placed.at(['days', index, 'scenes', place]) })),
        ),
        meal: entry.meal ?? null,
        note: entry.note ?? null,
        shot: entry.shot ?? false,
        at,
      },
    ];
  });
  return days.sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : a.call.value - b.call.value));
}

/** The real locations, as the book lists them. */
export function toLocations(written: WrittenBook, placed: PlacedDocument, messages: Diagnostic[]): BookLocation[] {
  return Object.entries(written.locations ?? {}).map(([id, entry]) => ({
    id,
    name: entry?.name ?? null,
    address: entry?.address ?? null,
    coordinates: entry?.coordinates ?? null,
    zone: checkZone(entry?.zone, ['locations', id, 'zone'], placed, messages),
    facts: locationFacts.flatMap((label) => {
      const text = entry?.[label];
      return text === null || text === undefined ? [] : [{ label, text }];
    }),
    at: placed.keyAt(['locations', id]),
  }));
}

/** The places of the story and what plays them. */
export function toPlaces(written: WrittenBook, placed: PlacedDocument): BookPlace[] {
  return Object.entries(written.places ?? {}).map(([id, entry]) => ({
    id,
    was: texts(entry?.was),
    locations: names(entry?.at),
    note: entry?.note ?? null,
    at: placed.keyAt(['places', id]),
  }));
}

/** The cast. */
export function toPeople(written: WrittenBook, placed: PlacedDocument): BookPerson[] {
  return Object.entries(written.people ?? {}).map(([id, entry]) => ({
    id,
    was: texts(entry?.was),
    playedBy: entry?.['played by'] ?? null,
    minor: entry?.minor ?? null,
    hoursADay: entry?.['hours a day'] ?? null,
    transport: entry?.transport ?? null,
    food: entry?.food ?? null,
    owns: texts(entry?.owns),
    agreement: entry?.agreement ?? null,
    privately: {
      phone: entry?.phone ?? null,
      email: entry?.email ?? null,
      sizes: Object.entries(entry?.sizes ?? {}).map(([label, text]) => ({ label, text: String(text) })),
      allergies: texts(entry?.allergies),
    },
    at: placed.keyAt(['people', id]),
  }));
}

/** The people in the background. */
export function toBackground(written: WrittenBook, placed: PlacedDocument): BookBackground[] {
  return Object.entries(written.background ?? {}).map(([id, entry]) => ({
    id,
    was: texts(entry?.was),
    count: entry?.count ?? null,
    looks: (entry?.looks ?? []).flatMap((one) => (one ? [{ look: one.look, count: one.count ?? null }] : [])),
    bring: entry?.bring ?? null,
    minor: entry?.minor ?? null,
    hoursADay: entry?.['hours a day'] ?? null,
    with: entry?.with ?? null,
    note: entry?.note ?? null,
    at: placed.keyAt(['background', id]),
  }));
}

/** The helpers. */
export function toHelpers(written: WrittenBook, placed: PlacedDocument, amounts: AmountReader): BookHelper[] {
  return Object.entries(written.helpers ?? {}).map(([id, entry]) => ({
    id,
    name: entry?.name ?? id,
    does: (entry?.does ?? []).filter((one) => one !== null && one !== undefined),
    phone: entry?.phone ?? null,
    cash: amounts.read(entry?.cash, ['helpers', id, 'cash']),
    allergies: texts(entry?.allergies),
    at: placed.keyAt(['helpers', id]),
  }));
}

/** Shops, hire firms and lenders. */
export function toSuppliers(written: WrittenBook, placed: PlacedDocument, amounts: AmountReader): BookSupplier[] {
  return Object.entries(written.suppliers ?? {}).map(([id, entry]) => ({
    id,
    name: entry?.name ?? id,
    contact: entry?.contact ?? null,
    deliveryDays: entry?.delivery ?? null,
    deliversOn: entry?.delivers ?? null,
    shipping: amounts.read(entry?.shipping, ['suppliers', id, 'shipping']),
    freeFrom: amounts.read(entry?.['free from'], ['suppliers', id, 'free from']),
    at: placed.keyAt(['suppliers', id]),
  }));
}

/** What the book says of single scenes. */
export function toScenes(written: WrittenBook, placed: PlacedDocument): BookScene[] {
  return Object.entries(written.scenes ?? {}).map(([id, entry]) => ({
    id,
    was: texts(entry?.was),
    begin: entry?.begin ?? null,
    setups: entry?.setups ?? null,
    takes: entry?.takes ?? null,
    inCharge: entry?.['in charge'] ?? null,
    shots: texts(entry?.shots),
    reset: texts(entry?.reset),
    resetMinutes: entry?.['reset minutes'] ?? null,
    cold: entry?.cold ?? false,
    note: entry?.note ?? null,
    at: placed.keyAt(['scenes', id]),
  }));
}

/** The id under which a supplier named in an entry stands, or null when the name is free words. */
export function findSupplier(suppliers: readonly BookSupplier[], from: string | null): BookSupplier | null {
  if (from === null) return null;
  const wanted = slug(from);
  return suppliers.find((one) => one.id === from || slug(one.id) === wanted || slug(one.name) === wanted) ?? null;
}
