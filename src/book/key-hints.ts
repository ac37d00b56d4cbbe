/** Names that people write for a name the book has, or for what belongs elsewhere. */
interface KeyHint {
  readonly section: string;
  readonly keys: readonly string[];
  /** The known name that is meant; null when it belongs elsewhere. */
  readonly known: string | null;
  /** What to type, where the known name alone would not say it. */
  readonly write: string | null;
}

const hints: readonly KeyHint[] = [
  {
    section: 'locations',
    keys: ['phone', 'tel', 'telephone', 'email', 'owner', 'person'],
    known: 'contact',
    write: 'Write "contact:": it holds who opens the door, and their number.',
  },
  {
    section: 'suppliers',
    keys: ['phone', 'tel', 'telephone', 'email', 'address', 'website'],
    known: 'contact',
    write: 'Write "contact:": it holds the number or the address.',
  },
  {
    section: 'people',
    keys: ['age', 'aliases'],
    known: null,
    write:
      'It belongs in the script, between the lines of --- at its top: "cast: { NORA: { age: 35 } }". Under age, write "minor: yes" here.',
  },
  { section: 'people', keys: ['name', 'actor', 'actress'], known: 'played by', write: null },
  { section: 'people', keys: ['hours'], known: 'hours a day', write: null },
  { section: 'helpers', keys: ['job', 'role', 'department'], known: 'does', write: null },
  { section: 'helpers', keys: ['budget', 'money'], known: 'cash', write: null },
  { section: 'days', keys: ['location', 'locations', 'place', 'where'], known: 'at', write: null },
  { section: 'days', keys: ['start', 'begin', 'from'], known: 'call', write: null },
  { section: 'days', keys: ['end', 'until', 'to'], known: 'wrap', write: null },
  { section: 'days', keys: ['lunch', 'break'], known: 'meal', write: null },
  {
    section: 'scenes',
    keys: ['date', 'day', 'location', 'at'],
    known: null,
    write: 'The day of a scene and its address stand under "days": "date:", "at:", "scenes:".',
  },
  { section: 'scenes', keys: ['start', 'time'], known: 'begin', write: null },
  { section: 'elements', keys: ['supplier', 'shop', 'where'], known: 'from', write: null },
  { section: 'elements', keys: ['count', 'quantity', 'amount', 'number', 'qty'], known: 'copies', write: null },
  { section: 'elements', keys: ['cost', 'costs'], known: 'price', write: null },
  { section: 'elements', keys: ['source', 'how'], known: 'get', write: null },
  { section: 'elements', keys: ['return', 'returned', 'due'], known: 'back', write: null },
  { section: 'elements', keys: ['fetch', 'pick up', 'pickup'], known: 'collect', write: null },
  { section: 'money', keys: ['total'], known: 'budget', write: null },
  { section: 'money', keys: ['vat'], known: 'tax', write: null },
];

/** The hint for a name that a section of the book does not know; null when nothing is known of it. */
export function hintForKey(section: string, key: string): Pick<KeyHint, 'known' | 'write'> | null {
  const wanted = key.trim().toLowerCase();
  const like = section === 'kit' ? 'elements' : section;
  return hints.find((one) => one.section === like && one.keys.includes(wanted)) ?? null;
}
