import {
  absenceAfter,
  absencePrepositions,
  absenceVerbs,
  afterIs,
  bodyParts,
  likenesses,
  messages,
  voiceWords,
} from '../trade/presence-words.js';
import type { NameMatch } from './name-matcher.js';

/** What a name in the action says: `acts` does something, `seen` is there, `heard` is a voice, `absent` is only spoken of. */
export type MentionSense = 'acts' | 'seen' | 'heard' | 'absent';

/** Judges one name in the action by the words around it. */
export function judgeMention(match: NameMatch): MentionSense {
  const after = match.text.text.slice(match.end);
  if (match.possessive) return judgePossessive(after);
  const before = wordsBefore(match, 4);
  const last = before.at(-1) ?? '';
  if (absencePrepositions.has(last)) return 'absent';
  if (last === 'of' && hasAny(before, voiceWords)) return 'heard';
  if (last === 'of' && hasAny(before, likenesses)) return 'absent';
  if ((last === 'from' || last === 'to') && hasAny(before, messages)) return 'absent';
  if (reachesElsewhere(before) || absenceAfter.some((pattern) => pattern.test(after))) return 'absent';
  return startsClause(match) && /^,? ?\p{L}/u.test(after) ? 'acts' : 'seen';
}

/** `Nora's coat` is a coat; `Nora's hand` is Nora; `Nora's voice` is heard; `Nora's already here` is Nora. */
function judgePossessive(after: string): MentionSense {
  const words = [...after.replace(/^['\u2019]s?/, '').matchAll(/[\p{L}-]+/gu)]
    .slice(0, 3)
    .map(([word]) => word.toLowerCase());
  const [first = '', ...others] = words;
  if (voiceWords.has(first)) return 'heard';
  if (bodyParts.has(first)) return 'seen';
  if (afterIs.has(first) || /ing$/.test(first)) return 'acts';
  const [second = ''] = others;
  return bodyParts.has(second) && !/^(?:and|or|on|in|at|to|from|with|of|over)$/.test(first) ? 'seen' : 'absent';
}

function wordsBefore({ text, start }: NameMatch, count: number): string[] {
  const clause = /[^.!?;:\u2014]*$/.exec(text.text.slice(Math.max(0, start - 60), start))?.[0] ?? '';
  return [...clause.matchAll(/[\p{L}'\u2019-]+/gu)].slice(-count).map(([word]) => word.toLowerCase());
}

function hasAny(words: readonly string[], set: ReadonlySet<string>): boolean {
  return words.some((word) => set.has(word) || set.has(word.replace(/s$/, '')));
}

function reachesElsewhere(before: readonly string[]): boolean {
  const last = before.at(-1) ?? '';
  return absenceVerbs.some(([verb, particle]) => {
    if (particle === null) return isVerb(last, verb);
    return last === particle && before.slice(0, -1).some((word) => isVerb(word, verb));
  });
}

function isVerb(word: string, verb: string): boolean {
  const stem = verb.replace(/e$/, '');
  return (
    word === verb || [`${verb}s`, `${verb}es`, `${stem}ed`, `${stem}ing`].includes(word) || word === pastForms.get(verb)
  );
}

const pastForms = new Map([
  ['think', 'thought'],
  ['hear', 'heard'],
  ['write', 'wrote'],
]);

function startsClause({ text, start }: NameMatch): boolean {
  return /(?:^|[.!?:;,\u2014\u2013\u2026-]["\u201d)]*\s*|\b(?:and|but|as|while|when|where|then|before|after|until)\s+)$/i.test(
    text.text.slice(Math.max(0, start - 12), start),
  );
}
