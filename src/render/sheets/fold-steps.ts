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
  /** What the sheet says was folded; null when nothing is lost but white. */
  readonly says: string | null;
}

/**
 * Steps in the order in which they are taken, after the lines to write on are gone (common practice: what a department
 * can look up elsewhere goes first; who, what, in which state and what is dangerous never goes).
 */
export const foldSteps: readonly FoldStep[] = [
  { section: 'tasks', fold: 1, says: 'doubtful tasks' },
  { section: 'place', fold: 1, says: 'dressing' },
  { section: 'sound', fold: 1, says: 'sound' },
  { section: 'tasks', fold: 2, says: 'tasks' },
  { section: 'questions', fold: 1, says: 'questions' },
  { section: 'notes', fold: 1, says: null },
  { section: 'on-body', fold: 1, says: null },
  { section: 'questions', fold: 2, says: 'questions' },
  { section: 'in-hand', fold: 1, says: null },
  { section: 'continuity', fold: 1, says: 'what must match' },
  { section: 'danger', fold: 1, says: 'what to read about each danger' },
  { section: 'people', fold: 1, says: 'costumes' },
  { section: 'danger', fold: 2, says: 'precautions beyond their first sentence' },
];
