/** Prints seconds as minutes and seconds (`2:23`), hours only when there are any (`1:02:03`). Rounds to the second, halves up. */
export function formatDuration(seconds: number): string {
  const whole = Math.floor(seconds + 0.5);
  const hours = Math.floor(whole / 3600);
  const minutes = Math.floor((whole % 3600) / 60);
  const tail = String(whole % 60).padStart(2, '0');
  return hours > 0 ? `${hours}:${String(minutes).padStart(2, '0')}:${tail}` : `${minutes}:${tail}`;
}

/** Reads `0:40`, `1:02:03`, `40 s`, `40 sec`, `2 min`, `1 min 20 s` as seconds; null when it is none of these. */
export function parseDuration(text: string): number | null {
  const clock = /^\s*(?:(\d+):)?(\d{1,2}):(\d{2})\s*$/.exec(text);
  if (clock) {
    const [, hours = '0', minutes = '0', rest = '0'] = clock;
    if (Number(rest) > 59) return null;
    return Number(hours) * 3600 + Number(minutes) * 60 + Number(rest);
  }
  const words = /^\s*(?:(\d+)\s*(?:min|mins|minutes?|m)\.?)?\s*(?:(\d+)\s*(?:s|secs?|seconds?)\.?)?\s*$/i.exec(text);
  if (!words || (words[1] === undefined && words[2] === undefined)) return null;
  return Number(words[1] ?? 0) * 60 + Number(words[2] ?? 0);
}
