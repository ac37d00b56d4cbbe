import type { Candidate } from './candidates.js';
import type { Clauses } from './clause-types.js';
import type { Lexicon } from './lexicon.js';
import type { Sentence, Token } from './reading.js';

const telling = /^(?:read|say|announce|declare|proclaim|spell|state|warn|flash|show|promise)$/;

/** True for a thing with lettering whose words the text gives: "a sign reads CLOSED", `a banner: "WELCOME"`. */
export function isLettered({ part, kind }: Pick<Candidate, 'part' | 'kind'>, clauses: Clauses): boolean {
  if (!kind.classes.includes('lettered')) return false;
  const { deeds, colon, sentence } = clauses;
  const { tokens } = sentence;
  const own = deeds.find((deed) => deed.subject?.phrase === part.phrase);
  if (own && telling.test(own.lemma) && quotes(tokens, own.at + 1)) return true;
  if (colon !== null && colon >= part.phrase.end && quotes(tokens, colon)) return true;
  return /^["“]/.test(tokens[part.phrase.end]?.text ?? '');
}

/** True when the words from `at` on are given as they are written: in quotation marks, in capitals or as a figure. */
export function quotes(tokens: readonly Token[], at: number): boolean {
  const token = tokens[at];
  if (token === undefined) return false;
  if (/^[:,—–-]$/.test(token.text)) return quotes(tokens, at + 1);
  return /^["“‘'\d]|^\p{Lu}{2}|^\p{Lu}\p{Ll}*$/u.test(token.text);
}

const appearing =
  /^(?:appear|play|show|flicker|scroll|crawl|flash|pop|loop|roll|blur|fill|blink|glow|count|run|spin|turn|load|freeze)$/;

/** True for a picture that a screen shows: "on the monitor, a map", "a face fills the screen". */
export function isOnScreen(
  { part, kind }: Pick<Candidate, 'part' | 'kind'>,
  clauses: Clauses,
  lexicon: Lexicon,
): boolean {
  if (!kind.classes.includes('pictures') && !kind.letters.startsWith('g')) return false;
  const { tokens } = clauses.sentence;
  const isScreen = (at: number) => lexicon.find((tokens[at] as Token).lemma)?.classes.includes('screens') ?? false;
  const screen = clauses.parts.find((one) => one !== part && isScreen(one.phrase.head));
  if (screen === undefined) return false;
  if (part.role === 'object' && part.deed?.subject?.phrase === screen.phrase) return true;
  const shown = screen.preposition === 'on' || screen.preposition === 'across';
  const own = clauses.deeds.find((deed) => deed.subject?.phrase === part.phrase);
  if (own) return appearing.test(own.lemma) && (shown || own.lemma === 'fill');
  return shown && part.role === 'loose';
}

/** True for a line that puts words on the screen: `SUPER: Three days later`. */
export function isTitleLine({ kind, tokens }: Pick<Sentence, 'kind' | 'tokens'>): boolean {
  if (kind !== 'action') return false;
  const [first, second, third] = [tokens[0]?.lower, tokens[1]?.lower, tokens[2]?.lower];
  const isSign = (sign: string | undefined) => sign !== undefined && /^[:—–-]$/.test(sign);
  if (first === 'title' && second === 'card') return isSign(third);
  return (
    /^(?:super|superimpose|superimposed|title|caption|chyron|subtitle|intertitle)$/.test(first ?? '') && isSign(second)
  );
}
