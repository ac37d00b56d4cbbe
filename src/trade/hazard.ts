/** One row of the hazard table: what the danger box of a sheet prints when the row is raised. */
export interface Hazard {
  /** `H1` to `H25`. */
  readonly id: string;
  readonly title: string;
  /** The general precaution, in our words. It never promises anything. */
  readonly precaution: string;
  /** The published bulletins and guidance to read. */
  readonly reading: string;
  /** Who must be qualified or licensed to decide. */
  readonly qualified: string;
  /** Where the row's facts are published (names as in the trade's literature), "common practice" or "from memory". */
  readonly source: string;
}

/** Names bulletins by their numbers. */
export const bulletins = (numbers: string): string => `Industry-Wide Labor-Management Safety Committee, ${numbers}`;
/** Names information sheets by their numbers. */
export const sheets = (numbers: string): string => `UK HSE entertainment information, ${numbers}`;
/** Goes with every reading: the text may have changed. */
export const check = 'Check the current text.';
