/**
 * Words that hold or measure what follows `of`: a bottle of brandy is the brandy too, a photograph of a dog is no dog.
 * Common practice of prop lists; from memory.
 */
export const measureWords: ReadonlySet<string> = new Set(
  `bag ball bar barrel basket bit blob block bottle bowl box bucket bunch bundle bouquet can carton case coil crate cup dish flask glass
  handful heap jar jug keg length loaf lump mug pack packet pair pan piece pile pinch pint plate pool pot pouch ream reel roll row sack
  saucer scrap set sheet slice spool stack stick strip tank thermos tin tray tub tube vial wad`.split(/\s+/),
);
