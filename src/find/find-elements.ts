import type { Diagnostic } from '../base/diagnostic.js';
import { sayFind } from '../messages/find.js';
import type { Script } from '../script/types.js';
import type { Clauses } from './clause-types.js';
import { readClauses } from './clauses.js';
import type { Lexicon } from './lexicon.js';
import { readMentions } from './mentions.js';
import { readSentences } from './read-sentences.js';
import type { Sentence } from './reading.js';
import { learnReferents } from './referents.js';
import { type Find, type Finds, noFinds } from './types.js';

/** Reads in the action (and where plain in speech) the elements that nobody marked. English only; silent otherwise. */
export function findElements(
  script: Script,
  lexicon: Lexicon,
): { readonly finds: Finds; readonly messages: readonly Diagnostic[] } {
  const { language } = script.front;
  if (language !== null && !/^en\b/i.test(language)) {
    return { finds: noFinds, messages: [sayFind('language-not-read', { language })] };
  }
  const sentences = readSentences(script, lexicon);
  const clauses = takeApart(sentences, lexicon);
  const elements: Find[] = clauses.flatMap((one) => readMentions(one, lexicon));
  return { finds: { ...noFinds, elements }, messages: [] };
}

function takeApart(sentences: readonly Sentence[], lexicon: Lexicon): Clauses[] {
  const referents = learnReferents(sentences, lexicon);
  return sentences
    .filter((one) => one.kind !== 'heading')
    .map((sentence) => readClauses(sentence, referents.enter(sentence), lexicon));
}
