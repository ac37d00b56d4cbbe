import type { CategoryName } from '../trade/categories.js';
import type { Mention } from './mentions.js';
import { type Named, nameElements } from './same-element.js';
import type { Find } from './types.js';

/** Below this confidence a mention is no element. */
const cut = 0.5;

/** The elements of a script, and the name that each listed mention goes by. */
export interface Gathered {
  readonly finds: readonly Find[];
  readonly named: readonly Named[];
}

/** Makes finds of the mentions of a script: one element under several names is one, and evidence anywhere counts everywhere. */
export function gatherElements(mentions: readonly Mention[]): Gathered {
  const named = nameElements(mentions.filter((one) => one.category !== 'extras'));
  const elements = new Map<string, Named[]>();
  for (const one of named) {
    const same = elements.get(one.name);
    if (same) same.push(one);
    else elements.set(one.name, [one]);
  }
  const pairs = named.map((one) => ({ one, find: asFind(one, elements.get(one.name) as Named[]) }));
  return {
    finds: pairs.flatMap(({ find }) => find ?? []),
    named: pairs.flatMap(({ one, find }) => (find ? [one] : [])),
  };
}

function asFind({ mention, name }: Named, all: readonly Named[]): Find | null {
  const others = all.filter((one) => one.mention !== mention).map((one) => one.mention);
  const support = supportFrom(mention, others);
  const confidence = support ? add(mention.confidence, support.weight) : mention.confidence;
  if (confidence < cut) return null;
  const { category, why } = categoryOverScript(mention, others);
  const { sentence, by, worn, count, state, words, at, rules } = mention;
  const fired = [...rules, ...(support ? [support.words] : []), ...(why ? [why] : [])];
  return {
    scene: sentence.scene,
    known: 'found',
    name,
    category,
    count,
    by,
    state,
    words,
    at,
    confidence,
    rules: fired,
    strength: null,
    worn: category === 'costumes' && worn,
  };
}

/** What the other mentions of an element lend to a doubtful one. */
function supportFrom(
  mention: Mention,
  others: readonly Mention[],
): { readonly weight: number; readonly words: string } | null {
  const sure = others.filter((one) => one.confidence >= 0.8);
  if (mention.confidence >= 0.9 || sure.length === 0 || mention.signals.simile || mention.signals.negated) return null;
  const touched = sure.some((one) => one.inHand || one.worn);
  return touched
    ? { weight: 1, words: 'somebody has it in hand or wears it elsewhere in the script' }
    : { weight: 0.6, words: 'it is there elsewhere in the script' };
}

/** Adds to the log odds of a confidence. */
function add(confidence: number, weight: number): number {
  const odds = Math.log(confidence / (1 - confidence)) + weight;
  return 1 / (1 + Math.exp(-odds));
}

/** Handled once, a prop everywhere; worn once, a costume; in several scenes and never touched, dressing. */
function categoryOverScript(
  mention: Mention,
  others: readonly Mention[],
): { readonly category: CategoryName; readonly why: string | null } {
  const { category, kind } = mention;
  const all = [mention, ...others];
  const change = (to: CategoryName, why: string) => (to === category ? { category, why: null } : { category: to, why });
  if (kind.letters.includes('c') && all.some((one) => one.category === 'costumes'))
    return change('costumes', 'it is worn elsewhere in the script');
  if (category !== 'props' && category !== 'dressing') return { category, why: null };
  if (kind.classes.includes('fixed')) return { category, why: null };
  if (all.some((one) => one.category === 'props' && one.inHand))
    return change('props', 'somebody handles it elsewhere in the script');
  const scenes = new Set(all.map((one) => one.sentence.scene));
  const untouched = all.every(
    (one) =>
      !one.inHand && !one.signals.owned && (one.signals.placed || one.signals.standing || one.category === 'dressing'),
  );
  return scenes.size > 1 && untouched
    ? change('dressing', 'it stands in several scenes and nobody touches it')
    : { category, why: null };
}
