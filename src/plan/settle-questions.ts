import type { Diagnostic } from '../base/diagnostic.js';
import { editDistance } from '../base/nearest.js';
import type { Range } from '../base/text-range.js';
import { matchEntries } from '../book/match-entries.js';
import type { Book } from '../book/types.js';
import { answerFits } from '../breakdown/answer-fits.js';
import type { Breakdown, BreakdownScene, Question } from '../breakdown/types.js';
import { sayBook } from '../messages/book.js';

/**
 * The breakdown as the book settles it: without the questions that it answers and without the things that it refuses, as if a note of
 * the script had said so. An answer stands among the notes of its scene. What it answers or refuses
 * and this script does not have is reported.
 */
export function settleQuestions(
  breakdown: Breakdown,
  book: Book,
): { readonly breakdown: Breakdown; readonly messages: readonly Diagnostic[] } {
  const answers = new Map(book.answers.map((one) => [one.question.trim().toLowerCase(), one.text]));
  const refusals = book.refused.map((one) => ({ ...one, was: [] }));
  const { byThing, unmatched } = matchEntries(refusals, breakdown.elements);
  const refused: ReadonlySet<string> = new Set(byThing.keys());
  const isSettled = ({ id, element, wants, choices }: Question) => {
    const answer = answers.get(id);
    if (answer !== undefined && answerFits(wants, choices, answer)) return true;
    return element !== null && refused.has(element);
  };
  const scenes = breakdown.scenes.map((scene) => settleScene(scene, answers, isSettled));
  const settled = leaveOut({ ...breakdown, scenes }, refused);
  const gone = unmatched.map(({ id, at }) => tellUnmet('a thing', id, book, at));
  return { breakdown: settled, messages: [...gone, ...reportUnasked(breakdown, book)] };
}

/** Takes refused things out of scenes, clothes, places and the list of things. Dangers stay: they are not the book's to refuse. */
function leaveOut(breakdown: Breakdown, refused: ReadonlySet<string>): Breakdown {
  if (refused.size === 0) return breakdown;
  const kept = <T extends { readonly id: string }>(list: readonly T[]) => list.filter((one) => !refused.has(one.id));
  return {
    ...breakdown,
    elements: kept(breakdown.elements),
    scenes: breakdown.scenes.map((scene) => ({
      ...scene,
      elements: kept(scene.elements),
      wears: scene.wears.map((wears) => ({ ...wears, garments: kept(wears.garments) })),
    })),
    cast: breakdown.cast.map((person) => ({
      ...person,
      changes: person.changes.map((change) => ({ ...change, garments: kept(change.garments) })),
    })),
    places: breakdown.places.map((place) => ({ ...place, dressing: kept(place.dressing) })),
  };
}

function settleScene(
  scene: BreakdownScene,
  answers: ReadonlyMap<string, string>,
  isSettled: (question: Question) => boolean,
): BreakdownScene {
  if (!scene.questions.some(isSettled)) return scene;
  const notes = scene.questions.flatMap(({ id, line }) => {
    const text = answers.get(id);
    return text === undefined ? [] : [{ kind: 'answer' as const, text: `${id}: ${text}`, line }];
  });
  return {
    ...scene,
    questions: scene.questions.filter((question) => !isSettled(question)),
    notes: [...scene.notes, ...notes],
  };
}

function reportUnasked(breakdown: Breakdown, book: Book): Diagnostic[] {
  const open = breakdown.scenes.flatMap((scene) => scene.questions.map((question) => question.id));
  return book.answers.flatMap(({ question, at }) => {
    const id = question.trim().toLowerCase();
    if (open.includes(id)) return [];
    // The ids of two questions about one scene share most of their letters: only a slip of the pen counts as meant.
    const near = open.find((one) => editDistance(one, id) <= 2);
    if (near === undefined) return [tellUnmet('a question', question, book, at)];
    return [
      { file: book.file, ...sayBook('book-reference-unknown', { what: 'an open question', id: question, near }, at) },
    ];
  });
}

/** What is refused or answered and is not in this draft: it may come back in the next one. */
function tellUnmet(what: string, id: string, book: Book, at: Range): Diagnostic {
  return { file: book.file, ...sayBook('book-entry-without-script', { what, id, near: null }, at) };
}
