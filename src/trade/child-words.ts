const childWords: ReadonlySet<string> = new Set(
  'child children kid kids girl girls boy boys baby babies toddler toddlers infant infants schoolgirl schoolgirls schoolboy schoolboys schoolchild schoolchildren pupil pupils teenager teenagers newborn'.split(
    ' ',
  ),
);

/** True when a name without a part reads as a child: somebody must be there for it. */
export function namesChild(name: string): boolean {
  return name
    .toLowerCase()
    .split(/[^\p{L}]+/u)
    .some((word) => childWords.has(word));
}
