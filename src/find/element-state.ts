import type { Lexicon } from './lexicon.js';
import type { Phrase } from './phrases.js';
import type { Sentence, Token } from './reading.js';

/** The state that the words give a thing: "soaked", "torn at the sleeve"; null when they give none. */
export function readState(sentence: Sentence, phrase: Phrase, lexicon: Lexicon): string | null {
  const { tokens } = sentence;
  const isState = (token: Token | undefined) =>
    token !== undefined && (lexicon.find(token.lower)?.classes.includes('states') ?? false);
  const before = phrase.modifiers.map((place) => tokens[place] as Token).filter(isState);
  const after = isAsideOfPerson(tokens, phrase) ? null : stateAfter(sentence, phrase.end, isState);
  const all = [...before.map((token) => token.lower), ...(after ? [after] : [])];
  return all.length > 0 ? all.join(', ') : null;
}

/** "Len sits under the lean-to, smoking", "Martin in his boat, wrapped in blankets": what the aside tells is the person's. */
const isAsideOfPerson = (tokens: readonly Token[], { start, end }: Phrase) =>
  tokens[end]?.text === ',' &&
  /^(?:in|under|beneath|beside|behind|by|against)$/.test(tokens[start - 1]?.lower ?? '') &&
  /^(?:smoking|wrapped|frozen)$/.test(tokens[end + 1]?.lower ?? '') &&
  tokens.some(({ person }) => person !== null);

/** "the coat, torn at the sleeve", "the coat is soaked", "his coat soaked through". */
function stateAfter(sentence: Sentence, end: number, isState: (token: Token | undefined) => boolean): string | null {
  const { tokens } = sentence;
  let at = end;
  if (tokens[at]?.text === ',') at++;
  if (/^(?:is|are|now|still|hangs?|lies?|comes?)$/.test(tokens[at]?.lower ?? '')) at++;
  while (tokens[at]?.tag === 'adverb') at++;
  const state = tokens[at];
  if (!isState(state) || !state || !/^(?:adjective|participle|verb)$/.test(state.tag)) return null;
  if (tokens[at + 1]?.tag === 'noun') return null;
  const last = placeAfter(tokens, at + 1);
  return sentence.text.slice(state.start, (tokens[last] as Token).end).toLowerCase();
}

/** Place of the last word of "at the sleeve", "with mud", at most four words on; `from - 1` when nothing of the kind follows. */
function placeAfter(tokens: readonly Token[], from: number): number {
  if (!/^(?:at|in|with|down|along|across|through|from|by)$/.test(tokens[from]?.lower ?? '')) return from - 1;
  for (let at = from + 1; at < Math.min(tokens.length, from + 5); at++) {
    const token = tokens[at] as Token;
    if (token.tag === 'noun') return at;
    if (!/^(?:determiner|possessive|adjective)$/.test(token.tag)) return from - 1;
  }
  return from - 1;
}

const ofTheWhole =
  /^(?:soaked|soaking|drenched|dripping|sodden|wet|muddy|filthy|bloodied|bloodstained|dusty|sooty|dirty)$/;

/** "DAVE, soaked, in a suit": what the wearer is in, the garments behind it are in; null when nothing of the kind stands there. */
export function readWornState(
  { tokens }: Sentence,
  wearer: string | null,
  until: number,
  lexicon: Lexicon,
): string | null {
  if (wearer === null) return null;
  for (let at = 1; at < until; at++) {
    const name = tokens[at - 1]?.text === ')' ? at - 4 : at - 1;
    if (tokens[at]?.text !== ',' || tokens[name]?.person !== wearer) continue;
    let here = at + 1;
    while (tokens[here]?.tag === 'adverb') here++;
    const state = tokens[here];
    if (here >= until || !state || !ofTheWhole.test(state.lower)) continue;
    if (tokens[here + 1]?.tag !== 'noun' && lexicon.find(state.lower)?.classes.includes('states')) return state.lower;
  }
  return null;
}
