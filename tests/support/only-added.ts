/** True when a text is another one with pieces put in and nothing taken out or changed. */
export function isOnlyAddedTo(before: string, after: string): boolean {
  let at = 0;
  for (const unit of after) if (before.startsWith(unit, at)) at += unit.length;
  return at === before.length;
}
