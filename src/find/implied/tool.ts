import { noTools, toolRows } from '../../trade/implications/implication.js';
import type { Token } from '../reading.js';
import type { Evidence } from './evidence.js';
import { isPerson, openWordList } from './word-list.js';

const others = openWordList(`${noTools} BODY`);

/** True when the sentence names what the work is done with: "digs with the lid of his tin". */
export function namesTool<Owner extends { readonly row: number }>({
  owner,
  token,
  sentence,
}: Evidence<Owner>): boolean {
  if (token === null || sentence === null || !toolRows.includes(owner.row)) return false;
  const { tokens } = sentence;
  for (let at = tokens.indexOf(token) + 1; at < tokens.length; at++) {
    const { lower, text } = tokens[at] as Token;
    if (/^[.;:,!?]$/.test(text)) return false;
    if (lower !== 'with' || !/^(?:determiner|possessive|number)$/.test(tokens[at + 1]?.tag ?? '')) continue;
    const tool = tokens.slice(at + 2, at + 6).find(({ tag }) => tag === 'noun' || tag === 'name');
    return tool !== undefined && !isPerson(tool) && !others.words.has(tool.lemma);
  }
  return false;
}
