/** What stains whatever it gets on, by the state that it leaves. Common practice of costume departments. */
const soilers: Readonly<Record<string, string>> = {
  bloody: 'blood',
  muddy: 'mud',
  stained:
    'wine champagne whisky whiskey brandy rum cocoa milk curry mustard jam coffee tea juice beer soup ketchup sauce gravy paint ink oil tar icing cream custard vomit slime',
};

const stateBySoiler = new Map(
  Object.entries(soilers).flatMap(([state, words]) => words.split(' ').map((word) => [word, state] as const)),
);

/** Verbs of what gets on a thing by flowing, flying or falling. Ordinary English. */
export const soilingVerbs: ReadonlySet<string> = new Set(
  (
    'run drip splash spill splatter spatter spray pour spurt gush squirt trickle dribble drop fall land soak seep spread smear slosh ' +
    'flow shoot wipe rub slop'
  ).split(' '),
);

/** Of these the ones that spoil what the matter gets into; what others get it into is a vessel. */
export const soakingVerbs: ReadonlySet<string> = new Set('run soak seep rub wipe smear'.split(' '));

/** Where it gets, before the thing: "onto her shirt". */
export const soilingPlaces: ReadonlySet<string> = new Set('on onto over down across into through'.split(' '));

/** The state in which matter leaves a thing that it gets on: `bloody` for blood; null for what leaves none. */
export function soiledBy(matter: string): string | null {
  return stateBySoiler.get(matter) ?? null;
}
