import type { Diagnostic } from '../base/diagnostic.js';
import { foldName } from '../base/slug.js';
import { sayScript } from '../messages/script.js';
import type { Chunk } from './chunks.js';
import { isNeverCue, readCue } from './cue.js';
import { cueAt, endsSpeech, isKnownCue, type KnownCues } from './known-cues.js';
import { readSceneLine, smallLetterScene } from './line-kinds.js';
import type { MarkContext } from './marks.js';
import type { RawLine } from './raw-line.js';
import { hasTime } from './split-heading.js';
import { namesScene, suggestHeading } from './suggest-heading.js';
import { readTime } from './time-of-day.js';

interface OddContext extends MarkContext {
  readonly cues: KnownCues;
}

/** Says what is odd about a line that is read as action: a scene line in small letters, speech on one line, a stray line. */
export function checkActionLine(line: RawLine, before: RawLine | null, context: OddContext): void {
  const { messages } = context;
  const written = smallLetterScene(line);
  const inside = settingInside(line.text);
  if (inside !== null) messages.push(sayScript('heading-behind-words', { text: line.text, meant: inside }, line.at));
  else if (before === null && mayBeScene(line.text))
    messages.push(sayScript('line-may-be-scene', { text: line.text, meant: suggestHeading(line.text) }, line.at));
  if (written !== null) messages.push(sayScript('heading-small-letters', { written, text: line.text }, line.at));
  const name = written === null ? speakerOnOneLine(line.text, context.cues) : null;
  if (name !== null) messages.push(sayScript('speech-on-one-line', { name }, line.at));
  const first = before === null || before.stray !== line.stray;
  if (line.stray === 'item' && first && before !== null && readSceneLine(before) === null) {
    messages.push(sayScript('line-not-in-item', undefined, line.at));
  }
}

/** Capitals, and a dash before a time: `KITCHEN - DAY`; in any case `Scene 1: Kitchen, morning`. */
function mayBeScene(text: string): boolean {
  if (text.length > 80) return false;
  if (namesScene(text)) return true;
  if (/\p{Ll}/u.test(text)) return false;
  const parts = text.split(/\s[-\u2010-\u2015]+\s/);
  return parts.length > 1 && readTime(parts[parts.length - 1] as string) !== null && !isNeverCue(parts[0] as string);
}

/** The scene heading that stands within a line behind other words: `FADE IN ON INT. KITCHEN - DAY`; null when there is none. */
function settingInside(text: string): string | null {
  const found = /^[^\p{Ll}]*\p{Lu}{2}[^\p{Ll}]*[\s:,\-\u2010-\u2015]((?:INT|EXT)[./ ].*)$/u.exec(text);
  return found && hasTime((found[1] as string).replace(/^(?:INT|EXT)\b[.\s]*/, '')) ? (found[1] as string) : null;
}

/** `NORA: hello` on one line, and `Nora: hello` of someone who speaks elsewhere. */
function speakerOnOneLine(text: string, known: KnownCues): string | null {
  const found = /^([^:]{1,38}):\s+\S/.exec(text);
  if (!found) return null;
  const name = (found[1] as string).trim();
  if (known.counts.has(foldName(name))) return name.toUpperCase();
  const cue = readCue(name, known.isCastName);
  return cue !== null && !isNeverCue(cue.name) ? cue.name : null;
}

/** A name alone with a blank line under it: what follows is not read as speech (rule L7). */
export function checkLoneCue(lines: readonly RawLine[], next: Chunk | null, context: OddContext): void {
  const line = lines[0] as RawLine;
  const below = next?.kind === 'lines' ? (next.lines[0] as RawLine) : null;
  if (lines.length > 1 || line.kind !== 'text' || !below || endsSpeech(line) || endsSpeech(below)) return;
  if (below.kind !== 'text') return;
  const cue = readCue(line.text, context.cues.isCastName);
  if (!cue) return;
  if (isKnownCue(cue, context.cues) || cue.extensions.length > 0 || looksSpoken(line.text, below.text)) {
    context.messages.push(sayScript('cue-alone', { name: cue.name }, line.at));
  }
}

/** A name in capitals with words under it, inside a paragraph of action: without a blank line above it nobody speaks. */
export function checkCrowdedCue(lines: readonly RawLine[], at: number, { cues, messages }: OddContext): void {
  const line = lines[at] as RawLine;
  const cue = cueAt(lines, at, cues.isCastName);
  const below = lines[at + 1];
  if (cue === null || !below || isNeverCue(cue.name) || !looksSpoken(line.text, below.text)) return;
  messages.push(sayScript('cue-crowded', { name: cue.name }, line.at));
}

/** At most three words in capitals over a line with small letters: more likely a name than action. */
function looksSpoken(name: string, below: string): boolean {
  return name.split(/\s+/).length <= 3 && (/\p{Ll}/u.test(below) || below.startsWith('('));
}

/** Says what is odd about lines whatever they are: tags, and script under a note without its sign. */
export function checkRawLines(lines: readonly RawLine[], messages: Diagnostic[]): void {
  lines.forEach((line, index) => {
    const above = lines[index - 1];
    const goesOn = above?.stray === 'note' && above.line === line.line - 1;
    if (line.stray === 'note' && !goesOn) messages.push(sayScript('line-not-in-note', undefined, line.at));
    const tag = line.text.includes('<') ? /<\/?[a-z][^<>]*>/i.exec(line.text) : null;
    if (tag && !line.literal?.has(tag.index)) messages.push(sayScript('tag-printed', { tag: tag[0] }, line.at));
  });
}
