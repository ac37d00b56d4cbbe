import type { Script } from '../script/types.js';
import { milderHazards } from '../trade/hazards.js';
import { type HazardCues, hazardCues } from '../trade/hazards-cues.js';
import { listMinors, type Minor, readAges } from './implied/ages.js';
import { indexCues } from './implied/cue-index.js';
import { type Evidence, readEvidence, readSettings } from './implied/evidence.js';
import { matchCues } from './implied/match.js';
import { readNamedThings } from './implied/names-as-sentences.js';
import { learnNames } from './people-names.js';
import type { Sentence, Token } from './reading.js';
import type { Find, HazardFind } from './types.js';

let index: ReturnType<typeof indexCues<HazardCues>> | null = null;

/** One reason to raise a hazard; `rank` orders reasons, the lowest first. */
interface Reason extends HazardFind {
  readonly rank: number;
}

/**
 * Raises hazards from action, headings, marks, notes, definitions, finds, implications and ages: one find a hazard and
 * scene, with its strongest words. No confidence is asked, and nothing is ever called harmless.
 */
export function raiseHazards(sentences: readonly Sentence[], script: Script, elements: readonly Find[]): HazardFind[] {
  index ??= indexCues(hazardCues);
  const reasons = [
    ...readEvidence(script, sentences, index, elements).map(fromWords),
    ...readSettings(script, sentences, index, elements).map(fromSetting),
    ...fromNames(script, elements, index),
    ...fromAges(script, sentences),
  ];
  return strongest(reasons);
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

function fromWords({ owner, scene, words, at, kind }: Raised): Reason {
  return { scene, hazard: owner.id, words, at, because: places[kind], rank: ranks[kind] };
}

function fromSetting(raised: Raised): Reason {
  const reason = fromWords(raised);
  return raised.kind === 'heading' ? { ...reason, because: `the heading: outside, ${raised.head}` } : reason;
}

function fromNames(script: Script, elements: readonly Find[], cues: NonNullable<typeof index>): Reason[] {
  return readNamedThings(script, elements).flatMap(({ sentence, because }) =>
    matchCues(sentence, cues)
      .filter(({ cue }) => cue.on !== 'verb')
      .map(({ owner, start, end }) => ({
        scene: sentence.scene,
        hazard: owner.id,
        words: sentence.text.slice(start, end),
        at: sentence.place(start, end),
        because,
        rank: 0,
      })),
  );
}

/** A minor raises the hazard of children in every scene that names the person or gives the lines. */
function fromAges(script: Script, sentences: readonly Sentence[]): Reason[] {
  const reasons: Reason[] = [];
  const minors = new Map<string, Minor>(listMinors(script).map((minor) => [minor.name, minor]));
  for (const { minor, sentence, start, end } of sentences.flatMap(readAges)) {
    if (!minors.has(minor.name)) minors.set(minor.name, minor);
    reasons.push(ageReason(sentence, start, end, 'an age in the action', 0));
  }
  for (const sentence of sentences) {
    if (sentence.kind !== 'action') continue;
    sentence.tokens.forEach((token, at) => {
      const named = minors.get(nameOf(token));
      if (!named || nameOf(sentence.tokens[at - 1]) === named.name) return;
      reasons.push(ageReason(sentence, token.start, endOfName(sentence, at), sayAge(named), 1));
    });
  }
  return [...reasons, ...fromCues(script, minors), ...fromCastNotes(script, [...minors.values()])];
}

function fromCues(script: Script, minors: ReadonlyMap<string, Minor>): Reason[] {
  const names = learnNames(script.people);
  return script.scenes.flatMap(({ index: scene, blocks }) =>
    blocks.flatMap((block) => {
      if (block.kind !== 'speech') return [];
      const { name, at } = block.cue;
      const minor = minors.get(names.canonical(name) ?? name);
      return minor ? [{ scene, hazard: 'H15', words: name, at, because: sayAge(minor), rank: 2 }] : [];
    }),
  );
}

function fromCastNotes(script: Script, minors: readonly Minor[]): Reason[] {
  return script.scenes.flatMap(({ index: scene, notes }) =>
    notes.flatMap((note) => {
      if (note.kind !== 'items' || note.category !== 'cast') return [];
      return note.items.flatMap(({ name, at }) => {
        const minor = minors.find((one) => one.name.toLowerCase() === name.toLowerCase());
        return minor ? [{ scene, hazard: 'H15', words: name, at, because: sayAge(minor), rank: 1 }] : [];
      });
    }),
  );
}

function nameOf(token: Token | undefined): string {
  return token?.person ?? (token?.tag === 'name' ? token.text : '');
}

/** Where the name ends whose first word stands at `at`. */
function endOfName({ tokens }: Sentence, at: number): number {
  let last = at;
  while (nameOf(tokens[last + 1]) === nameOf(tokens[at])) last++;
  return (tokens[last] as Token).end;
}

function sayAge({ name, age, from }: Minor): string {
  return `the age of ${name}: ${age} (${from === 'cast' ? 'front matter' : 'action'})`;
}

function ageReason(sentence: Sentence, start: number, end: number, because: string, rank: number): Reason {
  return {
    scene: sentence.scene,
    hazard: 'H15',
    words: sentence.text.slice(start, end),
    at: sentence.place(start, end),
    because,
    rank,
  };
}

/** One find a hazard and scene: what the writer wrote before what was read, then the longer words. */
function strongest(reasons: readonly Reason[]): HazardFind[] {
  const groups = new Map<string, Reason[]>();
  for (const reason of reasons) {
    const key = `${reason.scene} ${reason.hazard}`;
    const group = groups.get(key);
    if (group) group.push(reason);
    else groups.set(key, [reason]);
  }
  return [...groups.values()]
    .map(asFind)
    .sort((a, b) => a.scene - b.scene || Number(a.hazard.slice(1)) - Number(b.hazard.slice(1)));
}

function asFind(group: readonly Reason[]): HazardFind {
  const [first, ...rest] = [...group].sort(
    (a, b) => a.rank - b.rank || b.words.length - a.words.length || a.at.start.offset - b.at.start.offset,
  ) as [Reason, ...Reason[]];
  const { rank: _, because, hazard, ...find } = first;
  const other = rest.find(({ words }) => !overlap(words, first.words));
  return { ...find, hazard: milderOf(hazard, group), because: other ? `${because}; also “${other.words}”` : because };
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
