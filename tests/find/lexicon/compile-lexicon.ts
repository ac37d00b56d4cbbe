import { nounBases } from '../../../src/find/word-forms.js';
import { categoryFinder, type NounKind, readRoots, weighNoun } from './noun-kinds.js';
import type { WordNet } from './wordnet.js';

/** The letter that the lexicon writes for each list of things; of a word in two lists the first here is the likelier. */
const letters: Readonly<Record<string, string>> = {
  costumes: 'c',
  weapons: 'w',
  props: 'p',
  dressing: 'd',
  vehicles: 'v',
  animals: 'a',
  food: 'f',
  extras: 'x',
  makeup: 'm',
  effects: 'e',
  sound: 's',
  music: 'u',
  plants: 'k',
  graphics: 'g',
  gear: 'q',
  'visual-effects': 'z',
  parts: 't',
};

interface Row {
  core: string;
  wordnet: string;
  verb: string;
  adjective: string;
  noun: boolean;
  classes: string[];
}

/** The words of a list: one or more a line, hyphens for spaces, `#` begins a remark. */
function listWords(text: string): string[] {
  return text
    .split('\n')
    .flatMap((line) => (line.split('#')[0] as string).trim().split(/\s+/))
    .filter((word) => word !== '');
}

/** Makes the text of the lexicon: one word a line, sorted, each with what is known of it. */
export function compileLexicon(net: WordNet, rootText: string, lists: ReadonlyMap<string, string>): string {
  const rows = new Map<string, Row>();
  const row = (word: string): Row => {
    const made = rows.get(word) ?? { core: '', wordnet: '', verb: '', adjective: '', noun: false, classes: [] };
    rows.set(word, made);
    return made;
  };
  addLists(lists, row);
  addNouns(net, rootText, row);
  addVerbs(net, row);
  addAdjectives(net, row);
  addOwnVerbs(rows);
  dropPlurals(rows, net);
  const lines = [...rows].map(([word, one]) => `${word}\t${writeRow(one)}`).filter((line) => !line.endsWith('\t'));
  return `${lines.sort((a, b) => (a < b ? -1 : 1)).join('\n')}\n`;
}

function addLists(lists: ReadonlyMap<string, string>, row: (word: string) => Row): void {
  const order = (name: string) => (letters[name] ? Object.keys(letters).indexOf(name) : 99);
  for (const [name, text] of [...lists].sort(([a], [b]) => order(a) - order(b))) {
    const letter = letters[name];
    for (const word of listWords(text)) {
      if (!letter) {
        const one = row(word.replaceAll('_', ' '));
        one.classes.push(name);
        if (name === 'places') one.noun = true;
        continue;
      }
      for (const spelling of new Set([word, word.replaceAll('-', ' ')])) {
        const one = row(spelling);
        if (!one.core.includes(letter)) one.core += letter;
      }
    }
  }
}

function addNouns(net: WordNet, rootText: string, row: (word: string) => Row): void {
  const category = categoryFinder(net, readRoots(rootText, net));
  const kinds = new Map<string, NounKind>();
  for (const lemma of net.nounSenses.keys()) {
    if (/[0-9./]/.test(lemma) || isProper(lemma, net)) continue;
    const kind = weighNoun(lemma, net, category);
    if (kind) kinds.set(lemma, kind);
    else if (!lemma.includes('_') && ((net.classCounts.noun.get(lemma) ?? 0) > 0 || isAbstract(lemma, net)))
      row(lemma).noun = true;
  }
  for (const [lemma, kind] of kinds) {
    if (!worthKeeping(lemma, kind, kinds)) {
      if (!lemma.includes('_')) row(lemma).noun = true;
      continue;
    }
    row(lemma.replaceAll('_', ' ')).wordnet =
      `${kind.best}${Math.min(9, Math.round(kind.share * 9))}${kind.next ?? ''}`;
  }
}

/** Acts, qualities, ideas, speech, events, feelings and states, by WordNet's own files of nouns. */
const abstractKinds = new Set([4, 7, 9, 10, 11, 12, 26]);

/** A noun that was never met and whose first meaning is no thing: without its line it would pass for a thing of no list. */
function isAbstract(lemma: string, net: WordNet): boolean {
  if (!/^[a-z]{4,12}$/.test(lemma) || net.verbSenses.has(lemma) || net.adjectives.has(lemma)) return false;
  const first = net.nouns.get(net.nounSenses.get(lemma)?.[0] as string);
  return first !== undefined && abstractKinds.has(first.kind);
}

function isProper(lemma: string, net: WordNet): boolean {
  const first = net.nouns.get(net.nounSenses.get(lemma)?.[0] as string);
  const spelling = first?.words.find((word) => word.toLowerCase() === lemma);
  return spelling !== undefined && /^[A-Z]/.test(spelling);
}

/** A compound is kept only when its head does not already tell what it is. */
function worthKeeping(lemma: string, kind: NounKind, kinds: ReadonlyMap<string, NounKind>): boolean {
  const parts = lemma.split('_');
  if (parts.length === 1) return kind.share >= 0.04;
  if (parts.length > 3 || kind.share < 0.4 || 'xk'.includes(kind.best)) return false;
  const head = kinds.get(parts.at(-1) as string);
  return !head || head.best !== kind.best || head.share < 0.35;
}

function addVerbs(net: WordNet, row: (word: string) => Row): void {
  for (const lemma of net.verbSenses.keys()) {
    if (/[_0-9.]/.test(lemma)) continue;
    const asVerb = net.classCounts.verb.get(lemma) ?? 0;
    const asNoun = net.nounSenses.has(lemma) ? (net.classCounts.noun.get(lemma) ?? 0) : -1;
    row(lemma).verb = String(asNoun < 0 ? 9 : Math.round((9 * (asVerb + 0.5)) / (asVerb + asNoun + 1)));
    if (isSoundVerb(lemma, net)) row(lemma).classes.push('sounds');
  }
}

/** A plural that WordNet has as a word of its own (the game of cards) hides the thing of our lists (a card), or what is no thing (an instruction). */
function dropPlurals(rows: ReadonlyMap<string, Row>, net: WordNet): void {
  const met = (word: string) => net.classCounts.noun.get(word) ?? 0;
  for (const [word, one] of rows) {
    if (one.core || !word.endsWith('s')) continue;
    const bases = nounBases(word).filter((base) => base !== word);
    const hides = bases.some(
      (base) => isKnown(rows.get(base)) || (isPlain(rows.get(base)) && met(base) > 5 * met(word) + 5),
    );
    if (!hides) continue;
    one.wordnet = '';
    one.noun = false;
  }
}

const isPlain = (row: Row | undefined) => row?.noun === true && row.wordnet === '';

const isKnown = (row: Row | undefined) => row !== undefined && (row.core !== '' || row.classes.includes('body'));

/** Verbs of our lists that WordNet does not have. */
function addOwnVerbs(rows: ReadonlyMap<string, Row>): void {
  for (const one of rows.values()) {
    if (one.verb === '' && one.classes.some((name) => verbLists.has(name))) one.verb = one.noun || one.core ? '4' : '9';
  }
}

const verbLists = new Set(
  'handling wearing stunt-verbs sound-verbs effect-verbs picture-verbs rough-verbs driven-stunts flowing hanging moving'.split(
    ' ',
  ),
);

const soundGloss = /^(?:make a certain noise or sound|emit a noise|make noise|emit sound|make a loud noise)/;

function isSoundVerb(lemma: string, net: WordNet): boolean {
  const senses = net.verbSenses.get(lemma) ?? [];
  const under = (offset: string, depth = 0): boolean => {
    const meaning = net.verbs.get(offset);
    if (!meaning || depth > 12) return false;
    return soundGloss.test(meaning.gloss) || meaning.above.some((one) => under(one, depth + 1));
  };
  const share = senses.filter((one) => under(one)).length / Math.max(1, senses.length);
  return share >= 0.34 || (senses[0] !== undefined && under(senses[0]));
}

function addAdjectives(net: WordNet, row: (word: string) => Row): void {
  for (const lemma of net.adjectives) {
    if (/[_0-9.]/.test(lemma)) continue;
    const asAdjective = net.classCounts.adjective.get(lemma) ?? 0;
    const asNoun = net.nounSenses.has(lemma) ? (net.classCounts.noun.get(lemma) ?? 0) : -1;
    const share = asNoun < 0 ? 9 : Math.round((9 * (asAdjective + 0.5)) / (asAdjective + asNoun + 1));
    row(lemma).adjective = String(share);
  }
}

/** `+pd` lists of our own, `=p7d` WordNet with its share in ninths, `v5` verb, `a9` adjective, `n` other noun, `.class` word classes. */
function writeRow(row: Row): string {
  return [
    row.core && `+${row.core}`,
    row.wordnet && `=${row.wordnet}`,
    row.verb && `v${row.verb}`,
    row.adjective && `a${row.adjective}`,
    row.noun && 'n',
    ...[...new Set(row.classes)].map((name) => `.${name}`),
  ]
    .filter(Boolean)
    .join(' ');
}
