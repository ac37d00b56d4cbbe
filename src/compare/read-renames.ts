import { z } from 'zod';
import type { Renames } from './types.js';

const names = z.record(z.string(), z.string()).default({});
const slippedName = z.object({ date: z.string(), name: z.string(), meant: z.string() });
const shape = z.object({
  renamed: z.object({ scenes: names, places: names, slipped: z.array(slippedName).default([]) }),
});

/** No names. */
export const noRenames: Renames = { scenes: new Map(), places: new Map(), slipped: [] };

/** The ids of the scenes of a `breakdown.json`, in their order, without a look at the rest; null when it is none. */
export function listSceneIds(json: string): readonly string[] | null {
  try {
    const read = z.object({ scenes: z.array(z.object({ id: z.string() })) }).safeParse(JSON.parse(json));
    return read.success ? read.data.scenes.map(({ id }) => id) : null;
  } catch (error) {
    if (error instanceof SyntaxError) return null;
    throw error;
  }
}

/** The new names that an earlier run found and noted in its `breakdown.json`; none when it noted none. Never throws. */
export function readRenames(json: string): Renames {
  try {
    const read = shape.safeParse(JSON.parse(json));
    if (!read.success) return noRenames;
    const { scenes, places, slipped } = read.data.renamed;
    return { scenes: new Map(Object.entries(scenes)), places: new Map(Object.entries(places)), slipped };
  } catch (error) {
    // A file that is no JSON has a message from the comparison of drafts.
    if (error instanceof SyntaxError) return noRenames;
    throw error;
  }
}
