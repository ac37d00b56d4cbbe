import type { CategoryName } from '../trade/categories.js';
import type { Candidate } from './candidates.js';
import type { Clauses } from './clause-types.js';
import type { Lexicon } from './lexicon.js';
import type { Token } from './reading.js';

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
  u: 'sound',
  k: 'dressing',
  g: 'props',
  q: 'gear',
  z: 'visual-effects',
};

/** The category of a thing by what is done with it, with the reason when use changed it. */
export function categoryByUse(
  candidate: Candidate,
  clauses: Clauses,
  lexicon: Lexicon,
): { readonly category: CategoryName; readonly why: string | null } {
  const { kind, signals } = candidate;
  const { letters } = kind;
  const first = letters[0] ?? 'p';
  const plain = names[first] ?? 'props';
  const inHand = signals.use.handled || signals.use.instrument || (signals.use.held && !signals.use.worn);
  const turn = (category: CategoryName, why: string) => ({ category, why: category === plain ? null : why });
  const made = asFigure(candidate, clauses, lexicon);
  if (made)
    return turn(
      made === 'food' ? 'food' : inHand ? 'props' : 'dressing',
      made === 'food' ? 'it is cooked' : 'it is a figure, not alive',
    );
  if (signals.use.verb === 'wear' && signals.use.object) return turn('costumes', 'it is worn');
  if (letters.includes('c')) {
    if (signals.use.worn || (signals.words.owned && !inHand)) return turn('costumes', 'it is worn');
    if (first === 'c' && letters[1] && inHand && !signals.words.owned)
      return turn(names[letters[1]] ?? 'props', 'it is in hand, not worn');
  }
  if (letters.includes('x') && first !== 'x' && signals.use.subjectOfDeed && signals.use.actsAsPerson)
    return turn('extras', 'it does what people do');
  if (letters.includes('a') && first !== 'a' && signals.use.subjectOfDeed) return turn('animals', 'it moves by itself');
  if (first === 'a' && letters.includes('f') && signals.use.eaten) return turn('food', 'it is eaten');
  if (first === 's' && inHand && letters[1]) return turn(names[letters[1]] ?? 'sound', 'it is in hand');
  if (letters[1] === 's' && signals.use.subjectOfDeed && first !== 'd') return turn('sound', 'it is heard');
  if (kind.head === 'blood')
    return turn(signals.words.surface || signals.use.placed ? 'effects' : 'makeup', 'it is on a body');
  if (first === 'd' || first === 'k')
    return inHand && !kind.classes.includes('fixed') ? turn('props', 'somebody handles it') : turn('dressing', '');
  if (first === 'p' && !inHand && !signals.words.owned && signals.use.standing)
    return turn('dressing', 'it stands there and nobody handles it');
  return { category: plain, why: null };
}

/** A toy or a statue of an animal, person or vehicle; a cooked animal. */
function asFigure({ kind, part }: Candidate, clauses: Clauses, lexicon: Lexicon): 'figure' | 'food' | null {
  if (!/^[avxz]/.test(kind.letters)) return null;
  const modifiers = part.phrase.modifiers.map((at) => clauses.sentence.tokens[at] as Token);
  const named = (list: string) => modifiers.some((token) => lexicon.find(token.lower)?.classes.includes(list));
  if (named('replicas')) return 'figure';
  return kind.letters.startsWith('a') && named('cooked') ? 'food' : null;
}
