import type { CategoryName } from '../trade/categories.js';
import type { Candidate } from './candidates.js';
import type { Clauses } from './clause-types.js';
import type { Lexicon } from './lexicon.js';
import type { Token } from './reading.js';
import { isLettered, isOnScreen } from './written-words.js';

const names: Readonly<Record<string, CategoryName>> = {
  p: 'props',
  w: 'props',
  c: 'costumes',
  d: 'dressing',
  v: 'vehicles',
  a: 'animals',
  f: 'food',
  x: 'extras',
  m: 'makeup',
  e: 'effects',
  s: 'sound',
  u: 'music',
  k: 'plants',
  g: 'graphics',
  q: 'gear',
  z: 'visual-effects',
};

/** What the rules of use look at. */
interface Use extends Pick<Candidate, 'kind'> {
  readonly letters: string;
  readonly first: string;
  readonly second: string;
  readonly use: Candidate['signals']['use'];
  readonly words: Candidate['signals']['words'];
  readonly preposition: string | null;
  readonly inHand: boolean;
  readonly fixed: boolean;
  /** A toy or statue of an animal, person or vehicle, or a cooked animal. */
  readonly made: 'figure' | 'food' | null;
  /** A picture on a screen; a thing with lettering whose words are told. */
  readonly potted: boolean;
  readonly onScreen: boolean;
  readonly lettered: boolean;
}

interface UseRule {
  readonly to: CategoryName | ((use: Use) => CategoryName);
  readonly words: string;
  readonly holds: (use: Use) => boolean;
}

const second = (use: Use) => names[use.second] ?? 'props';
/** What is done to furniture that somebody moves. */
const moved = /^(?:carry|haul|lug|heave|drag|shove|load|unload|hurl|throw|smash|chop|saw)$/;
const bareMass = ({ words }: Use) => words.article === 'none' && !words.plural && !words.owned;

/** How use turns what a word usually is; the first rule that holds counts. */
const useRules: readonly UseRule[] = [
  { to: 'food', words: 'it is cooked', holds: (u) => u.made === 'food' },
  { to: 'props', words: 'it is a figure, and handled', holds: (u) => u.made === 'figure' && u.inHand },
  { to: 'dressing', words: 'it is a figure, not alive', holds: (u) => u.made === 'figure' },
  { to: 'costumes', words: 'it is worn', holds: (u) => u.use.verb === 'wear' && u.use.object && u.first !== 'm' },
  {
    to: 'costumes',
    words: 'it is worn',
    holds: (u) => u.letters.includes('c') && (u.use.worn || (u.words.owned && !u.inHand)),
  },
  {
    to: 'props',
    words: 'something is done with it: it is nobody',
    holds: (u) => u.first === 'x' && u.kind.source === 'wordnet' && u.use.instrument && !u.words.plural,
  },
  {
    to: 'dressing',
    words: 'something goes into it: it is nobody',
    holds: (u) => u.first === 'x' && u.kind.source === 'wordnet' && /^(?:into|inside|onto)$/.test(u.preposition ?? ''),
  },
  {
    to: second,
    words: 'nobody wears it',
    holds: (u) => u.first === 'c' && u.second !== '' && !u.words.owned && (u.inHand || u.second === 'p'),
  },
  {
    to: 'extras',
    words: 'it does what people do',
    holds: (u) => u.letters.includes('x') && u.use.subjectOfDeed && u.use.actsAsPerson,
  },
  { to: 'animals', words: 'it moves by itself', holds: (u) => u.letters.includes('a') && u.use.subjectOfDeed },
  { to: 'food', words: 'it is eaten', holds: (u) => u.first === 'a' && u.letters.includes('f') && u.use.eaten },
  {
    to: 'effects',
    words: 'it moves by itself',
    holds: (u) => u.letters.includes('e') && u.first !== 'e' && u.use.subjectOfDeed && bareMass(u),
  },
  {
    to: 'effects',
    words: 'it covers things',
    holds: (u) => u.kind.head === 'ice' && bareMass(u) && !u.words.ofQuantity && !u.use.held && !u.words.fragment,
  },
  { to: second, words: 'it is in hand', holds: (u) => /[su]/.test(u.first) && u.second !== '' && u.inHand },
  { to: 'sound', words: 'it is heard', holds: (u) => u.second === 's' && u.first !== 'd' && u.use.subjectOfDeed },
  {
    to: 'effects',
    words: 'it is on a thing',
    holds: (u) => u.kind.head === 'blood' && (u.words.surface || u.use.placed),
  },
  { to: 'makeup', words: 'it is on a body', holds: (u) => u.kind.head === 'blood' },
  {
    to: 'props',
    words: 'somebody handles it',
    holds: (u) =>
      /^[dkg]/.test(u.letters) && u.inHand && !u.fixed && (!u.use.touchedOnly || u.use.held || u.use.instrument),
  },
  { to: 'graphics', words: 'a screen shows it', holds: (u) => u.onScreen && !u.inHand && !u.words.owned },
  { to: 'graphics', words: 'its words are told', holds: (u) => u.lettered && !u.inHand },
  { to: 'plants', words: 'it grows in a pot', holds: (u) => u.potted && !u.inHand },
  {
    to: 'plants',
    words: 'it grows or stands there',
    holds: (u) => u.letters.includes('k') && !u.inHand && !u.words.owned && (u.use.standing || u.use.placed),
  },
  {
    to: 'dressing',
    words: 'it stands there and nobody handles it',
    holds: (u) => u.first === 'p' && !u.inHand && !u.words.owned && u.use.standing,
  },
];

/** The category of a thing by what is done with it, with the reason when use changed it. */
export function categoryByUse(
  candidate: Candidate,
  clauses: Clauses,
  lexicon: Lexicon,
): { readonly category: CategoryName; readonly why: string | null } {
  const { kind, signals } = candidate;
  const { use, words } = signals;
  const [first = 'p', second = ''] = kind.letters;
  const facts: Use = {
    kind,
    letters: kind.letters,
    first,
    second,
    use,
    words,
    preposition: candidate.part.preposition,
    inHand: use.handled || use.instrument || (use.held && !use.worn),
    fixed: kind.classes.includes('fixed') && !(use.object && moved.test(use.verb ?? '')),
    made: asFigure(candidate, clauses, lexicon),
    potted: /^[fkp]/.test(kind.letters) && isPotted(candidate, clauses),
    onScreen: isOnScreen(candidate, clauses, lexicon),
    lettered: isLettered(candidate, clauses),
  };
  const usual = names[first] ?? 'props';
  const rule = useRules.find((one) => one.holds(facts));
  if (!rule) return { category: usual, why: null };
  const category = typeof rule.to === 'string' ? rule.to : rule.to(facts);
  return { category, why: category === usual ? null : rule.words };
}

const isPotted = ({ part }: Candidate, { sentence }: Clauses) =>
  part.phrase.modifiers.some((at) => /^(?:potted|flowering|climbing)$/.test(sentence.tokens[at]?.lower ?? ''));

function asFigure({ kind, part }: Candidate, clauses: Clauses, lexicon: Lexicon): 'figure' | 'food' | null {
  if (!/^[avxzf]/.test(kind.letters)) return null;
  const modifiers = part.phrase.modifiers.map((at) => clauses.sentence.tokens[at] as Token);
  const named = (list: string) => modifiers.some((token) => lexicon.find(token.lower)?.classes.includes(list));
  if (named('replicas')) return 'figure';
  return kind.letters.startsWith('a') && named('cooked') ? 'food' : null;
}
