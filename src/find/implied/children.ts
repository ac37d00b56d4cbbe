import { foldName } from '../../base/slug.js';
import type { Sentence } from '../reading.js';
import type { Find } from '../types.js';
import type { Reason } from './reason.js';
import { groupParagraphs, onlyPerson, type Paragraphs } from './subject.js';

/** The children of whom a sentence tells, by name or in the words of the script. */
export type ChildrenOf = (sentence: Sentence | null) => readonly string[];

const nobody: readonly string[] = [];

/**
 * Finds the children near what a sentence tells: those it or the sentence beside it names, who handle a thing in it, or whom
 * it means by "he" or "she" as the one child of its paragraph. Who holds the knife is what a danger box must tell.
 */
export function findChildren(
  reasons: readonly Reason[],
  sentences: readonly Sentence[],
  elements: readonly Find[],
): ChildrenOf {
  const told = reasons.filter((one) => one.child !== null);
  if (told.length === 0) return () => nobody;
  const byName = new Map<string, string>();
  const named = new Map<Sentence, string[]>();
  for (const { sentence, child } of told) {
    if (child === null) continue;
    if (!byName.has(foldName(child))) byName.set(foldName(child), child);
    const name = byName.get(foldName(child)) ?? child;
    if (sentence) addTo(named, sentence, meantByThe(name, sentence, told) ?? name);
  }
  const holders = holdersByScene(elements, byName);
  const places = new Map(sentences.map((sentence, at) => [sentence, at]));
  let paragraphs: Paragraphs | null = null;
  return (sentence) => {
    if (sentence === null) return nobody;
    const names = [...(named.get(sentence) ?? nobody)];
    for (const one of besides(sentence, sentences, places.get(sentence) ?? 0))
      names.push(...(named.get(one) ?? nobody));
    for (const { child, offset } of holders.get(sentence.scene) ?? []) {
      if (isInside(offset, sentence)) names.push(child);
    }
    if (names.length === 0 && sentence.tokens.some(({ lower }) => lower === 'he' || lower === 'she')) {
      paragraphs ??= groupParagraphs(sentences);
      const meant = byName.get(foldName(onlyPerson(sentence, paragraphs) ?? ''));
      if (meant) names.push(meant);
    }
    return tellApart(names);
  };
}

/** "The boy", where one child of an age is in the scene and no other: who that is. Null for anyone else. */
function meantByThe(name: string, { scene, text }: Sentence, told: readonly Reason[]): string | null {
  if (!/^(?:boy|girl|child|kid)$/i.test(name) || !text.toLowerCase().includes(`the ${name.toLowerCase()}`)) return null;
  const aged = told.filter((one) => one.scene === scene && /\bage\b/.test(one.because));
  const [first, ...rest] = new Set(aged.map(({ child }) => child?.toUpperCase()));
  return first !== undefined && rest.length === 0 ? (aged[0]?.child ?? null) : null;
}

/** The sentences right before and after in the same paragraph: who is told of there stands near. */
function besides(sentence: Sentence, sentences: readonly Sentence[], at: number): Sentence[] {
  return [sentences[at - 1], sentences[at + 1]].filter(
    (one) => one !== undefined && one.scene === sentence.scene && one.paragraph === sentence.paragraph,
  ) as Sentence[];
}

interface Held {
  readonly child: string;
  readonly offset: number;
}

/** Where something is in the hands of a child, or on it, by scene. */
function holdersByScene(elements: readonly Find[], byName: ReadonlyMap<string, string>): Map<number, Held[]> {
  const held = new Map<number, Held[]>();
  for (const { scene, by, at } of elements) {
    const child = by === null ? undefined : byName.get(foldName(by));
    if (child === undefined) continue;
    const here = held.get(scene);
    if (here) here.push({ child, offset: at.start.offset });
    else held.set(scene, [{ child, offset: at.start.offset }]);
  }
  return held;
}

function addTo(map: Map<Sentence, string[]>, sentence: Sentence, name: string): void {
  const names = map.get(sentence);
  if (names) names.push(name);
  else map.set(sentence, [name]);
}

function isInside(offset: number, { text, place }: Sentence): boolean {
  const { start, end } = place(0, text.length);
  return start.offset <= offset && offset < end.offset;
}

/** Each once, whatever its letters; "little girl" and "girl" are one. */
function tellApart(names: readonly string[]): string[] {
  const kept: string[] = [];
  for (const name of [...names].sort((a, b) => b.length - a.length)) {
    const folded = foldName(name);
    if (!kept.some((one) => foldName(one).includes(folded))) kept.push(name);
  }
  return kept;
}
