import { ageWords } from '../../trade/age-words.js';

/** An age that words give to someone. `start` and `end` count in the text, the name included when it stands there. */
export interface ToldAge {
  /** The name as written, in capitals or small letters; one common noun ("son"); or null when only "a boy of nine" stands there. */
  readonly name: string | null;
  /** As written, without "aged": "nine", "about 9", "mid-teens", "five months". */
  readonly age: string;
  readonly start: number;
  readonly end: number;
}

const or = (words: string) => words.split(' ').join('|');
const small = ageWords.small.split(' ');
const tens = ageWords.tens.split(' ');

/**
 * Before the patterns look at a text, words that stand in many places of them are written as runs of one sign, each as long as its
 * word, and letters and dashes beyond ASCII as plain ones: the patterns stay small, and every place holds. With the words and all
 * letters of Unicode in them they took longer to get ready than all the rest.
 */
const signs = { number: '\x01', young: '\x02', dash: '\x03', span: '\x04' } as const;
const aNumber = `${signs.number}+`;
const youngNoun = `${signs.young}+`;
const numberWords = `\\b(?:${[...tens, ...small.slice(1)].join('|')})(?=ish\\b|\\b)`;
const youngWords = `\\b(?:${or(ageWords.young)})\\b`;
const inSmallLetters = [new RegExp(numberWords, 'g'), new RegExp(youngWords, 'g')] as const;
const inAnyLetters = [new RegExp(numberWords, 'gi'), new RegExp(youngWords, 'gi')] as const;

function withSigns(text: string, [numbers, young]: readonly [RegExp, RegExp]): string {
  return text
    .replace(beyondAscii, plainSign)
    .replace(numbers, (word) => signs.number.repeat(word.length))
    .replace(young, (word) => signs.young.repeat(word.length))
    .replace(spans, (words) => signs.span.repeat(words.length));
}

// biome-ignore lint/suspicious/noControlCharactersInRegex: the range of ASCII begins with them.
const beyondAscii = /[^\x00-\x7f]/g;

function plainSign(sign: string): string {
  if (sign === '’') return "'";
  if (sign === '—' || sign === '–') return signs.dash;
  if (/\p{Lu}/u.test(sign)) return 'A';
  return /[\p{L}\p{N}]/u.test(sign) && sign !== '½' ? 'a' : sign;
}

const numberWord = `(?:${aNumber}(?:[- ]${aNumber})?(?:[- ]?ish)?)`;
const figures = "(?<!\\d)\\d{1,3}(?!\\d)(?:½|\\.5)?(?:'?s|[- ]?ish)?";
const oneAge = `(?:${figures}|${numberWord})`;
/** "nine", "9", "thirty-five", "9 or ten", "10 and a half", "nine going on forty". */
const spans = new RegExp(
  `${oneAge}(?:(?: (?:or|to) | ?[-${signs.dash}] ?)${oneAge})?(?: and a half)?(?: going on ${oneAge})?`,
  'gi',
);
const span = `${signs.span}+`;
const decade = `(?:early |mid[ -]?|late )?(?:teens|${youngNoun}|${or(ageWords.decades)})`;
const before = `(?:(?:${ageWords.before.replaceAll('’', "'")})[ -])*`;
const parts = `(?:[ -](?:${or(ageWords.parts)}))`;
const unit = `(?:${parts}|[ -]years?)?(?:[ -]old)?`;
const smallWord = `[a-z${signs.span}${signs.young}]+ `;

/** An age behind a name, as in an introduction: "nine", "about 9", "mid-teens", "a boy of ten", "a five-year-old". */
const figure = `(?:${before}(?:${span}|${decade})${unit}|an? (?:${smallWord}){0,2}${youngNoun}(?: (?:of|aged) ${before}${span}${unit})?|an? ${span}(?:[- ]year[- ]old|${parts}[- ]old)(?: [a-z${signs.young}]+)?|(?:${youngNoun} )?${youngNoun})`;

const name = `[A-Z][a-zA-Z0-9.'${signs.span}${signs.young}-]*(?: [A-Z][a-zA-Z0-9.'${signs.span}${signs.young}-]*){0,3}`;
const kin = `(?:[Aa]|[Aa]n|[Tt]he|[Hh]er|[Hh]is|[Tt]heir|[Mm]y|[Oo]ur) (?:${smallWord}){0,2}?(son|daughter|brother|sister|cousin|niece|nephew|grandson|granddaughter|${youngNoun}|twins|man|woman)`;
const ends = `(?=\\s*(?:[.;:)!?${signs.dash}]|$)|,(?! (?:${span} ?[,.]|\\d+ ?[,.]))|\\s+(?:and|in|with|but|who)\\b|\\s-\\s)`;
const words = `(?:[a-z${signs.young}'-]+(?: [a-z${signs.span}${signs.young}'-]+){0,3}, )`;

const behind = `(?:, ${words}{0,2}| ?\\((?:[^(),]{1,20}, )?| [${signs.dash}-] )(${figure})${ends}`;
/** "TOMMY, nine", "PIP (9)", "POLLY — ten —", "GUS, muddy, fourteen". */
const behindName = new RegExp(`(?<![a-zA-Z0-9'-])(${name})${behind}`, 'dg');
/** "her son, five". */
const behindKin = new RegExp(`\\b${kin}${behind}`, 'dg');
/** "Polly is ten.", "TOMMY is a boy of nine." */
const saidOfName = new RegExp(
  `(?<![a-zA-Z0-9'-])(${name}) (?:is|'s|turns|has just turned) (${before}${span}(?: years old| today| tomorrow)?|an? ${youngNoun} of ${span})(?=[.,;!])`,
  'dg',
);
/** "nine-year-old TOMMY", "a boy of ten, CAL,", "a girl, 9, called MAYA". */
const beforeName = new RegExp(
  `(?<![a-zA-Z0-9-])(?:(${span})[- ]years?[- ]old (?:${smallWord}){0,2}|${youngNoun} (?:of|aged) (${span})(?:,| called| named) )(${name})`,
  'dg',
);
/** "KEVIN and JO, both nine". */
const ofTwo = new RegExp(`(${name}) and (${name}), (?:both|each) (${before}${span})${ends}`, 'dg');
/** "twins RIA and REN, ten". */
const ofTwins = new RegExp(`\\b[Tt]wins,? (${name}) and (${name}), (${before}${span})${ends}`, 'dg');
/** Nobody is named: "a boy of ten", "a girl, 9,", "a six-year-old", "aged ten", "in her early teens". */
const nameless = [
  new RegExp(`${youngNoun}(?:, | (?:of|aged) | ?\\()(${before}${span}${unit})(?=[\\s,.;:)!?${signs.dash}]|$)`, 'dgi'),
  new RegExp(`(?<![\\w-])(${span}[- ](?:years?|months?|weeks?)[- ]olds?)\\b`, 'dgi'),
  new RegExp(`\\baged? (${before}${span}${parts}?)(?=[\\s,.;:)!?${signs.dash}]|$)`, 'dgi'),
];
const inTeens = /\b(in (?:his|her|their) (?:early |mid-|mid |late )?teens|(?:early|mid|late)[- ]teens|teenaged?)\b/dgi;

const rightBehind = new RegExp(`^${behind}`, 'd');

/** True when a text, which follows a name, begins with an age. */
export function beginsWithAge(after: string): boolean {
  return readAgeAtStart(after) !== null;
}

/** The age with which a text begins that follows somebody's name, and where it ends; null when there is none. */
export function readAgeAtStart(after: string): { readonly age: string; readonly end: number } | null {
  if (!/^[, (]/.test(after) || !mayTellAge.test(after)) return null;
  const match = rightBehind.exec(withSigns(after, inSmallLetters));
  return match ? { age: trimAge(groupOf(after, match, 1)), end: match[0].length } : null;
}

/** A group of a match in the text as it is written. */
function groupOf(text: string, match: RegExpMatchArray, group: number): string {
  const place = match.indices?.[group];
  return place ? text.slice(...place) : '';
}

/** Tried first, for speed: without one of these there is no age. */
const mayTellAge = new RegExp(
  `\\d|\\b(?:age[d]?|teen[a-z]*|${or(ageWords.decades)}|one(?=[ -](?:year|month|week|day|and a half)|[,.)])|${small.slice(2).join('|')}|${tens.join('|')}|${or(ageWords.young)})\\b`,
  'i',
);

/** All ages of people in a text, of whatever age, in the order of the patterns; nobody's age comes twice. */
export function readToldAges(text: string): ToldAge[] {
  if (!mayTellAge.test(text)) return [];
  const told: ToldAge[] = [];
  const add = (name: string | null, age: string, start: number, end: number) => {
    if (!told.some((one) => start < one.end && one.start < end && (name === null || one.name === name)))
      told.push({ name, age: trimAge(age), start, end: text[end] === ')' ? end + 1 : end });
  };
  /** `owners` and `ages` are the groups that may hold them. */
  const read = (signed: string, pattern: RegExp, owners: readonly number[], ages: readonly number[]) => {
    for (const match of signed.matchAll(pattern)) {
      const [start, end] = match.indices?.[0] ?? [0, 0];
      const age = ages.map((group) => groupOf(text, match, group)).find((one) => one !== '') ?? '';
      if (owners.length === 0) add(null, age, start, end);
      for (const owner of owners) add(groupOf(text, match, owner), age, start, end);
    }
  };
  const signed = withSigns(text, inSmallLetters);
  if (/\b(?:both|each)\b/.test(text)) read(signed, ofTwo, [1, 2], [3]);
  if (/\b[Tt]wins\b/.test(text)) read(signed, ofTwins, [1, 2], [3]);
  read(signed, behindName, [1], [2]);
  read(signed, behindKin, [1], [2]);
  if (/ (?:is|turns|has) |’s /.test(text)) read(signed, saidOfName, [1], [2]);
  if (!/old|age|teen|\b(?:baby|infant|child|kid|boy|girl|youngster|school)/i.test(text)) return told;
  read(signed, beforeName, [3], [1, 2]);
  const anySigned = withSigns(text, inAnyLetters);
  for (const pattern of nameless) read(anySigned, pattern, [], [1]);
  read(text, inTeens, [], [1]);
  return told;
}

/**
 * True when the word at `start` to `end` ("boy") of a text with these ages is told to be grown up: "a boy from the village, MAREK, nineteen", "ROSA,
 * a girl of twenty-two".
 */
export function isToldAdult(text: string, start: number, end: number, ages: readonly ToldAge[]): boolean {
  return ages.some((told) => {
    if (isUnderAge(told.age)) return false;
    if (told.start <= start && end <= told.end) return true;
    const between = told.start >= end ? text.slice(end, told.start) : '-';
    return /^(?: (?:from|in|with|at|on) [\p{Ll} ]{1,40})?(?:,| called| named) $/u.test(between);
  });
}

function trimAge(age: string): string {
  const of = /^an? .*\b(?:of|aged) (.+)$/u.exec(age)?.[1];
  return (of ?? age)
    .replace(/^(?:(?:aged?|who is|who’s|who turned|in (?:his|her|their)|just turned|an?)[ -])+/u, '')
    .replace(/[- ]years?(?:[- ]olds?)?$|[- ]years?[- ]old \p{Ll}+$| (?:today|tomorrow)$/u, '')
    .replace(/([- ](?:months?|weeks?|days?))[- ]old$/u, '$1');
}

const youngWord = new RegExp(`\\b(?:${or(ageWords.young)})\\b`, 'i');
const partOfYear = new RegExp(`\\b(?:${or(ageWords.parts)})\\b`, 'i');
const grown = new Set([...tens, ...ageWords.decades.split(' '), 'eighteen', 'nineteen']);
const minors = new Set(small.slice(0, 18));

/** True when an age as written means someone under 18: "9", "nine", "mid-teens", "18 months", "boy". */
export function isUnderAge(age: string): boolean {
  if (partOfYear.test(age)) return true;
  const [own = age] = age.split(' going on ');
  const figures = own.match(/\d+/g);
  if (figures) return figures.some((one) => Number(one) < 18) && !/\d0['’]?s\b/.test(own);
  const told = own
    .toLowerCase()
    .replace(/ish\b/g, '')
    .split(/[^a-z]+/);
  if (told.some((word) => grown.has(word))) return told.some((word) => minors.has(word)) && /\b(?:to|or)\b|–/.test(own);
  return told.some((word) => minors.has(word)) || youngWord.test(own);
}
