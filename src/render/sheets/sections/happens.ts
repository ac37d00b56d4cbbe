import { blank } from '../../layout/inline.js';
import type { Section } from '../sheet-context.js';

/** What happens, in one sentence; a blank to write it when the script gives none. */
export const writeHappens: Section = (scene) => [
  scene.synopsis === ''
    ? { kind: 'paragraph', after: 8, text: ['What happens: ', blank(300)] }
    : { kind: 'paragraph', size: 12.5, after: 8, text: scene.synopsis },
];
