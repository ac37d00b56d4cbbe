/** Figures from which the minutes of a shooting day are reckoned. */
export const shootingTimes = {
  /** Light and rig for the first setup in a room, and for each one after it; out of doors. */
  firstSetup: 40,
  nextSetup: 18,
  exteriorSetup: 12,
  /** Screen seconds are multiplied by this, and seconds of slate and talk added, for each take. */
  takeFactor: 1.3,
  takeTalkSeconds: 60,
  companyMove: 75,
  redress: 60,
  wetChange: 30,
  meal: 45,
  source: 'common practice of assistant directors on crews of 2 to 8; the middle of each usual range',
} as const;

/** How long a scene may take against the minutes reckoned for it, where somebody's hours are at stake. */
export const sceneOverrun = {
  factor: 1.5,
  source: 'common practice: reckoned minutes are rough, and half as much again is allowed for',
} as const;

/** Costume changes between two scenes, in minutes. */
export const changeMinutes = {
  simple: 10,
  full: 20,
  bloodOrWig: 40,
  source: 'common practice of costume departments',
} as const;

/** From where a day is called too heavy. */
export const dayLimits = {
  hours: 11,
  setups: 18,
  places: 2,
  restHours: 11,
  source: 'common practice on small films; law and agreements differ by country and must be looked up',
} as const;

/** A working day when the book gives no times, as minutes since midnight. */
export const usualDay = { call: 8 * 60, wrap: 18 * 60, source: 'common practice: a ten-hour day' } as const;

/** Setups of a scene when nobody counted them: three to six a page, at least three a scene. */
export function usualSetups(eighths: number): number {
  const pages = Math.max(1, Math.ceil(eighths / 8));
  return Math.min(Math.max(eighths, 3), 6 * pages);
}
