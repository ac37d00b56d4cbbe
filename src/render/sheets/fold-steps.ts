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
  /** True when it costs no word: it is taken to keep the lines to write on, too. */
  readonly free?: true;
}

/**
 * Steps in the order in which they are taken. First what costs no word; then the lines to write on go; then what can be
 * looked up elsewhere (common practice). Who, what, in which state and what is dangerous never goes.
 */
export const foldSteps: readonly FoldStep[] = [
  { section: 'in-hand', fold: 1, says: null, free: true },
  { section: 'tasks', fold: 1, says: null, free: true },
  { section: 'people', fold: 1, says: null, free: true },
  { section: 'notes', fold: 1, says: null, free: true },
  { section: 'on-body', fold: 1, says: null, free: true },
  { section: 'tasks', fold: 2, says: 'doubtful tasks' },
  { section: 'danger', fold: 1, says: 'what to read about each danger' },
  { section: 'place', fold: 1, says: 'the place' },
  { section: 'sound', fold: 1, says: 'sound' },
  { section: 'tasks', fold: 3, says: 'tasks' },
  { section: 'questions', fold: 1, says: 'some questions' },
  { section: 'questions', fold: 2, says: 'questions' },
  { section: 'continuity', fold: 1, says: 'what must match' },
  { section: 'danger', fold: 2, says: 'parts of the precautions' },
  { section: 'in-hand', fold: 2, says: null },
  { section: 'people', fold: 2, says: 'what people wear' },
  { section: 'notes', fold: 2, says: 'notes' },
  { section: 'effects', fold: 1, says: 'effects' },
  { section: 'on-body', fold: 2, says: 'costume and make-up' },
  { section: 'danger', fold: 3, says: 'the precautions' },
];
