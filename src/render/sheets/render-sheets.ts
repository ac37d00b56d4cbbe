import type { Diagnostic } from '../../base/diagnostic.js';
import type { BreakdownScene } from '../../breakdown/types.js';
import { sayRender } from '../../messages/render.js';
import { setBlocks } from '../layout/block-strips.js';
import type { Block } from '../layout/blocks.js';
import { layOutParts, type SetPart } from '../layout/document.js';
import { type Area, areaOf, type Orientation } from '../layout/measures.js';
import type { Typesetter } from '../layout/typesetter.js';
import { footOf, missingOf, openType, paint } from '../pdf/render-document.js';
import type { Rendered, RenderInput } from '../types.js';
import { writeCautions } from './cautions.js';
import { writeCover } from './cover.js';
import { writeLeftOver } from './left-over.js';
import { writeSceneList } from './scene-list.js';
import { createSheetSetter, type SceneSheet } from './scene-sheet.js';
import { createContext, labelOf, type SheetContext } from './sheet-context.js';

/**
 * Renders `sheets.pdf`: the cover, the list of scenes, one page for each scene, what full
 * sheets had to leave over, and the pages of cautions. A scene too
 * full for one page even when folded gets a message.
 */
export async function renderSheets(input: RenderInput): Promise<Rendered> {
  const { breakdown, production, comparison } = input;
  const context = createContext(breakdown, production, comparison);
  const type = openType(input);
  const area = areaOf(breakdown.paper);
  const part = (blocks: readonly Block[], orientation: Orientation = 'portrait'): SetPart[] =>
    blocks.length === 0 ? [] : [setPart(blocks, areaOf(breakdown.paper, orientation), type)];
  const setSheet = createSheetSetter(context, area, type);
  const sheets = breakdown.scenes.map((scene) => ({ scene, sheet: setSheet(scene) }));
  const leftOver = sheets.map(({ scene, sheet }) => ({ scene, names: sheet.leftOver }));
  const parts = [
    ...part(writeCover(context)),
    ...part(writeSceneList(context), 'landscape'),
    ...sheets.map(({ sheet }) => ({ area, strips: sheet.strips })),
    ...part(writeLeftOver(leftOver, context)),
    ...part(writeCautions(context)),
  ];
  const name = 'Scene sheets';
  const pages = layOutParts(parts, footOf(breakdown, name), type);
  const content = await paint(input, name, pages);
  const messages = [...missingOf(input, type), ...sheets.flatMap(({ scene, sheet }) => sayCut(scene, sheet, context))];
  return { files: [{ name: 'sheets.pdf', content }], messages };
}

function setPart(blocks: readonly Block[], area: Area, type: Typesetter): SetPart {
  return { area, strips: setBlocks(blocks, area, type) };
}

function sayCut(scene: BreakdownScene, sheet: SceneSheet, context: SheetContext): Diagnostic[] {
  if (sheet.cut === 0) return [];
  return [sayRender('sheet-overfull', { scene: labelOf(scene, context), lines: sheet.cut }, scene.at)];
}
