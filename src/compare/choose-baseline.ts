/** A text file as messages call it. */
export interface EarlierFile {
  readonly text: string;
  readonly file: string;
}

/** What an earlier run left, and what the user names instead. */
export interface EarlierFiles {
  /** `breakdown.json` of the output folder. */
  readonly written: EarlierFile | null;
  /** `previous.json` of the output folder: the breakdown of the draft before. */
  readonly previous: EarlierFile | null;
  /** What `--since` names. */
  readonly since: EarlierFile | null;
}

export interface Baseline {
  /** What to compare with; null when there is nothing. */
  readonly file: EarlierFile | null;
  /** True when the user named it. */
  readonly isNamed: boolean;
  /** What must be kept as `previous.json`, because this run writes over it; null when all stays as it is. */
  readonly keep: EarlierFile | null;
  /** A `breakdown.json` that is no JSON: it counts as none. */
  readonly broken: EarlierFile | null;
}

/**
 * Chooses the draft to compare with, by the label that each names. The breakdown of another draft becomes the previous
 * one; runs within one draft go on comparing with it. A draft without a label counts as one that was never handed out.
 */
export function chooseBaseline({ written, previous, since }: EarlierFiles, draft: string | null): Baseline {
  const read = written && readJson(written.text);
  const label = read && labelOf(read.value);
  const keep = label !== null && label !== draft ? written : null;
  const kept = keep ?? (previous && isOfDraft(previous, draft) ? null : previous);
  const file = since ?? (draft === null ? null : kept);
  return { file, isNamed: since !== null, keep, broken: written && !read ? written : null };
}

function isOfDraft({ text }: EarlierFile, draft: string | null): boolean {
  const read = readJson(text);
  return read !== null && labelOf(read.value) === draft;
}

function readJson(text: string): { readonly value: unknown } | null {
  try {
    return { value: JSON.parse(text) };
  } catch {
    return null;
  }
}

function labelOf(value: unknown): string | null {
  const draft = typeof value === 'object' && value !== null && 'draft' in value ? value.draft : null;
  return typeof draft === 'string' && draft.trim() !== '' ? draft : null;
}
