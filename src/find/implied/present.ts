import { keepAnswers } from '../../base/keep-answers.js';
import { foldName } from '../../base/slug.js';
import type { Scene, Script } from '../../script/types.js';
import type { Sentence } from '../reading.js';
import type { Find } from '../types.js';
import { openWordList } from './word-list.js';

/** The words of what is there in each scene: marked, noted, found, or named by a noun of the action. */
export type Present = readonly ReadonlySet<string>[];

/** Collects the words of all that is present, scene by scene, with `category:vehicles` for any vehicle, and so on. */
export function collectPresent(script: Script, sentences: readonly Sentence[], elements: readonly Find[]): Present {
  const present = script.scenes.map(() => new Set<string>());
  const add = (scene: number, name: string) => {
    for (const word of nameWords(name)) present[scene]?.add(word);
  };
  for (const scene of script.scenes) for (const name of writtenNames(scene)) add(scene.index, name);
  for (const find of elements) {
    for (const word of nameWords(find.name)) {
      present[find.scene]?.add(word);
      for (const base of stemsOf(word)) present[find.scene]?.add(base);
    }
    present[find.scene]?.add(`category:${find.category}`);
  }
  for (const sentence of sentences) {
    if (sentence.kind === 'speech') continue;
    for (const { tag, lemma, lower } of sentence.tokens) {
      if (tag !== 'noun') continue;
      present[sentence.scene]?.add(lemma);
      present[sentence.scene]?.add(lower);
    }
  }
  return present;
}

/** Names that the writer marked or noted in a scene. */
export function writtenNames(scene: Scene): string[] {
  const names: string[] = [];
  for (const block of scene.blocks) {
    if (block.kind === 'action') for (const line of block.lines) names.push(...line.marks.map(({ name }) => name));
    if (block.kind === 'speech') for (const { line } of block.lines) names.push(...line.marks.map(({ name }) => name));
  }
  for (const note of scene.notes) {
    if (note.kind === 'items') names.push(...note.items.map(({ name }) => name));
    if (note.kind === 'costume') names.push(...note.garments.map(({ name }) => name));
    if (note.kind === 'state') names.push(note.element);
  }
  return names;
}

/** The base forms of a word that tells a state: "bandaged fingers" have a bandage. */
function stemsOf(word: string): string[] {
  if (word.length < 6 || !word.endsWith('ed')) return [];
  return [word.slice(0, -1), word.slice(0, -2)];
}

/** The words of a name, each also in the singular. */
export const nameWords = keepAnswers((name: string): readonly string[] => {
  const words = foldName(name).match(/[\p{L}\p{N}]+(?:[-'][\p{L}\p{N}]+)*/gu) ?? [];
  return words.some((word) => word.endsWith('s')) ? words.flatMap((word) => [word, ...singulars(word)]) : words;
});

function singulars(word: string): string[] {
  if (word.length < 4 || !word.endsWith('s') || word.endsWith('ss')) return [];
  const bases = [word.slice(0, -1)];
  if (/(?:ch|sh|x|s|z)es$/.test(word)) bases.push(word.slice(0, -2));
  if (word.endsWith('ies')) bases.push(`${word.slice(0, -3)}y`);
  if (word.endsWith('ves')) bases.push(`${word.slice(0, -3)}fe`, `${word.slice(0, -3)}f`);
  return bases;
}

/** The word that a thing's name turns on: the last before "of", "with", "for" or a bracket. */
export const headOf = keepAnswers((name: string): string => {
  const main = foldName(name).split(/\s(?:of|with|without|in|on|for|from|at)\s|[,(]/)[0] ?? name;
  return nameWords(main.trim()).at(-1) ?? foldName(name);
});

/** True when the scene already has the implied thing, or something that does its work. */
export function isPresent(words: ReadonlySet<string> | undefined, name: string, unless: string): boolean {
  if (!words) return false;
  if (words.has(headOf(name))) return true;
  for (const word of openWordList(unless).words) if (words.has(word)) return true;
  return false;
}
