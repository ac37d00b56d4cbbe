/** How many copies pass from one use to a later one: `flow[i][j]`. */
export type CopyFlow = readonly (readonly number[])[];

/**
 * The fewest copies that serve uses in shooting order. Use `i` asks for `asked[i]` copies at once; `canPass(i, j)` says
 * whether a copy of use `i` can serve the later use `j`. This is the smallest cover of the uses by chains: all copies asked
 * for, less the most that can be handed on (a largest flow between earlier and later uses, found by augmenting paths).
 */
export function countCopies(
  asked: readonly number[],
  canPass: (earlier: number, later: number) => boolean,
): { copies: number; flow: CopyFlow } {
  const size = asked.length;
  const passes = asked.map((_, i) => asked.map((__, j) => i < j && canPass(i, j)));
  const flow = asked.map(() => new Array<number>(size).fill(0));
  const left = [...asked];
  const open = [...asked];
  for (let j = 0; j < size; j++) {
    // The nearest earlier use first: a thing stays in hand from one scene to the next.
    for (let i = j - 1; i >= 0 && (open[j] as number) > 0; i--) move(i, j);
  }
  for (let j = 0; j < size; j++) while ((open[j] as number) > 0 && augment(j)) open[j] = (open[j] as number) - 1;
  const passed = flow.reduce((sum, row) => sum + row.reduce((a, b) => a + b, 0), 0);
  return { copies: asked.reduce((a, b) => a + b, 0) - passed, flow };

  function move(i: number, j: number): void {
    if (!passes[i]?.[j]) return;
    const amount = Math.min(left[i] as number, open[j] as number);
    (flow[i] as number[])[j] = (flow[i]?.[j] as number) + amount;
    left[i] = (left[i] as number) - amount;
    open[j] = (open[j] as number) - amount;
  }

  /** One more copy for use `j`: from an earlier use with one left, or from one that can give up another for it. */
  function augment(target: number): boolean {
    const cameFrom = new Map<number, number>();
    const reached = new Map<number, number>();
    const queue = [target];
    reached.set(target, -1);
    while (queue.length > 0) {
      const j = queue.shift() as number;
      for (let i = j - 1; i >= 0; i--) {
        if (!passes[i]?.[j] || cameFrom.has(i)) continue;
        cameFrom.set(i, j);
        if ((left[i] as number) > 0) {
          applyPath(i, cameFrom, reached);
          return true;
        }
        for (let k = i + 1; k < size; k++) {
          if ((flow[i]?.[k] as number) > 0 && !reached.has(k)) {
            reached.set(k, i);
            queue.push(k);
          }
        }
      }
    }
    return false;
  }

  function applyPath(start: number, cameFrom: Map<number, number>, reached: Map<number, number>): void {
    left[start] = (left[start] as number) - 1;
    for (let i = start; ; ) {
      const j = cameFrom.get(i) as number;
      (flow[i] as number[])[j] = (flow[i]?.[j] as number) + 1;
      const other = reached.get(j) as number;
      if (other < 0) return;
      (flow[other] as number[])[j] = (flow[other]?.[j] as number) - 1;
      i = other;
    }
  }
}

/** Names the copies of each use, so that a copy keeps its name from use to use. */
export function nameCopies(asked: readonly number[], flow: CopyFlow, name: (index: number) => string): string[][] {
  const here: string[][] = [];
  const given: number[] = asked.map(() => 0);
  let next = 0;
  for (const [j, count] of asked.entries()) {
    const copies: string[] = [];
    for (let i = 0; i < j; i++) {
      const amount = flow[i]?.[j] ?? 0;
      const from = given[i] as number;
      copies.push(...(here[i] as string[]).slice(from, from + amount));
      given[i] = from + amount;
    }
    while (copies.length < count) copies.push(name(next++));
    here.push(copies);
  }
  return here;
}
