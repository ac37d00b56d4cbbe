import type { Clauses } from './clause-types.js';
import type { Mention } from './mentions.js';
import type { Token } from './reading.js';
import type { Named } from './same-element.js';

/** A person called by what they are: WOMAN IN SCRUBS, THIN MAN, BOY. */
interface Called {
  readonly person: string;
  /** The words beside the noun: "in scrubs", "thin". */
  readonly before: readonly string[];
  readonly behind: readonly string[];
  /** The first scene in which they speak or are named so. */
  readonly scene: number;
}

const small = /^(?:an?|the|his|her|their|of)$/;

/** Words for people that tell neither a man nor a woman. */
const either =
  /^(?:stranger|visitor|intruder|guest|customer|passenger|prisoner|patient|driver|clerk|thief|burglar|robber|pedlar|beggar|neighbour|sailor|survivor|castaway|hitchhiker|caller|client|tenant|lodger)$/i;

/** Tells which people of the cues the action first brings in by their description: "a woman in scrubs" is WOMAN IN SCRUBS. */
export class Described {
  readonly #called: ReadonlyMap<string, readonly Called[]>;
  /** Who was last meant by a noun in a scene; null once somebody else came in. */
  readonly #last = new Map<string, string | null>();
  readonly #new = new Map<string, number>();
  readonly #brought = new Set<string>();
  /** Whether a stranger turned out a man or a woman. */
  readonly #toldAs = new Map<string, string>();
  /** People called by what they are, by the scene in which the action names them so: "the stranger". */
  readonly #present: Map<number, Set<string>>;

  constructor(extras: readonly Named[], clauses: readonly Clauses[]) {
    this.#called = extras.length === 0 ? new Map() : listCalled(clauses);
    this.#present = this.#called.size === 0 ? new Map() : listPresent(clauses);
    if (this.#called.size === 0) return;
    for (const { mention } of extras) {
      if (isThe(mention)) continue;
      this.#brought.add(mention.name.singular);
      const key = keyOf(mention);
      this.#new.set(key, (this.#new.get(key) ?? 0) + 1);
    }
  }

  /** The person whom a mention means; to be asked in the order of the text. */
  meantBy(mention: Mention): string | null {
    const badge = this.#badgeOf(mention);
    if (badge !== null) return badge;
    const called = this.#called.get(mention.name.singular);
    if (!called && isThe(mention) && isBare(mention)) return this.#onlyOne(mention);
    if (!called || mention.name.head !== mention.name.singular) return null;
    const key = keyOf(mention);
    const fitting = called.filter((one) => this.#fits(one, mention));
    const person = fitting.length === 1 ? (fitting[0] as Called).person : null;
    if (person !== null) {
      this.#last.set(key, person);
      addTo(this.#present, mention.sentence.scene, person);
    } else if (isThe(mention) && isBare(mention)) return this.#last.get(key) ?? null;
    else this.#last.set(key, null);
    return person;
  }

  /** "The man" is STRANGER, where the script brings in no man without a name. */
  #onlyOne({ name, sentence }: Mention): string | null {
    const fits = name.head === 'man' ? /(?:man|men)$/i : name.head === 'woman' ? /(?:woman|lady|ress)$/i : null;
    if (fits === null || this.#brought.has(name.singular)) return null;
    const people = [...(this.#present.get(sentence.scene) ?? [])].filter(
      (person) => either.test(person) || (fits.test(person) && (name.head === 'woman' || !/woman$/i.test(person))),
    );
    const [person] = people;
    if (person === undefined || people.length > 1) return null;
    const told = this.#toldAs.get(person) ?? name.head;
    this.#toldAs.set(person, told);
    return told === name.head ? person : null;
  }

  /** "The man in the straw hat" is STRAW HAT. */
  #badgeOf({ name, part: { phrase }, sentence: { tokens } }: Mention): string | null {
    if (name.head !== name.singular || !/^(?:in|with)$/.test(tokens[phrase.end]?.lower ?? '')) return null;
    const at = small.test(tokens[phrase.end + 1]?.lower ?? '') ? phrase.end + 2 : phrase.end + 1;
    for (let size = 1; size <= 3; size++) {
      const head = tokens[at + size - 1]?.lower ?? '';
      const worn = tokens.slice(at, at + size - 1).map(({ lower }) => lower);
      const found = this.#called
        .get(head)
        ?.find(({ before, behind }) => behind.length === 0 && before.length > 0 && before.join(' ') === worn.join(' '));
      if (found) return found.person;
    }
    return null;
  }

  #fits({ before, behind, scene }: Called, mention: Mention): boolean {
    const { tokens, scene: here } = mention.sentence;
    const { phrase } = mention.part;
    if (before.length + behind.length === 0)
      return scene === here && !isThe(mention) && this.#new.get(keyOf(mention)) === 1;
    const modifiers = phrase.modifiers.map((at) => (tokens[at] as Token).lower);
    if (!before.every((word) => modifiers.includes(word))) return false;
    const next = tokens.slice(phrase.end, phrase.end + 8).filter(({ lower }) => !small.test(lower));
    return behind.every((word, at) => next[at]?.lower === word);
  }
}

const keyOf = ({ sentence, name }: Mention) => `${sentence.scene} ${name.singular}`;

const isThe = ({ part }: Mention) => part.phrase.determiner?.lower === 'the';

const isBare = ({ part }: Mention) => part.phrase.modifiers.length === 0;

const addTo = (present: Map<number, Set<string>>, scene: number, person: string) =>
  present.set(scene, (present.get(scene) ?? new Set()).add(person));

function listPresent(clauses: readonly Clauses[]): Map<number, Set<string>> {
  const present = new Map<number, Set<string>>();
  for (const { sentence } of clauses) {
    if (sentence.kind !== 'action') continue;
    const { tokens, scene } = sentence;
    for (let at = 1; at < tokens.length; at++) {
      const { person } = tokens[at] as Token;
      if (person === null || !/^(?:an?|the)$/.test(tokens[at - 1]?.lower ?? '')) continue;
      addTo(present, scene, person);
    }
  }
  return present;
}

/** The people of the script by the noun that their name goes by. */
function listCalled(clauses: readonly Clauses[]): Map<string, Called[]> {
  const scenes = new Map<string, number>();
  for (const { sentence } of clauses) {
    const { speaker, scene } = sentence;
    if (speaker !== null && !scenes.has(speaker)) scenes.set(speaker, scene);
    for (const { person } of sentence.tokens) if (person !== null && !scenes.has(person)) scenes.set(person, scene);
  }
  const called = new Map<string, Called[]>();
  for (const [person, scene] of scenes) {
    const words = person.toLowerCase().split(/[\s.]+/);
    const behindAt = words.findIndex((word) => /^(?:in|with|on|at|from)$/.test(word));
    const head = words[behindAt > 0 ? behindAt - 1 : words.length - 1] as string;
    const before = words.slice(0, words.lastIndexOf(head)).filter((word) => !small.test(word));
    const behind = behindAt > 0 ? words.slice(behindAt).filter((word) => !small.test(word)) : [];
    called.set(head, [...(called.get(head) ?? []), { person, before, behind, scene }]);
  }
  return called;
}
