/** What happens to a thing when it comes into a state, and what it takes to get it out again. */
export interface StateChange {
  readonly kind: string;
  /** How the kind prints: `wet`, `torn`. */
  readonly label: string;
  /** Words that show the kind in a state as written. */
  readonly words: readonly string[];
  /** A change into it on camera: uses a copy each take, needs a pair, or is simply reset. */
  readonly onCamera: 'copy each take' | 'a pair' | 'reset';
  /** Hours to bring a clean thing into this state between scenes. */
  readonly reachHours: number;
  /** Hours to bring it back: a low and a high figure; `drying` asks the table of materials; null: no way back. */
  readonly undo: { readonly low: number; readonly high: number } | 'drying' | null;
  readonly source: string;
}

const practice = 'common practice of prop and costume departments on small films';

export const stateChanges: readonly StateChange[] = [
  {
    kind: 'wet',
    label: 'wet',
    words: ['wet', 'soaked', 'soaking', 'drenched', 'dripping', 'damp', 'sodden', 'waterlogged', 'rain-soaked'],
    onCamera: 'a pair',
    reachHours: 0.1,
    undo: 'drying',
    source: practice,
  },
  {
    kind: 'bloody',
    label: 'bloody',
    words: ['bloody', 'bloodied', 'blood', 'bloodstained', 'blood-stained'],
    onCamera: 'copy each take',
    reachHours: 0.5,
    undo: { low: 10, high: 14 },
    source: `${practice}: stage blood washed out the same evening, then dried`,
  },
  {
    kind: 'dirty',
    label: 'dirty',
    words: ['muddy', 'muddied', 'dirty', 'dusty', 'sweaty', 'stained', 'grimy', 'sooty', 'oily', 'filthy', 'mud'],
    onCamera: 'a pair',
    reachHours: 0.5,
    undo: { low: 10, high: 14 },
    source: `${practice}: washed and dried overnight`,
  },
  {
    kind: 'torn',
    label: 'torn',
    words: ['torn', 'ripped', 'shredded', 'frayed', 'ragged', 'tattered', 'slit'],
    onCamera: 'copy each take',
    reachHours: 0.25,
    undo: null,
    source: practice,
  },
  {
    kind: 'broken',
    label: 'broken',
    words: ['broken', 'smashed', 'shattered', 'cracked', 'snapped', 'crushed', 'bent', 'dented', 'splintered', 'burst'],
    onCamera: 'copy each take',
    reachHours: 0.25,
    undo: null,
    source: practice,
  },
  {
    kind: 'burnt',
    label: 'burnt',
    words: ['burnt', 'burned', 'charred', 'scorched', 'singed', 'ash', 'ashes'],
    onCamera: 'copy each take',
    reachHours: 0.5,
    undo: null,
    source: practice,
  },
  {
    kind: 'cut',
    label: 'cut',
    words: ['cut', 'carved', 'sliced', 'peeled', 'chopped'],
    onCamera: 'copy each take',
    reachHours: 0.1,
    undo: null,
    source: practice,
  },
  {
    kind: 'eaten',
    label: 'eaten',
    words: ['eaten', 'half-eaten', 'bitten', 'chewed', 'drunk', 'swallowed'],
    onCamera: 'copy each take',
    reachHours: 0.1,
    undo: null,
    source: practice,
  },
  {
    kind: 'written',
    label: 'written on',
    words: ['written', 'signed', 'scribbled', 'inked', 'drawn', 'stamped', 'addressed'],
    onCamera: 'copy each take',
    reachHours: 0.25,
    undo: null,
    source: practice,
  },
  {
    kind: 'crumpled',
    label: 'crumpled',
    words: ['crumpled', 'creased', 'screwed', 'balled'],
    onCamera: 'copy each take',
    reachHours: 0.05,
    undo: null,
    source: practice,
  },
  {
    kind: 'opened',
    label: 'seal broken',
    words: ['unsealed', 'unwrapped', 'slit-open'],
    onCamera: 'copy each take',
    reachHours: 0.05,
    undo: null,
    source: `${practice}: sealed copies for each take`,
  },
  {
    kind: 'dyed',
    label: 'aged or dyed',
    words: ['faded', 'aged', 'dyed', 'painted', 'yellowed', 'rusty', 'rusted'],
    onCamera: 'copy each take',
    reachHours: 24,
    undo: null,
    source: practice,
  },
  {
    kind: 'lit',
    label: 'lit or not',
    words: ['lit', 'unlit', 'on', 'off', 'burning', 'glowing', 'dark', 'out'],
    onCamera: 'reset',
    reachHours: 0.02,
    undo: { low: 0.02, high: 0.05 },
    source: practice,
  },
  {
    kind: 'placed',
    label: 'a matter of reset',
    words: [
      'open',
      'closed',
      'shut',
      'folded',
      'unfolded',
      'locked',
      'unlocked',
      'empty',
      'full',
      'half-full',
      'packed',
      'unpacked',
      'tied',
      'untied',
      'rolled',
      'hidden',
      'buttoned',
      'unbuttoned',
      'stopped',
      'running',
      'clean',
      'dry',
      'whole',
      'new',
      'intact',
      'fresh',
    ],
    onCamera: 'reset',
    reachHours: 0.05,
    undo: { low: 0.05, high: 0.1 },
    source: practice,
  },
];

/** Creased cloth is pressed, once its scene is shot: hours with the iron. Common practice of costume departments. */
export const pressingHours = { low: 0.25, high: 0.5 } as const;

const byWord = new Map(stateChanges.flatMap((row) => row.words.map((word) => [word, row] as const)));

/** The kinds of change that the words of a state name, in the order of the table; empty when the words are unknown. */
export function findStateChanges(state: string): readonly StateChange[] {
  const words = state.toLowerCase().split(/[^\p{L}-]+/u);
  const met = new Set(words.filter((_, index) => !isDenied(words, index)).map((word) => byWord.get(word)));
  return stateChanges.filter((row) => met.has(row));
}

function isDenied(words: readonly string[], index: number): boolean {
  const before = words[index - 1];
  return before === 'not' || before === 'no' || before === 'never' || before === 'un';
}
