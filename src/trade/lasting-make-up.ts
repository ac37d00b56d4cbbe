/**
 * Make-up and hair that stays on a person once it is there: a wound does not heal within a day, a beard does not come off. Heads of
 * names, in the singular. Common practice of make-up and continuity; from memory.
 */
export const lastingMakeUp: ReadonlySet<string> = new Set(
  `bandage beard blister bruise burn cast cut dressing eyepatch gash gauze graze haircut moustache mustache patch plaster rash scab scar
  scratch sling stitch stitches stubble sunburn swelling tattoo wig wound`.split(/\s+/),
);

/** States that say of something on the body that it is no longer there. */
export const goneState = /\b(?:gone|healed|removed|taken off|washed off|washed away|cleaned off|wiped off|none)\b/i;
