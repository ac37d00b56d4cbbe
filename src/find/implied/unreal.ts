import { unrealWords } from '../../trade/implications/unreal-words.js';
import type { Token } from '../reading.js';
import { findSubject } from './clause.js';
import { openWordList, type WordList } from './word-list.js';

const pictures = openWordList(unrealWords.pictures);
const picturesAndScreens = new Set([...pictures.words, ...openWordList(unrealWords.screens).words]);
const showing = openWordList(unrealWords.showing);
const screens = openWordList(unrealWords.screens);
const shownIn = openWordList(unrealWords.shownIn);
const lettering = openWordList(unrealWords.lettering);
const measures = openWordList(unrealWords.measures);
const feelings = openWordList(unrealWords.feelings);
const masses = openWordList(unrealWords.masses);

/** True for a sentence that names a picture or a screen: only there anything can be only pictured. */
export function namesPicture(tokens: readonly Token[]): boolean {
  for (const { tag, lemma } of tokens) if (tag === 'noun' && picturesAndScreens.has(lemma)) return true;
  return false;
}

/** A stretch of a sentence that would raise something: its words from `first` to `last`, the word itself at `core`. */
export interface Stretch {
  readonly first: number;
  readonly core: number;
  readonly last: number;
}

/**
 * True for what is not there at all: denied ("no gun", "does not smoke"), compared ("like a knife", "as if shot", "the
 * size of a car"), only pictured ("a photo of a burning ship"), or a figure of speech ("a wave of panic hits her").
 */
export function isUnreal(tokens: readonly Token[], stretch: Stretch): boolean {
  return (
    isDenied(tokens, stretch.first) ||
    isCompared(tokens, stretch) ||
    isPictured(tokens, stretch) ||
    isFigure(tokens, stretch)
  );
}

function isDenied(tokens: readonly Token[], first: number): boolean {
  for (let at = first - 1; at >= Math.max(0, first - 3); at--) {
    const { lower } = tokens[at] as Token;
    if (clauseEnds.has(lower)) return false;
    if (denials.has(lower) || lower.endsWith("n't") || lower.endsWith('n’t')) return true;
  }
  return false;
}

const clauseEnds = new Set([',', ';', ':', '—', '–', '-', 'and', 'but', 'then']);
const denials = new Set(['no', 'not', 'never', 'without', 'nor', 'neither']);
/** "her face painted as a tiger". */
const disguising = new Set(['painted', 'dressed', 'disguised', 'costumed', 'up']);
const seeming = new Set(['look', 'sound', 'smell', 'seem']);

/** "like a knife", "as if shot", "as big as a pony", "the colour of fire". */
function isCompared(tokens: readonly Token[], { first }: Stretch): boolean {
  for (let at = first - 1; at >= Math.max(0, first - 3); at--) {
    const { lower } = tokens[at] as Token;
    if (clauseEnds.has(lower)) break;
    if (lower === 'like' && !seeming.has(tokens[at - 1]?.lemma ?? '')) return true;
    if (lower === 'as' && tokens[at - 2]?.lower === 'as' && tokens[at - 1]?.tag === 'adjective') return true;
    if (lower === 'as' && disguising.has(tokens[at - 1]?.lower ?? '')) return true;
    if (lower === 'of' && has(measures, tokens[at - 1]) && tokens[at - 2]?.lower === 'the') return true;
  }
  for (let at = 0; at < first - 1; at++) {
    if (tokens[at]?.lower === 'as' && /^(?:if|though)$/.test(tokens[at + 1]?.lower ?? '')) return true;
  }
  return false;
}

/** "a photo of a burning ship", "the news shows a bomb", "in the painting a house burns". */
export function isPictured(tokens: readonly Token[], stretch: Stretch): boolean {
  return (
    isBehindColon(tokens, stretch) ||
    isNamedByPicture(tokens, stretch) ||
    isShown(tokens, stretch.first) ||
    isInPicture(tokens, stretch)
  );
}

/** "A poster: BAKERY BLAST", "a photograph: a boat on its side"; nobody may have come in between. */
function isBehindColon(tokens: readonly Token[], { first, core }: Stretch): boolean {
  const colon = tokens.findLastIndex(({ text }, at) => at < first && text === ':');
  if (colon < 1 || tokens.slice(colon, first).some(({ person, text }) => person !== null || text === '.')) return false;
  const carriers = tokens.slice(Math.max(0, colon - 8), colon);
  const isLettered = (tokens[core] as Token).text === (tokens[core] as Token).text.toUpperCase();
  if (isLettered && carriers.some((token) => has(lettering, token))) return true;
  return isNominal(tokens, core) && carriers.some((token) => has(pictures, token));
}

/** Only the words of one noun phrase after "of" belong to the picture: "the photo of Tom burns" is a fire. */
function isNamedByPicture(tokens: readonly Token[], { first, core }: Stretch): boolean {
  if (!isNominal(tokens, core)) return false;
  for (let at = first - 1; at > 0; at--) {
    const token = tokens[at] as Token;
    if (token.lower === 'of' && has(pictures, tokens[at - 1])) return true;
    const goesOn =
      token.lower === 'of' || isNominal(tokens, at) || /^(?:determiner|possessive|number)$/.test(token.tag);
    if (!goesOn) return false;
  }
  return false;
}

/** A noun, or a word that describes the noun after it. */
function isNominal(tokens: readonly Token[], at: number): boolean {
  const { tag } = tokens[at] as Token;
  if (/^(?:noun|name|adjective)$/.test(tag)) return true;
  return tag === 'participle' && /^(?:noun|adjective|participle)$/.test(tokens[at + 1]?.tag ?? '');
}

/** All that follows "shows", to the end of the clause. */
function isShown(tokens: readonly Token[], first: number): boolean {
  for (let at = first - 1; at > 0; at--) {
    const token = tokens[at] as Token;
    if (clauseEnds.has(token.lower) || /^[.!?]$/.test(token.text) || token.person !== null) return false;
    if (!has(showing, token)) continue;
    const shower = tokens.slice(Math.max(0, at - 4), at).findLast((one) => one.tag === 'noun' || one.tag === 'name');
    return has(pictures, shower) || has(screens, shower);
  }
  return false;
}

/** "in the photograph" right after the words, or before the clause: "In the painting, a house burns." */
function isInPicture(tokens: readonly Token[], { first, last }: Stretch): boolean {
  const opening = tokens.findIndex(({ tag }) => tag === 'noun');
  if (opening > 0 && opening < first && opening < 4 && isPlaceInPicture(tokens, opening)) return true;
  for (let at = last + 1; at < Math.min(tokens.length, last + 5); at++) {
    const token = tokens[at] as Token;
    if (/^[.,;:!?]$/.test(token.text)) return false;
    if (token.tag === 'noun') return isPlaceInPicture(tokens, at);
  }
  return false;
}

/** "in the film", "on the news"; not "in the film canister", and not on top of a television. */
function isPlaceInPicture(tokens: readonly Token[], at: number): boolean {
  if (tokens[at + 1]?.tag === 'noun') return false;
  const before = tokens[at - 1]?.tag === 'preposition' ? tokens[at - 1] : tokens[at - 2];
  const word = (tokens[at] as Token).lower;
  if (before?.lower === 'in') return has(shownIn, tokens[at]);
  if (before?.lower !== 'on') return false;
  return /^(?:news|screen)$/.test(word) || (/^(?:tv|television|telly)$/.test(word) && before === tokens[at - 1]);
}

/** "a wave of panic", "panic strikes her", "a sea of faces". */
export function isFigure(tokens: readonly Token[], { core, last }: Stretch): boolean {
  const word = tokens[core] as Token;
  if (word.tag === 'noun' || word.tag === 'adjective') return isMass(tokens, last);
  if (word.tag !== 'verb' && word.tag !== 'participle') return false;
  const subject = findSubject(tokens, core);
  if (subject === null) return false;
  return has(feelings, subject) || isMass(tokens, tokens.indexOf(subject), false);
}

/** True when a noun goes on with "of" and a feeling, or a mass that is neither water nor weather. */
function isMass(tokens: readonly Token[], noun: number, alsoThings = true): boolean {
  if (tokens[noun + 1]?.lower !== 'of') return false;
  let at = noun + 2;
  while (/^(?:determiner|possessive|adjective)$/.test(tokens[at]?.tag ?? '')) at++;
  return has(feelings, tokens[at]) || (alsoThings && has(masses, tokens[at]));
}

function has(list: WordList, token: Token | undefined): boolean {
  return token !== undefined && (list.words.has(token.lemma) || list.words.has(token.lower));
}
