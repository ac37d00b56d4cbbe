import { movePoint, type Range } from '../base/text-range.js';
import type { Block, Line, Script } from '../script/types.js';
import { listUnlisted } from './introductions.js';
import type { Lexicon } from './lexicon.js';
import { learnNames, type PeopleNames } from './people-names.js';
import { learnPets } from './pet-names.js';
import type { Sentence } from './reading.js';
import { splitSentences } from './split-words.js';
import { type Tagger, tagSentence } from './tag-sentence.js';
import { type WordUses, wordUses } from './word-uses.js';

/** Cuts the script into tagged sentences, scene by scene in the order of the text: heading, action, speech, parentheticals. */
export function readSentences(script: Script, lexicon: Lexicon): Sentence[] {
  const uses = wordUses(lexicon);
  const pets = learnPets(script, lexicon);
  const people = [...script.people, ...listUnlisted(script, lexicon, uses, pets)];
  const names = learnNames(people, (word) => isOrdinary(uses(word)));
  const tagger: Tagger = { names, uses, pets };
  const sentences: Sentence[] = [];
  for (const scene of script.scenes) {
    let paragraph = 0;
    const read = (lines: readonly Line[], kind: Sentence['kind'], speaker: string | null) => {
      sentences.push(...readParagraph(lines, { scene: scene.index, kind, speaker, paragraph }, tagger));
      paragraph++;
    };
    read([scene.heading.line], 'heading', null);
    for (const block of scene.blocks) readBlock(block, names, read);
  }
  return sentences;
}

/** True for a word that the language uses otherwise than as a name. */
function isOrdinary({ noun, verb, adjective, adverb, closed }: WordUses): boolean {
  const thing =
    noun !== null && (noun.entry.core !== '' || noun.entry.wordnet !== '' || noun.entry.classes.length === 0);
  return thing || verb !== null || adjective >= 0 || adverb || closed !== null;
}

function readBlock(
  block: Block,
  names: PeopleNames,
  read: (lines: readonly Line[], kind: Sentence['kind'], speaker: string | null) => void,
): void {
  if (block.kind === 'action') read(block.lines, 'action', null);
  if (block.kind !== 'speech') return;
  const speaker = names.canonical(block.cue.name) ?? block.cue.name;
  let run: Line[] = [];
  const flush = () => {
    if (run.length > 0) read(run, 'speech', speaker);
    run = [];
  };
  for (const { kind, line } of block.lines) {
    if (kind === 'dialogue') run.push(line);
    else {
      flush();
      read([line], 'parenthetical', speaker);
    }
  }
  flush();
}

const isTransition =
  /^(?:(?:SMASH|MATCH|JUMP|HARD|QUICK|SLOW) )?(?:CUT|FADE|DISSOLVE|WIPE|IRIS)(?: (?:TO|IN|OUT|BACK|INTO|FROM|UP|ON|THROUGH)\b[^\p{Ll}]*)?[.:]?$/u;

function readParagraph(
  lines: readonly Line[],
  where: Pick<Sentence, 'scene' | 'kind' | 'speaker' | 'paragraph'>,
  tagger: Tagger,
): Sentence[] {
  const [first] = lines;
  const text = lines.length === 1 && first ? first.text : lines.map((line) => line.text).join(' ');
  if (where.kind === 'action' && isTransition.test(text)) return [];
  const { scene, kind, speaker, paragraph } = where;
  return splitSentences(text).map(([start, end]) => {
    const own = text.slice(start, end);
    const tokens = tagSentence(own, kind, tagger);
    const place = (from: number, to: number) => placeIn(lines, start + from, start + to);
    return { scene, kind, speaker, paragraph, text: own, tokens, place };
  });
}

/** The place in the source of a stretch of lines joined by single spaces. */
function placeIn(lines: readonly Line[], from: number, to: number): Range {
  return { start: pointIn(lines, from, false), end: pointIn(lines, to, true) };
}

function pointIn(lines: readonly Line[], at: number, isEnd: boolean) {
  let base = 0;
  let index = 0;
  for (; index < lines.length - 1; index++) {
    const { length } = (lines[index] as Line).text;
    if (at <= base + length) break;
    base += length + 1;
  }
  const line = lines[index];
  if (!line) throw new RangeError('a stretch of no lines has no place');
  return pointInLine(line, Math.min(at - base, line.text.length), isEnd);
}

function pointInLine(line: Line, at: number, isEnd: boolean) {
  const inside = isEnd ? Math.max(0, at - 1) : at;
  const span = line.spans.find((one) => inside >= one.start && inside < one.end) ?? line.spans.at(-1);
  const offset = span ? span.offset + Math.min(at, span.end) - span.start : line.at.start.offset + at;
  return movePoint(line.at.start, offset - line.at.start.offset);
}
