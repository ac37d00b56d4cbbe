import type { CategoryName } from '../trade/categories.js';
import type { Kind } from './kinds.js';
import type { Signals } from './signals.js';

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

/** The category of a thing by what is done with it. */
export function categoryByUse(kind: Kind, signals: Signals): CategoryName {
  const { letters } = kind;
  const inHand = signals.handled || signals.instrument || (signals.held && !signals.worn);
  const worn = letters.includes('c') && (signals.worn || (signals.owned && !inHand));
  if (worn) return 'costumes';
  const first = letters[0] ?? 'p';
  const second = letters[1];
  if (first === 'c' && second && inHand && !signals.owned) return names[second] ?? 'props';
  if (first === 's' && second && inHand) return names[second] ?? 'sound';
  if (second === 's' && signals.subjectOfDeed && first !== 'd') return 'sound';
  if (first === 'd' || first === 'k') return inHand && !kind.classes.includes('fixed') ? 'props' : 'dressing';
  if (first === 'p' && !inHand && !signals.owned && signals.standing) return 'dressing';
  return names[first] ?? 'props';
}
