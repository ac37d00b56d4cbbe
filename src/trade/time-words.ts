/** A word of a scene heading that tells when the scene plays. */
export interface TimeWord {
  readonly word: string;
  /** The light it means; null where the light of the scene before goes on. */
  readonly light: 'day' | 'night' | 'dawn' | 'dusk' | null;
  readonly source: string;
}

const strict = 'Storysense, headings; Carnegie Library of Pittsburgh, screenwriter’s guide';
const middle = 'YankeeClassic, script format: DAWN and SUNSET where the story needs them';
const met = 'words met in published scripts: Academy Nicholl format sample, 1998; BBC Writersroom';
const asDay = 'scheduling counts it as DAY: Stage 32 threads on headings; common practice';
const goesOn = 'ScreenPlayground and GeeksMedia, master scene headings; TWUnroll';
const practice = 'common practice';
const memory = 'common practice, from memory: the word in another language';

/** Each word or fixed pair of words, in capitals. */
export const timeWords: readonly TimeWord[] = [
  { word: 'DAY', light: 'day', source: strict },
  { word: 'NIGHT', light: 'night', source: strict },
  { word: 'DAWN', light: 'dawn', source: middle },
  { word: 'DUSK', light: 'dusk', source: met },
  { word: 'SUNRISE', light: 'dawn', source: met },
  { word: 'SUNSET', light: 'dusk', source: middle },
  { word: 'MORNING', light: 'day', source: asDay },
  { word: 'AFTERNOON', light: 'day', source: asDay },
  { word: 'EVENING', light: 'night', source: 'common practice: an evening is lit as night; DUSK says otherwise' },
  { word: 'NOON', light: 'day', source: practice },
  { word: 'MIDDAY', light: 'day', source: practice },
  { word: 'MID-DAY', light: 'day', source: practice },
  { word: 'MIDNIGHT', light: 'night', source: practice },
  { word: 'DAYTIME', light: 'day', source: practice },
  { word: 'NIGHTTIME', light: 'night', source: practice },
  { word: 'NIGHT-TIME', light: 'night', source: practice },
  { word: 'DAYBREAK', light: 'dawn', source: practice },
  { word: 'SUNUP', light: 'dawn', source: practice },
  { word: 'FIRST LIGHT', light: 'dawn', source: practice },
  { word: 'PRE-DAWN', light: 'dawn', source: practice },
  { word: 'SUNDOWN', light: 'dusk', source: practice },
  { word: 'TWILIGHT', light: 'dusk', source: practice },
  { word: 'NIGHTFALL', light: 'dusk', source: practice },
  { word: 'LAST LIGHT', light: 'dusk', source: practice },
  { word: 'MAGIC HOUR', light: 'dusk', source: 'common practice: the hour about sunset' },
  { word: 'GOLDEN HOUR', light: 'dusk', source: 'common practice: the hour about sunset' },
  { word: 'BLUE HOUR', light: 'dusk', source: 'common practice: after sunset' },
  { word: 'CONTINUOUS', light: null, source: goesOn },
  { word: 'CONT', light: null, source: practice },
  { word: "CONT'D", light: null, source: practice },
  { word: 'CONTINUED', light: null, source: practice },
  { word: 'LATER', light: null, source: goesOn },
  { word: 'MOMENTS LATER', light: null, source: goesOn },
  { word: 'MINUTES LATER', light: null, source: goesOn },
  { word: 'HOURS LATER', light: null, source: practice },
  { word: 'SAME', light: null, source: goesOn },
  { word: 'SAME TIME', light: null, source: goesOn },
  { word: 'EARLIER', light: null, source: practice },
  { word: 'MEANWHILE', light: null, source: practice },
  { word: 'SIMULTANEOUS', light: null, source: practice },
  { word: 'IMMEDIATELY AFTER', light: null, source: practice },
  { word: 'TOMORROW', light: null, source: practice },
  { word: 'YESTERDAY', light: null, source: practice },
  { word: 'NEXT WEEK', light: null, source: practice },
  { word: 'NEXT MONTH', light: null, source: practice },
  { word: 'NEXT YEAR', light: null, source: practice },
  { word: 'FOLLOWING WEEK', light: null, source: practice },
  { word: 'FOLLOWING MONTH', light: null, source: practice },
  { word: 'FOLLOWING YEAR', light: null, source: practice },
  { word: 'MONDAY', light: null, source: practice },
  { word: 'TUESDAY', light: null, source: practice },
  { word: 'WEDNESDAY', light: null, source: practice },
  { word: 'THURSDAY', light: null, source: practice },
  { word: 'FRIDAY', light: null, source: practice },
  { word: 'SATURDAY', light: null, source: practice },
  { word: 'SUNDAY', light: null, source: practice },
  { word: 'JOUR', light: 'day', source: memory },
  { word: 'NUIT', light: 'night', source: memory },
  { word: 'AUBE', light: 'dawn', source: memory },
  { word: 'TAG', light: 'day', source: memory },
  { word: 'NACHT', light: 'night', source: memory },
  { word: 'ABEND', light: 'night', source: memory },
  { word: 'DÍA', light: 'day', source: memory },
  { word: 'DIA', light: 'day', source: memory },
  { word: 'NOCHE', light: 'night', source: memory },
  { word: 'GIORNO', light: 'day', source: memory },
  { word: 'NOTTE', light: 'night', source: memory },
  { word: 'NOITE', light: 'night', source: memory },
  { word: 'MATIN', light: 'day', source: memory },
  { word: 'SOIR', light: 'night', source: memory },
  { word: 'CRÉPUSCULE', light: 'dusk', source: memory },
  { word: 'MORGEN', light: 'day', source: memory },
  { word: 'MORGENGRAUEN', light: 'dawn', source: memory },
  { word: 'MAÑANA', light: 'day', source: memory },
  { word: 'TARDE', light: 'day', source: memory },
  { word: 'AMANECER', light: 'dawn', source: memory },
  { word: 'ATARDECER', light: 'dusk', source: memory },
  { word: 'MATTINA', light: 'day', source: memory },
  { word: 'SERA', light: 'night', source: memory },
  { word: 'ALBA', light: 'dawn', source: memory },
  { word: 'TRAMONTO', light: 'dusk', source: memory },
  { word: 'MANHÃ', light: 'day', source: memory },
  { word: 'ДЕНЬ', light: 'day', source: memory },
  { word: 'УТРО', light: 'day', source: memory },
  { word: 'ВЕЧЕР', light: 'night', source: memory },
  { word: 'НОЧЬ', light: 'night', source: memory },
];

/** Spans of a day or more, as words of a time count them. */
const longSpans: readonly string[] = [
  'DAYS',
  'NIGHTS',
  'WEEK',
  'WEEKS',
  'MONTH',
  'MONTHS',
  'YEAR',
  'YEARS',
  'DECADE',
  'DECADES',
];

/** Words that may stand beside a time word without changing what it is: `LATE NIGHT`, `THE NEXT MORNING`. */
export const timeModifiers: readonly string[] = [
  'EARLY',
  'LATE',
  'MID',
  'THE',
  'THAT',
  'THIS',
  'SAME',
  'NEXT',
  'FOLLOWING',
  'LATER',
  'STILL',
  'BEFORE',
  'AFTER',
  'A',
  'AN',
  'FEW',
  'SOME',
  'SEVERAL',
  'MOMENT',
  'MOMENTS',
  'MINUTE',
  'MINUTES',
  'SECOND',
  'SECONDS',
  'HOUR',
  'HOURS',
  'TIME',
  'SOMETIME',
  'LITTLE',
  'MUCH',
  'MANY',
  ...longSpans,
];

/** Words of a time that lies a day or more away: the light of the scene before tells nothing of it. */
export const farTimes: readonly string[] = [
  ...longSpans,
  'NEXT WEEK',
  'NEXT MONTH',
  'NEXT YEAR',
  'FOLLOWING WEEK',
  'FOLLOWING MONTH',
  'FOLLOWING YEAR',
  'TOMORROW',
  'YESTERDAY',
];

/** The days of the week in order, in capitals. */
export const weekdays: readonly string[] = [
  'MONDAY',
  'TUESDAY',
  'WEDNESDAY',
  'THURSDAY',
  'FRIDAY',
  'SATURDAY',
  'SUNDAY',
];
