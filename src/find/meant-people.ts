import type { Clauses } from './clause-types.js';
import { Described } from './described-people.js';
import { readCount } from './element-count.js';
import type { Mention } from './mentions.js';
import type { Named } from './same-element.js';

/** The people of a name whom mentions of people without one mean; a mention that is missing means others. */
export type MeantPeople = ReadonlyMap<Mention, readonly string[]>;

/**
 * Tells which groups and single people are only other words for people of a name: "Two children sit there: POLLY and FRED", then
 * "the children"; "the old man" where OLD MARTIN is the only one so called. `extras` stand in the order of the text.
 */
export function readMeantPeople(extras: readonly Named[], clauses: readonly Clauses[]): MeantPeople {
  const meant = new Map<Mention, readonly string[]>();
  const groups = new Map<string, readonly string[]>();
  const old = extras.some(({ mention }) => isTheOld(mention)) ? onlyOld(extras, clauses) : null;
  const titled = new Titled(extras, clauses);
  const described = new Described(extras, clauses);
  for (const { mention } of extras) {
    const kind = mention.name.singular;
    const count = readCount(mention.part, mention.sentence.tokens);
    const told = membersOf(mention, count);
    if (told.length > 0) groups.set(kind, told);
    const people = told.length > 0 ? told : isBackTo(mention) ? (groups.get(kind) ?? []) : [];
    if (people.length > 0 && (count === null || count === people.length)) meant.set(mention, people);
    else if (old !== null && isTheOld(mention)) meant.set(mention, [old]);
    else {
      const person = described.meantBy(mention) ?? titled.meantBy(mention);
      if (person !== null) meant.set(mention, [person]);
    }
  }
  return meant;
}

/** Titles by the word for who bears one. */
const titles: Readonly<Record<string, RegExp>> = {
  doctor: /^(?:dr|doctor)\b/i,
  nurse: /^nurse\b/i,
  sergeant: /^(?:sgt|sergeant)\b/i,
  captain: /^(?:capt|captain)\b/i,
  inspector: /^inspector\b/i,
  constable: /^(?:pc|constable)\b/i,
  professor: /^(?:prof|professor)\b/i,
  priest: /^father\b/i,
  nun: /^sister\b/i,
};

/** "The doctor" is DR. PATEL where nobody else bears the title and no other doctor comes in. */
class Titled {
  readonly #others: ReadonlySet<string>;
  #people: readonly string[] | null = null;

  constructor(
    extras: readonly Named[],
    private readonly clauses: readonly Clauses[],
  ) {
    this.#others = new Set(
      extras.flatMap(({ mention }) => (mention.part.phrase.determiner?.lower === 'the' ? [] : [mention.name.singular])),
    );
  }

  meantBy(mention: Mention): string | null {
    const kind = mention.name.singular;
    const title = Object.hasOwn(titles, kind) ? titles[kind] : undefined;
    if (!title || !isThe(mention) || this.#others.has(kind)) return null;
    this.#people ??= listPeople(this.clauses);
    const bearers = this.#people.filter((person) => title.test(person));
    return bearers.length === 1 ? (bearers[0] as string) : null;
  }
}

const isThe = ({ part, name }: Mention) =>
  part.phrase.determiner?.lower === 'the' && name.telling.length === 0 && name.head === name.singular;

function listPeople(clauses: readonly Clauses[]): string[] {
  const named = clauses.flatMap(({ sentence }) => [sentence.speaker, ...sentence.tokens.map(({ person }) => person)]);
  return [...new Set(named.flatMap((person) => person ?? []))];
}

/** As many names as the group counts, in a list behind a colon or before a comma. */
function membersOf({ sentence, start, end }: Mention, count: number | null): readonly string[] {
  if (count === null || count < 2) return [];
  const { text, tokens } = sentence;
  const colon = text.indexOf(':', end);
  const named = (from: number, to: number) => [
    ...new Set(tokens.flatMap((token) => (token.start >= from && token.end <= to ? (token.person ?? []) : []))),
  ];
  const listed = colon >= 0 ? named(colon, text.length) : [];
  if (listed.length === count) return listed;
  const isSet = text.slice(0, start).trimEnd().endsWith(',') && /^[,.]/.test(text.slice(end));
  const before = isSet ? named(0, start) : [];
  return before.length === count ? before : [];
}

/** "the children", "both children", with no words that tell them apart. */
function isBackTo({ part, name }: Mention): boolean {
  const determiner = part.phrase.determiner?.lower ?? '';
  return /^(?:the|both|these|those)$/.test(determiner) && name.telling.length === 0 && name.head !== name.singular;
}

const isTheOld = ({ sentence, start, end }: Mention) =>
  /^the old (?:man|woman|lady|fellow|gentleman)$/i.test(sentence.text.slice(start, end));

/** The one person whose name begins with OLD; null where there are several, or an old man without a name. */
function onlyOld(extras: readonly Named[], clauses: readonly Clauses[]): string | null {
  const isAnother = extras.some(({ mention: { sentence, start, end } }) =>
    /^an(?:other)? old (?:man|woman|lady|fellow|gentleman)$/i.test(sentence.text.slice(start, end)),
  );
  const old = listPeople(clauses).filter((person) => /^old /i.test(person));
  return old.length === 1 && !isAnother ? (old[0] as string) : null;
}
