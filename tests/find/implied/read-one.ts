import { readFileSync } from 'node:fs';
import { openLexicon } from '../../../src/find/lexicon.js';
import { readSentences } from '../../../src/find/read-sentences.js';
import { readScriptText } from '../../../src/script/read-script.js';

const lexicon = openLexicon(readFileSync(new URL('../../../src/find/data/lexicon.bin', import.meta.url)));

/** A script of one scene whose cast is Nora, Tom and Ines, read into sentences. */
export function readOne(body: string, heading = 'INT. ROOM - DAY') {
  const cast = 'cast:\n  Nora: {}\n  Tom: {}\n  Ines: {}\n';
  return readAll(`---\ntitle: Trial\n${cast}---\n\n## ${heading}\n\n${body}\n`);
}

/** Any text as a script, read into sentences. */
export function readAll(text: string) {
  const { script } = readScriptText(text, 'trial.md');
  if (script === null) throw new Error('the trial script was refused');
  return { script, sentences: readSentences(script, lexicon) };
}
