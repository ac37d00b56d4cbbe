/**
 * The kit that every sheet is made with. A renderer writes blocks and hands them to `renderDocument`
 * (`../pdf/render-document.js`):
 *
 *     return renderDocument(input, {
 *       file: 'props.pdf',
 *       name: 'Props',
 *       blocks: [
 *         { kind: 'heading', level: 1, text: 'Props', bookmark: 'Props' },
 *         { kind: 'paragraph', text: ['In hand, in ', bold('story order'), '.'] },
 *         { kind: 'table', columns: [{ head: 'Scene', fit: true }, { head: 'What', share: 2 }, { head: 'Ready', fit: true }],
 *           rows: [{ cells: ['4', 'storm lantern', tick] }] },
 *       ],
 *     });
 *
 * Sizes and distances are points (`mm(8)` turns millimetres into them). Paper, margins, the running foot, page turns,
 * repeated table heads, characters outside the faces and the file itself are the kit's business.
 *
 * - Inline text is a string, or a list of strings, `bold()`, `italic()`, `tick`, `danger` and `blank(width)`.
 *   A line end in it breaks the line.
 * - Blocks: heading, paragraph, entries, table, section (label at the left, content at its right), frame, lines (to
 *   write on), rule, space, keep, changed (bar in the margin), page break. See blocks.ts.
 * - How a thing is known: `knownWords()`; how it changes: `stateWords()`; how a scene is called: `labelScenes()`.
 */
export { labelScenes, type SceneLabels } from '../../breakdown/scene-label.js';
export * from './blocks.js';
export * from './document.js';
export * from './inline.js';
export * from './known-words.js';
export { areaOf, mm, sizes, writingLine } from './measures.js';
export type { PageTree } from './page-tree.js';
export { createTypesetter, type Typesetter } from './typesetter.js';
