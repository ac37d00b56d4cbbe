// Prints how long the finder takes against remark-parse of the same text, the first time and at its quickest.
// usage: node measure-finder.js SCRIPT...   (after npm run build)
import fs from 'node:fs';
import remarkParse from 'remark-parse';
import { unified } from 'unified';
import { findElements } from '../../dist/find/find-elements.js';
import { openLexicon } from '../../dist/find/lexicon.js';
import { readScriptText } from '../../dist/script/read-script.js';

const bytes = fs.readFileSync(new URL('../../src/find/data/lexicon.bin', import.meta.url));
/** So long both are run in turn, so that neither gets quicker any more. */
const milliseconds = 5000;

function time(work) {
  const start = performance.now();
  work();
  return performance.now() - start;
}

for (const file of process.argv.slice(2)) {
  const text = fs.readFileSync(file, 'utf8');
  const { script } = readScriptText(text, file);
  const lexicon = openLexicon(bytes);
  const find = () => findElements(script, lexicon);
  const parse = () => unified().use(remarkParse).parse(text);
  const pairs = [];
  for (const end = performance.now() + milliseconds; performance.now() < end; ) pairs.push([time(find), time(parse)]);
  const least = [0, 1].map((at) => Math.min(...pairs.map((pair) => pair[at])));
  for (const [when, [ours, theirs]] of Object.entries({ 'the first time': pairs[0], 'at its quickest': least })) {
    const ratio = (ours / theirs).toFixed(2);
    console.log(
      `finder, ${script.scenes.length} scenes, ${when}: ${ours.toFixed(1)} ms, remark-parse ${theirs.toFixed(1)} ms, ratio ${ratio}`,
    );
  }
}
