import type { Script } from '../script/types.js';
import type { HazardCues } from '../trade/hazards-cues.js';
import { milderHazards } from '../trade/hazards-further.js';
import { meansAdult } from './implied/ages.js';
import { type ChildrenOf, findChildren } from './implied/children.js';
import { cuesIn, settingsOfHazards } from './implied/cued.js';
import { type Evidence, readEvidence, readSettings } from './implied/evidence.js';
import { raiseMainsNearWater } from './implied/mains-near-water.js';
import { raiseMinors } from './implied/minors.js';
import { readNamedThings } from './implied/names-as-sentences.js';
import type { Reason } from './implied/reason.js';
import type { Sentence } from './reading.js';
import type { Find, HazardFind } from './types.js';

/**
 * Raises hazards from action, headings, marks, notes, definitions, finds, implications and ages: one find a hazard and
 * scene, with its strongest words. No confidence is asked, and nothing is ever called harmless.
 */
export function raiseHazards(sentences: readonly Sentence[], script: Script, elements: readonly Find[]): HazardFind[] {
  const reasons = [
    ...readEvidence(script, sentences, cuesIn(sentences).hazards, elements)
      .filter((one) => one.owner.id !== 'H15' || !meansAdult(one))
      .map(fromWords),
    ...readSettings(script, sentences, settingsOfHazards(), elements).map(fromSetting),
    ...fromNames(script, elements),
    ...raiseMinors(script, sentences),
  ];
  const real = withoutCostumes([...reasons, ...raiseMainsNearWater(sentences, reasons)], sentences);
  return strongest(real, findChildren(real, sentences, elements));
}

type Raised = Evidence<HazardCues>;

const ranks = { action: 1, parenthetical: 1, heading: 3, speech: 2, element: 4 } as const;
const places = {
  action: 'the action',
  parenthetical: 'a parenthetical',
  heading: 'the heading',
  speech: 'speech that means a thing present',
  element: 'the elements of the scene',
} as const;

function fromWords({ owner, scene, words, at, kind, sentence }: Raised): Reason {
  const child = owner.id === 'H15' ? words.replace(placesOfChildren, 'children') : null;
  const inAction = kind === 'action' ? sentence : null;
  return { scene, hazard: owner.id, words, at, because: places[kind], rank: ranks[kind], sentence: inAction, child };
}

/** Who stands in the words of these is told by the scene, or befallen by no single deed. */
const wholeScene = new Set(['H14', 'H15', 'H17', 'H21']);
const placesOfChildren = /^.*(?:school|playground|classroom|nursery|kindergarten).*$/i;

function fromSetting(raised: Raised): Reason {
  const reason = fromWords(raised);
  return raised.kind === 'heading' ? { ...reason, because: `the heading: outside, ${raised.head}` } : reason;
}

function fromNames(script: Script, elements: readonly Find[]): Reason[] {
  return readNamedThings(script, elements).flatMap(({ sentence, because }) =>
    cuesIn([sentence])
      .hazards.filter(({ cue }) => cue.on !== 'verb')
      .map(({ owner, start, end }) => ({
        scene: sentence.scene,
        hazard: owner.id,
        words: sentence.text.slice(start, end),
        at: sentence.place(start, end),
        because,
        rank: 0,
        sentence: null,
        child: null,
      })),
  );
}

const disguises = new Set('costume suit outfit onesie'.split(' '));

/** "Half a cow costume", and then "the cow" of the same scene, are people. */
function withoutCostumes(reasons: readonly Reason[], sentences: readonly Sentence[]): readonly Reason[] {
  if (!reasons.some(({ hazard }) => hazard === 'H8')) return reasons;
  const worn = new Set<string>();
  for (const { scene, tokens } of sentences) {
    for (let at = 1; at < tokens.length; at++)
      if (disguises.has(tokens[at]?.lower ?? '')) worn.add(`${scene} ${tokens[at - 1]?.lower}`);
  }
  const headOf = (words: string) => words.toLowerCase().split(' ').at(-1);
  return reasons.filter(({ hazard, scene, words }) => hazard !== 'H8' || !worn.has(`${scene} ${headOf(words)}`));
}

/** One find a hazard and scene: what the writer wrote before what was read, then the longer words. */
function strongest(reasons: readonly Reason[], children: ChildrenOf): HazardFind[] {
  const groups = new Map<string, Reason[]>();
  for (const reason of reasons) {
    const key = `${reason.scene} ${reason.hazard}`;
    const group = groups.get(key);
    if (group) group.push(reason);
    else groups.set(key, [reason]);
  }
  return [...groups.values()]
    .map((group) => asFind(group, children))
    .sort((a, b) => a.scene - b.scene || Number(a.hazard.slice(1)) - Number(b.hazard.slice(1)));
}

function asFind(group: readonly Reason[], childrenOf: ChildrenOf): HazardFind {
  const [first, ...rest] = [...group].sort(
    (a, b) => a.rank - b.rank || b.words.length - a.words.length || a.at.start.offset - b.at.start.offset,
  ) as [Reason, ...Reason[]];
  const { because, hazard, scene, words, at } = first;
  const other = rest.find(({ words }) => !overlap(words, first.words));
  return {
    scene,
    hazard: milderOf(hazard, group),
    words,
    at,
    because: other ? `${because}; also “${other.words}”` : because,
    children: wholeScene.has(hazard) ? [] : [...new Set(group.flatMap(({ sentence }) => childrenOf(sentence)))],
  };
}

const milderWords: Readonly<Record<string, RegExp>> = {
  H2: /\b(?:toy|plastic|foam|rubber|cardboard|inflatable|polystyrene)\b/i,
  H20: /^(?:an?|the|his|her|their|long|quick|soft|first)?\s*kiss(?:e[sd]|ing)?\b/i,
};

/** The row to raise: the milder one where all the words in the scene tell of no more. */
function milderOf(hazard: string, group: readonly Reason[]): string {
  const pattern = milderWords[hazard];
  if (!pattern || !group.every(({ words }) => pattern.test(words))) return hazard;
  return milderHazards.find(({ insteadOf }) => insteadOf === hazard)?.id ?? hazard;
}

function overlap(one: string, other: string): boolean {
  const [a, b] = [one.toLowerCase(), other.toLowerCase()];
  return a.includes(b) || b.includes(a);
}
