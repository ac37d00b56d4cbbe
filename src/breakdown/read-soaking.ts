import type { Soaking } from './soaked.js';

/** What a sentence says of wet or dirt: `index` counts in the sentence. */
export type SoakingRead = Pick<Soaking, 'kind' | 'state' | 'begins' | 'words'> & {
  readonly index: number;
  /** Where the one whom it befalls is named: "Bill falls in", "a lorry splashes Bill". */
  readonly whom: 'before' | 'after';
};

const waters = 'water|river|sea|lake|canal|pond|harbour|harbor|pool|stream|dock|puddle|ditch|trough|fountain';
const dirt =
  'mud|muck|slurry|slime|plaster|dust|flour|paint|soot|oil|grease|blood|coal dust|ash|tar|clay|dung|icing|cream';
const drinks =
  'wine|tea|coffee|beer|soup|champagne|juice|milk|gravy|sauce|ketchup|ink|paint|brandy|whisky|whiskey|rum|cocoa|curry|jam|icing';
const falls =
  'falls|jumps|dives|slips|tumbles|plunges|topples|drops|goes|lands|steps|is (?:pushed|thrown|dragged|pulled|knocked)';

/** Tried first, for speed: without one of these nobody gets wet or dirty. */
const mayTell = new RegExp(
  `${waters}|${dirt}|${drinks}|soak|drench|sodden|wet|dripping|goes in|goes over|goes under|falls in|jumps in|dives in|comes up|overboard|filthy|blood|splash|dous|hos(?:es|ing)|spray|sick`,
  'i',
);

const intoWater = new RegExp(
  `\\b(?:${falls})\\b[^;:.]*\\b(?:in|into|under)\\b(?: (?:the|a|an))?(?: [\\w-]+)? (?:${waters})\\b|\\bgoes under\\b`,
  'i',
);
/** Words that mean water only where there is some. */
const inWater =
  /\b(?:(?:overbalances|slips|trips|stumbles|topples|tips|lunges|loses)\b[^.;:]* goes in|falls in|jumps in|dives in|goes over(?:board| the side)|falls overboard|comes up (?:spluttering|gasping|coughing|for air))\b(?! (?:the|a|an|his|her|with) (?!oar))/i;
const intoDirt = new RegExp(
  `\\b(?:${falls}|slides|rolls|crawls|wades|wallows|kneels|sinks)\\b[^.;:]*\\b(?:in|into|through)(?: the| a| some)?(?: [\\w-]+)? (?:mud|muck|slurry|bog|dung|flour|soot|tar|clay)\\b`,
  'i',
);
/** What comes over somebody who is named behind it. */
const overSomebody =
  /\b(?:jet|burst|wall|sheet|bucket(?:ful)?|pail|basin|jug) of (?:cold |hot |dirty |icy )?water (?:hits|strikes|catches|knocks|drenches|soaks|over)\b|\b(?:splashes|drenches|douses|hoses down|hoses|sprays|soaks)(?= (?:\p{Lu}|him|her|them))/iu;
/** What somebody gets down the front. */
const overOneself = new RegExp(
  `\\b(?:spills|slops|pours|tips|dribbles|splashes|upsets|drips|drops|gets)\\b[^.;:]*\\b(?:${drinks})\\b[^.;:]*\\b(?:down|over|on|onto) (?:herself|himself|themselves|(?:her|his) (?:own )?(?:front|lap|knees|chest|sleeve|shirt|dress|blouse|tie|jacket|skirt|trousers|coat))\\b`,
  'i',
);
const wetThrough = /\b(?:soaked|drenched|sodden|wet through|dripping wet|soaking wet|dripping(?=\s*(?:[,.;]|and\b)))/i;
const dirty = new RegExp(
  `\\b(?:muddy|filthy|bloodied|blood-?stained|mud-spattered|sooty|(?:covered|caked|spattered|smeared|plastered|streaked|black|white|grey|gray|brown) (?:in|with) (?:${dirt}))(?: to the [a-z]+)?`,
  'i',
);

/** Reads of a sentence whether somebody gets or is wet or dirty; null when nobody does. `nearWater` gives "goes in" its sense. */
export function readSoaking(text: string, nearWater: boolean): SoakingRead | null {
  if (!mayTell.test(text)) return null;
  return readEvent(text, nearWater) ?? readState(text);
}

function readEvent(text: string, nearWater: boolean): SoakingRead | null {
  const wet = intoWater.exec(text) ?? (nearWater ? inWater.exec(text) : null);
  if (wet) return event(wet, 'wet', 'wet', 'before');
  const splashed = overSomebody.exec(text);
  if (splashed) return event(splashed, 'wet', 'wet', 'after');
  const dirtied = intoDirt.exec(text);
  if (dirtied) return event(dirtied, 'dirty', /\bmud$|muck$/i.test(dirtied[0]) ? 'muddy' : 'dirty', 'before');
  const stained = overOneself.exec(text);
  return stained ? event(stained, 'dirty', 'stained', 'before') : null;
}

function event(match: RegExpExecArray, kind: Soaking['kind'], state: string, whom: SoakingRead['whom']): SoakingRead {
  return { kind, state, begins: true, words: match[0], index: match.index, whom };
}

function readState(text: string): SoakingRead | null {
  const is = wetThrough.exec(text) ?? dirty.exec(text);
  if (!is || isOfThing(text.slice(is.index + is[0].length))) return null;
  const kind = wetThrough.test(is[0]) || /^dripping/i.test(is[0]) ? 'wet' : 'dirty';
  const begins = /\bgets\s*$/i.test(text.slice(0, is.index));
  return { kind, state: is[0].toLowerCase(), begins, words: is[0], index: is.index, whom: 'before' };
}

/** True when the word tells of a thing that follows: `a muddy path`. */
function isOfThing(after: string): boolean {
  return /^ (?!(?:and|in|to|by|from|but|as|now|with|through|on|at|under|against|before|after|like|over|behind|beside)\b)[a-z]/i.test(
    after,
  );
}
