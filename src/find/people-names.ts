import { foldName } from '../base/slug.js';
import type { Person } from '../script/types.js';

/** How the action names the people of a script. */
export interface PeopleNames {
  /** The person that the words from `at` on name, and how many words do so; null when they name none. */
  readonly match: (
    words: readonly { readonly text: string }[],
    lowers: readonly string[],
    at: number,
  ) => { readonly person: string; readonly size: number } | null;
  /** Canonical name of a cue or name, or null. */
  readonly canonical: (name: string) => string | null;
}

const titles = new Set(
  'mr mrs ms miss dr doctor sir lady lord madam father mother sister brother uncle aunt old young little big the a of and captain sergeant inspector officer professor'.split(
    ' ',
  ),
);
const smallWords = new Set('the a of and'.split(' '));

/** Learns the names, aliases and distinct single names of people. Names that are words of no other use need no capital. */
export function learnNames(
  people: readonly Pick<Person, 'name' | 'names'>[],
  isOrdinary: (word: string) => boolean = () => true,
): PeopleNames {
  const sequences = new Map<string, { readonly words: readonly string[]; readonly person: string }[]>();
  const whole = new Map<string, string>();
  const single = new Map<string, Set<string>>();
  const add = (words: readonly string[], person: string) => {
    const first = words[0];
    if (!first) return;
    const list = sequences.get(first) ?? [];
    if (!list.some((one) => one.words.join(' ') === words.join(' '))) list.push({ words, person });
    sequences.set(
      first,
      list.sort((a, b) => b.words.length - a.words.length),
    );
  };
  for (const person of people) {
    for (const name of person.names) {
      whole.set(foldName(name), person.name);
      const words = nameWords(name);
      add(words, person.name);
      for (const word of words) {
        if (titles.has(word) || word.length < 3) continue;
        single.set(word, (single.get(word) ?? new Set()).add(person.name));
      }
    }
  }
  for (const [word, owners] of single) if (owners.size === 1) add([word], [...owners][0] as string);
  return {
    match: (words, lowers, at) => matchName(sequences, isOrdinary, words, lowers, at),
    canonical: (name) => whole.get(foldName(name)) ?? null,
  };
}

function nameWords(name: string): string[] {
  return foldName(name)
    .split(/[\s.]+/)
    .filter((word) => word !== '' && word !== '-');
}

const kin = /^(?:son|daughter|boy|girl|brother|sister|husband|wife|mother|father|friend|child|baby|cousin|aunt|uncle)$/;

/** A name needs a capital, or to be no other word, or a word of kin before it ("her son tim"); save for a person named by trade ("the nurse"). */
function matchName(
  sequences: ReadonlyMap<string, { readonly words: readonly string[]; readonly person: string }[]>,
  isOrdinary: (word: string) => boolean,
  words: readonly { readonly text: string }[],
  lowers: readonly string[],
  at: number,
) {
  const candidates = sequences.get(lowers[at] ?? '');
  if (!candidates) return null;
  const first = words[at]?.text ?? '';
  const capital = /^\p{Lu}/u.test(first);
  const afterThe = /^the$/i.test(words[at - 1]?.text ?? '');
  if (!capital && !afterThe && isOrdinary(lowers[at] as string) && !kin.test(lowers[at - 1] ?? '')) return null;
  if (smallWords.has(first.toLowerCase()) && candidates.every((one) => one.words.length === 1)) return null;
  for (const { words: name, person } of candidates) {
    const size = spanOf(name, lowers, at);
    if (size > 0) return { person, size };
  }
  return null;
}

/** How many words the name covers from `at`, stops after titles included; 0 when it does not stand there. */
function spanOf(name: readonly string[], lowers: readonly string[], at: number): number {
  let here = at;
  for (const part of name) {
    if (lowers[here] === '.') here++;
    if (lowers[here] !== part) return 0;
    here++;
  }
  return here - at;
}
