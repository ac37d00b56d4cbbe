import { byKey, changed, differs } from './change.js';
import { compareStates, type Identities } from './compare-things.js';
import type { Change, GarmentFacts, SceneFacts, WearsFacts } from './types.js';

type Peopled = Pick<SceneFacts, 'cast' | 'extras' | 'wears'>;

/** Who is new or gone in a scene, how many people stand in it, and what anybody wears. */
export function comparePeople(scene: string, before: Peopled, after: Peopled, identities: Identities): Change[] {
  const { personNow } = identities;
  return [
    ...compareCast(scene, before, after, identities),
    ...byKey(before.extras, after.extras, nameOf, nameOf).flatMap(({ key, one, other }) => {
      const told = { scene, subject: key };
      if (one && other) return differs('count', one.count, other.count, { ...told, category: 'extras' });
      return [changed('extra', { ...told, category: 'extras', before: amountOf(one), after: amountOf(other) })];
    }),
    ...byKey(before.wears, after.wears, (one) => personNow(one.person), wearerOf).flatMap(({ key, one, other }) =>
      compareWears(scene, key, one, other, identities),
    ),
  ];
}

function compareCast(scene: string, before: Peopled, after: Peopled, { people, personNow }: Identities): Change[] {
  const inBoth = new Set(people.pairs.map((pair) => pair.after.name));
  return byKey(before.cast, after.cast, (one) => personNow(one.name), nameOf).flatMap(({ key, one, other }) =>
    differs('person', one?.presence ?? null, other?.presence ?? null, {
      scene,
      subject: key,
      category: 'cast',
      whole: (one === null || other === null) && !inBoth.has(key),
    }),
  );
}

/** Only where both drafts dress a person: who comes and goes takes the clothes along. */
function compareWears(
  scene: string,
  person: string,
  one: WearsFacts | null,
  other: WearsFacts | null,
  { things }: Identities,
): Change[] {
  const told = { scene, wearer: person, category: 'costumes' as const };
  const garments = byKey(
    one?.garments ?? [],
    other?.garments ?? [],
    (garment) => things.keyOf(garment.id),
    (garment) => garment.id,
  ).flatMap(({ one: was, other: is }) => {
    const named = { ...told, subject: (is ?? (was as GarmentFacts)).name };
    if (was === null || is === null || was.absent !== is.absent) {
      const whole = was === null ? things.added.has(is?.id ?? '') : is === null && things.gone.has(was.id);
      return [changed('garment', { ...named, whole, before: wornWords(was), after: wornWords(is) })];
    }
    return compareStates(was, is, named);
  });
  if (one === null || other === null) return garments;
  return [...garments, ...differs('costume number', one.change, other.change, { ...told, subject: person })];
}

/** `worn`, or `not worn` where the absence is told; null when nothing is said. */
function wornWords(garment: GarmentFacts | null): string | null {
  if (garment === null) return null;
  return garment.absent ? 'not worn' : 'worn';
}

function amountOf(extra: { readonly count: number | null } | null): string | null {
  return extra === null ? null : `${extra.count ?? '?'}`;
}

function nameOf(one: { readonly name: string }): string {
  return one.name;
}

function wearerOf(one: WearsFacts): string {
  return one.person;
}
