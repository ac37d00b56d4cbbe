import type { Breakdown, BreakdownScene, Garment, SceneElement, Wears } from '../../breakdown/types.js';
import { isOnAfter, isOnBefore } from '../../breakdown/worn-when.js';
import { type Block, blank, bold, type Inline, knownWords, stateWords } from '../layout/kit.js';
import { headingSentence } from '../sheets/sheet-words.js';
import { dangerLines } from '../words/danger-words.js';
import { extraWords, speakerAmong } from '../words/extras-words.js';
import { perhapsWords } from '../words/perhaps-worn.js';
import { labelOf, type SceneIndex } from '../words/scene-list-words.js';
import { dayWords } from '../words/story-words.js';
import { sortHeadToFoot } from './costume-changes.js';
import { lookWords } from './garment-track.js';

/** Scene by scene: who is in which change, what is put on, taken off or spoilt, and the make-up. */
export function costumeRunningBlocks(breakdown: Breakdown, index: SceneIndex): Block[] {
  const firsts = findFirsts(breakdown);
  return [
    { kind: 'heading', level: 2, text: 'Costumes, scene by scene', bookmark: 'Scene by scene' },
    ...breakdown.scenes.map((scene) => sceneBlock(scene, firsts, index)),
  ];
}

/** More entries than this may be cut by a page's end. */
const mostKept = 16;

function sceneBlock(scene: BreakdownScene, firsts: Firsts, index: SceneIndex): Block {
  const entries = sceneEntries(scene, firsts, index);
  const section: Block = {
    kind: 'section',
    label: `Scene ${labelOf(scene.id, index)}`,
    labelWidth: 70,
    blocks: [...headingLines(scene), { kind: 'entries', entries }],
  };
  return entries.length > mostKept ? section : { kind: 'keep', blocks: [section] };
}

function headingLines(scene: BreakdownScene): Block[] {
  const lines: Inline[] = [
    [bold(headingSentence(scene)), `, ${dayWords(scene.storyDay.label)}`],
    ...dangerLines(scene),
  ];
  return lines.map((text) => ({ kind: 'paragraph', text, keepWithNext: true, after: 1 }));
}

/** The scene in which each change begins, by person and number. */
type Firsts = ReadonlyMap<string, string>;

function findFirsts(breakdown: Breakdown): Firsts {
  return new Map(
    breakdown.cast.flatMap((person) =>
      person.changes.map((change) => [`${person.name} ${change.number}`, change.scenes[0] ?? ''] as const),
    ),
  );
}

function sceneEntries(scene: BreakdownScene, firsts: Firsts, index: SceneIndex): Inline[] {
  const seen = scene.cast.filter((person) => person.presence === 'seen');
  const entries = [
    ...seen.map((person) => personEntry(person.name, scene, firsts, index)),
    ...extraEntries(scene),
    ...otherEntries(scene, index),
  ];
  return entries.length > 0 ? entries : ['nobody to dress'];
}

function personEntry(person: string, scene: BreakdownScene, firsts: Firsts, index: SceneIndex): Inline {
  const wears = scene.wears.find((one) => one.person === person && one.garments.length > 0);
  const perhaps = scene.perhapsWorn.find((one) => one.person === person);
  const asked = perhaps ? [` ${perhapsWords(perhaps, index.labels)}: ask. `, blank(60)] : [];
  if (!wears) return [bold(person), ...(perhaps ? [':', ...asked] : untold)];
  const isFirst = (number: number) => firsts.get(`${person} ${number}`) === scene.id;
  const change =
    wears.change === wears.changeOut ? `${wears.change}` : `${wears.change} → ${wears.changeOut} in the scene`;
  return [
    bold(person),
    `, change ${change}: `,
    wears.change === wears.changeOut ? wearsWords(wears.garments, isFirst(wears.change)) : twoChanges(wears, isFirst),
    ...asked,
  ];
}

const untold = [': ? the script does not tell. ', blank(140)];

/** The whole list where a change begins, later only what differs: states, actions, absences. */
function wearsWords(garments: readonly Garment[], whole: boolean): string {
  const told = sortHeadToFoot(garments).filter((one) => whole || one.absent || lookWords(one) !== '');
  const words = told.map((one) => {
    if (one.absent) return `${one.action === 'left off' ? 'from then on ' : ''}NO ${one.name}`;
    const look = lookWords(one);
    return look === '' ? one.name : `${one.name} (${look})`;
  });
  if (whole) return `${words.join(', ')}.`;
  return words.length > 0 ? `as before; ${words.join(', ')}.` : 'as before.';
}

/** A change on camera: what is on first, and what after it; that all of the first comes off goes without saying. */
function twoChanges({ change, garments }: Wears, isFirst: (number: number) => boolean): string {
  const calm = garments.map((one) => (isPlain(one) ? { ...one, action: null } : one));
  const before = calm.filter((_, i) => isOnBefore(garments[i] as Garment));
  const after = calm.filter((_, i) => isOnAfter(garments[i] as Garment));
  return `first ${wearsWords(before, isFirst(change)).replace(/\.$/, '')}; then ${wearsWords(after, true)}`;
}

function isPlain({ action }: Garment): boolean {
  return action === 'put on' || action === 'taken off' || action === 'left off';
}

function extraEntries(scene: BreakdownScene): Inline[] {
  return scene.extras.map((extra) => {
    const worn = scene.elements.filter((one) => one.category === 'costumes' && one.by === extra.name);
    const among = speakerAmong(extra, scene.cast);
    const name = bold(extra.count === null ? `${extra.name}${among}, how many?` : `${extraWords(extra)}${among}`);
    if (worn.length > 0) return [name, `: ${worn.map((one) => one.name).join(', ')}`];
    return [name, ...untold];
  });
}

/** Clothes that nobody wears in the scene, and the make-up. */
function otherEntries(scene: BreakdownScene, index: SceneIndex): Inline[] {
  const worn = new Set(scene.wears.flatMap((one) => one.garments.map((garment) => garment.id)));
  const extras = new Set(scene.extras.map((extra) => extra.name));
  return scene.elements
    .filter((one) => one.category === 'makeup' || (one.category === 'costumes' && !worn.has(one.id)))
    .filter((one) => one.by === null || !extras.has(one.by))
    .map((one): Inline => {
      const state = stateWords(one);
      const known = knownWords(one, index.labels);
      const name = known === '' ? one.name : `${one.name} ${known}`;
      return [bold(`${placeOf(one)}: `), [name, one.by ?? '', state].filter((part) => part !== '').join(', ')];
    });
}

function placeOf(element: SceneElement): string {
  if (element.known === 'implied') return 'Have ready';
  if (element.category === 'makeup') return 'Make-up';
  return element.by === null ? 'Not on anybody' : 'Also';
}
