import { type Diagnostic, sortDiagnostics } from '../base/diagnostic.js';
import { foldThing } from '../base/slug.js';
import { sayScript } from '../messages/script.js';
import { buildDefinitions } from './build-definitions.js';
import { buildScenes, placeNotes } from './build-scenes.js';
import { carryLights } from './carried-lights.js';
import { checkLateLists, checkRepeatedNotes } from './check-notes.js';
import { checkNearNames, checkNumbers, checkTitles } from './checks.js';
import { groupLines } from './chunks.js';
import { decodeText } from './decode.js';
import { findFrontFence } from './front-fence.js';
import { readFrontMatter } from './front-matter.js';
import { gatherPeople } from './gather-people.js';
import { collectCues } from './known-cues.js';
import { limitText } from './limit-text.js';
import { makeSpokenOf, markNames } from './names-in-use.js';
import { checkRawLines } from './odd-lines.js';
import { parseMarkdown } from './parse-markdown.js';
import { printLines } from './printed-lines.js';
import { maskPrivateText } from './private-text.js';
import { readBlocks } from './read-blocks.js';
import { definedNames, formerNames, sortOutDefinitions } from './read-definitions.js';
import { readNotesAndPeople, toNoteLines } from './read-notes.js';
import { checkNull, makeSourceText, rangeAt } from './source-text.js';
import type { Block, Script } from './types.js';

/** A script as read, with all that is odd about it. */
export interface ReadScript {
  readonly script: Script | null;
  readonly messages: readonly Diagnostic[];
}

/**
 * Reads the bytes of a script. Never throws: a mistake is a message with its place. `script` is null only when the bytes are no
 * UTF-8 text or a line is too long for one; a script with errors comes as far as it can be read.
 */
export function readScript(bytes: Uint8Array, file: string): ReadScript {
  const { text, messages } = decodeText(bytes);
  return text === null ? { script: null, messages } : readScriptText(text, file);
}

/** Reads the text of a script, as `readScript` does its bytes. */
export function readScriptText(text: string, file: string): ReadScript {
  const source = makeSourceText(text);
  const messages: Diagnostic[] = [];
  // 1. What is no script: front matter and private text.
  const { fence, messages: fenceMessages } = findFrontFence(source);
  const { front, people: cast, messages: frontMessages } = readFrontMatter(source, fence);
  const masked = maskPrivateText(source, fence?.bodyStart ?? 0);
  messages.push(...fenceMessages, ...frontMessages, ...masked.messages, ...checkNull(source));
  // 2. Markdown to lines, each with its place.
  const limited = limitText(masked.forParser, source, messages);
  if (limited === null) return { script: null, messages: sortDiagnostics(messages) };
  const printed = printLines(parseMarkdown(limited), source, masked.forPrint);
  const { lines, definitions: written } = sortOutDefinitions(printed, messages);
  checkRawLines(lines, messages);
  // 3. Lines to blocks and scenes.
  const { chunks, notes: noteLines } = groupLines(lines, source, masked.privateLines);
  const cues = collectCues(chunks, cast);
  const defined = definedNames(written);
  const context = { source, defined, cues, messages };
  const pieces = readBlocks(chunks, context);
  const blocks = pieces.filter((piece): piece is Block => piece.kind !== 'scene');
  const { opening, scenes: bare, closing } = buildScenes(pieces, messages);
  // 4. People, then what speaks of them: notes and definitions.
  const marked = markNames(pieces);
  const things = new Set([...marked, ...defined, ...formerNames(written)].map(foldThing));
  const names = { isElement: (name: string) => things.has(foldThing(name)), isSpokenOf: makeSpokenOf(pieces) };
  const speakers = gatherPeople(cast, blocks);
  const { notes, people } = readNotesAndPeople(toNoteLines(noteLines, context), speakers, names, messages);
  const definitions = buildDefinitions(written, people, messages);
  const { scenes: placed, script: scriptNotes } = placeNotes(bare, notes);
  const scenes = carryLights(placed, messages);
  // 5. What only the whole can tell.
  if (scenes.length === 0) messages.push(sayScript('no-scene', undefined, rangeAt(source, 0, 0)));
  messages.push(
    ...checkNumbers(scenes, blocks, front),
    ...checkNearNames(people, blocks),
    ...checkTitles(people),
    ...checkRepeatedNotes(scenes),
    ...checkLateLists(scenes),
  );
  const script = {
    file,
    source: source.text,
    front,
    people,
    definitions,
    opening,
    scenes,
    closing,
    notes: scriptNotes,
  };
  return { script, messages: sortDiagnostics(messages) };
}
