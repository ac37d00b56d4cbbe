/** What a verb makes of a thing before the camera. */
export interface StateVerb {
  /** The state that the thing is in afterwards. */
  readonly state: string;
  /** True when the verb also does it without an object: "the rope snaps". */
  readonly byItself: boolean;
  /** True when it does so only without an object: "the cake splatters", but "she splatters the wall". */
  readonly alone?: true;
}

const to = (state: string, byItself = false): StateVerb => ({ state, byItself });

/** Verbs that change a thing for good, or until somebody cleans or mends it. Common practice of prop and costume departments. */
export const stateVerbs: Readonly<Record<string, StateVerb>> = {
  tear: to('torn', true),
  rip: to('torn', true),
  shred: to('shredded'),
  slit: to('slit'),
  slash: to('slit'),
  break: to('broken', true),
  snap: to('broken', true),
  smash: to('smashed', true),
  shatter: to('shattered', true),
  crack: to('cracked', true),
  burst: to('burst', true),
  splinter: to('splintered', true),
  splatter: { state: 'smashed', byItself: true, alone: true },
  crush: to('crushed'),
  dent: to('dented'),
  crumple: to('crumpled', true),
  soak: to('soaked'),
  drench: to('soaked'),
  burn: to('burnt', true),
  scorch: to('scorched'),
  singe: to('singed'),
  melt: to('melted', true),
  stain: to('stained'),
  bloody: to('bloody'),
};

/** Things that come sealed or wrapped: to open one uses it up. */
export const sealedThings: ReadonlySet<string> = new Set(
  'envelope letter parcel package packet present gift tin telegram sachet'.split(' '),
);

/** Verbs that open a sealed thing. */
export const openingVerbs: ReadonlySet<string> = new Set('open unseal unwrap'.split(' '));

/** Verbs by which food is gone after a take. Ordinary English. */
export const eatingVerbs: ReadonlySet<string> = new Set(
  'eat bite chew munch devour gobble nibble gulp swallow wolf guzzle scoff crunch taste'.split(' '),
);
