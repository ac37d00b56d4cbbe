/** Rounds to a tenth, so that no output shows the dust of binary fractions. */
export function roundTenth(value: number): number {
  return Math.round(value * 10) / 10;
}

/** Rounds to a hundredth; null stays null. */
export function roundHundredth(value: number | null): number | null {
  return value === null ? null : Math.round(value * 100) / 100;
}
