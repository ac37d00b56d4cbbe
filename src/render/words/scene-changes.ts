import type { Change, Changes } from '../../compare/types.js';
import { sortByCost } from './change-ranks.js';
import { changeWords, sinceWords } from './change-words.js';

/** What the sheets say of the changes. */
export interface SceneChangesOnPaper {
  /** `draft B`. */
  readonly since: string;
  /** By scene id; empty for a scene that is new, missing for one without changes. */
  readonly sentences: ReadonlyMap<string, string>;
  /** By scene id: the names of people and things that changed in it. */
  readonly subjects: ReadonlyMap<string, ReadonlySet<string>>;
  /** Labels of the scenes that changed, that are new, and of those that are gone, by their old ones. */
  readonly changed: readonly string[];
  readonly added: readonly string[];
  readonly gone: readonly string[];
}

/** Gathers the changes by scene, in words for its sheet. */
export function changesByScene(changes: Changes): SceneChangesOnPaper {
  const present = changes.scenes.filter((scene) => scene.after !== null);
  const labels = (test: (before: string | null, after: string | null) => boolean) =>
    changes.scenes.filter(({ before, after }) => test(before, after)).map(({ before, after }) => after ?? before ?? '');
  return {
    since: sinceWords(changes),
    sentences: new Map(present.map((scene) => [scene.scene, scene.before === null ? '' : sentence(scene.changes)])),
    subjects: new Map(
      present.map((scene) => [scene.scene, scene.before === null ? new Set() : subjects(scene.changes)]),
    ),
    changed: labels((before, after) => before !== null && after !== null),
    added: labels((before) => before === null),
    gone: labels((_, after) => after === null),
  };
}

/** Changes that one sheet names before it counts: a full sheet has no room for more. */
const mostNamed = 5;

function sentence(changes: readonly Change[]): string {
  const sorted = sortByCost(changes, (change) => change);
  const more = sorted.length - mostNamed;
  const shown = more > 1 ? sorted.slice(0, mostNamed) : sorted;
  const rest = more > 1 ? [`and ${more} more: ask for changes.md`] : [];
  return `${[...shown.map(changeWords), ...rest].join('; ')}.`;
}

function subjects(changes: readonly Change[]): Set<string> {
  return new Set(changes.flatMap(({ subject, wearer }) => [subject, wearer].filter((name) => name !== null)));
}
