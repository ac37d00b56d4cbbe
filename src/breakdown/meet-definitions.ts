import type { Diagnostic } from '../base/diagnostic.js';
import { foldThing } from '../base/slug.js';
import type { Find } from '../find/types.js';
import { sayBreakdown } from '../messages/breakdown.js';
import type { Definition } from '../script/types.js';
import type { ElementRegister } from './element-register.js';
import { type Ground, notesOf } from './ground.js';
import type { PeopleIndex } from './people-index.js';
import { coreName, partsOf, sameThing } from './same-thing.js';
import type { FoundNames } from './sight-finds.js';

/**
 * Lets the definitions that no mark and no note names meet what the finder found: `[rusty van]: …` describes the `rusty van` of the
 * action, or the only van there is. Of several the writer must say which; a definition that meets nothing gets a message.
 */
export function meetDefinitions(
  ground: Ground,
  register: ElementRegister,
  people: PeopleIndex,
  names: FoundNames,
): Diagnostic[] {
  const unnamed = ground.script.definitions.filter((one) => register.definedUnnamed(one.name));
  if (unnamed.length === 0) return [];
  const finds = ground.scenes.flatMap((scene) => scene.finds.elements.filter(isThing));
  const used = namesUsed(ground);
  return unnamed.flatMap((definition) => {
    const all = [definition.name, ...definition.was];
    if (all.some((name) => people.find(name) !== null || used.has(foldThing(name)))) return [];
    const called = foundAs(all, finds).filter((name) => !names.has(name));
    const [only, ...others] = called;
    const identity = register.declaredAs(definition.name);
    if (only !== undefined && others.length === 0 && identity) {
      register.meet(identity);
      names.set(only, identity);
      return [];
    }
    return [tell(definition, called)];
  });
}

function tell({ name, at }: Definition, called: readonly string[]): Diagnostic {
  if (called.length === 0) return sayBreakdown('definition-unused', { name }, at);
  return sayBreakdown('definition-of-several', { name, called }, at);
}

function isThing({ known, category }: Find): boolean {
  return known === 'found' && category !== 'cast' && category !== 'extras';
}

/** Names under which the finder has a thing: those whose words say the whole of one of its names, else all that it can mean. */
function foundAs(names: readonly string[], finds: readonly Find[]): string[] {
  const wholly = finds.filter(({ words }) => names.some((name) => saysAll(words, name)));
  const meant = wholly.length > 0 ? wholly : finds.filter((find) => names.some((name) => sameThing(find.name, name)));
  return [...new Set(meant.map(({ name }) => coreName(name)))];
}

/** `an old, rusty van` says all of `rusty van`. */
function saysAll(words: string, name: string): boolean {
  const [said, wanted] = [partsOf(words.replaceAll(',', '')), partsOf(name)];
  return said.head === wanted.head && wanted.modifiers.every((word) => said.modifiers.includes(word));
}

/** Folded names that something besides marks and lists of things speaks of: people in the background, clothes, what is refused. */
function namesUsed({ script, scenes }: Ground): Set<string> {
  const notes = [script.notes, ...scenes.map(({ scene }) => scene.notes)];
  const names = [
    ...notes.flatMap((list) => notesOf(list, 'no').flatMap((note) => note.names)),
    ...notes.flatMap((list) => notesOf(list, 'items').flatMap((note) => note.items.map(({ name }) => name))),
    ...notes.flatMap((list) => notesOf(list, 'costume').flatMap((note) => note.garments.map(({ name }) => name))),
    ...notes.flatMap((list) => notesOf(list, 'state').map((note) => note.element)),
    ...scenes.flatMap(({ scene, finds }) => [
      ...scene.blocks
        .flatMap((block) => (block.kind === 'action' ? block.lines : []))
        .flatMap((line) => line.marks.map(({ name }) => name)),
      ...finds.people.map(({ name }) => name),
      ...finds.elements.filter(({ category }) => category === 'extras').map(({ name }) => name),
    ]),
  ];
  return new Set(names.map(foldThing));
}
