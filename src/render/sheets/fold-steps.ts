/** The sections of a scene's sheet in the order of importance; the order in which they stand. */
export const sectionOrder = [
  'identity',
  'happens',
  'danger',
  'people',
  'in-hand',
  'on-body',
  'effects',
  'continuity',
  'sound',
  'place',
  'questions',
  'tasks',
  'notes',
] as const;

export type SectionName = (typeof sectionOrder)[number];

/** One step that makes room on a sheet that is too full. */
export interface FoldStep {
  readonly section: SectionName;
  readonly fold: number;
  /** What the sheet says was folded; null when the section only runs on in one paragraph. */
  readonly says: string | null;
  /** True when it is taken to keep the lines to write on, too. */
  readonly free?: true;
}

/**
 * Steps in the order in which they are taken. First what costs no word; then the tasks, which nothing in the script
 * says, and what stands elsewhere anyhow: the dressing, the sound. Those keep the lines to write on; then these lines go,
 * then the rest of what can be looked up (common practice). Who, what, in which state and what is dangerous never goes; people and things keep their
 * rows and boxes until the precautions are names.
 */
export const foldSteps: readonly FoldStep[] = [
  { section: 'in-hand', fold: 1, says: null, free: true },
  { section: 'tasks', fold: 1, says: null, free: true },
  { section: 'people', fold: 1, says: null, free: true },
  { section: 'notes', fold: 1, says: null, free: true },
  { section: 'on-body', fold: 1, says: null, free: true },
  { section: 'effects', fold: 1, says: null, free: true },
  { section: 'danger', fold: 1, says: null, free: true },
  { section: 'tasks', fold: 2, says: null, free: true },
  { section: 'tasks', fold: 3, says: 'doubtful tasks', free: true },
  { section: 'tasks', fold: 4, says: 'tasks', free: true },
  { section: 'place', fold: 1, says: 'the place', free: true },
  { section: 'sound', fold: 1, says: 'sound', free: true },
  { section: 'questions', fold: 1, says: 'some questions', free: true },
  { section: 'questions', fold: 2, says: 'questions' },
  { section: 'continuity', fold: 1, says: 'what must match' },
  { section: 'notes', fold: 2, says: 'notes' },
  { section: 'danger', fold: 2, says: 'the precautions' },
  { section: 'effects', fold: 2, says: 'effects' },
  { section: 'on-body', fold: 2, says: 'costume and make-up' },
  { section: 'in-hand', fold: 2, says: null },
  { section: 'people', fold: 2, says: 'what people wear' },
];
