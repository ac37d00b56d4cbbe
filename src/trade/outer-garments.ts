/** Garments of which one is worn at a time: another of the kind means a change of costume. Common practice. */
export const oneAtATime: ReadonlySet<string> = new Set(
  `blouse coat costume dress gown jacket jersey jumper kimono nightdress nightgown overall outfit pyjama pyjamas pajamas robe sari shirt
  skirt suit sweater t-shirt trousers tuxedo uniform`.split(/\s+/),
);

/** What people wear in bed: on someone who was about in other clothes that day it means a change. Common practice. */
export const nightWear: ReadonlySet<string> = new Set(
  'dressing-gown negligee nightdress nightgown nightie nightshirt pajamas pyjama pyjamas'.split(' '),
);

/** Clothes that are kept ready and not worn in the picture. Common practice of costume departments. */
export const spareClothes = /\b(?:doubles?|duplicates?|spares?|back-?ups?|stand-?bys?|second set)\b/i;

/** States of a garment taken off that say that its wearer still has it: hung over a shoulder, under an arm. Common practice. */
export const stillOnBody =
  /\b(?:over|on|under|round|around|across|in|about) (?:(?:his|her|their|the|one|a|an) )?(?:(?:left|right) )?(?:arms?|shoulders?|hands?|waist|neck|bag|pocket|bundle)\b|\bcarried\b/i;
