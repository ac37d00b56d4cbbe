import { foldName } from '../base/slug.js';
import type { Chunk } from './chunks.js';
import { type CueShape, cueKey, readCue } from './cue.js';
import { isTransition, readOmitted, readSceneLine } from './line-kinds.js';
import type { RawLine } from './raw-line.js';
import type { Person } from './types.js';

/** Who speaks in a script, as far as its own lines tell. */
export interface KnownCues {
  /** How often each folded name opens a paragraph with words under it. */
  readonly counts: ReadonlyMap<string, number>;
  readonly isCastName: (name: string) => boolean;
}

/** Collects the cues that open a paragraph before any speech is read: a name known anywhere is known everywhere. */
export function collectCues(chunks: readonly Chunk[], cast: readonly Person[]): KnownCues {
  const castNames = new Set(cast.flatMap((person) => person.names.map(foldName)));
  const isCastName = (name: string) => castNames.has(foldName(name));
  const counts = new Map<string, number>();
  for (const chunk of chunks) {
    if (chunk.kind !== 'lines' || chunk.isTitle) continue;
    const cue = cueAt(chunk.lines, 0, isCastName);
    if (cue) counts.set(cueKey(cue), (counts.get(cueKey(cue)) ?? 0) + 1);
  }
  return { counts, isCastName };
}

/** The cue at a line of a chunk: it has the shape of one and a line under it that can be spoken. */
export function cueAt(lines: readonly RawLine[], index: number, isCastName: KnownCues['isCastName']): CueShape | null {
  const line = lines[index] as RawLine;
  const next = lines[index + 1];
  if (line.kind !== 'text' || !next || endsSpeech(next) || endsSpeech(line)) return null;
  return readCue(line.text, isCastName);
}

/** True for a line that no speech goes on over: a scene line, an omitted number, a transition. */
export function endsSpeech(line: RawLine): boolean {
  return isTransition(line.text) || readSceneLine(line) !== null || readOmitted(line) !== null;
}

/** True when a cue's name is known from `cast:` or from another paragraph. */
export function isKnownCue(cue: CueShape, known: KnownCues): boolean {
  return known.counts.has(cueKey(cue)) || known.isCastName(cue.name);
}
