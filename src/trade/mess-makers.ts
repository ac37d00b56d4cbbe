/** What falls on people in a scene and may land on everything they wear, by the word that names it as make-up or effect. */
export interface MessMaker {
  readonly words: readonly string[];
  /** The kind of state change it brings: a row of the table of state changes. */
  readonly kind: 'wet' | 'bloody' | 'dirty';
  /** As a question names it. */
  readonly label: string;
  readonly source: string;
}

const source = 'common practice of costume departments: what runs, splashes or sprays lands on the clothes nearby';

export const messMakers: readonly MessMaker[] = [
  { words: ['blood', 'bloody', 'gore'], kind: 'bloody', label: 'blood', source },
  { words: ['rain', 'downpour', 'hose'], kind: 'wet', label: 'rain', source },
  { words: ['mud', 'soot', 'paint', 'slime'], kind: 'dirty', label: 'dirt', source },
];

/** The first maker of a mess that a name holds, or null. */
export function findMessMaker(name: string): MessMaker | null {
  const words = name.toLowerCase().split(/[^\p{L}]+/u);
  return messMakers.find((maker) => maker.words.some((word) => words.includes(word))) ?? null;
}
