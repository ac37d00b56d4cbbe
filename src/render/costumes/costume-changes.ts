import type { Breakdown, BreakdownScene, CostumeChange, PersonEntry } from '../../breakdown/types.js';
import { type BodyZone, placeOnBody } from '../../trade/body-order.js';
import { type Block, blank, bold, type Inline, italic, knownWords, type TableRow, tick } from '../layout/kit.js';
import type { BookNotes } from '../words/book-notes.js';
import { perhapsWords } from '../words/perhaps-worn.js';
import { labelOf, pickScenes, type SceneIndex, scenesWords } from '../words/scene-list-words.js';
import { capitalize, dayWords } from '../words/story-words.js';
import { untoldScenes } from './costume-grid.js';
import { trackGarment } from './garment-track.js';
import { findUntoldParts, findUntoldSmall } from './untold-parts.js';

type ChangeGarment = CostumeChange['garments'][number];

const columns = [
  { head: '', width: 12 },
  { head: 'Where', width: 58 },
  { head: 'What', share: 3 },
  { head: 'How it looks, scene by scene', share: 3 },
];

/** Every change of every person, head to foot, with states and with what must not be worn. */
export function changeBlocks(breakdown: Breakdown, notes: BookNotes, index: SceneIndex): Block[] {
  const people = breakdown.cast.filter((person) => person.seen.length > 0);
  return people.flatMap((person): Block[] => [
    { kind: 'heading', level: 2, text: personHead(person), bookmark: person.name },
    ...person.changes
      .filter((change) => change.garments.length > 0)
      .map((change) => changeBlock(person, change, notes, index)),
    ...perhapsBlocks(person, index),
    ...untoldBlocks(person, index),
  ]);
}

function personHead(person: PersonEntry): string {
  const age = person.age === null ? '' : `, age ${person.age}`;
  return `${person.name}${age}${person.minor ? ', MINOR' : ''}`;
}

type Line = { readonly order: number; readonly where: string } & (
  | { readonly garment: ChangeGarment }
  | { readonly garment: null; readonly asked: string }
);

/** The garments of a change and the parts of the body that it does not tell of, head to foot. */
function listHeadToFoot({ garments }: CostumeChange): Line[] {
  const told = garments.map((garment): Line => {
    const { order, zone } = placeOnBody(garment.name);
    return { order, where: zoneWords(zone), garment };
  });
  const untold = findUntoldParts(garments.map((garment) => garment.name)).map((part) => ({ ...part, garment: null }));
  return [...told, ...untold].sort((a, b) => a.order - b.order);
}

function untoldRow(where: string, asked: string): TableRow {
  return { cells: [tick, where, [`${asked}: `, blank(100)], 'not told: ask'] };
}

function changeBlock(person: PersonEntry, change: CostumeChange, notes: BookNotes, index: SceneIndex): Block {
  const title = `${person.name}, change ${change.number}: ${dayWords(change.storyDay)}, ${scenesWords(change.scenes, index)}`;
  const rows = listHeadToFoot(change).map((entry, i, all) => {
    const where = all[i - 1]?.where === entry.where ? '' : entry.where;
    if (entry.garment === null) return untoldRow(where, entry.asked);
    return garmentRow(
      entry.garment,
      where,
      trackGarment(person.name, change, entry.garment, index).lines,
      notes,
      index,
    );
  });
  return {
    kind: 'keep',
    blocks: [
      { kind: 'heading', level: 3, text: title },
      { kind: 'table', columns, rows: [...rows, ...smallRow(change)] },
    ],
  };
}

/** One line for the small things that nobody has told of; "none" is an answer. */
function smallRow({ garments }: CostumeChange): TableRow[] {
  const asked = findUntoldSmall(garments.map((garment) => garment.name));
  if (asked.length === 0) return [];
  return [
    { cells: [tick, 'And', { stack: [`${asked.join(', ')}?`, blank(150)] }, 'not told: ask; “none” is an answer'] },
  ];
}

function garmentRow(
  garment: ChangeGarment,
  where: string,
  lines: readonly string[],
  notes: BookNotes,
  index: SceneIndex,
): TableRow {
  const known = knownWords({ ...garment, carried: false }, index.labels);
  const name: Inline = [bold(garment.absent ? `NO ${garment.name}` : garment.name), known === '' ? '' : ` ${known}`];
  const note = notes.get(garment.id);
  const stack = note === undefined || garment.absent ? [name] : [name, italic(`Note: ${note}`)];
  return { cells: [tick, where, { stack }, { stack: garment.absent ? ['must not be worn: check', ...lines] : lines }] };
}

/** Garments in the order in which a dresser checks a person; equal places keep the order of the script. */
export function sortHeadToFoot<T extends { readonly name: string }>(garments: readonly T[]): T[] {
  return [...garments].sort((a, b) => placeOnBody(a.name).order - placeOnBody(b.name).order);
}

function zoneWords(zone: BodyZone): string {
  return zone === 'not placed' ? 'Other' : capitalize(zone);
}

/** The first scene of each day on which a question asks whether the clothes of the day before are still on. */
function perhapsBlocks(person: PersonEntry, index: SceneIndex): Block[] {
  const days = new Set<string>();
  return pickScenes(person.seen, index).flatMap((scene): Block[] => {
    const perhaps = scene.perhapsWorn.find((one) => one.person === person.name);
    if (!perhaps || days.has(scene.storyDay.label)) return [];
    days.add(scene.storyDay.label);
    const words = `Scene ${labelOf(scene.id, index)}, a new day: ${perhapsWords(perhaps, index.labels)}? Ask. Yes `;
    return [{ kind: 'paragraph', text: [words, tick, ' no ', tick, ', but: ', blank(160)] }];
  });
}

function untoldBlocks(person: PersonEntry, index: SceneIndex): Block[] {
  const asked = (one: BreakdownScene) => one.perhapsWorn.some((perhaps) => perhaps.person === person.name);
  const scenes = untoldScenes(person, index)
    .filter((scene) => !asked(scene))
    .map((scene) => scene.id);
  if (scenes.length === 0) return [];
  const words = `? In ${scenesWords(scenes, index)} the script does not tell what ${person.name} wears. Ask, and write it here:`;
  return [
    {
      kind: 'keep',
      blocks: [
        { kind: 'paragraph', text: words, keepWithNext: true },
        { kind: 'lines', count: 2 },
      ],
    },
  ];
}
