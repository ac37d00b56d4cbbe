/** Garments of which one is worn at a time: another of the kind means a change of costume. Common practice. */
export const oneAtATime: ReadonlySet<string> = new Set(
  `blouse coat costume dress gown jacket jersey jumper kimono nightdress nightgown overall outfit pyjama pyjamas pajamas robe sari shirt
  skirt suit sweater t-shirt trousers tuxedo uniform`.split(/\s+/),
);
