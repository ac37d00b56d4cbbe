import type { Meaning, WordNet } from './wordnet.js';

/** What the meanings of a noun, weighed by how often they are met, make of it. */
export interface NounKind {
  /** Letter of the likeliest physical category. */
  readonly best: string;
  /** Letter of the next, when it is worth keeping. */
  readonly next: string | null;
  /** Share of its use that is a thing to find, 0 to 1. */
  readonly share: number;
}

/** Meanings at whose nearest ancestor a category begins: `letter: word word#sense …`; `-` begins nothing. */
export function readRoots(text: string, net: WordNet): Map<string, string> {
  const roots = new Map<string, string>();
  for (const line of text.split('\n')) {
    const [letter, words] = line.split(': ');
    if (!letter || !words || line.startsWith('#')) continue;
    for (const word of words.trim().split(/\s+/)) {
      const [lemma = '', sense = '1'] = word.split('#');
      const offset = net.nounSenses.get(lemma)?.[Number(sense) - 1];
      if (!offset) throw new Error(`no such root in WordNet: ${word}`);
      roots.set(offset, letter);
    }
  }
  return roots;
}

/** Makes the function that gives a meaning's category letter: that of the nearest root above it, or null. */
export function categoryFinder(net: WordNet, roots: ReadonlyMap<string, string>): (offset: string) => string | null {
  const memo = new Map<string, string | null>();
  return (offset) => {
    const known = memo.get(offset);
    if (known !== undefined) return known;
    const letter = nearestRoot(offset, net, roots);
    memo.set(offset, letter);
    return letter;
  };
}

function nearestRoot(offset: string, net: WordNet, roots: ReadonlyMap<string, string>): string | null {
  let level = [offset];
  const seen = new Set<string>();
  while (level.length > 0) {
    const next: string[] = [];
    for (const one of level) {
      if (seen.has(one)) continue;
      seen.add(one);
      const letter = roots.get(one);
      if (letter) return letter;
      next.push(...((net.nouns.get(one) as Meaning).above ?? []));
    }
    level = next;
  }
  return null;
}

/** A meaning under no root: things made by hand and substances count a little, as props; the rest is abstract. */
function guess(meaning: Meaning): { letter: string; weight: number } {
  const touchable = meaning.kind === 6 || meaning.kind === 27;
  return touchable ? { letter: 'p', weight: 0.4 } : { letter: '-', weight: 1 };
}

/** Weighs the meanings of a noun; null when none of them is a thing to find. */
export function weighNoun(lemma: string, net: WordNet, category: (offset: string) => string | null): NounKind | null {
  const senses = net.nounSenses.get(lemma) ?? [];
  const counts = net.senseCounts.get(lemma);
  const weights = new Map<string, number>();
  let total = 0;
  senses.forEach((offset, i) => {
    const meaning = net.nouns.get(offset) as Meaning;
    if (meaning.instance) return;
    const use = (counts?.get(offset) ?? 0) + 1 / (i + 1) ** 1.2;
    const letter = category(offset);
    const sure = letter ? { letter, weight: 1 } : guess(meaning);
    weights.set(sure.letter, (weights.get(sure.letter) ?? 0) + use * sure.weight);
    total += use;
  });
  const found = [...weights].filter(([letter]) => letter !== '-').sort((a, b) => b[1] - a[1]);
  const [best, next] = found;
  if (!best) return null;
  const share = found.reduce((sum, [, weight]) => sum + weight, 0) / total;
  return { best: best[0], next: next && next[1] / total > 0.12 ? next[0] : null, share };
}
