import type { Range } from '../base/text-range.js';
import type { CategoryName } from '../trade/categories.js';
import { readCount } from './element-count.js';
import { readState, readWornState } from './element-state.js';
import type { Lexicon } from './lexicon.js';
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

/** What all mentions of one element tell together. */
interface Evidence {
  /** Mentions that are sure by themselves, and those of them in hand or on a body. */
  sure: number;
  touched: number;
  /** Handled as a prop anywhere; worn anywhere. */
  inHand: boolean;
  /** Scenes in which it is in hand. */
  readonly handScenes: Set<number>;
  worn: boolean;
  /** Its words are told somewhere, or a screen shows it. */
  graphic: boolean;
  /** It only stands or hangs somewhere. */
  placed: boolean;
  /** Only ever standing somewhere. */
  untouched: boolean;
  readonly scenes: Set<number>;
}

/** Makes finds of the mentions of a script: one element under several names is one, and evidence anywhere counts everywhere. */
export function gatherElements(
  mentions: readonly Mention[],
  marked: (at: Range) => boolean,
  lexicon: Lexicon,
): Gathered {
  const named = nameElements(mentions.filter((one) => one.category !== 'extras'));
  const elements = new Map<string, Evidence>();
  for (const { mention, name } of named) elements.set(name, addEvidence(elements.get(name) ?? noEvidence(), mention));
  const pairs = named.map((one) => ({ one, find: asFind(one, elements.get(one.name) as Evidence, marked, lexicon) }));
  return {
    finds: pairs.flatMap(({ find }) => find ?? []),
    named: pairs.flatMap(({ one, find }) => (find ? [one] : [])),
  };
}

const noEvidence = (): Evidence => ({
  sure: 0,
  touched: 0,
  inHand: false,
  handScenes: new Set(),
  worn: false,
  graphic: false,
  placed: false,
  untouched: true,
  scenes: new Set(),
});

function addEvidence(evidence: Evidence, mention: Mention): Evidence {
  const { signals, category, inHand } = mention;
  if (isSure(mention)) evidence.sure++;
  if (isTouched(mention)) evidence.touched++;
  if (category === 'props' && inHand) {
    evidence.inHand = true;
    evidence.handScenes.add(mention.sentence.scene);
  }
  if (category === 'costumes') evidence.worn = true;
  if (category === 'graphics') evidence.graphic = true;
  if (category === 'dressing') evidence.placed = true;
  const stands = signals.use.placed || signals.use.standing || category === 'dressing';
  if (inHand || signals.words.owned || !stands) evidence.untouched = false;
  evidence.scenes.add(mention.sentence.scene);
  return evidence;
}

const isSure = (mention: Mention) => mention.confidence >= 0.8;
const isTouched = (mention: Mention) => isSure(mention) && (mention.inHand || mention.worn);

function asFind(
  { mention, name }: Named,
  evidence: Evidence,
  marked: (at: Range) => boolean,
  lexicon: Lexicon,
): Find | null {
  const support = markOf(mention, marked) ?? supportFrom(mention, evidence);
  const confidence = support ? add(mention.confidence, support.weight) : mention.confidence;
  if (confidence < cut) return null;
  const { category, why } = categoryOverScript(mention, evidence);
  const { sentence, part, by, worn, start, end, rules } = mention;
  return {
    scene: sentence.scene,
    known: 'found',
    name,
    category,
    count: readCount(part, sentence.tokens),
    by,
    worn: category === 'costumes' && worn && !isPacked(mention),
    state:
      readState(sentence, part.phrase, lexicon) ??
      (worn ? readWornState(sentence, by, part.phrase.start, lexicon) : null),
    words: sentence.text.slice(start, end),
    at: sentence.place(start, end),
    confidence,
    rules: [...rules, ...(support ? [support.words] : []), ...(why ? [why] : [])],
    strength: null,
  };
}

/** "packs a case with shirts", "folds the jumper", "irons a skirt": in hand, and on nobody. */
const isPacked = ({ part: { role, deed } }: Mention) =>
  role !== 'subject' && deed !== null && !deed.passive && /^(?:pack|unpack|fold|iron|launder)$/.test(deed.lemma);

interface Support {
  readonly weight: number;
  readonly words: string;
}

/** A doubtful word in brackets is an element: the writer says so. */
function markOf({ confidence, sentence, start, end }: Mention, marked: (at: Range) => boolean): Support | null {
  if (confidence >= 0.9 || !marked(sentence.place(start, end))) return null;
  return { weight: 5, words: 'the writer marked it' };
}

/** What the other mentions of an element lend to a doubtful one. */
function supportFrom(mention: Mention, { sure, touched }: Evidence): Support | null {
  const { simile, negated } = mention.signals.words;
  if (mention.confidence >= 0.9 || simile || negated) return null;
  if (touched - (isTouched(mention) ? 1 : 0) > 0) {
    return { weight: 1, words: 'somebody has it in hand or wears it elsewhere in the script' };
  }
  return sure - (isSure(mention) ? 1 : 0) > 0 ? { weight: 0.6, words: 'it is there elsewhere in the script' } : null;
}

/** Adds to the log odds of a confidence. */
function add(confidence: number, weight: number): number {
  const odds = Math.log(confidence / (1 - confidence)) + weight;
  return 1 / (1 + Math.exp(-odds));
}

/** Handled once, a prop everywhere; worn once, a costume; in several scenes and never touched, dressing. */
function categoryOverScript(mention: Mention, evidence: Evidence): { category: CategoryName; why: string | null } {
  const { category, kind } = mention;
  const change = (to: CategoryName, why: string) => ({ category: to, why: to === category ? null : why });
  if (kind.letters.includes('c') && evidence.worn) return change('costumes', 'it is worn elsewhere in the script');
  if (!/^(?:props|dressing|plants|graphics)$/.test(category)) return { category, why: null };
  if (kind.classes.includes('fixed')) {
    const isMoved = category === 'dressing' && evidence.handScenes.has(mention.sentence.scene);
    return isMoved ? change('props', 'somebody moves it in the scene') : { category, why: null };
  }
  if (evidence.graphic && !evidence.inHand) return change('graphics', 'its words are told elsewhere in the script');
  if (evidence.inHand) return change('props', 'somebody handles it elsewhere in the script');
  if (category === 'props' && evidence.placed) {
    return change('dressing', 'it is a part of the place elsewhere in the script');
  }
  if (category !== 'props' || !evidence.untouched || evidence.scenes.size < 2) return { category, why: null };
  return change('dressing', 'it stands in several scenes and nobody touches it');
}
