import type { BreakdownScene } from '../../breakdown/types.js';
import { setBlocks } from '../layout/block-strips.js';
import { bold } from '../layout/inline.js';
import { type Area, writingLine } from '../layout/measures.js';
import { heightOf, type Strip } from '../layout/strips.js';
import type { Typesetter } from '../layout/typesetter.js';
import { type FoldStep, foldSteps, type SectionName, sectionOrder } from './fold-steps.js';
import { writeContinuity } from './sections/continuity.js';
import { writeDanger } from './sections/danger.js';
import { writeEffects } from './sections/effects.js';
import { writeHappens } from './sections/happens.js';
import { sceneTitle, writeIdentity } from './sections/identity.js';
import { writeInHand } from './sections/in-hand.js';
import { writeNotes } from './sections/notes.js';
import { writeOnBody } from './sections/on-body.js';
import { writePeople } from './sections/people.js';
import { writePlace } from './sections/place.js';
import { writeQuestions } from './sections/questions.js';
import { writeSound } from './sections/sound.js';
import { writeTasks } from './sections/tasks.js';
import type { Section, SheetContext } from './sheet-context.js';
import { headingSentence } from './sheet-words.js';

const sections: Record<SectionName, Section> = {
  identity: writeIdentity,
  happens: writeHappens,
  danger: writeDanger,
  people: writePeople,
  'in-hand': writeInHand,
  'on-body': writeOnBody,
  effects: writeEffects,
  continuity: writeContinuity,
  sound: writeSound,
  place: writePlace,
  questions: writeQuestions,
  tasks: writeTasks,
  notes: writeNotes,
};

/** A scene's sheet, set so that it fills at most one page. */
export interface SceneSheet {
  readonly strips: readonly Strip[];
  /** What was folded to make it fit, in words. */
  readonly folded: readonly string[];
  /** Printed lines that did not fit even so. */
  readonly cut: number;
}

type SetSections = Map<SectionName, readonly Strip[]>;

/** Sets a scene's sheet for an area; a sheet too full is folded step by step and says so. */
export function setSceneSheet(scene: BreakdownScene, context: SheetContext, area: Area, type: Typesetter): SceneSheet {
  const set = (name: SectionName, fold: number) => setBlocks(sections[name](scene, context, fold), area, type);
  const parts: SetSections = new Map(sectionOrder.map((name) => [name, set(name, 0)]));
  const taken: FoldStep[] = [];
  let foot = setFoldNote(taken, area, type);
  for (const step of foldSteps) {
    if (heightOfAll(parts) + heightOf(foot) <= area.height) break;
    const before = heightOf(parts.get(step.section) ?? []);
    const smaller = set(step.section, step.fold);
    if (heightOf(smaller) >= before) continue;
    parts.set(step.section, smaller);
    taken.push(step);
    foot = setFoldNote(taken, area, type);
  }
  const body = sectionOrder.flatMap((name) => parts.get(name) ?? []);
  const marked = body.map((one, i) => (i === 0 ? { ...one, bookmark: bookmarkOf(scene, context) } : one));
  return finish(marked, taken, foot, area, type);
}

function finish(
  body: readonly Strip[],
  taken: readonly FoldStep[],
  foot: readonly Strip[],
  area: Area,
  type: Typesetter,
): SceneSheet {
  const folded = saidOf(taken);
  const room = area.height - heightOf(body) - heightOf(foot);
  if (room >= 0) return { strips: [...body, ...foot, ...setWritingLines(room, area, type)], folded, cut: 0 };
  return cutToFit(body, folded, area, type);
}

function heightOfAll(parts: SetSections): number {
  let sum = 0;
  for (const strips of parts.values()) sum += heightOf(strips);
  return sum;
}

function bookmarkOf(scene: BreakdownScene, context: SheetContext): string {
  return `${sceneTitle(scene, context)}: ${headingSentence(scene)}`;
}

function saidOf(taken: readonly FoldStep[]): string[] {
  return [...new Set(taken.flatMap((step) => (step.says === null ? [] : [step.says])))];
}

function setFoldNote(taken: readonly FoldStep[], area: Area, type: Typesetter): Strip[] {
  const said = saidOf(taken);
  if (said.length === 0) return [];
  const text = [bold('Too full for one page. Folded: '), `${said.join(', ')}. The packs and lists have all of it.`];
  return setBlocks([{ kind: 'rule' }, { kind: 'paragraph', size: 10, text }], area, type);
}

const fewestLines = 2;
const mostLines = 10;

/** Lines to write on in what room is left, with a few words above them. */
function setWritingLines(room: number, area: Area, type: Typesetter): Strip[] {
  const head = setBlocks(
    [{ kind: 'rule' }, { kind: 'paragraph', size: 10, after: 0, text: 'Photo numbers, takes, notes' }],
    area,
    type,
  );
  const count = Math.min(mostLines, Math.floor((room - heightOf(head)) / writingLine));
  return count < fewestLines ? [] : [...head, ...setBlocks([{ kind: 'lines', count }], area, type)];
}

/** Cuts what no folding made fit, from the bottom, and says so: a scene so full wants to be split. */
function cutToFit(body: readonly Strip[], folded: readonly string[], area: Area, type: Typesetter): SceneSheet {
  const text = bold('This scene is too full for one page and lines are left off here. Split it into two scenes.');
  const notice = setBlocks([{ kind: 'rule' }, { kind: 'paragraph', size: 10, text }], area, type);
  const room = area.height - heightOf(notice);
  let height = 0;
  const fits = body.findIndex((one) => {
    height += one.height;
    return height > room;
  });
  const kept = fits < 0 ? body : body.slice(0, fits);
  const cut = body.slice(kept.length).filter((one) => !one.white).length;
  return { strips: [...kept, ...notice], folded, cut };
}
