import type { BreakdownScene } from '../../breakdown/types.js';
import { setBlocks } from '../layout/block-strips.js';
import { bold } from '../layout/inline.js';
import { type Area, writingLine } from '../layout/measures.js';
import { heightOf, type Strip } from '../layout/strips.js';
import type { Typesetter } from '../layout/typesetter.js';
import { type Folded, foldToFit, saidOf } from './fold-sheet.js';
import { type SectionName, sectionOrder } from './fold-steps.js';
import { sceneTitle } from './sections/identity.js';
import { sections } from './sections.js';
import type { SheetContext } from './sheet-context.js';
import { headingSentence } from './sheet-words.js';

/** A scene's sheet, set so that it fills at most one page. */
export interface SceneSheet {
  readonly strips: readonly Strip[];
  /** Sections that are not whole on the sheet: the pages at the end have them. */
  readonly leftOver: readonly SectionName[];
  /** Printed lines that did not fit even folded. */
  readonly cut: number;
}

/** Makes the setter of sheets for one area. A sheet too full is folded step by step and says so. */
export function createSheetSetter(
  context: SheetContext,
  area: Area,
  type: Typesetter,
): (scene: BreakdownScene) => SceneSheet {
  const notes = new Map<string, readonly Strip[]>();
  const note = (said: readonly string[]): readonly Strip[] => {
    const words = said.join(', ');
    const known = notes.get(words) ?? setFoldNote(words, area, type);
    notes.set(words, known);
    return known;
  };
  const lines = heightOf(setWritingLines(Number.POSITIVE_INFINITY, area, type, fewLines));
  const room = { height: area.height, lines, note: (said: readonly string[]) => heightOf(note(said)) };
  return (scene) => {
    const set = (name: SectionName, fold: number) => setBlocks(sections[name](scene, context, fold), area, type);
    const folded = foldToFit(set, room);
    const bookmark = `${sceneTitle(scene, context)}: ${headingSentence(scene)}`;
    const body = folded.strips.map((one, i) => (i === 0 ? { ...one, bookmark } : one));
    return finish(body, folded, note(saidOf(folded.folds)), area, type);
  };
}

function finish(
  body: readonly Strip[],
  folded: Folded,
  foot: readonly Strip[],
  area: Area,
  type: Typesetter,
): SceneSheet {
  if (!folded.fits) return cutToFit(body, foot, area, type);
  const writing = setWritingLines(area.height - heightOf(body) - heightOf(foot), area, type, mostLines);
  return { strips: [...body, ...foot, ...writing], leftOver: notWhole(folded), cut: 0 };
}

function notWhole({ folds }: Folded): SectionName[] {
  return sectionOrder.filter((name) => saidOf(new Map([[name, folds.get(name) ?? 0]])).length > 0);
}

function setFoldNote(said: string, area: Area, type: Typesetter): Strip[] {
  if (said === '') return [];
  const text = [bold('Folded to fit one page: '), `${said}. All of it is at the end of these sheets.`];
  return setBlocks([{ kind: 'rule' }, { kind: 'paragraph', size: 10, text }], area, type);
}

const fewestLines = 1;
const fewLines = 5;
const mostLines = 10;

/** Lines to write on in what room is left, at most so many, with a few words above them. */
function setWritingLines(room: number, area: Area, type: Typesetter, most: number): Strip[] {
  const words = 'Photo numbers, takes, notes';
  const head = setBlocks([{ kind: 'rule' }, { kind: 'paragraph', size: 10, after: 0, text: words }], area, type);
  const count = Math.min(most, Math.floor((room - heightOf(head)) / writingLine));
  return count < fewestLines ? [] : [...head, ...setBlocks([{ kind: 'lines', count }], area, type)];
}

/** Cuts what no folding made fit, from the bottom, and says so: a scene so full wants to be split. */
function cutToFit(body: readonly Strip[], foot: readonly Strip[], area: Area, type: Typesetter): SceneSheet {
  const text = bold('This scene is too full for one page: lines are left off here. Split it into two scenes.');
  const notice = [...setBlocks([{ kind: 'rule' }, { kind: 'paragraph', size: 10, text }], area, type), ...foot];
  const room = area.height - heightOf(notice);
  let height = 0;
  const fits = body.findIndex((one) => {
    height += one.height;
    return height > room;
  });
  const kept = fits < 0 ? body : body.slice(0, fits);
  const cut = body.slice(kept.length).filter((one) => !one.white).length;
  return { strips: [...kept, ...notice], leftOver: sectionOrder.filter((name) => name !== 'identity'), cut };
}
