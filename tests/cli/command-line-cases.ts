/** One command line, what it reads, and what it must answer. Run in process and as a child process. */
export interface CommandLineCase {
  readonly name: string;
  readonly args: readonly string[];
  readonly files?: Readonly<Record<string, string | Uint8Array>>;
  readonly stdin?: string;
  readonly exit: number;
  readonly out?: readonly (string | RegExp)[];
  readonly error?: readonly (string | RegExp)[];
  /** Names of files that must stand there after the run; `[]` when nothing may have been written. */
  readonly writes?: readonly string[];
  /** Given files that the run changes, as they must read after it. */
  readonly rewrites?: Readonly<Record<string, string>>;
}

const doubt = '## INT. HALL - NIGHT\n\nA crowd of guests looks up.\n';
const short = '---\ntitle: Two Cups\n---\n\n1. INT. KITCHEN - DAY\n\nNora pours [tea].\n\nNORA\nSit down.\n';

export const commandLineCases: readonly CommandLineCase[] = [
  {
    name: 'compiles a script to one chosen output',
    args: ['compile', 'two-cups.md', '--only', 'json', '--out', 'here'],
    files: { 'two-cups.md': short },
    exit: 0,
    out: ['Two Cups', '1 scene', 'breakdown.json'],
    writes: ['here/breakdown.json'],
  },
  {
    name: 'writes everything beside the script by default',
    args: ['compile', 'two-cups.md'],
    files: { 'two-cups.md': short },
    exit: 0,
    writes: [
      'two-cups-breakdown/breakdown.json',
      'two-cups-breakdown/sheets.pdf',
      'two-cups-breakdown/costumes.pdf',
      'two-cups-breakdown/props.pdf',
      'two-cups-breakdown/indexes.pdf',
      'two-cups-breakdown/purchases.pdf',
      'two-cups-breakdown/purchases.csv',
      'two-cups-breakdown/scenes.csv',
      'two-cups-breakdown/questions.md',
      'two-cups-breakdown/script.pdf',
    ],
  },
  {
    name: 'reads standard input',
    args: ['check', '-'],
    stdin: short,
    exit: 0,
  },
  {
    name: 'gives messages as JSON',
    args: ['check', 'no-scene.md', '--json'],
    files: { 'no-scene.md': 'Once upon a time.\n' },
    exit: 1,
    out: [/"severity": "error"/, /"line": 1/, /"file": "no-scene.md"/],
  },
  {
    name: 'writes nothing when the script has an error',
    args: ['compile', 'twice.md', '--out', 'here'],
    files: { 'twice.md': '1. INT. KITCHEN - DAY\n\nTea.\n\n1. INT. HALL - DAY\n\nTea.\n' },
    exit: 1,
    error: ['twice.md:5', 'error', 'Nothing was written'],
    writes: [],
  },
  {
    name: 'refuses bytes that are no text',
    args: ['check', 'picture.md'],
    files: { 'picture.md': new Uint8Array([0xff, 0xfe, 0x00, 0x80]) },
    exit: 1,
    error: ['picture.md', 'error'],
  },
  {
    name: 'says which file is missing',
    args: ['compile', 'nowhere.md'],
    exit: 3,
    error: ['Cannot read nowhere.md', 'no such file'],
    writes: [],
  },
  {
    name: 'offers the nearest output',
    args: ['compile', 'two-cups.md', '--only', 'sheetz'],
    files: { 'two-cups.md': short },
    exit: 2,
    error: ['no output called "sheetz"', 'Did you mean sheets?'],
    writes: [],
  },
  {
    name: 'offers the nearest option',
    args: ['compile', 'two-cups.md', '--onyl', 'json'],
    files: { 'two-cups.md': short },
    exit: 2,
    error: ["unknown option '--onyl'", '--only'],
  },
  {
    name: 'offers the nearest command',
    args: ['compil', 'two-cups.md'],
    exit: 2,
    error: ["unknown command 'compil'", 'compile'],
  },
  { name: 'asks for the file', args: ['compile'], exit: 2, error: ["missing required argument 'file'"] },
  { name: 'prints help', args: ['--help'], exit: 0, out: ['compile', 'check', 'Examples:', 'Exit codes'] },
  {
    name: 'prints the help of a command',
    args: ['help', 'compile'],
    exit: 0,
    out: ['--only', 'sheets.pdf', 'Examples:'],
  },
  { name: 'prints the version', args: ['--version'], exit: 0, out: [/^\d+\.\d+\.\d+\n$/] },
  {
    name: 'counts warnings as errors when asked',
    args: ['compile', 'odd.md', '--strict', '--only', 'json'],
    files: { 'odd.md': 'INT. KITCHEN\n\nNora pours tea.\n' },
    exit: 1,
    error: ['Nothing was written'],
    writes: [],
  },
  {
    name: 'says where a thing comes from',
    args: ['explain', 'two-cups.md', 'tea'],
    files: { 'two-cups.md': short },
    exit: 0,
    out: ['tea, food, marked', 'scene 1: marked', 'line 7: "tea"'],
    writes: [],
  },
  {
    name: 'offers the nearest name',
    args: ['explain', 'two-cups.md', 'nroa'],
    files: { 'two-cups.md': short },
    exit: 2,
    error: ['Nothing in the script is called "nroa"', 'Did you mean NORA?', '[name-unknown]'],
    writes: [],
  },
  {
    name: 'writes the answers of a review into the script',
    args: ['review', 'doubt.md'],
    files: { 'doubt.md': doubt },
    stdin: '- 30\n',
    exit: 0,
    out: ['1 of 1', 'How many guests?', '1 of 1 settled'],
    rewrites: { 'doubt.md': `${doubt}\n> answer: count-guests; - 30\n` },
  },
  {
    name: 'checks the book beside the script',
    args: ['check', 'two-cups.md', '--strict'],
    files: { 'two-cups.md': short, 'two-cups.book.yaml': 'money:\n  budgt: 5\n' },
    exit: 1,
    error: ['two-cups.book.yaml:2:3', '[book-key-unknown]'],
    writes: [],
  },
  {
    name: 'asks nothing again that the book answers',
    args: ['review', 'doubt.md'],
    files: { 'doubt.md': doubt, 'doubt.book.yaml': 'answers:\n  count-guests-int-hall-night: twelve\n' },
    stdin: 'no\n',
    exit: 0,
    out: ['1 answered or refused in doubt.book.yaml', 'Nothing is open.'],
    writes: [],
  },
  {
    name: 'reviews nothing while the book cannot be read',
    args: ['review', 'doubt.md'],
    files: { 'doubt.md': doubt, 'doubt.book.yaml': 'answers: [\n' },
    stdin: 'no\n',
    exit: 1,
    error: ['doubt.book.yaml', '[book-not-readable]'],
    writes: [],
  },
  {
    name: 'reviews nothing that comes from standard input',
    args: ['review', '-'],
    stdin: short,
    exit: 2,
    error: ['[review-needs-file]'],
    writes: [],
  },
  {
    name: 'says that an output needs a book',
    args: ['compile', 'two-cups.md', '--only', 'callsheets'],
    files: { 'two-cups.md': short },
    exit: 2,
    error: ['[output-needs-book]'],
    writes: [],
  },
  {
    name: 'says that a date is none',
    args: ['compile', 'two-cups.md', '--today', '30.2.2027'],
    files: { 'two-cups.md': short },
    exit: 2,
    error: ['[date-not-read]', '30.2.2027'],
    writes: [],
  },
  {
    name: 'says that the outputs cannot be written',
    args: ['compile', 'two-cups.md', '--only', 'json', '--out', 'two-cups.md/here'],
    files: { 'two-cups.md': short },
    exit: 3,
    error: ['Cannot write into two-cups.md/here', 'a part of the path is a file', '[output-not-written]'],
    writes: [],
  },
  {
    name: 'says that a book cannot be written',
    args: ['book', 'two-cups.md', '--book', 'two-cups.md/book.yaml'],
    files: { 'two-cups.md': short },
    exit: 3,
    error: ['[file-not-written]'],
    writes: [],
  },
  {
    name: 'compares with a named earlier breakdown',
    args: ['compile', 'two-cups.md', '--only', 'json,changes', '--out', 'here', '--since', 'old.json'],
    files: {
      'two-cups.md': short,
      'old.json':
        '{"version":1,"title":"Two Cups","draft":"A","date":null,"scenes":[],"cast":[],"elements":[],"shootingDays":null}',
    },
    exit: 0,
    writes: ['here/breakdown.json', 'here/changes.md'],
  },
  {
    name: 'says that the file to compare with is not there',
    args: ['compile', 'two-cups.md', '--since', 'old.json'],
    files: { 'two-cups.md': short },
    exit: 3,
    error: ['Cannot read old.json', '[file-not-read]'],
    writes: [],
  },
  {
    name: 'says that the file to compare with is no breakdown',
    args: ['compile', 'two-cups.md', '--since', 'two-cups.md'],
    files: { 'two-cups.md': short },
    exit: 1,
    error: ['found two-cups.md, which cannot be compared: it is no JSON', '[since-not-read]'],
    writes: [],
  },
  {
    name: 'begins a book beside the script',
    args: ['book', 'two-cups.md'],
    files: { 'two-cups.md': short },
    exit: 0,
    out: ['two-cups.book.yaml'],
    error: ['[book-scenes-unnumbered]'],
    writes: ['two-cups.book.yaml'],
  },
];
