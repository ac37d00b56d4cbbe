import type { Script } from '../script/types.js';
import type { Lexicon } from './lexicon.js';

const beforeName = /(?<![\p{L}-])(\p{L}[\p{L}-]+)(?:, | called | named | (?=\p{Lu}{2}))(\p{Lu}[\p{L}-]+)(?![\p{L}-])/gu;
const behindName =
  /(?<![\p{L}-])(\p{Lu}[\p{L}-]+)(?: the |, (?:an?|the|her|his|their) )((?:\p{Ll}[\p{L}-]* ){0,3}\p{Ll}[\p{L}-]+)/gu;

/** Names of animals in lower case, with what each is: "the dog, BISCUIT", "Biscuit, a small dog", "a cat called Soot". */
export function learnPets(script: Script, lexicon: Lexicon): ReadonlyMap<string, string> {
  const pets = new Map<string, string>();
  const people = new Set(script.people.flatMap(({ names }) => names.flatMap((name) => name.toLowerCase().split(' '))));
  const isAnimal = (word: string) => lexicon.find(word)?.core.startsWith('a') ?? false;
  /** "a dog trainer" is no dog. */
  const isThing = (word: string | undefined) => word !== undefined && (lexicon.find(word)?.core ?? '') !== '';
  const add = (name: string, kind: string) => {
    const key = name.toLowerCase();
    // WREN ABARA, who speaks as WREN, is no bird.
    const isPerson = people.has(key) || people.has(kind.toLowerCase());
    if (isAnimal(kind.toLowerCase()) && !isPerson && !isAnimal(key)) pets.set(key, kind.toLowerCase());
  };
  for (const text of actionOf(script)) {
    for (const [, kind, name] of text.matchAll(beforeName)) add(name as string, kind as string);
    for (const [, name, words] of text.matchAll(behindName)) {
      const kind = (words as string).split(' ').find((word, at, all) => isAnimal(word) && !isThing(all[at + 1]));
      if (kind !== undefined) add(name as string, kind);
    }
  }
  return pets;
}

function actionOf(script: Script): string[] {
  return script.scenes.flatMap(({ blocks }) =>
    blocks.flatMap((block) => (block.kind === 'action' ? [block.lines.map(({ text }) => text).join(' ')] : [])),
  );
}
