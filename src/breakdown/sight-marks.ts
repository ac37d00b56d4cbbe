import type { Diagnostic } from '../base/diagnostic.js';
import { foldName } from '../base/slug.js';
import { sayBreakdown } from '../messages/breakdown.js';
import type { Line, Mark, Scene, Script } from '../script/types.js';
import { readLeadingCount } from '../trade/quantities.js';
import type { ElementRegister, Identity } from './element-register.js';
import type { PeopleIndex } from './people-index.js';
import { type Sighting, sight } from './sighting.js';

/** Reads the marks of a scene as sightings. Marks of people are presence and are left out. */
export function sightMarks(
  scene: Scene,
  register: ElementRegister,
  people: PeopleIndex,
  script: Script,
): { sightings: Sighting[]; messages: Diagnostic[] } {
  const sightings: Sighting[] = [];
  const messages: Diagnostic[] = [];
  const defined = new Set(script.definitions.map(({ name }) => foldName(name)));
  for (const { line, spoken } of linesOf(scene)) {
    for (const mark of line.marks) {
      if (people.find(mark.name) || mark.category === 'extras' || mark.category === 'cast') continue;
      if (spoken && !mark.category && !defined.has(foldName(mark.name))) continue;
      const identity = register.declare(mark.name, 'marked');
      messages.push(...nameCategory(identity, mark));
      const { count } = readLeadingCount(mark.words);
      sightings.push(sight(identity, 'marked', mark.words, mark.at, { count, seen: !spoken }));
    }
  }
  return { sightings, messages };
}

/** The printed lines of a scene. What is spoken is heard, not seen; a parenthetical is action. */
function* linesOf(scene: Scene): Generator<{ line: Line; spoken: boolean }> {
  yield { line: scene.heading.line, spoken: false };
  for (const block of scene.blocks) {
    if (block.kind === 'action') for (const line of block.lines) yield { line, spoken: false };
    if (block.kind !== 'speech') continue;
    for (const { kind, line } of block.lines) yield { line, spoken: kind === 'dialogue' };
  }
}

function nameCategory(identity: Identity, mark: Mark): Diagnostic[] {
  const { category } = mark;
  if (!category) return [];
  const said = identity.categories.find(({ source }) => source === 'on the spot' || source === 'definition');
  identity.categories.push({ name: category, source: 'on the spot' });
  if (!said || said.name === category) return [];
  return [sayBreakdown('element-two-categories', { name: identity.name, first: said.name, second: category }, mark.at)];
}
