import type { Meant } from './clause-types.js';
import { genders, keyOf, learnGenders, peopleNamed } from './genders.js';
import { isPerson } from './implied/word-list.js';
import type { Lexicon } from './lexicon.js';
import { findNameless, type Gender, type Nameless } from './nameless.js';
import { isOfOpening, opensWithPronoun } from './opening-pronoun.js';
import type { Sentence, Token } from './reading.js';

const several = /^(?:they|them|their|theirs|themselves)$/;

/** Tells whom the pronouns of a script mean, sentence by sentence, in the order of the text. */
export interface Referents {
  /** Moves on to a sentence and tells whom its pronouns mean. */
  readonly enter: (sentence: Sentence) => Meant;
}

/** What the text has said up to a sentence of the scene. */
interface Before {
  /** People of a name, those named last first. */
  readonly people: readonly string[];
  /** Nameless people of the action, those named last first. */
  readonly nameless: readonly Nameless[];
  /** Who stands in the last sentence of action that tells of anybody. */
  readonly lastNamed: readonly string[];
  readonly lastNameless: readonly Nameless[];
}

const nothingBefore: Before = { people: [], nameless: [], lastNamed: [], lastNameless: [] };

/** Learns who is a woman and who a man from names, titles and the pronouns near them. */
export function learnReferents(sentences: readonly Sentence[], lexicon: Lexicon): Referents {
  const nameless = new Map(
    sentences.filter(({ kind }) => kind === 'action').map((one) => [one, findNameless(one, lexicon)] as const),
  );
  const gender = learnGenders(sentences, nameless, lexicon);
  const withGender = (one: Nameless): Nameless =>
    one.gender === null ? { ...one, gender: gender.get(keyOf(one)) ?? null } : one;
  let scene = -1;
  let said = nothingBefore;
  return {
    enter: (sentence) => {
      if (sentence.scene !== scene) said = nothingBefore;
      scene = sentence.scene;
      const before = said;
      const told = nameless.get(sentence) ?? [];
      const here = told.some((one) => one.gender === null) ? told.map(withGender) : told;
      const whom: Whom = { sentence, before, here, gender, known: new Map() };
      said = remember(whom);
      return {
        resolve: (at) => resolve(at, whom),
        stranger: (at) => (resolve(at, whom) === null ? resolveNameless(at, whom) : null),
      };
    },
  };
}

function remember(whom: Whom): Before {
  const { before, sentence, here } = whom;
  if (sentence.kind === 'speech' && sentence.speaker) {
    const addressed = addressedIn(sentence).filter((one) => !before.people.includes(one));
    return { ...before, people: [...toFront([sentence.speaker], before.people), ...addressed] };
  }
  if (sentence.kind !== 'action') return before;
  const named = peopleNamed(sentence.tokens, sentence.tokens.length);
  const words = new Set(here.map(({ head }) => head.lemma));
  const opener = opensWithPronoun(sentence.tokens) ? resolve(0, whom) : null;
  return {
    people: toFront(opener === null ? named : [opener, ...named.filter((one) => one !== opener)], before.people),
    nameless:
      here.length === 0 ? before.nameless : [...here, ...before.nameless.filter((one) => !words.has(one.head.lemma))],
    ...lastTold(named, whom),
  };
}

/** "The envelope, Estela.": whom a speech names to their face. */
function addressedIn({ tokens }: Sentence): string[] {
  return tokens.flatMap(({ person }, at) => {
    if (person === null || tokens[at - 1]?.person === person) return [];
    const behind = tokens.slice(at).find((token) => token.person !== person)?.text ?? '.';
    const isSet = (at === 0 || tokens[at - 1]?.text === ',') && /^[,.!?—–-]/.test(behind);
    return isSet ? [person] : [];
  });
}

/** Whom the sentence names or means by pronouns; those of the sentence before when it tells of nobody. */
function lastTold(named: readonly string[], whom: Whom): Pick<Before, 'lastNamed' | 'lastNameless'> {
  const { before, sentence, here } = whom;
  const pronouns = pronounsIn(sentence);
  if (pronouns.length === 0 && named.length === 0 && here.length === 0) {
    return { lastNamed: before.lastNamed, lastNameless: before.lastNameless };
  }
  const meant = pronouns.flatMap((at) => resolve(at, whom) ?? []);
  const heads = new Set(
    pronouns.flatMap((at) => (resolve(at, whom) === null ? (resolveNameless(at, whom) ?? []) : [])),
  );
  const again = before.nameless.filter(({ head }) => heads.has(head));
  const lastNamed = [...new Set([...named, ...meant])];
  const lastNameless = [...here, ...again.map((one) => ({ ...one, paragraph: sentence.paragraph }))];
  return lastNamed.length + lastNameless.length > 0
    ? { lastNamed, lastNameless }
    : { lastNamed: before.lastNamed, lastNameless: before.lastNameless };
}

const noPronouns: readonly number[] = [];

function pronounsIn({ tokens }: Sentence): readonly number[] {
  let pronouns: number[] | null = null;
  for (let at = 0; at < tokens.length; at++) {
    const { lower, tag } = tokens[at] as Token;
    if ((tag === 'pronoun' || tag === 'possessive') && genders[lower]) {
      pronouns ??= [];
      pronouns.push(at);
    }
  }
  return pronouns ?? noPronouns;
}

const toFront = (named: readonly string[], people: readonly string[]) =>
  named.length === 0 ? people : [...named, ...people.filter((one) => !named.includes(one))];

/** What is known where a pronoun stands. */
interface Whom {
  readonly sentence: Sentence;
  readonly before: Before;
  readonly here: readonly Nameless[];
  readonly gender: ReadonlyMap<string, Gender>;
  /** What has been asked before, by place. */
  readonly known: Map<number, string | null>;
}

function resolve(at: number, whom: Whom): string | null {
  const before = whom.known.get(at);
  if (before !== undefined) return before;
  const person = resolveNamed(at, whom);
  whom.known.set(at, person);
  return person;
}

/** People named before the pronoun in its sentence come first, then those named last before it. */
function resolveNamed(at: number, whom: Whom): string | null {
  const { sentence, before, gender } = whom;
  const token = sentence.tokens[at] as Token;
  if (token.person) return token.person;
  if (sentence.kind !== 'action') return /^(?:i|me|my|mine|myself)$/.test(token.lower) ? sentence.speaker : null;
  const wanted = genders[token.lower];
  if (!wanted) return null;
  const fits = (person: string) => (gender.get(person) ?? wanted) === wanted;
  // "He gives Toby the flowers and hangs his jacket on the hook": his own.
  if (token.tag === 'possessive' && isOfOpening(sentence.tokens, at)) return resolve(0, whom);
  const other = meansAnother(sentence.tokens, at);
  const opening = !other && namelessSubject(at, wanted, whom) !== null;
  const doer = other ? doerBefore(sentence.tokens, at) : null;
  for (let place = 0; place < at; place++) {
    const named = sentence.tokens[place]?.person;
    // "The girl in Clem's pullover lifts her doll": the owner of what she wears is not meant.
    if (named && named !== doer && fits(named) && !(opening && sentence.tokens[place + 1]?.tag === 'possessive'))
      return named;
  }
  if (opening) return null;
  if (strangerBefore(sentence, at) || namelessJustBefore(wanted, fits, whom)) return null;
  const person = before.people.find((one) => one !== doer && fits(one)) ?? null;
  if (person === null) return onlyBehind(sentence, at, fits);
  if (gender.has(person) || !tellsOfBoth(sentence, wanted)) return person;
  // "She pours him soup": rather one known for a woman.
  return before.people.find((one) => gender.get(one) === wanted) ?? person;
}

/** "He gives her the mug": a man and a woman. */
const tellsOfBoth = ({ tokens }: Sentence, wanted: Gender) =>
  tokens.some(({ lower }) => (genders[lower] ?? wanted) !== wanted);

/** "Goggles on his forehead, Mr. Plum brakes": the only one named behind. */
function onlyBehind({ tokens }: Sentence, at: number, fits: (person: string) => boolean): string | null {
  const behind = new Set(tokens.slice(at + 1).flatMap(({ person }) => person ?? []));
  const [person] = behind;
  return behind.size === 1 && person !== undefined && fits(person) ? person : null;
}

/** "A boy stands behind him", "Doran gives him a cup": never the one who does it. */
function meansAnother(tokens: readonly Token[], at: number): boolean {
  const { lower, tag } = tokens[at] as Token;
  if (tag !== 'pronoun' || (lower !== 'him' && lower !== 'her')) return false;
  const before = tokens[at - 1]?.tag;
  return before === 'verb' || (before === 'preposition' && tokens[at - 2]?.tag === 'verb');
}

/** The person named last before a place who does something, by what stands in front of the name. */
function doerBefore(tokens: readonly Token[], at: number): string | null {
  for (let here = at - 1; here >= 0; here--) {
    const { person } = tokens[here] as Token;
    if (person === null || tokens[here - 1]?.person === person) continue;
    if (here === 0 || /^(?:punctuation|conjunction|adverb)$/.test(tokens[here - 1]?.tag ?? '')) return person;
  }
  return null;
}

/** The nameless person who opens the sentence. */
function namelessSubject(at: number, wanted: Gender, { sentence, here }: Whom): Nameless | null {
  const first = here.find((one) => !one.oblique && one.at < at && isOne(one, wanted));
  if (!first) return null;
  return sentence.tokens.slice(0, first.at).some(({ person }) => person !== null) ? null : first;
}

/** "Marisol argues with the cashier. He ...": of the sentence before, when nobody of a name there fits. */
function namelessJustBefore(wanted: Gender, fits: (person: string) => boolean, whom: Whom): Nameless | null {
  const { before, sentence, gender } = whom;
  const { lastNamed, lastNameless, people } = before;
  if (lastNamed.some(fits)) return null;
  const isKnown = (person: string) => gender.get(person) === wanted;
  const isSure = tellsOfBoth(sentence, wanted) && people.some(isKnown);
  const fitting = lastNameless.filter(
    (one) => isOne(one, wanted) && !(isSure && one.gender === null) && sentence.paragraph - one.paragraph <= 1,
  );
  return fitting.find(({ oblique }) => !oblique) ?? fitting[0] ?? null;
}

const isOne = (one: Nameless, wanted: Gender) => !one.several && (one.gender ?? wanted) === wanted;

/** The nameless people whom a pronoun means that means nobody of a name: those of its sentence, then those named last. */
function resolveNameless(at: number, whom: Whom): Token | null {
  const { sentence, here, before } = whom;
  if (sentence.kind !== 'action') return null;
  const { lower } = sentence.tokens[at] as Token;
  const wanted = genders[lower];
  if (wanted) {
    const subject = namelessSubject(at, wanted, whom);
    const other = subject !== null && meansAnother(sentence.tokens, at);
    const earlier = here.filter((one) => one.at < at && isOne(one, wanted) && !(other && one === subject));
    const fit = (other ? null : subject) ?? earlier.at(-1) ?? before.nameless.find((one) => isOne(one, wanted));
    return fit?.head ?? null;
  }
  if (!several.test(lower)) return null;
  const groups = here.some((one) => one.at < at) ? here.filter((one) => one.at < at) : before.nameless;
  const named = peopleNamed(sentence.tokens, at).length + (groups === here ? 0 : before.lastNamed.length);
  return named === 0 ? (groups.find((one) => one.several)?.head ?? null) : null;
}

/** "a stranger stands there, a bundle in his arms": the pronoun means the nameless one. */
function strangerBefore({ tokens }: Sentence, at: number): boolean {
  return tokens.some(
    (token, place) =>
      place < at &&
      token.tag === 'noun' &&
      /^(?:an?|another)$/.test(
        tokens.slice(Math.max(0, place - 4), place).find(({ tag }) => tag === 'determiner')?.lower ?? '',
      ) &&
      isPerson(token),
  );
}
