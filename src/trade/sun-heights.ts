/** Heights of the Sun's centre above a level horizon, in degrees, that name the parts of a day. */
export const sunHeights = {
  /** Upper edge on the horizon, with refraction: HM Nautical Almanac Office, Information Sheet 7; US Naval Observatory. */
  rise: -0.833,
  /** Civil twilight: US Naval Observatory, Rise, Set and Twilight Definitions. */
  firstLight: -6,
  nautical: -12,
  astronomical: -18,
} as const;

/** Golden hour has no standard: this is one published use (Colin Sharp, photographer), and the book may set another. */
export const goldenHour = {
  from: -4,
  to: 6,
  source: 'colinsharpphotography.com; other authors say 0 to 6 or −6 to 6',
} as const;
