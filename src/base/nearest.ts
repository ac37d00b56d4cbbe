/** The known word nearest to a mistyped one, or null when none is near: more than two letters and a third of them differ. */
export function findNearest(word: string, known: readonly string[]): string | null {
  const typed = word.toLowerCase();
  let best: string | null = null;
  let bestDistance = Math.max(2, Math.floor(typed.length / 3)) + 1;
  for (const candidate of known) {
    const distance = editDistance(typed, candidate.toLowerCase(), bestDistance);
    if (distance < bestDistance) {
      best = candidate;
      bestDistance = distance;
    }
  }
  return best;
}

/** How many letters must be added, dropped or changed to make one word the other (Levenshtein 1965); no more than `limit` are counted. */
export function editDistance(a: string, b: string, limit = Number.POSITIVE_INFINITY): number {
  if (Math.abs(a.length - b.length) >= limit) return limit;
  let row = Array.from({ length: b.length + 1 }, (_, index) => index);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = (row[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min(change, (row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1));
    }
    row = next;
    if (Math.min(...row) >= limit) return limit;
  }
  return Math.min(row[b.length] ?? 0, limit);
}
