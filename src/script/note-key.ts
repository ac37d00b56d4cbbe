/** A note split at its first colon. */
export interface KeyedNote {
  readonly key: string;
  /** True when quotes stood round the key: it is a name whatever it says. */
  readonly quoted: boolean;
  readonly value: string;
  /** Where the value begins in the note's text. */
  readonly valueAt: number;
}

const quotedKey = /^["“”]([^"“”]+)["“”]\s*[:：]\s*/;
const plainKey = /^([^:：]{1,80})[:：](?!\/\/)\s*/;

/** Splits `key: value`; null when the line has no key. A colon within a time (10:30) or an address parts nothing. */
export function splitKey(text: string): KeyedNote | null {
  const quoted = quotedKey.exec(text);
  const found = quoted ?? plainKey.exec(text);
  if (!found) return null;
  const key = (found[1] as string).trim();
  const valueAt = found[0].length;
  const inTime = /\d$/.test(key) && /^:?\d/.test(text.slice((found[1] as string).length + 1));
  if (key === '' || (!quoted && (inTime || !/\p{L}/u.test(key)))) return null;
  return { key, quoted: quoted !== null, value: text.slice(valueAt).trim(), valueAt };
}
