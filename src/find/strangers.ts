import { personBefore } from './appositions.js';
import type { Clauses } from './clause-types.js';
import { readMeantPeople } from './meant-people.js';
import type { Mention } from './mentions.js';
import type { Token } from './reading.js';
import type { Named } from './same-element.js';

/** Below this confidence a mention of people is no entry. */
export const cutOfPeople = 0.5;

/** How people without a name are called, by the head word of each place that names them. */
export type StrangerNames = ReadonlyMap<Token, string>;

/** The entry of each place that names people: the extras', or the person's whom it describes ("Nora, a tall woman"). */
export function nameStrangers(extras: readonly Named[], clauses: readonly Clauses[]): StrangerNames {
  const meant = readMeantPeople(extras, clauses);
  const names = new Map(
    extras.flatMap(({ mention, name }): [Token, string][] => {
      const head = headOf(mention);
      const people = meant.get(mention);
      if (people) return people.length === 1 ? [[head, people[0] as string]] : [];
      const described = personBefore(mention);
      if (described !== null) return [[head, described]];
      return mention.confidence < cutOfPeople ? [] : [[head, name]];
    }),
  );
  nameOwners(names, extras, clauses);
  return names;
}

/** "The clerk's knuckles": an owner is no mention of its own, and goes by the only name that its word has in the scene, else in the script. */
function nameOwners(names: Map<Token, string>, extras: readonly Named[], clauses: readonly Clauses[]): void {
  const known = new Map<string, string | null>();
  const keyOf = (scene: number, { lower }: Token) => `${scene} ${lower}`;
  for (const { mention } of extras) {
    const head = headOf(mention);
    const name = names.get(head);
    if (name === undefined) continue;
    for (const key of [keyOf(mention.sentence.scene, head), head.lower]) {
      const before = known.get(key);
      known.set(key, before === undefined || before === name ? name : null);
    }
  }
  for (const { sentence, parts } of clauses) {
    for (const { preposition, phrase } of parts) {
      if (preposition !== "'s") continue;
      const head = sentence.tokens[phrase.head] as Token;
      const here = known.get(keyOf(sentence.scene, head));
      const name = here === undefined ? (known.get(head.lower) ?? null) : here;
      if (name !== null && !names.has(head)) names.set(head, name);
    }
  }
}

const headOf = ({ sentence, part }: Mention) => sentence.tokens[part.phrase.head] as Token;

/** Gives what a nameless person has in hand or wears to the entry of that person. */
export function giveToStrangers(mentions: readonly Mention[], names: StrangerNames): Mention[] {
  return mentions.map((mention) => {
    if (mention.by !== null || mention.stranger === null) return mention;
    const by = names.get(mention.stranger) ?? null;
    return { ...mention, by, worn: mention.worn && by !== null };
  });
}
