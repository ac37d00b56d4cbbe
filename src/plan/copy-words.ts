/** `LOG-1`, `LOG-1, LOG-2`, `LETTER-1 to LETTER-11`. */
export function copyWords(copies: readonly string[]): string {
  if (copies.length < 3) return copies.join(', ');
  const numbers = copies.map((name) => Number(/(\d+)$/.exec(name)?.[1]));
  const inRow = numbers.every((one, index) => index === 0 || one === (numbers[index - 1] as number) + 1);
  return inRow ? `${copies[0]} to ${copies.at(-1)}` : copies.join(', ');
}
