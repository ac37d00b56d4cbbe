/** Work on a thing before the shoot: hands and waiting. None of it makes the thing: a garment is fitted before all of it, or by it. */
export interface PrepTime {
  readonly task: string;
  /** Words in a task of the book that mean this row. */
  readonly words: readonly string[];
  readonly hours: number;
  /** Days of drying, curing or settling after the work. */
  readonly waitDays: number;
  readonly source: string;
}

const practice = 'common practice of prop and costume departments on small films';

export const prepTimes: readonly PrepTime[] = [
  {
    task: 'age paper with tea or coffee',
    words: ['tea', 'coffee', 'age', 'ageing'],
    hours: 1,
    waitDays: 1,
    source: practice,
  },
  { task: 'dye fabric', words: ['dye', 'dyeing'], hours: 2, waitDays: 2, source: practice },
  { task: 'paint or varnish', words: ['paint', 'painting', 'varnish'], hours: 1, waitDays: 2, source: practice },
  { task: 'glue or resin', words: ['glue', 'gluing', 'resin'], hours: 1, waitDays: 2, source: practice },
  {
    task: 'sand and scuff',
    words: ['sand', 'sanding', 'scuff', 'scuffing'],
    hours: 0.5,
    waitDays: 0,
    source: practice,
  },
  { task: 'blunt a blade and test it', words: ['blunt', 'blunting'], hours: 1, waitDays: 0, source: practice },
  { task: 'stage blood on paper', words: ['blood'], hours: 0.5, waitDays: 1, source: practice },
  { task: 'wax seals', words: ['seal', 'seals', 'wax'], hours: 1, waitDays: 0, source: practice },
  { task: 'print labels', words: ['label', 'labels', 'print', 'printing'], hours: 0.5, waitDays: 0, source: practice },
  { task: 'fit', words: ['fit', 'fitting'], hours: 0.75, waitDays: 0, source: practice },
  { task: 'break down', words: ['distress', 'breakdown'], hours: 2, waitDays: 0, source: practice },
  { task: 'dry', words: ['dry', 'drying'], hours: 0, waitDays: 2, source: practice },
];

/** The planning figures of a task named in the book; null when none of its words is known. */
export function findPrepTime(task: string): PrepTime | null {
  const plain = task.toLowerCase().replace(/\bbreak(ing)? down\b/, 'breakdown');
  const words = new Set(plain.split(/[^\p{L}]+/u));
  return prepTimes.find((row) => row.words.some((word) => words.has(word))) ?? null;
}
