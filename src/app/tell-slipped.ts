import type { Diagnostic } from '../base/diagnostic.js';
import { shortenRemark } from '../book/insert-entries.js';
import type { Book } from '../book/types.js';
import { labelScenes } from '../breakdown/scene-label.js';
import type { Breakdown } from '../breakdown/types.js';
import type { EarlierFile } from '../compare/choose-baseline.js';
import { findSlipped, type NamedDay } from '../compare/find-slipped.js';
import { readRenames } from '../compare/read-renames.js';
import type { DraftFacts, SlippedName } from '../compare/types.js';
import { sayCompare } from '../messages/compare.js';

/**
 * Names of scenes in the days of a book that find another scene than they did in the runs before: those that the comparison
 * shows, and those that the last run told and nobody has put right since.
 */
export function listSlipped(
  book: Book,
  breakdown: Breakdown,
  after: DraftFacts,
  drafts: readonly DraftFacts[],
  written: EarlierFile | null,
): SlippedName[] {
  const days = nameDays(book, breakdown);
  const found = drafts.flatMap((facts) => findSlipped(facts, after.scenes, days));
  const told = written?.text.includes('"slipped"') ? readRenames(written.text).slipped : [];
  const all = [...found, ...told.filter((one) => isStillWrong(one, days, breakdown))];
  return [...new Map(all.map((one) => [`${one.date} ${one.name}`, one])).values()];
}

/** One message for each name, at its place in the book. */
export function tellSlipped(slipped: readonly SlippedName[], book: Book, breakdown: Breakdown): Diagnostic[] {
  const labels = labelScenes(breakdown.scenes);
  return slipped.map(({ date, name, meant }) => {
    const day = book.days.find((one) => one.date === date);
    const at = day?.scenes.find(({ text }) => text === name)?.at ?? day?.at;
    const synopsis = shortenRemark(breakdown.scenes.find(({ id }) => id === meant)?.synopsis ?? '');
    return sayCompare('name-slipped', { name, meant, label: labels.get(meant) ?? meant, synopsis }, at);
  });
}

function isStillWrong({ date, name, meant }: SlippedName, days: readonly NamedDay[], { scenes }: Breakdown): boolean {
  const isShot = days.some((day) => day.scenes.some(({ scene }) => scene === meant));
  const isNamed = days.some((day) => day.date === date && day.scenes.some((one) => one.name === name));
  return isNamed && !isShot && scenes.some(({ id }) => id === meant);
}

function nameDays(book: Book, { scenes }: Breakdown): NamedDay[] {
  const labels = new Map([...labelScenes(scenes)].map(([id, label]) => [label.toLowerCase(), id]));
  const ids = new Set(scenes.map(({ id }) => id));
  const find = (name: string) => (ids.has(name) ? name : (labels.get(name.trim().toLowerCase()) ?? null));
  return book.days.map((day) => ({
    date: day.date,
    scenes: day.scenes.map(({ text }) => ({ name: text, scene: find(text) })),
  }));
}
