/** A transition that does not end in `TO:`. */
export interface TransitionRow {
  /** In capitals, without a colon or stop at its end. */
  readonly written: string;
  readonly source: string;
}

const practice = 'common practice';

export const transitions: readonly TransitionRow[] = [
  { written: 'FADE IN', source: 'Academy Nicholl format sample, 1998' },
  { written: 'FADE OUT', source: 'Academy Nicholl format sample, 1998' },
  { written: 'FADE UP', source: practice },
  { written: 'FADE TO BLACK', source: practice },
  { written: 'DISSOLVE TO BLACK', source: practice },
  { written: 'FADE FROM BLACK', source: practice },
  { written: 'FADE TO WHITE', source: practice },
  { written: 'FADE IN ON', source: practice },
  { written: 'CUT TO BLACK', source: practice },
  { written: 'SMASH TO BLACK', source: practice },
  { written: 'SMASH CUT TO BLACK', source: practice },
  { written: 'SMASH CUT', source: practice },
  { written: 'MATCH CUT', source: practice },
  { written: 'JUMP CUT', source: practice },
  { written: 'HARD CUT', source: practice },
  { written: 'DISSOLVE', source: practice },
  { written: 'CROSSFADE', source: practice },
  { written: 'IRIS IN', source: practice },
  { written: 'IRIS OUT', source: practice },
  { written: 'WIPE', source: practice },
];

/** Lines in capitals with text right under them that are no cue: nobody speaks there. */
export const neverCues: readonly TransitionRow[] = [
  { written: 'MONTAGE', source: 'Academy Nicholl format sample, 1998' },
  { written: 'END MONTAGE', source: practice },
  { written: 'END OF MONTAGE', source: practice },
  { written: 'SERIES OF SHOTS', source: 'Academy Nicholl format sample, 1998' },
  { written: 'END OF SERIES OF SHOTS', source: practice },
  { written: 'INTERCUT', source: 'ScreenReads, intercut' },
  { written: 'END INTERCUT', source: 'ScreenReads, intercut' },
  { written: 'BACK TO SCENE', source: 'ScreenReads, intercut' },
  { written: 'INSERT', source: practice },
  { written: 'SUPER', source: practice },
  { written: 'SUPERIMPOSE', source: practice },
  { written: 'TITLE', source: practice },
  { written: 'TITLE CARD', source: practice },
  { written: 'TITLES', source: practice },
  { written: 'CREDITS', source: practice },
  { written: 'CAPTION', source: practice },
  { written: 'ON SCREEN', source: practice },
  { written: 'FLASHBACK', source: practice },
  { written: 'END FLASHBACK', source: practice },
  { written: 'END OF FLASHBACK', source: practice },
  { written: 'DREAM SEQUENCE', source: practice },
  { written: 'POV', source: practice },
  { written: 'ANGLE ON', source: practice },
  { written: 'CLOSE ON', source: practice },
  { written: 'THE END', source: practice },
  { written: 'END', source: practice },
  { written: 'NOTE', source: practice },
  { written: 'SILENCE', source: practice },
  { written: 'BLACK', source: practice },
  { written: 'BLACK SCREEN', source: practice },
  { written: 'OVER BLACK', source: practice },
];
