import type { Diagnostic } from '../base/diagnostic.js';
import { slug } from '../base/slug.js';
import type { Range } from '../base/text-range.js';
import type { Finds } from '../find/types.js';
import { sayBreakdown } from '../messages/breakdown.js';
import type { Note } from '../script/types.js';
import { type Answers, questionIds, saysNo, saysYes } from './answers.js';
import { type Ground, notesOf, type SceneGround } from './ground.js';
import { coreName, isStruckBy, singular } from './same-thing.js';
import type { Sighting } from './sighting.js';

interface Refusal {
  readonly name: string;
  readonly at: Range;
  /** Null: everywhere. */
  readonly scene: number | null;
  used: boolean;
}

/** What the writer said no to. */
export interface Refusals {
  /** Every refusal that holds in a scene. */
  readonly inScene: (scene: number) => readonly Refusal[];
  readonly all: readonly Refusal[];
}

/** Reads the `no` notes of a script, and the answers that say no. A note before the first scene holds everywhere. */
export function readRefusals(ground: Ground, answers: Answers): Refusals {
  const everywhere = refusalsOf(ground.script.notes, null);
  const local = ground.scenes.map((scene) => [
    ...refusalsOf(scene.scene.notes, scene.index),
    ...refusedByAnswer(scene, answers),
  ]);
  const wide = [...everywhere, ...local.flat().filter(({ scene }) => scene === null)];
  const here = local.map((list) => [...list.filter(({ scene }) => scene !== null), ...wide]);
  return { inScene: (scene) => here[scene] ?? [], all: [...everywhere, ...local.flat()] };
}

function refusalsOf(notes: readonly Note[], scene: number | null): Refusal[] {
  return notesOf(notes, 'no').flatMap(({ names, everywhere, at }) =>
    names.map((name) => ({ name, at, scene: everywhere ? null : scene, used: false })),
  );
}

/** A no to the question whether a scene needs a thing. */
function refusedByAnswer({ index, id, scene, finds }: SceneGround, answers: Answers): Refusal[] {
  const at = scene.heading.at;
  return finds.elements
    .filter(({ name }) => saysNo(answers, questionIds.need(slug(name), id)))
    .map(({ name }) => ({ name, at, scene: index, used: true }));
}

/** True when a thing is refused in a scene; remembers that the refusal was of use. */
export function isRefused(refusals: Refusals, scene: number, name: string): boolean {
  const hits = refusals.inScene(scene).filter((refusal) => isStruckBy(name, refusal.name));
  for (const hit of hits) hit.used = true;
  return hits.length > 0;
}

/** The ground without what is refused. A find that a mark covers stays: it tells the mark's category. */
export function strikeRefused(ground: Ground, refusals: Refusals): Ground {
  return { ...ground, scenes: ground.scenes.map((scene) => ({ ...scene, finds: strikeFinds(scene, refusals) })) };
}

function strikeFinds({ index, scene, finds }: SceneGround, refusals: Refusals): Finds {
  if (refusals.inScene(index).length === 0) return finds;
  const marks = scene.blocks.flatMap((block) =>
    block.kind === 'action' ? block.lines.flatMap((line) => line.marks.map(({ at }) => at)) : [],
  );
  const isMarked = (at: Range) =>
    marks.some((mark) => at.start.offset >= mark.start.offset && at.end.offset <= mark.end.offset);
  return {
    ...finds,
    elements: finds.elements.filter((find) => isMarked(find.at) || !isRefused(refusals, index, find.name)),
    people: finds.people.filter((find) => !isRefused(refusals, index, find.name)),
    moves: finds.moves.filter((move) => isMarked(move.at) || !isRefused(refusals, index, move.name)),
  };
}

/** The ground in which a thing that the writer said yes to is found for sure. */
export function confirmFinds(ground: Ground, answers: Answers): Ground {
  const scenes = ground.scenes.map((scene) => {
    const elements = scene.finds.elements.map((find) =>
      saysYes(answers, questionIds.need(slug(find.name), scene.id))
        ? { ...find, known: 'found' as const, confidence: 1, strength: null }
        : find,
    );
    return { ...scene, finds: { ...scene.finds, elements } };
  });
  return { ...ground, scenes };
}

/** Tells of refusals that meet a marked thing, and of those that nothing answers to any more. */
export function tellRefusals(refusals: Refusals, sightings: readonly (readonly Sighting[])[]): Diagnostic[] {
  const names = sightings.map(declaredNames);
  const anywhere = new Set(names.flatMap((set) => [...set]));
  return refusals.all.flatMap(({ name, at, scene, used }) => {
    const declared = scene === null ? anywhere : (names[scene] ?? new Set());
    if (declared.has(singular(coreName(name)))) return [sayBreakdown('refusal-of-marked', { name }, at)];
    return used ? [] : [sayBreakdown('refusal-without-effect', { name }, at)];
  });
}

function declaredNames(sightings: readonly Sighting[]): Set<string> {
  const declared = sightings.filter(({ known }) => known === 'marked' || known === 'noted');
  return new Set(declared.map(({ identity }) => singular(coreName(identity.name))));
}
