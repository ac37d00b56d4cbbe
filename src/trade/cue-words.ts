/** Cues that name nobody of their own: those who are there speak together. Common practice. */
export const togetherCues: ReadonlySet<string> = new Set(
  'all|all three|all four|both|everyone|everybody|in unison|the others|the rest|the three|the two|together'.split('|'),
);

/** `BOTH COPS`, `ALL THREE GUARDS`, `THE TWO NURSES`: several at once, by what they are. The group is the noun. Common practice. */
export const jointCue =
  /^(?:(?:both|all)(?: of)?(?: the)?|the|all(?: the)? (?=\w+ ))(?: (?:two|three|four|five|six|seven|eight|\d))? (?!one\b)(\S.*)$/i;

/** Cues of many mouths: people without a name, counted with the extras. Common practice; a person with a line of their own is cast. */
export const crowdCues: ReadonlySet<string> = new Set(
  `audience chorus choir class congregation crowd fans guests mob onlookers others passengers passers-by people spectators team
  various voices`.split(/\s+/),
);

/** Cues of things that speak: a recording, or a voice that comes out of a device. Common practice. */
export const deviceCues: ReadonlySet<string> = new Set(
  `announcement|announcer|answering machine|automated voice|computer|computer voice|dispatch|gps|intercom|loudspeaker|pa|pa system|radio
  |radio announcer|radio voice|recorded voice|recording|satnav|speaker|tannoy|television|tv|tv announcer|voicemail`
    .replace(/\s+\|/g, '|')
    .split('|'),
);

/** Nouns in the singular that mean several people: a bare `crowd` has no count yet, `crowd of twenty` has. From memory. */
export const collectiveNouns: ReadonlySet<string> = new Set(
  `audience band bunch choir class company congregation crew crowd family gang group handful jury line mob orchestra party patrol people
  police posse press procession public queue row squad staff team troop`.split(/\s+/),
);
