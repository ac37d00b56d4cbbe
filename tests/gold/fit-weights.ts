import { findCandidates } from '../../src/find/candidates.js';
import { readClauses } from '../../src/find/clauses.js';
import { base, rules } from '../../src/find/evidence.js';
import { findBodyStates } from '../../src/find/body-states.js';
import { findEvents } from '../../src/find/events.js';
import type { Lexicon } from '../../src/find/lexicon.js';
import { readSentences } from '../../src/find/read-sentences.js';
import { learnReferents } from '../../src/find/referents.js';
import { goldScript } from './gold-script.js';
import { shippedLexicon } from './run-score.js';
import { headWord, readGold } from './score.js';

interface Example {
  readonly fired: readonly number[];
  readonly listed: boolean;
  readonly share: number;
}

/** The lexicon as if part of our lists had never been written: what unseen scripts are like. */
function thin(lexicon: Lexicon, seed: number): Lexicon {
  const lot = (word: string) => {
    let hash = seed * 7919;
    for (const sign of word) hash = (hash * 31 + sign.charCodeAt(0)) % 1_000_003;
    return hash % 20;
  };
  return {
    find: (word) => {
      const entry = lexicon.find(word);
      if (!entry?.core || lot(word) > 6) return entry;
      const plain = { ...entry, core: '', classes: entry.classes.filter((name) => name !== 'weak') };
      return lot(word) > 0 ? plain : entry.verb < 0 && entry.adjective < 0 ? null : { ...plain, wordnet: '', share: 0, noun: false };
    },
  };
}

function collect(file: string, lexicon: Lexicon, share: number): Example[] {
  const examples: Example[] = [];
  for (const item of readGold(file)) {
    if (item.kind !== 'action') continue;
    const sentences = readSentences(goldScript(item), lexicon);
    const referents = learnReferents(sentences, lexicon);
    for (const sentence of sentences) {
      if (sentence.kind !== 'action') continue;
      const clauses = readClauses(sentence, referents.enter(sentence), lexicon);
      const taken = new Set([...findEvents(clauses, lexicon), ...findBodyStates(clauses, lexicon)].map((one) => one.at));
      for (const { part, kind, signals } of findCandidates(clauses, lexicon)) {
        if (taken.has(part.phrase.head)) continue;
        const word = headWord(sentence.tokens[part.phrase.head]?.lower ?? '');
        const gold = item.elements.find((one) => headWord(one.name) === word);
        if (gold?.optional) continue;
        examples.push({ fired: rules.flatMap((rule, i) => (rule.holds(kind, signals) ? [i] : [])), listed: gold !== undefined, share });
      }
    }
  }
  return examples;
}

const lexicon = shippedLexicon();
const files = process.argv.slice(2);
const examples = files.flatMap((file) => [
  ...collect(file, lexicon, 1),
  ...[1, 2, 3].flatMap((seed) => collect(file, thin(lexicon, seed), 0.35)),
]);
const start = rules.map((rule) => rule.weight);
const weights = [...start];
let bias = base;
const rate = 0.3;
const hold = 0.004;
for (let round = 0; round < 3000; round++) {
  const slope = weights.map((weight, i) => hold * (weight - (start[i] as number) * 0.5));
  let biasSlope = 0;
  let total = 0;
  for (const { fired, listed, share } of examples) {
    const odds = fired.reduce((sum, i) => sum + (weights[i] as number), bias);
    const miss = (1 / (1 + Math.exp(-odds)) - (listed ? 1 : 0)) * share;
    for (const i of fired) slope[i] = (slope[i] as number) + miss / 400;
    biasSlope += miss / 400;
    total += share;
  }
  for (let i = 0; i < weights.length; i++) weights[i] = (weights[i] as number) - rate * (slope[i] as number);
  bias -= rate * biasSlope;
  if (round === 2999) console.log(`${examples.length} examples of weight ${total}`);
}
console.log(`base ${bias.toFixed(2)}`);
rules.forEach((rule, i) => {
  const n = examples.filter((one) => one.fired.includes(i)).length;
  console.log(`${rule.id.padEnd(16)} ${(weights[i] as number).toFixed(2)}  was ${rule.weight}  met ${n}`);
});
