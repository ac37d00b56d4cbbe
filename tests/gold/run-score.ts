import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { findElements } from '../../src/find/find-elements.js';
import { type Lexicon, openLexicon } from '../../src/find/lexicon.js';
import { goldScript } from './gold-script.js';
import { goldScripts, scoreScript } from './score-scripts.js';
import { newTally, printTally, readGold, type Said, type Tally, tallyItem } from './score.js';

const folder = fileURLToPath(new URL('.', import.meta.url));

/** The lexicon that ships with the package. */
export function shippedLexicon(): Lexicon {
  return openLexicon(readFileSync(new URL('../../src/find/data/lexicon.bin', import.meta.url)));
}

/** Scores the finder on a gold file of sentences in this folder. */
export function scoreSentences(file: string, lexicon: Lexicon, tally: Tally = newTally()): Tally {
  for (const item of readGold(`${folder}${file}`)) {
    const { finds } = findElements(goldScript(item), lexicon);
    const people = finds.people.filter((one) => one.kind === 'extras');
    const said: Said[] = [
      ...finds.elements.filter((one) => one.known === 'found'),
      ...people.map((one) => ({ name: one.name, category: 'extras', by: null, words: one.words })),
    ];
    tallyItem(tally, item.id, item.text, item.elements, said);
  }
  return tally;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const wanted = process.argv.slice(2).filter((one) => !one.startsWith('--'));
  const asked = (name: string) => wanted.length === 0 || wanted.some((one) => name.includes(one));
  const lexicon = shippedLexicon();
  const report = (title: string, tally: Tally) => {
    console.log(printTally(title, tally));
    if (process.argv.includes('--errors')) console.log(tally.errors.sort().join('\n'));
  };
  const files = readdirSync(folder).filter((name) => name.endsWith('.jsonl') && asked(name));
  for (const file of files) report(file, scoreSentences(file, lexicon));
  for (const name of goldScripts().filter(asked)) report(name, scoreScript(name, lexicon));
}
