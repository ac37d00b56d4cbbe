import type { Range } from '../base/text-range.js';
import { notesOf, type SceneGround } from './ground.js';
import { judgeMention } from './judge-mention.js';
import type { NameMatcher } from './name-matcher.js';

/** The longest synopsis in characters; a longer sentence is cut where a clause ends. */
const longest = 90;
/** The shortest clause that still says something, in characters. */
const shortest = 15;

interface Sentence {
  readonly text: string;
  /** True when a known person is its subject. */
  readonly acts: boolean;
  /** What follows its subject; empty when nobody acts. */
  readonly rest: string;
  /** True when what happens in it is what the scene is told for: a fight, a fall, a kiss. */
  readonly leads: boolean;
}

/** Rows of the hazard table whose words are the turn of a scene, not its setting: fights and falls, intimacy. */
const leading: ReadonlySet<string> = new Set(['H3', 'H22']);

/** What follows a name where nothing happens: clothes, a likeness, no verb at all. */
const tellsNothing =
  /^\s+(?:(?:is|are|wears?|wearing|dressed|clad|in|with|at|behind|beside)\b|has (?:an?|the|no|his|her)\b)/i;

/**
 * Says in one line what happens: the note, else the first sentence in which a known person fights, falls or the like, else the first action
 * sentence with a known person as its subject who does something, shortened at a clause, else the first action sentence, else the first line
 * of speech; nothing for a scene in which nothing is written yet.
 */
export function writeSynopsis(ground: SceneGround, matcher: NameMatcher): string {
  const note = notesOf(ground.scene.notes, 'synopsis').at(-1);
  if (note) return note.line;
  const best = pickSentence(readSentences(ground, matcher));
  if (best !== null) return shorten(best);
  for (const block of ground.scene.blocks) {
    if (block.kind !== 'speech') continue;
    const line = block.lines.find(({ kind }) => kind === 'dialogue');
    if (line) return shorten(`${block.cue.name}: ${line.line.text}`);
  }
  return '';
}

function pickSentence(sentences: Iterable<Sentence>): string | null {
  const found: { doing: string | null; acting: string | null; any: string | null } = {
    doing: null,
    acting: null,
    any: null,
  };
  for (const { text, acts, rest, leads } of sentences) {
    if (acts && leads) return text;
    found.any ??= text;
    if (!acts) continue;
    found.acting ??= text;
    if (!tellsNothing.test(rest)) found.doing ??= text;
  }
  return found.doing ?? found.acting ?? found.any;
}

function* readSentences(ground: SceneGround, matcher: NameMatcher): Generator<Sentence> {
  const turns = ground.finds.hazards.filter(({ hazard }) => leading.has(hazard)).map(({ at }) => at);
  for (const action of ground.actions) {
    const names = matcher(action).filter(({ possessive }) => !possessive);
    for (const { start, text } of splitSentences(action.text)) {
      const subject = names.find((match) =>
        isSubject(action.text.slice(start, match.start), match.start - start, text.length),
      );
      const acts = subject !== undefined && judgeMention(subject) === 'acts';
      const rest = acts ? text.slice(subject.end - start) : '';
      yield {
        text,
        acts,
        rest,
        leads: acts && turns.some((turn) => overlaps(turn, action.place(start, start + text.length))),
      };
    }
  }
}

function overlaps(a: Range, b: Range): boolean {
  return a.start.offset < b.end.offset && b.start.offset < a.end.offset;
}

/** A name is the subject when only short words or an opening clause stand before it in its sentence. */
function isSubject(before: string, offset: number, length: number): boolean {
  if (offset < 0 || offset >= length) return false;
  return /^["\u201c\s]*(?:(?:then|now|and|but|as|while|when|suddenly|slowly|finally|meanwhile|old|young|the)[,\s]+)*$/i.test(
    before,
  );
}

const abbreviation = /\b(?:\p{Lu}|Mr|Mrs|Ms|Dr|St|No|Prof|Capt|Sgt|MR|MRS|MS|DR|ST)\.$/u;

/** Splits a paragraph into sentences; a stop after a title or an initial ends none. */
export function splitSentences(text: string): { readonly start: number; readonly text: string }[] {
  const sentences: { start: number; text: string }[] = [];
  let start = 0;
  for (const match of text.matchAll(/[.!?\u2026]+["\u201d)]*(?=\s|$)/g)) {
    const end = match.index + match[0].length;
    if (end < text.length && abbreviation.test(text.slice(start, end))) continue;
    pushSentence(sentences, text, start, end);
    start = end;
  }
  pushSentence(sentences, text, start, text.length);
  return sentences;
}

function pushSentence(sentences: { start: number; text: string }[], text: string, start: number, end: number): void {
  const raw = text.slice(start, end);
  const trimmed = raw.trim();
  // Signs alone, such as the fence of a quotation, say nothing.
  if (/[\p{L}\p{N}]/u.test(trimmed)) sentences.push({ start: start + raw.indexOf(trimmed), text: trimmed });
}

/** Cuts a sentence at the last clause that ends in time, else at the last word, with dots. */
export function shorten(sentence: string): string {
  if (sentence.length <= longest) return sentence;
  const head = sentence.slice(0, longest);
  const clause = [
    ...head.matchAll(/[,;:\u2014]\s|\s(?:and|but|as|while|when|which|who|because|before|after|until)\s/g),
  ].at(-1);
  if (clause && clause.index > shortest)
    return `${head
      .slice(0, clause.index)
      .trim()
      .replace(/[,;:\u2014]+(["\u201d]?)$/, '$1')}.`;
  return `${head.slice(0, head.lastIndexOf(' ')).trim()} \u2026`;
}
