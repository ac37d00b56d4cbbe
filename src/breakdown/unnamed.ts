import type { Range } from '../base/text-range.js';
import type { SceneGround } from './ground.js';
import type { Presence } from './presence.js';

/** A scene that begins with `She` before it names anybody: the word, and who it is read to be. */
export interface Unnamed {
  readonly word: string;
  readonly read: readonly Presence[];
  /** True when somebody was taken for it, whatever the writer answered: only then a yes or a no settles it. */
  readonly guessed: boolean;
  readonly at: Range;
}

const pronounStart = /^(?:He|She|They|His|Her|Their)\b/;

/**
 * Reads a scene whose first word is a pronoun for somebody whom it has not named.
 * The pronoun of a first sentence can only mean whoever the scene before left us
 * with: one person there, or two for `They`, is taken for it, and asked about; with more, it is asked only.
 */
export function readUnnamed(
  { scene, actions, finds }: SceneGround,
  before: readonly Presence[],
  here: readonly Presence[],
): Unnamed | null {
  const first = scene.blocks.find(({ kind }) => kind === 'action' || kind === 'speech');
  const [action] = actions;
  const match = first?.kind === 'action' && action ? pronounStart.exec(action.text) : null;
  if (!match || !action || finds.people.length > 0) return null;
  const [word] = match;
  const at = action.place(0, word.length);
  const fitting = before.length === (/^The/.test(word) ? 2 : 1);
  const missing = before.filter((one) => !here.some(({ person }) => person === one.person));
  if (before.length > 0 && missing.length === 0) return null;
  const read = fitting ? missing.map((presence) => standFor(presence, word, at)) : [];
  return { word, at, read, guessed: read.length > 0 };
}

/** A presence that a pronoun stands for, as the finder's own reading. */
export function standFor({ person, cast }: Presence, word: string, at: Range): Presence {
  const mentions = [{ words: word, line: at.start.line, at }];
  return {
    person,
    firstSeen: at.start.offset,
    cast: { ...cast, presence: 'seen', voice: null, speaks: false, known: 'found', mentions },
  };
}
