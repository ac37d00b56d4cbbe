import type { Production, RenderInput } from '../types.js';
import type { SceneIndex } from '../words/scene-list-words.js';

/** What a call sheet is written from. */
export interface CallSheetGround {
  readonly input: RenderInput;
  readonly production: Production;
  readonly index: SceneIndex;
}

/** How much is left off so that a day fits one side: nothing; what scenes are about; what is said of places but the hospital. */
export const foldings = ['whole', 'without synopses', 'places in short'] as const;
export type Folding = (typeof foldings)[number];
