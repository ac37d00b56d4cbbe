import type { Book, BookElement, BookPlace, BookScene } from './types.js';

/** Earlier ids and what they are now. */
export interface NewNames {
  readonly scenes: ReadonlyMap<string, string>;
  readonly places: ReadonlyMap<string, string>;
}

/**
 * The book as if it had been written with the present ids of scenes and places: entries, days, the scenes in which a thing is
 * used up, and answers. The earlier id stands among the earlier names. `was` of its own entries counts as well, save where a
 * scene of the script goes by that id (`live`). Of two entries for one scene or place the empty one goes; where both say something,
 * both stay.
 */
export function renameEntries(book: Book, names: NewNames, live: ReadonlySet<string>): Book {
  const own = [...earlierNames(book.scenes)].filter(([earlier]) => !live.has(earlier));
  const scenes = new Map([...own, ...names.scenes]);
  const scene = (text: string) => scenes.get(text) ?? text;
  const element = (one: BookElement): BookElement =>
    one.usedUpIn.some((text) => scenes.has(text)) ? { ...one, usedUpIn: one.usedUpIn.map(scene) } : one;
  const answer = answerRenamer(scenes);
  return {
    ...book,
    days: book.days.map((day) => ({ ...day, scenes: day.scenes.map(({ text, at }) => ({ text: scene(text), at })) })),
    scenes: renameAll(book.scenes, names.scenes),
    places: renameAll(book.places, names.places),
    elements: book.elements.map(element),
    kit: book.kit.map(element),
    answers: book.answers.map((one) => ({ ...one, question: answer(one.question) })),
  };
}

/** The earlier ids that the entries of a book note themselves. */
function earlierNames(entries: readonly (BookScene | BookPlace)[]): ReadonlyMap<string, string> {
  return new Map(entries.flatMap(({ id, was }) => was.map((earlier) => [earlier, id] as const)));
}

function renameAll<E extends BookScene | BookPlace>(entries: readonly E[], names: ReadonlyMap<string, string>): E[] {
  const bare = new Set(entries.filter(isBareEntry).map(({ id }) => id));
  const wanted = new Set(entries.flatMap(({ id }) => names.get(id) ?? []));
  const said = new Set(entries.filter(({ id }) => !bare.has(id)).map(({ id }) => id));
  return entries.flatMap((entry): E[] => {
    const to = names.get(entry.id);
    // An entry that says nothing makes room for the one that does.
    if (to === undefined) return wanted.has(entry.id) && bare.has(entry.id) ? [] : [entry];
    return said.has(to) ? [entry] : [{ ...entry, id: to, was: [...entry.was, entry.id] }];
  });
}

/** True for an entry that only has a name, as a new one has. */
export function isBareEntry(entry: object): boolean {
  return Object.entries(entry).every(
    ([key, value]) =>
      key === 'id' || key === 'at' || key === 'was' || value === null || value === false || isEmptyList(value),
  );
}

function isEmptyList(value: unknown): boolean {
  return Array.isArray(value) && value.length === 0;
}

/** Questions end with the id of their scene: of several that fit, the longest is meant. */
function answerRenamer(scenes: ReadonlyMap<string, string>): (question: string) => string {
  const earlier = [...scenes.keys()].sort((a, b) => b.length - a.length);
  return (question) => {
    const id = question.trim().toLowerCase();
    const from = earlier.find((one) => id.endsWith(`-${one}`));
    return from === undefined ? question : `${id.slice(0, id.length - from.length)}${scenes.get(from)}`;
  };
}

/** What stands behind the name of each scene's entry in the text of a book, by the id: what happened there when it was written. */
export function readRemarks(book: Book, text: string): ReadonlyMap<string, string> {
  return new Map(
    book.scenes.flatMap(({ id, at }) => {
      const rest = text.slice(at.end.offset).split('\n', 1)[0] ?? '';
      const remark = /^["']?\s*:\s*(?:\{[^}]*\}\s*)?#\s*(.+?)\s*$/.exec(rest)?.[1];
      return remark === undefined ? [] : [[id, remark] as const];
    }),
  );
}

/** The names of scenes and of places that a book goes by, with where they stand; the ids that its entries only note as earlier are left out. */
export function listUsedNames(book: Book) {
  const scenes = [
    ...book.days.flatMap((day) => day.scenes),
    ...book.scenes.map(({ id, at }) => ({ text: id, at })),
    ...[...book.elements, ...book.kit].flatMap(({ usedUpIn, at }) => usedUpIn.map((text) => ({ text, at }))),
  ];
  const noted = new Set(book.scenes.flatMap(({ was }) => was));
  const notedPlaces = new Set(book.places.flatMap(({ was }) => was));
  return {
    scenes: scenes.filter(({ text }) => !noted.has(text)),
    places: book.places.map(({ id, at }) => ({ text: id, at })).filter(({ text }) => !notedPlaces.has(text)),
    answers: book.answers.map(({ question, at }) => ({ text: question.trim().toLowerCase(), at })),
  };
}
