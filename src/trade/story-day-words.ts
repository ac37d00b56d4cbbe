/**
 * How headings tell when a scene plays. Rules 1 to 8 of the story-day pass read these tables. Sources: the time words and their
 * meanings as published for headings (CONTINUOUS: no time passes, SAME: same moment elsewhere, LATER: a jump straight after;
 * ScreenPlayground, GeeksMedia, TWUnroll); a story day is kept per scene (Blanchard); flashbacks carry a mark of their own and the
 * rest is common practice of script supervisors.
 */

/** Words that say outright that a new story day begins. The first group may be a number or its word. */
export const newDayWords: readonly RegExp[] = [
  /\b(?:the )?(?:next|following) (?:day|morning|afternoon|evening|night|week|month|year|dawn|spring|summer|autumn|fall|winter|(?:mon|tues|wednes|thurs|fri|satur|sun)day)\b/i,
  /\b(?:the )?(?:morning|day|night|week|month|year) after\b(?! (?:morning|day|night|week|month|year)\b)/i,
  /\b(?:a|an|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|several|some|many|a few|\d+) (?:day|night|week|month|year|decade)s? (?:later|after|on)\b/i,
  /\b(?:days|nights|weeks|months|years|decades) (?:later|after)\b/i,
  /\btomorrow\b/i,
];

/** `DAY 3`, `DAY THREE`, `D3`, `NIGHT 3` as a tag of its own. */
export const dayTag = /^(?:(?:story |script )?(?:day|night)|[dn]) ?#?(\d+|[a-z]+)$/i;

/** Words that say outright that the story day stays. */
export const sameDayWords: readonly RegExp[] = [
  /\b(?:later |earlier )?(?:that|the same|same) (?:day|morning|afternoon|evening|night)\b/i,
  /\b(?:a few |some |several |\w+ )?(?:minutes?|hours?|seconds?) later\b/i,
];

/** Words that open a series of its own: what is remembered, dreamt or long past. */
export const flashbackWords: readonly RegExp[] = [
  /\bflash ?-?backs?\b/i,
  /\b(?:dream|nightmare|daydream|memory|vision|fantasy|imagined|hallucination)\b/i,
  /\b(?:days?|weeks?|months?|years?|decades?|hours?) (?:earlier|before|ago)\b/i,
  /\bflash ?-?forward\b/i,
  /^(?:the )?(?:day before )?yesterday$/i,
];

/** What nobody lived through: a dream right after a memory is a series of its own, and the other way round. */
export const dreamWords = /\b(?:dream|nightmare|daydream|vision|fantasy|imagined|hallucination)/i;

/** A part of a heading that is one of these and nothing else is no place. */
export const wholeTimePart =
  /^(?:(?:a |the |begin |start of )?(?:flash ?-?back|flash ?-?forward|dream|dream sequence|nightmare|daydream|memory|vision|fantasy)|(?:end|end of|back from) (?:the )?(?:flash ?-?back|flash ?-?forward|dream|dream sequence|nightmare|daydream|memory|vision|fantasy|montage)|(?:in )?(?:1[5-9]\d\d|20\d\d|21\d\d)|(?:the )?present(?: day)?|back to (?:the )?(?:present(?: day)?|now|scene|reality|today)|(?:begin |end )?(?:montage|series of shots)|intercut(?: with (?:scene )?\w+)?|[dn]\d{1,3})$/i;

/** A stretch of time that lies back: `TWENTY YEARS EARLIER`. */
export const flashbackSpan =
  /^(?:[\w-]+ ){0,3}(?:days?|weeks?|months?|years?|decades?|hours?) (?:earlier|before|ago)$/i;

/** Words that close it. */
export const presentWords: readonly RegExp[] = [
  /\bpresent(?: day)?\b/i,
  /\bback to (?:the )?(?:present|now|scene|reality|today)\b/i,
  /\bend (?:of )?(?:the )?(?:flash ?-?back|dream|memory|nightmare|vision|fantasy)\b/i,
  /\bnow\b/i,
];

/** What scripts write before the setting of a heading, with `:` or a dash between, and the qualifier it stands for. Source: common practice. */
export const headingLeads: readonly { readonly words: RegExp; readonly qualifier: string }[] = [
  { words: /flash ?-?backs?(?: to)?/i, qualifier: 'FLASHBACK' },
  { words: /flash ?-?forward(?: to)?/i, qualifier: 'FLASH FORWARD' },
  { words: /(?:dream|nightmare|daydream|vision|fantasy)(?: sequence)?/i, qualifier: 'DREAM' },
  { words: /memory/i, qualifier: 'MEMORY' },
  {
    words: /(?:end (?:of )?flash ?-?back|back to(?: (?:the )?(?:present(?: day)?|scene|now|reality))?)/i,
    qualifier: 'BACK TO SCENE',
  },
  { words: /present(?: day)?/i, qualifier: 'PRESENT' },
];

/** A line that opens a series for all scenes after it, until one of the closing words. */
export const flashbackOpening = /^(?:begin |start (?:of )?)?(?:flash ?-?back|dream sequence|dream)s?(?: to)?:?\.?$/i;

/** No time passes, or next to none: the scene shares the day of the scene it continues. */
export const continuousWords =
  /^(?:continuous|continued|cont['\u2019]?d|same(?: time)?|moments? later|(?:a )?(?:few )?(?:moments|seconds|minutes) later|simultaneous|immediately after|meanwhile)$/i;

/** No gap at all: what is worn and held goes on unchanged. */
export const unbrokenWords = /^(?:continuous|continued|cont['\u2019]?d|immediately after)$/i;

/** Both sides of one moment. */
export const intercutWord = /\bintercut(?:ting)?\b(?: with)?(?: scene)? ?(\w+)?/i;

/** Time has passed within the day. */
export const laterWords = /^(?:later|sometime later|some time later|a little later|much later|still later)$/i;

export const montageWord = /\b(?:montage|series of shots)\b/i;

export const yearSign = /\b(1[5-9]\d\d|20\d\d|21\d\d)\b/;

/**
 * Where a time of day stands between midnight and midnight. `from` and `to` are hours; a day runs light to light, so that DAY after
 * MORNING goes forward and MORNING after AFTERNOON goes back. Hours are from memory and only order the words.
 */
export const timesOfDay: readonly { readonly word: RegExp; readonly from: number; readonly to: number }[] = [
  { word: /\b(?:pre-?dawn|before dawn|small hours)\b/i, from: 4, to: 5 },
  { word: /\b(?:dawn|sunrise|daybreak|first light)\b/i, from: 5, to: 6 },
  { word: /\bearly morning\b/i, from: 6, to: 8 },
  { word: /\bmorning\b/i, from: 7, to: 11 },
  { word: /\b(?:noon|midday)\b/i, from: 12, to: 13 },
  { word: /\bafternoon\b/i, from: 13, to: 17 },
  { word: /\b(?:dusk|sunset|magic hour|golden hour|last light|twilight)\b/i, from: 18, to: 19 },
  { word: /\bevening\b/i, from: 18, to: 21 },
  { word: /\bmidnight\b/i, from: 24, to: 24 },
  { word: /\bnight\b/i, from: 20, to: 27 },
  { word: /\bday\b/i, from: 7, to: 17.5 },
];

/** The same for the light of a heading when its words are in no row. */
export const hoursOfLight = {
  dawn: { from: 5, to: 6 },
  day: { from: 7, to: 17.5 },
  dusk: { from: 18, to: 19 },
  night: { from: 20, to: 27 },
} as const;

/** A title on screen that tells the time: `SUPER: Three days later`. */
export const titleLine =
  /^(?:super(?:imposed)?|title|title card|card|caption|chyron|on screen|text on screen|insert title)\b[^a-z]*(.*)$/i;

/** A day of the week, by its name. */
export const weekdayWord = /\b(mon|tues|wednes|thurs|fri|satur|sun)day\b/i;
