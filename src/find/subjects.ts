import type { Clauses, Deed, Part, State, Subject } from './clause-types.js';
import { strangerIn } from './holder.js';
import type { Lexicon } from './lexicon.js';
import { isPersonNoun } from './nameless.js';
import type { Sentence, Token } from './reading.js';

/** Whom a "who" goes on about: the nearest person before it, whatever else stands between: "a boy in headphones, who ...". */
export function antecedentOf(
  tokens: readonly Token[],
  at: number,
  { last }: State,
  parts: readonly Part[],
  lexicon: Lexicon,
): Subject | null {
  for (let here = at - 1; here >= Math.max(0, at - 12); here--) {
    const token = tokens[here] as Token;
    if (/^[.;:!?]$/.test(token.text) && token.tag === 'punctuation' && tokens[here - 1]?.tag !== 'name') break;
    if (tokens[here + 1]?.tag === 'possessive') continue;
    if (token.person !== null) return { phrase: null, person: token.person, pronoun: null };
    if (token.tag !== 'noun' || !isPersonNoun(token, lexicon)) continue;
    const part = parts.findLast(({ phrase }) => phrase.head === here);
    if (part) return { phrase: part.phrase, person: null, pronoun: null };
  }
  return last ? { phrase: last.phrase, person: null, pronoun: null } : null;
}

const posture =
  /^(?:come|go|sit|stand|lie|kneel|crouch|wait|hang|climb|step|walk|run|ride|follow|appear|emerge|lean|squat|perch|stride|hurry|burst)$/;

/** The verb that the next words may be the subject of, as in "Opposite sits Nora"; null when it has one, or something stands between. */
export function verbAwaiting(tokens: readonly Token[], at: number, { deed, preposition }: State): Deed | null {
  if (!deed || deed.subject !== null || deed.participle || preposition || !posture.test(deed.lemma)) return null;
  const between = tokens.slice(deed.at + 1, at);
  return between.every(({ tag }) => /^(?:adverb|determiner|adjective|number)$/.test(tag)) ? deed : null;
}

/** The participle that opens a sentence and waits for its subject behind the comma: "Wrapped in blankets, the children"; or null. */
export function verbOpening({ deed, preposition, opens }: State): Deed | null {
  const waits = deed?.participle && deed.subject === null && !preposition;
  return waits && opens === 'comma' ? deed : null;
}

/** Gives a verb the subject that stands behind it, and with it the participles before: "Holding the roller stands the girl". */
export function giveSubject(deeds: readonly Deed[], deed: Deed | null, subject: Subject): void {
  if (deed === null) return;
  for (const one of deeds) {
    if (one === deed || (one.subject === null && one.participle))
      (one as { subject: Subject | null }).subject = subject;
  }
}

/** True for a sentence of action that leaves out its subject: "Reaches for the can." */
export function leavesOutSubject({ kind, tokens }: Sentence): boolean {
  const first = tokens.find(({ tag }) => tag !== 'adverb');
  return kind === 'action' && first?.tag === 'verb' && first.lower !== first.lemma && first.lower.endsWith('s');
}

/** Whom a sentence of action is about, for the next one that leaves out its subject; `before` where it tells of nobody and nothing. */
export function leadOf(clauses: Clauses, before: Subject | null): Subject | null {
  const { sentence, deeds } = clauses;
  if (sentence.kind !== 'action') return before;
  const subject = deeds.find((deed) => !deed.participle && deed.subject !== null)?.subject ?? null;
  if (subject === null) {
    const person = sentence.tokens.find((token) => token.person !== null)?.person ?? null;
    return person === null ? before : { phrase: null, person, pronoun: null };
  }
  if (subject.person !== null) return { phrase: null, person: subject.person, pronoun: null };
  const stranger = strangerIn(subject, clauses);
  return stranger === null ? null : { phrase: null, person: null, pronoun: 'they', stranger };
}

/** Who takes out what the sentences behind may list: "turns out her pockets", "passes things down", "unpacks"; null for any other. */
export function listerOf(clauses: Clauses): Subject | null {
  if (clauses.sentence.kind !== 'action') return null;
  const deed = clauses.deeds.findLast(({ unreal, subject }) => !unreal && subject !== null);
  if (!deed?.subject || !takesOut(deed, clauses)) return null;
  const { person } = deed.subject;
  if (person !== null) return { phrase: null, person, pronoun: null };
  const stranger = strangerIn(deed.subject, clauses);
  return stranger === null ? null : { phrase: null, person: null, pronoun: 'they', stranger };
}

function takesOut(deed: Deed, { parts, sentence }: Clauses): boolean {
  if (/^(?:empty|unpack|unload)$/.test(deed.lemma)) return true;
  if (!/^(?:turn|pass|lay|hand|take|produce|bring|pull|set|spread|tip)$/.test(deed.lemma)) return false;
  const object = parts.find((part) => part.deed === deed && /^(?:out|out of)?$/.test(part.preposition ?? ''));
  return /^(?:things?|contents?|belongings?|possessions?|pocket|bag|purse|suitcase|handbag|rucksack|drawer)$/.test(
    sentence.tokens[object?.phrase.head ?? -1]?.lemma ?? '',
  );
}

/** True for a sentence that only names things: "A key. A comb." */
export const onlyLists = ({ sentence, deeds }: Clauses): boolean =>
  sentence.kind === 'action' &&
  deeds.length === 0 &&
  sentence.tokens.every(({ person, tag }) => person === null && tag !== 'pronoun');

/** Place behind the name that begins at `at`: "Mr. Tredwell" is of three words. */
export function endOfName(tokens: readonly Token[], at: number): number {
  const { person } = tokens[at] as Token;
  let end = at + 1;
  while (person !== null && tokens[end]?.person === person) end++;
  return end;
}

/** "Kofi, in an overall two sizes too big, pushes": what stands between the commas does nothing. */
export function isAside({ main, subject, last }: State, deeds: readonly Deed[]): boolean {
  if (!main || !subject || subject === main || main.pronoun !== null || subject.person !== null) return false;
  return main.person !== null && last?.phrase === subject.phrase && !deeds.some((deed) => deed.subject === subject);
}

const byHand =
  /^(?:wear|carry|clutch|lug|drag|grip|hug|cradle|brandish|wheel|balance|munch|eat|chew|smoke|sip|juggle|peel)$/;

/** A participle right after a phrase belongs to it, "villagers carrying torches", save for "June sits on the stoop wearing a helmet". */
export function ownSubject(
  tokens: readonly Token[],
  at: number,
  state: State,
  parts: readonly Part[],
  lexicon: Lexicon,
): Subject | null {
  const last = state.last as Part;
  const head = tokens[last.phrase.head] as Token;
  if (last.preposition !== null && (tokens[at] as Token).lower.endsWith('ing')) {
    const { core = '', classes = [] } = lexicon.find(head.lemma) ?? {};
    const lives = /^[xav]/.test(core) || isPersonNoun(head, lexicon);
    const mayDo = classes.includes('body') || (!lives && byHand.test((tokens[at] as Token).lemma));
    if (mayDo) return antecedentOf(tokens, at, state, parts, lexicon);
  }
  return last.phrase.end === at || tokens[at - 1]?.tag === 'adverb'
    ? { phrase: last.phrase, person: null, pronoun: null }
    : state.subject;
}
