import type { Range } from '../base/text-range.js';
import { sayBreakdown } from '../messages/breakdown.js';
import type { Note, NoteItem } from '../script/types.js';
import { addAction, type Figure } from './figure.js';
import { isAbsence } from './same-thing.js';
import type { SceneDress } from './scene-dress.js';

export type CostumeNote = Extract<Note, { readonly kind: 'costume' }>;

/** Dresses a person by a costume note of the scene. */
export function dressByNote(dress: SceneDress, note: CostumeNote): void {
  const { person, verb } = note;
  if (!dress.hasSeen(person)) {
    const puts = verb !== 'takes off' && verb !== 'without';
    const code = dress.isSeenLater(person) || !puts ? 'costume-note-unseen' : 'costume-note-nobody';
    dress.messages.push(sayBreakdown(code, { person }, note.at));
  }
  const figure = dress.figureOf(person);
  const worn = note.garments.filter(({ name }) => !isAbsence(name));
  if (verb === 'wears') dressInList(dress, figure, worn, note.at);
  if (verb === 'changes to') changeClothes(dress, figure, worn, note.at);
  if (verb === 'puts on') for (const item of worn) putOn(dress, figure, item);
  if (verb === 'takes off') for (const item of worn) takeOff(dress, figure, item);
  if (verb === 'without') for (const item of worn) leaveOff(dress, figure, item, item.name);
  for (const item of note.garments) {
    if (isAbsence(item.name)) leaveOff(dress, figure, item, item.name.replace(/^(?:without|no)\s+/i, ''));
  }
}

/** `wears`: the whole list. Quite other clothes than an earlier list of the day are a change that nobody wrote down. */
export function dressInList(dress: SceneDress, figure: Figure, items: readonly NoteItem[], at: Range): void {
  const { outfit, person } = figure;
  const before = [...outfit.pieces.values()].filter(({ absent }) => !absent).map(({ identity }) => identity);
  const after = items.map(({ name }) => dress.closets.garment(name, person));
  const other = outfit.listed && !figure.fresh && before.length > 0 && !after.some((one) => before.includes(one));
  if (other) {
    const [from = '', to = ''] = [before, after].map((list) => list.map(({ name }) => name).join(', ') || 'nothing');
    dress.messages.push(sayBreakdown('costume-changed-unsaid', { person, from, to }, at));
    dress.renumber(figure);
  }
  replaceClothes(dress, figure, items);
}

/** `changes to`: before the camera once the person is in the picture, else between two scenes, as where the words say that it is done. */
function changeClothes(dress: SceneDress, figure: Figure, items: readonly NoteItem[], at: Range): void {
  const onCamera = isAfterEntrance(figure, at) && !figure.changedBefore;
  if (!onCamera) {
    if (!figure.fresh) dress.renumber(figure);
    replaceClothes(dress, figure, items);
    return;
  }
  const { closets } = dress;
  figure.changeOut = closets.nextNumber(figure.person);
  figure.outfit.change = figure.changeOut;
  const staying = items.map(({ name }) => closets.garment(name, figure.person));
  for (const [identity, piece] of [...figure.pieces]) {
    if (piece.absent || staying.includes(identity)) continue;
    figure.pieces.set(identity, { ...piece, action: addAction(piece.action, 'taken off') });
    closets.release(identity);
  }
  figure.outfit.pieces = new Map();
  figure.outfit.listed = true;
  figure.listedHere = true;
  for (const item of items) {
    const identity = closets.garment(item.name, figure.person);
    dress.set(figure, identity, item, figure.pieces.get(identity) ? null : 'put on');
  }
}

function replaceClothes(dress: SceneDress, figure: Figure, items: readonly NoteItem[]): void {
  for (const identity of figure.outfit.pieces.keys()) dress.closets.release(identity);
  figure.outfit.pieces = new Map();
  figure.outfit.listed = true;
  figure.listedHere = true;
  figure.pieces.clear();
  for (const item of items) dress.set(figure, dress.closets.garment(item.name, figure.person), item, null);
}

function putOn(dress: SceneDress, figure: Figure, item: NoteItem): void {
  const { person, outfit } = figure;
  const meant = dress.closets.meant(item.name, person, outfit) ?? dress.closets.lying(item.name);
  dress.set(figure, meant ?? dress.closets.garment(item.name, person), item, 'put on');
}

function takeOff(dress: SceneDress, figure: Figure, item: NoteItem): void {
  const { person, outfit } = figure;
  const identity = dress.closets.meant(item.name, person, outfit) ?? dress.closets.garment(item.name, person);
  if (!outfit.pieces.has(identity) && !figure.pieces.get(identity)?.action) {
    dress.messages.push(sayBreakdown('garment-not-worn', { person, garment: item.name }, item.at));
  }
  if (/(?:taken off|handed to .*)$/.test(figure.pieces.get(identity)?.action ?? '')) return;
  if (dress.hasSeen(person)) dress.sightNote(identity, item, person);
  dress.drop(figure, identity, 'taken off', item.at);
}

function leaveOff(dress: SceneDress, figure: Figure, item: NoteItem, name: string): void {
  const identity =
    dress.closets.meant(name, figure.person, figure.outfit) ?? dress.closets.garment(name, figure.person);
  const piece = { ...dress.pieceOf(identity, 'noted', item.at), absent: true };
  const worn = figure.pieces.get(identity);
  const isOn = worn !== undefined && figure.outfit.pieces.get(identity)?.absent === false;
  // What the camera has seen on somebody was on: from the note on it is off, and the change before keeps it.
  if (isOn && isAfterEntrance(figure, item.at)) dress.drop(figure, identity, 'taken off', item.at);
  figure.outfit.pieces.set(identity, piece);
  const begins = figure.change !== figure.changeOut || (worn !== undefined && figure.pieces.get(identity)?.action);
  if (begins) figure.leftOff.set(identity, { ...piece, carried: false, action: 'left off' });
  else figure.pieces.set(identity, { ...piece, carried: false, action: null });
  dress.closets.release(identity);
}

/** True when a note stands after the person has come into the picture. */
function isAfterEntrance({ firstSeen }: Figure, at: Range): boolean {
  return firstSeen !== null && at.start.offset > firstSeen;
}
