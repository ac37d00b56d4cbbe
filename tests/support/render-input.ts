import type { Breakdown } from '../../src/breakdown/types.js';
import { readFontFile } from '../../src/host/font-files.js';
import type { PurchaseLine } from '../../src/plan/types.js';
import type { RenderInput } from '../../src/render/types.js';

/** All that a sheet needs, around a breakdown that stands on no script. */
export function makeRenderInput(breakdown: Breakdown, purchases: readonly PurchaseLine[] = []): RenderInput {
  return {
    script: { file: 'script.md', source: '' } as RenderInput['script'],
    pages: { pages: [], scenes: [], eighths: breakdown.eighths, paper: breakdown.paper },
    breakdown,
    purchases,
    production: null,
    comparison: { kind: 'not compared', why: 'nothing earlier' },
    previous: null,
    messages: [],
    fonts: readFontFile,
    creationDate: new Date(Date.UTC(2026, 10, 2)),
  };
}
