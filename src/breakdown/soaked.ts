import type { SceneGround } from './ground.js';
import type { NameMatcher } from './name-matcher.js';
import { splitSentences } from './synopsis.js';
import type { Wears } from './types.js';

/** Somebody gets wet on camera, in clothes of which nothing says that they are wet. */
export interface SoakedDoubt {
  readonly person: string;
  readonly garments: readonly string[];
  readonly line: number;
}

const intoWater =
  /\b(?:falls|jumps|dives|slips|tumbles|plunges|topples|drops|goes|is (?:pushed|thrown|dragged|pulled))\b[^;:]*\b(?:in|into|under)\b(?: (?:the|a|an))?(?: [\w-]+)? (?:water|river|sea|lake|canal|pond|harbour|harbor|pool|stream|dock)\b|\bgoes under\b/i;
const wetThrough = /\b(?:soaked|drenched|sodden|wet through|dripping wet|soaking wet)\b/i;

/** Finds who falls into water or is soaked, with the clothes on them that the scene does not already give a state at its end. */
export function doubtSoaked({ actions }: SceneGround, wears: readonly Wears[], matcher: NameMatcher): SoakedDoubt[] {
  const doubts = new Map<string, SoakedDoubt>();
  for (const action of actions) {
    const names = matcher(action).filter(({ possessive }) => !possessive);
    for (const { start, text } of splitSentences(action.text)) {
      const wet = intoWater.exec(text) ?? wetThrough.exec(text);
      if (!wet) continue;
      // The name nearest before the words is who gets wet.
      const named = names.filter((match) => match.start >= start && match.start < start + wet.index).at(-1);
      const worn = wears.find(({ person }) => person === named?.person.name);
      const garments = (worn?.garments ?? []).filter(({ absent, stateOut }) => !absent && stateOut === null);
      if (!named || garments.length === 0 || doubts.has(named.person.name)) continue;
      const { line } = action.place(start, start + text.length).start;
      doubts.set(named.person.name, { person: named.person.name, garments: garments.map(({ name }) => name), line });
    }
  }
  return [...doubts.values()];
}
