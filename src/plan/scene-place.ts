import { matchEntries } from '../book/match-entries.js';
import type { Book, BookDay, BookLocation } from '../book/types.js';
import type { Breakdown, BreakdownScene } from '../breakdown/types.js';

/** Finds the real locations of scenes and days. */
export interface PlaceFinder {
  /** Locations that the book lets play the place of a scene, by id. */
  readonly playing: (scene: BreakdownScene) => readonly string[];
  /** The one location of a scene on a shooting day, or null when nobody says. */
  readonly onDay: (scene: BreakdownScene, day: BookDay) => string | null;
  readonly location: (id: string) => BookLocation | null;
}

/** Makes the finder for one book: one real location may play many places, and one place may need many locations. */
export function createPlaceFinder(breakdown: Breakdown, book: Book): PlaceFinder {
  const places = matchEntries(
    book.places,
    breakdown.places.map((place) => ({ id: place.id, names: [place.name] })),
  ).byThing;
  const locations = new Map(book.locations.map((location) => [location.id, location]));
  const playing = (scene: BreakdownScene) => places.get(scene.placeId)?.locations ?? [];
  const onDay = (scene: BreakdownScene, day: BookDay) => {
    const own = playing(scene);
    return day.locations.find((id) => own.includes(id)) ?? day.locations[0] ?? own[0] ?? null;
  };
  return { playing, onDay, location: (id) => locations.get(id) ?? null };
}
