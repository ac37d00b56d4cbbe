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
  return new Map(
    extras.flatMap(({ mention, name }): [Token, string][] => {
      const head = mention.sentence.tokens[mention.part.phrase.head] as Token;
      const people = meant.get(mention);
      if (people) return people.length === 1 ? [[head, people[0] as string]] : [];
      const described = personBefore(mention);
      if (described !== null) return [[head, described]];
      return mention.confidence < cutOfPeople ? [] : [[head, name]];
    }),
  );
}

/** Gives what a nameless person has in hand or wears to the entry of that person. */
export function giveToStrangers(mentions: readonly Mention[], names: StrangerNames): Mention[] {
  return mentions.map((mention) => {
    if (mention.by !== null || mention.stranger === null) return mention;
    const by = names.get(mention.stranger) ?? null;
    return { ...mention, by, worn: mention.worn && by !== null };
  });
}
