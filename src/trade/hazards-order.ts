/**
 * The order in which a danger box lists its rows: first what can kill or maim in a moment, then what hurts, then what
 * wants leave, notice or comfort. Common practice; our own judgement, and no measure of any one scene.
 */
const gravestFirst = 'H1 H4 H15 H3 H11 H7 H5 H9 H10 H12 H2 H25 H16 H18 H19 H8 H24 H17 H20 H22 H21 H6 H13 H14 H23'.split(
  ' ',
);

/** The place of a hazard's id (`H5`) in a danger box, the gravest at 0; the writer's own `note` stands before all. */
export function severityOf(id: string): number {
  if (id === 'note') return -1;
  const place = gravestFirst.indexOf(id);
  return place < 0 ? gravestFirst.length : place;
}
