import type { Diagnostic } from '../base/diagnostic.js';
import type { Range } from '../base/text-range.js';
import type { Move } from '../find/types.js';
import { sayBreakdown } from '../messages/breakdown.js';
import type { Note, NoteItem } from '../script/types.js';
import type { Closets, Outfit, Piece } from './closet.js';
import type { CostumeDoubt, CostumeInput, Dressed, DressedPiece } from './costume-plot.js';
import { categoryOfIdentity, type Identity } from './element-register.js';
import { addAction, areRivals, type Figure } from './figure.js';
import { isAbsence, sameThing } from './same-thing.js';
import { type Sighting, sight } from './sighting.js';

type CostumeNote = Extract<Note, { readonly kind: 'costume' }>;

/** The clothes of everyone in one scene, from the way they come in to the way they leave. */
export class SceneDress {
  readonly messages: Diagnostic[] = [];
  readonly doubts: CostumeDoubt[] = [];
  private readonly figures = new Map<string, Figure>();

  constructor(
    private readonly input: CostumeInput,
    private readonly closets: Closets,
    private readonly usual: ReadonlyMap<string, CostumeNote>,
  ) {}

  /** A person is seen: in what is on from an earlier scene of the day, else in a new change. */
  enter(person: string, firstSeen: number | null, kept: Outfit | null): void {
    const day = this.input.day.label;
    const known = this.closets.outfit(person, day);
    const outfit = known ?? (kept ? this.closets.keep(person, kept, day) : this.closets.begin(person, day));
    const pieces = new Map<Identity, DressedPiece>();
    for (const piece of outfit.pieces.values()) pieces.set(piece.identity, { ...piece, carried: true, action: null });
    const { change } = outfit;
    const fresh = !outfit.used;
    this.figures.set(person, { person, firstSeen, outfit, fresh, change, changeOut: change, pieces });
    outfit.used = true;
    const usual = this.usual.get(person);
    if (usual && !known && !kept) this.list(this.figures.get(person) as Figure, usual.garments, usual.at);
  }

  /** What the costume notes of the scene say. */
  note(note: CostumeNote): void {
    const { person, verb } = note;
    if (!this.figures.has(person)) this.messages.push(sayBreakdown('costume-note-unseen', { person }, note.at));
    const figure = this.figures.get(person) ?? this.unseen(person);
    const worn = note.garments.filter(({ name }) => !isAbsence(name));
    if (verb === 'wears') this.list(figure, worn, note.at);
    if (verb === 'changes to') this.change(figure, worn, note.at.start.offset);
    if (verb === 'puts on') for (const item of worn) this.putOn(figure, item);
    if (verb === 'takes off') for (const item of worn) this.takeOff(figure, item);
    if (verb === 'without') for (const item of worn) this.leaveOff(figure, item, item.name);
    for (const item of note.garments) {
      if (isAbsence(item.name)) this.leaveOff(figure, item, item.name.replace(/^(?:without|no)\s+/i, ''));
    }
  }

  /** A garment that a list names with its wearer. */
  wear(person: string, item: NoteItem): void {
    const figure = this.figures.get(person) ?? this.unseen(person);
    this.set(figure, this.closets.garment(item.name, person), item, null);
  }

  /** A garment that the words show on someone. */
  showWorn(person: string, sighting: Sighting): void {
    const figure = this.figures.get(person);
    if (!figure) return;
    if (sighting.known === 'found' && sighting.identity.known === 'found') this.settleName(figure, sighting);
    this.doubtBoth(figure, sighting);
    const { identity, known } = sighting;
    const piece = this.pieceOf(identity, known, sighting.at);
    figure.outfit.pieces.set(identity, piece);
    figure.pieces.set(identity, { ...piece, carried: false, action: figure.pieces.get(identity)?.action ?? null });
    this.own(person, identity);
  }

  /** A garment that moves before the camera. */
  move({ kind, from, to, name, at }: Move): void {
    const person = kind === 'put on' ? (to ?? from) : (from ?? to);
    const figure = person === null ? undefined : this.figures.get(person);
    if (!figure || kind === 'carried off') return;
    const identity =
      this.closets.meant(name, figure.person, figure.outfit) ?? this.costumeHere(name) ?? this.closets.lying(name);
    if (!identity) return;
    if (kind === 'put on') {
      const piece = this.pieceOf(identity, identity.known, at);
      figure.outfit.pieces.set(identity, piece);
      figure.pieces.set(identity, { ...piece, carried: false, action: 'put on' });
      this.own(figure.person, identity);
    } else if (figure.outfit.pieces.has(identity)) {
      this.drop(figure, identity, kind === 'handed over' && to ? `handed to ${to}` : 'taken off', at);
    }
  }

  /** What everyone wore, in the order in which they came in. */
  finish(): Dressed[] {
    return [...this.figures.values()].map(({ person, change, changeOut, pieces }) => ({
      person,
      change,
      changeOut,
      pieces: [...pieces.values()],
    }));
  }

  private list(figure: Figure, items: readonly NoteItem[], at: Range): void {
    const { outfit, person } = figure;
    const before = [...outfit.pieces.values()].filter(({ absent }) => !absent).map(({ identity }) => identity);
    const after = items.map(({ name }) => this.closets.garment(name, person));
    const other = outfit.listed && !figure.fresh && before.length > 0 && !after.some((one) => before.includes(one));
    if (other) {
      const [from, to] = [before, after].map((list) => list.map(({ name }) => name).join(', ')) as [string, string];
      this.messages.push(sayBreakdown('costume-changed-unsaid', { person, from, to }, at));
      this.renumber(figure);
    }
    this.replace(figure, items);
  }

  private change(figure: Figure, items: readonly NoteItem[], offset: number): void {
    const onCamera = figure.firstSeen !== null && offset > figure.firstSeen;
    if (!onCamera) {
      if (!figure.fresh) this.renumber(figure);
      this.replace(figure, items);
      return;
    }
    figure.changeOut = this.closets.nextNumber(figure.person);
    figure.outfit.change = figure.changeOut;
    const staying = items.map(({ name }) => this.closets.garment(name, figure.person));
    for (const [identity, piece] of [...figure.pieces]) {
      if (piece.absent || staying.includes(identity)) continue;
      figure.pieces.set(identity, { ...piece, action: addAction(piece.action, 'taken off') });
      this.closets.release(identity);
    }
    figure.outfit.pieces = new Map();
    figure.outfit.listed = true;
    for (const item of items) {
      const identity = this.closets.garment(item.name, figure.person);
      this.set(figure, identity, item, figure.pieces.get(identity) ? null : 'put on');
    }
  }

  private renumber(figure: Figure): void {
    figure.change = this.closets.nextNumber(figure.person);
    figure.changeOut = figure.change;
    figure.outfit.change = figure.change;
  }

  private replace(figure: Figure, items: readonly NoteItem[]): void {
    for (const identity of figure.outfit.pieces.keys()) this.closets.release(identity);
    figure.outfit.pieces = new Map();
    figure.outfit.listed = true;
    figure.pieces.clear();
    for (const item of items) this.set(figure, this.closets.garment(item.name, figure.person), item, null);
  }

  private putOn(figure: Figure, item: NoteItem): void {
    const { person, outfit } = figure;
    const meant = this.closets.meant(item.name, person, outfit) ?? this.closets.lying(item.name);
    this.set(figure, meant ?? this.closets.garment(item.name, person), item, 'put on');
  }

  private takeOff(figure: Figure, item: NoteItem): void {
    const { person, outfit } = figure;
    const identity = this.closets.meant(item.name, person, outfit) ?? this.closets.garment(item.name, person);
    if (!outfit.pieces.has(identity) && !figure.pieces.get(identity)?.action) {
      this.messages.push(sayBreakdown('garment-not-worn', { person, garment: item.name }, item.at));
    }
    if (figure.pieces.get(identity)?.action?.endsWith('taken off')) return;
    this.sightNote(identity, item, person);
    this.drop(figure, identity, 'taken off', item.at);
  }

  private leaveOff(figure: Figure, item: NoteItem, name: string): void {
    const identity =
      this.closets.meant(name, figure.person, figure.outfit) ?? this.closets.garment(name, figure.person);
    const piece = { ...this.pieceOf(identity, 'noted', item.at), absent: true };
    figure.outfit.pieces.set(identity, piece);
    figure.pieces.set(identity, { ...piece, carried: false, action: null });
    this.closets.release(identity);
  }

  private drop(figure: Figure, identity: Identity, action: string, at: Range): void {
    const before = figure.pieces.get(identity);
    const piece = before ?? { ...this.pieceOf(identity, identity.known, at), action: null };
    figure.pieces.set(identity, { ...piece, carried: false, action: addAction(piece.action, action) });
    figure.outfit.pieces.delete(identity);
    this.closets.own(figure.person, identity);
    this.closets.release(identity);
  }

  private set(figure: Figure, identity: Identity, item: NoteItem, action: string | null): void {
    const piece = this.pieceOf(identity, 'noted', item.at);
    figure.outfit.pieces.set(identity, piece);
    figure.pieces.set(identity, { ...piece, carried: false, action });
    this.own(figure.person, identity);
    this.sightNote(identity, item, figure.person);
  }

  /** Nobody else wears it any more: it was lent, or left behind. */
  private own(person: string, identity: Identity): void {
    const before = this.closets.own(person, identity);
    const figure = before === null ? undefined : this.figures.get(before);
    const piece = figure?.pieces.get(identity);
    if (!figure || !piece) return;
    if (piece.carried) figure.pieces.delete(identity);
    else figure.pieces.set(identity, { ...piece, action: addAction(piece.action, `handed to ${person}`) });
  }

  private sightNote(identity: Identity, { name, at, count, description }: NoteItem, by: string): void {
    if (!this.figures.has(by)) return;
    this.input.sightings.push(sight(identity, 'noted', name, at, { by, worn: true, count, description }));
  }

  private pieceOf(identity: Identity, known: Piece['known'], at: Range): Piece {
    return { identity, known, from: this.input.ground.id, line: at.start.line, absent: false };
  }

  /** Someone who is not seen here is dressed for the scenes to come. */
  private unseen(person: string): Figure {
    const { label } = this.input.day;
    const outfit = this.closets.outfit(person, label) ?? this.closets.begin(person, label);
    const { change, used } = outfit;
    return { person, firstSeen: null, outfit, fresh: !used, change, changeOut: change, pieces: new Map() };
  }

  /** `coat` on someone in a grey coat is the grey coat. */
  private settleName(figure: Figure, sighting: Sighting): void {
    const meant = this.closets.meant(sighting.identity.name, figure.person, figure.outfit);
    if (!meant || meant === sighting.identity) return;
    const before = sighting.identity;
    for (const other of this.input.sightings) if (other.identity === before) other.identity = meant;
  }

  /** A red dress after a blue one, and nobody said that she changes. */
  private doubtBoth(figure: Figure, { identity, known, at }: Sighting): void {
    if (known !== 'found' || figure.fresh || figure.outfit.pieces.has(identity)) return;
    const rival = [...figure.pieces.values()].find(
      (piece) => piece.carried && piece.known === 'found' && !piece.absent && areRivals(piece.identity, identity),
    );
    if (!rival) return;
    const { person } = figure;
    const { index } = this.input.ground;
    this.doubts.push({ scene: index, person, before: rival.identity.name, now: identity.name, line: at.start.line });
    this.renumber(figure);
    figure.outfit.pieces = new Map();
    figure.pieces.clear();
  }

  private costumeHere(name: string): Identity | null {
    const here = this.input.sightings
      .map(({ identity }) => identity)
      .filter((one) => categoryOfIdentity(one) === 'costumes');
    const meant = [...new Set(here)].filter((one) => sameThing(one.name, name));
    return meant.length === 1 ? (meant[0] as Identity) : null;
  }
}
