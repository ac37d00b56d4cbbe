/** Seconds with the least and the most that is usual. */
export interface TimeSpan {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

interface Rate extends TimeSpan {
  readonly source: string;
}

const guide = "common practice: a first assistant director's reading with a stopwatch";

/** An eighth of a page at a page a minute. It holds roughly over many films and predicts a single film poorly (Follows 2020, 761 films). */
export const secondsPerEighth = 7.5;

/** How far an estimate that no stopwatch has checked may stray, as a part of itself: common practice. */
export const uncalibrated = 0.3;

/** Units spoken in a second. `low` is the fastest, because it gives the least time. */
export const speechRates = {
  /** Words: US conversation about 150 a minute (NCVS via Marshall); 120 to 180 over the published ranges. */
  plain: { low: 3, likely: 2.5, high: 2, source: 'NCVS via Marshall; Lucas 2004: 125-150; audiobooks 150-160' },
  slow: { low: 2.5, likely: 2, high: 1.5, source: guide },
  quick: {
    low: 3.5,
    likely: 3,
    high: 2.5,
    source: `${guide}; conversation 210 a minute (Tauroza & Allison 1990, from memory)`,
  },
  /** Words that the audience must read on the screen. */
  read: { low: 2.7, likely: 2, high: 1.5, source: `${guide}; subtitles at most 160 a minute (Ofcom via BBC 2015)` },
  /** Ideographs and kana, a syllable each: articulation in film dialogue, median 5.1 (Nitta 2010). */
  syllable: { low: 6.2, likely: 5.1, high: 3.5, source: 'Nitta 2010; Pellegrino 2011 (from memory); Netsell' },
} as const satisfies Record<string, Rate>;

export type SpeechPace = 'plain' | 'slow' | 'quick';

/** Seconds for each thing of a kind. */
export const itemSeconds = {
  /** A sentence of action; the likely figure grows with its length between the two ends. */
  action: { low: 2, likely: 3, high: 4, source: guide },
  entrance: { low: 2, likely: 3, high: 4, source: guide },
  /** Slow verbs and words of duration. */
  slow: { low: 6, likely: 9, high: 12, source: guide },
  /** A whole fight, chase or dance in one short sentence. */
  condensed: { low: 20, likely: 40, high: 60, source: `${guide}: "They fight" is an eighth and 40 s` },
  beat: {
    low: 0.5,
    likely: 1,
    high: 2,
    source: 'common practice: a beat is one to two seconds; no source gives a length',
  },
  pause: { low: 2, likely: 2.5, high: 3, source: guide },
  'long pause': { low: 3, likely: 4.5, high: 6, source: guide },
  /** One image of a montage. */
  image: { low: 4, likely: 7, high: 10, source: guide },
  /** Listening to a voice on the line that is not heard. */
  listening: { low: 1, likely: 2, high: 4, source: guide },
  credits: { low: 10, likely: 20, high: 40, source: guide },
  fade: { low: 1, likely: 2, high: 3, source: guide },
  /** A scene is never shorter than one shot. */
  shot: { low: 2, likely: 3, high: 4, source: guide },
} as const satisfies Record<string, Rate>;

export type ItemKind = keyof typeof itemSeconds;

/** Words at which a sentence of action takes the least and the most that is usual: common practice. */
export const actionLength = { shortest: 3, longest: 19 } as const;

/** A condensed sentence has at most so many words; a longer one tells single blows. Common practice. */
export const condensedWords = 4;

interface Cue<K> {
  readonly kind: K;
  readonly pattern: RegExp;
}

/** Sentences that are nothing but a pause; the first that fits counts. English words, from common practice. */
export const pauseCues: readonly Cue<ItemKind>[] = [
  { kind: 'long pause', pattern: /^(?:an? |another |the )?(?:very )?long (?:beat|pause|silence)\b[^\p{L}]*$/iu },
  { kind: 'beat', pattern: /^(?:an? |another )?(?:short |brief |tiny )?beat\b[^\p{L}]*$/iu },
  { kind: 'pause', pattern: /^(?:an? |another )?(?:short |brief )?(?:pause|silence)\b[^\p{L}]*$/iu },
];

/** What takes longer than the words of a sentence; the first that fits counts. English words, from common practice. */
export const sentenceCues: readonly Cue<ItemKind>[] = [
  { kind: 'credits', pattern: /\b(?:opening|main|end|closing) (?:titles|credits)\b|\bcredits (?:roll|over|run)\b/iu },
  {
    kind: 'condensed',
    pattern:
      /\b(?:fight|duel|chase|brawl|battle|scuffle|struggle|shoot-?out) (?:takes place|breaks out|ensues|follows|rages|goes on)\b/iu,
  },
  {
    kind: 'slow',
    pattern:
      /\b(?:slow(?:ly)?|gradually|carefully|patiently|for (?:a|some) (?:long |good )?(?:while|time)|long (?:moment|look|minute|silence)|at length|watch(?:es|ing)?|wait(?:s|ing)?|star(?:es?|ing)|gaz(?:es?|ing)|linger(?:s|ing)?|read(?:s|ing)? (?:it|the|her|his|their|a))\b/iu,
  },
  {
    kind: 'entrance',
    pattern:
      /\b(?:enters?|exits?|leaves?|arrives?|(?:comes?|walks?|runs?|bursts?|steps?|slips?|goes|go) (?:in|out|inside|outside|away|off))\b/iu,
  },
];

/** Verbs that condense much film into few words, save where they are said of light or of tears. */
export const condensedCue =
  /(?<!\b(?:light|lights|flame|flames|fire|shadow|shadows|dust|snow|leaves|curtain|curtains|sun|sunlight) )\b(?:(?:fights?|battles?)(?! (?:back|tears|sleep|it|for|the urge))|brawls?|wrestles?|chases?|dances?|sings?|make love|makes love|duel)\b/iu;

/** What a parenthesis in a speech costs; the first that fits counts, any other is played during the words. */
export const parenthesisCues: readonly Cue<ItemKind>[] = [
  { kind: 'long pause', pattern: /\blong (?:beat|pause|silence)\b/iu },
  { kind: 'beat', pattern: /\b(?:beat|then)\b/iu },
  { kind: 'pause', pattern: /\b(?:pauses?|silence)\b/iu },
  {
    kind: 'listening',
    pattern:
      /\b(?:listens|listening|into (?:the )?(?:tele)?phone|into (?:the )?(?:radio|receiver)|on (?:the )?phone)\b/iu,
  },
];

/** What a parenthesis says of the pace of the words under it. */
export const paceCues: readonly Cue<SpeechPace>[] = [
  {
    kind: 'slow',
    pattern:
      /\b(?:slow(?:ly)?|halting(?:ly)?|hesita\w+|weak(?:ly)?|whisper\w*|dazed|sleepy|drunk\w*|reading|reads|dictating)\b/iu,
  },
  {
    kind: 'quick',
    pattern:
      /\b(?:fast|quick(?:ly)?|rapid(?:ly)?|shout\w*|yell\w*|angry|angrily|furious(?:ly)?|hurried(?:ly)?|breathless(?:ly)?|panick?\w*|urgent(?:ly)?)\b/iu,
  },
];

/** Action that happens while somebody speaks: counted once with the speech. */
export const duringSpeechCue =
  /\b(?:[Aa]s|[Ww]hile) (?:(?:s?he|they|\p{Lu}\p{L}+) )?(?:(?:is|are|keeps?|still|goes on|go on) )*(?:speak|talk|say|explain|argu|read)(?:s|es|ing|e)?\b|\b(?:still|keeps?|goes on) (?:talking|speaking|reading)\b|\b(?:[Uu]nder|[Oo]ver|[Dd]uring) (?:this|the speech|her words|his words|their words)\b/u;

/** Transitions that take time on the screen. */
export const fadeCue = /\b(?:FADE|DISSOLVE)S?\b/u;
