import type { Range } from '../../base/text-range.js';
import type { Scene, Script } from '../../script/types.js';
import type { Cue } from '../../trade/implications/cue.js';
import type { Sentence, Token } from '../reading.js';
import type { Find } from '../types.js';
import { findObjects } from './clause.js';
import type { SettingCue } from './cue-index.js';
import type { CueMatch } from './match.js';
import { headOf } from './present.js';
import { isUnreal, type Stretch } from './unreal.js';
import { holds, openWordList } from './word-list.js';

/** Why something is raised: the words, their place, and what the words mean. */
export interface Evidence<Owner> {
  readonly owner: Owner;
  readonly scene: number;
  readonly words: string;
  readonly at: Range;
  /** The word that raised it, lower case. */
  readonly head: string;
  readonly token: Token | null;
  readonly subject: Token | null;
  readonly object: Token | null;
  readonly kind: Sentence['kind'] | 'element';
  readonly sentence: Sentence | null;
}

/** What the cues of the sentences raise, in the order of the text. */
export function readEvidence<Owner>(
  script: Script,
  sentences: readonly Sentence[],
  cues: readonly CueMatch<Owner>[],
  elements: readonly Find[],
): Evidence<Owner>[] {
  let heads: ReadonlySet<string> | null = null;
  const isActed = (word: string) => {
    heads ??= new Set(elements.map(({ name }) => headOf(name)));
    return heads.has(word) || wordsOfAction(sentences).has(word);
  };
  const evidence: Evidence<Owner>[] = [];
  for (const match of cues) {
    if (fitsScene(match, script.scenes[match.sentence.scene], isActed, elements)) evidence.push(asEvidence(match));
  }
  return evidence;
}

function asEvidence<Owner>({
  owner,
  sentence,
  token,
  start,
  end,
  subject,
  object,
  cue,
}: CueMatch<Owner>): Evidence<Owner> {
  return {
    owner,
    scene: sentence.scene,
    words: sentence.text.slice(start, end),
    at: sentence.place(start, end),
    head: cue.on === 'phrase' ? sentence.text.slice(start, end).toLowerCase() : token.lower,
    token,
    subject,
    object,
    kind: sentence.kind,
    sentence,
  };
}

function fitsScene<Owner>(
  { cue, sentence, token }: CueMatch<Owner>,
  scene: Scene | undefined,
  isActed: (word: string) => boolean,
  elements: readonly Find[],
): boolean {
  const { setting, onlySpoken, nothingBefore } = cue.limits;
  if (setting && scene && scene.heading.setting !== setting && scene.heading.setting !== 'INT/EXT') return false;
  if (onlySpoken && isActed(token.lemma)) return false;
  if (!nothingBefore) return true;
  if (sentence.tokens.some(({ tag, start }) => tag === 'noun' && start < token.start)) return false;
  const here = sentence.place(token.start, token.end).start.offset;
  return !elements.some((find) => find.scene === sentence.scene && find.at.start.offset < here);
}

const acted = new WeakMap<readonly Sentence[], ReadonlySet<string>>();

/** The base forms of all words outside speech; gathered once for both tables. */
function wordsOfAction(sentences: readonly Sentence[]): ReadonlySet<string> {
  const before = acted.get(sentences);
  if (before !== undefined) return before;
  const words = new Set<string>();
  for (const { kind, tokens } of sentences) if (kind !== 'speech') for (const { lemma } of tokens) words.add(lemma);
  acted.set(sentences, words);
  return words;
}

/** What headings, ways of speaking and whole categories raise. */
export function readSettings<Owner>(
  script: Script,
  sentences: readonly Sentence[],
  settings: readonly SettingCue<Owner>[],
  elements: readonly Find[],
): Evidence<Owner>[] {
  const here = groupByScene(script, elements);
  const said = groupByScene(script, sentences);
  const evidence: Evidence<Owner>[] = [];
  for (const scene of script.scenes) {
    const categories = new Set<string>();
    for (const { category } of here[scene.index] ?? []) categories.add(category);
    for (const note of scene.notes) if (note.kind === 'items') categories.add(note.category);
    for (const { owner, cue } of settings) {
      if (cue.on === 'category' && !categories.has(cue.category)) continue;
      const place = placeOfCue(cue, scene, here[scene.index] ?? [], said[scene.index] ?? []);
      if (place === null) continue;
      evidence.push({ ...place, owner, scene: scene.index, token: null, subject: null, object: null, sentence: null });
    }
  }
  return evidence;
}

function groupByScene<Item extends { readonly scene: number }>(script: Script, items: readonly Item[]): Item[][] {
  const groups: Item[][] = script.scenes.map(() => []);
  for (const item of items) groups[item.scene]?.push(item);
  return groups;
}

function placeOfCue(
  cue: Cue,
  scene: Scene,
  elements: readonly Find[],
  sentences: readonly Sentence[],
): Pick<Evidence<never>, 'words' | 'at' | 'head' | 'kind'> | null {
  if (cue.on === 'heading') {
    const { heading } = scene;
    const settingFits = cue.setting === null || heading.setting === cue.setting || heading.setting === 'INT/EXT';
    const lightFits = cue.light === '' || (heading.light !== null && openWordList(cue.light).words.has(heading.light));
    if (!settingFits || !lightFits) return null;
    return { words: heading.text, at: heading.line.at, head: heading.light ?? '', kind: 'heading' };
  }
  if (cue.on === 'voice') {
    const speech = scene.blocks.find((block) => block.kind === 'speech' && block.cue.voice === cue.voice);
    if (speech?.kind !== 'speech') return null;
    return { words: speech.cue.text, at: speech.cue.at, head: speech.cue.name.toLowerCase(), kind: 'speech' };
  }
  if (cue.on === 'category') return elementOfCategory(cue, scene, elements, sentences);
  return null;
}

function elementOfCategory(
  cue: Extract<Cue, { on: 'category' }>,
  scene: Scene,
  elements: readonly Find[],
  sentences: readonly Sentence[],
): Pick<Evidence<never>, 'words' | 'at' | 'head' | 'kind'> | null {
  const except = openWordList(cue.except).words;
  for (const note of scene.notes) {
    if (note.kind !== 'items' || note.category !== cue.category) continue;
    const item = note.items.find(({ name }) => !except.has(headOf(name)));
    if (item) return { words: item.name, at: item.at, head: headOf(item.name), kind: 'element' };
  }
  const find = elements.find(
    (one) => one.category === cue.category && !except.has(headOf(one.name)) && !isGuarded(one, cue, sentences),
  );
  return find ? { words: find.words, at: find.at, head: headOf(find.name), kind: 'element' } : null;
}

/** True when the words around a find keep it out, or when it is only pictured or a figure of speech. */
function isGuarded(
  { at, scene, words }: Find,
  { notPrev, notNear, notObject }: Extract<Cue, { on: 'category' }>,
  sentences: readonly Sentence[],
): boolean {
  const sentence = sentences.find((one) => {
    if (one.scene !== scene || !one.text.includes(words)) return false;
    const { start, end } = one.place(0, one.text.length);
    return start.offset <= at.start.offset && at.start.offset < end.offset;
  });
  if (!sentence) return false;
  const { tokens } = sentence;
  const stretch = stretchOf(sentence, at, words);
  const inList = (list: string) => (token: Token) => holds(openWordList(list), token);
  const { first, core, last } = stretch;
  return (
    tokens.slice(Math.max(0, first - 3), last + 2).some(inList(notPrev)) ||
    tokens.some(inList(notNear)) ||
    findObjects(tokens, core).some(inList(notObject)) ||
    isUnreal(tokens, stretch)
  );
}

/** The tokens of a find; an event turns on its verb, a thing on its last word. */
function stretchOf({ text, tokens, place }: Sentence, at: Range, words: string): Stretch {
  let start = text.indexOf(words);
  while (start >= 0 && place(start, start + words.length).start.offset < at.start.offset)
    start = text.indexOf(words, start + 1);
  const from = Math.max(0, start);
  const first = Math.max(
    0,
    tokens.findIndex(({ end }) => end > from),
  );
  let last = first;
  while (last < tokens.length - 1 && (tokens[last + 1] as Token).start < from + words.length) last++;
  const verb = tokens.findIndex(({ tag }, index) => index >= first && index <= last && tag === 'verb');
  return { first, core: verb < 0 ? last : verb, last };
}
