import { byKey, changed, differs } from './change.js';
import type { Matched } from './match-names.js';
import type { Change, SceneFacts, ThingFacts } from './types.js';

/** How people and things of the earlier draft are called in the present one. */
export interface Identities {
  readonly things: Matched;
  readonly people: Matched;
  /** The present name of a person whom the earlier draft calls so. */
  readonly personNow: (name: string) => string;
}

type Holds = Pick<SceneFacts, 'things' | 'wears'>;

/** What is new, gone, or differs in number, state and hands among the things of a scene. What people wear is not among them. */
export function compareThings(scene: string, before: Holds, after: Holds, { things, personNow }: Identities): Change[] {
  const worn = new Set([...wornIn(before).map(things.keyOf), ...wornIn(after)]);
  return byKey(
    before.things,
    after.things,
    (one) => things.keyOf(one.id),
    (one) => one.id,
  )
    .filter(({ key }) => !worn.has(key))
    .flatMap(({ one, other }) => compareThing(scene, one, other, things, personNow));
}

function compareThing(
  scene: string,
  one: ThingFacts | null,
  other: ThingFacts | null,
  { added, gone }: Matched,
  personNow: (name: string) => string,
): Change[] {
  const { name, category } = (other ?? one) as ThingFacts;
  const told = { scene, subject: name, category };
  if (one === null || other === null) {
    const whole = one === null ? added.has(other?.id ?? '') : gone.has(one.id);
    return [changed('thing', { ...told, whole, before: amountOf(one), after: amountOf(other) })];
  }
  const holder = one.by === null ? null : personNow(one.by);
  return [
    ...differs('count', one.count, other.count, told),
    ...compareStates(one, other, told),
    ...differs('holder', holder, other.by, told),
  ];
}

/** How many there are, as far as the script says; null when there is none. */
function amountOf(thing: ThingFacts | null): string | null {
  return thing === null ? null : `${thing.count ?? 1}`;
}

interface States {
  readonly stateIn: string | null;
  readonly stateOut: string | null;
}

/** What differs in the states of a thing: one change when it comes and leaves in the same one, in both drafts. */
export function compareStates(one: States, other: States, told: Partial<Change>): Change[] {
  const [was, is] = [one.stateOut ?? one.stateIn, other.stateOut ?? other.stateIn];
  if (was === one.stateIn && is === other.stateIn) return differs('state', was, is, told);
  return [...differs('state in', one.stateIn, other.stateIn, told), ...differs('state out', was, is, told)];
}

function wornIn({ wears }: Holds): string[] {
  return wears.flatMap((one) => one.garments.map((garment) => garment.id));
}
