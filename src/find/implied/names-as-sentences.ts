import { keepAnswers } from '../../base/keep-answers.js';
import type { Range } from '../../base/text-range.js';
import type { Definition, Line, Scene, Script } from '../../script/types.js';
import type { Sentence, Token } from '../reading.js';
import type { Find } from '../types.js';
import { nameWords } from './present.js';

/** Words outside the action that name a thing of a scene, made readable for cues. */
export interface NamedThing {
  readonly sentence: Sentence;
  /** What the words are, in plain words. */
  readonly because: string;
}

/** What marks under another name, notes, definitions and plain speech name, scene by scene. */
export function readNamedThings(script: Script, elements: readonly Find[]): NamedThing[] {
  const found: Find[][] = script.scenes.map(() => []);
  for (const find of elements) found[find.scene]?.push(find);
  const definitions = script.definitions.map(foldDefinition);
  const folded = keepAnswers(foldWords);
  return script.scenes.flatMap((scene) => {
    const here = found[scene.index] ?? [];
    return [
      ...ofMarks(scene),
      ...ofNotes(scene),
      ...ofDefinitions(scene, definitions, here, folded),
      ...ofSpeech(scene, here),
    ];
  });
}

function ofMarks(scene: Scene): NamedThing[] {
  return linesOf(scene)
    .flatMap(({ marks }) => marks)
    .filter(({ form }) => form === 'words and name')
    .map(({ name, at }) => ({ sentence: asSentence(scene.index, name, at), because: 'a mark' }));
}

function linesOf(scene: Scene): Line[] {
  return scene.blocks.flatMap((block) =>
    block.kind === 'action' ? block.lines : block.kind === 'speech' ? block.lines.map(({ line }) => line) : [],
  );
}

function ofNotes(scene: Scene): NamedThing[] {
  const because = 'a note';
  return scene.notes.flatMap((note): NamedThing[] => {
    if (note.kind === 'items')
      return note.items.map(({ name, description, at }) => ({
        sentence: asSentence(scene.index, description ? `${name}, ${description}` : name, at),
        because,
      }));
    if (note.kind === 'costume')
      return note.garments.map(({ name, at }) => ({ sentence: asSentence(scene.index, name, at), because }));
    if (note.kind === 'state')
      return [{ sentence: asSentence(scene.index, `${note.element}, ${note.state}`, note.at), because }];
    return [];
  });
}

interface FoldedDefinition {
  readonly definition: Definition;
  readonly names: readonly string[];
  /** Its words, the same in every scene. */
  readonly sentence: Sentence;
}

function foldDefinition(definition: Definition): FoldedDefinition {
  const { name, was, description, at } = definition;
  return {
    definition,
    names: [name, ...was].map(foldWords),
    sentence: asSentence(-1, description ? `${name}, ${description}` : name, at),
  };
}

/** A definition speaks in every scene that marks, notes or finds its element. */
function ofDefinitions(
  scene: Scene,
  definitions: readonly FoldedDefinition[],
  elements: readonly Find[],
  folded: (name: string) => string,
): NamedThing[] {
  if (definitions.length === 0) return [];
  const here = new Set(
    [
      ...linesOf(scene).flatMap(({ marks }) => marks.map(({ name }) => name)),
      ...scene.notes.flatMap((note) => (note.kind === 'items' ? note.items.map(({ name }) => name) : [])),
      ...new Set(elements.map(({ name }) => name)),
    ].map(folded),
  );
  return definitions
    .filter(({ names }) => names.some((name) => here.has(name)))
    .map(({ definition, sentence }) => ({
      sentence: { ...sentence, scene: scene.index },
      because: `the definition of “${definition.name}”`,
    }));
}

function foldWords(name: string): string {
  return nameWords(name).join(' ');
}

/** What speech names counts only when the finder holds it to be there. */
function ofSpeech(scene: Scene, elements: readonly Find[]): NamedThing[] {
  const speeches = scene.blocks.filter((block) => block.kind === 'speech');
  const spoken = (at: Range) =>
    speeches.some((block) => at.start.offset >= block.at.start.offset && at.end.offset <= block.at.end.offset);
  return elements
    .filter((find) => spoken(find.at))
    .map(({ name, at }) => ({
      sentence: asSentence(scene.index, name, at),
      because: 'speech that means a thing present',
    }));
}

/** Words as a sentence of nouns; every stretch of it has the same place. */
function asSentence(scene: number, text: string, at: Range): Sentence {
  return { scene, kind: 'action', speaker: null, paragraph: -1, text, tokens: tokensOf(text), place: () => at };
}

function tokensOf(text: string): Token[] {
  const tokens: Token[] = [];
  for (const { 0: word, index: start } of text.matchAll(/[\p{L}\p{N}]+(?:[-'’][\p{L}\p{N}]+)*|[,;]/gu)) {
    const lower = word.toLowerCase();
    const tag = word === ',' || word === ';' ? 'punctuation' : 'noun';
    const lemma = tag === 'noun' ? (nameWords(lower).at(-1) ?? lower) : lower;
    tokens.push({ text: word, lower, lemma, tag, start, end: start + word.length, person: null });
  }
  return tokens;
}
