import type { Diagnostic } from '../base/diagnostic.js';
import type { Range } from '../base/text-range.js';
import type { Move } from '../find/types.js';
import type { NoteItem } from '../script/types.js';
import type { Closets, Outfit, Piece } from './closet.js';
import type { CostumeDoubt, CostumeInput, Dressed, DressedPiece } from './costume-plot.js';
import { categoryOfIdentity, type Identity } from './element-register.js';
import { addAction, type Figure, makeFigure, rivalsOf } from './figure.js';
import { notesOf } from './ground.js';
import { imagesIn, type MontageImage, onlyInImages } from './montage.js';
import { readSaidChange, whenChanged } from './said-change.js';
import { sameThing } from './same-thing.js';
import { type Sighting, sight } from './sighting.js';

/** The clothes of everyone in one scene, from the way they come in to the way they leave. */
export class SceneDress {
  readonly messages: Diagnostic[] = [];
  readonly doubts: CostumeDoubt[] = [];
  private readonly figures = new Map<string, Figure>();

  constructor(
    readonly input: CostumeInput,
    readonly closets: Closets,
    /** True for people of whom the writer answered that they do not change here. */
    private readonly isNoChange: (person: string) => boolean,
    /** True for people whom a later scene of the same story day shows. */
    readonly isSeenLater: (person: string) => boolean,
    private readonly images: readonly MontageImage[],
  ) {}

  /** A person is seen: in what is on from an earlier scene of the day, else in a new change. */
  enter(person: string, firstSeen: number | null, kept: Outfit | null): Figure {
    const day = this.input.day.label;
    const known = this.closets.outfit(person, day);
    const outfit = known ?? (kept ? this.closets.keep(person, kept, day) : this.closets.begin(person, day));
    const pieces = new Map<Identity, DressedPiece>();
    for (const piece of outfit.pieces.values()) pieces.set(piece.identity, { ...piece, carried: true, action: null });
    const figure = makeFigure(person, firstSeen, outfit, pieces);
    this.figures.set(person, figure);
    outfit.used = true;
    return figure;
  }

  /** True when the person is seen in this scene. */
  hasSeen(person: string): boolean {
    return this.figures.has(person);
  }

  /** The person as dressed so far; someone unseen is dressed for the scenes to come. */
  figureOf(person: string): Figure {
    return this.figures.get(person) ?? this.unseen(person);
  }

  /** A garment that a list names with its wearer. */
  wear(person: string, item: NoteItem): void {
    const figure = this.figureOf(person);
    this.set(figure, this.closets.garment(item.name, person), item, null);
  }

  /** A garment that the words show on someone. */
  showWorn(person: string, sighting: Sighting): void {
    const figure = this.figures.get(person);
    if (!figure) return;
    if (this.isInChange(figure, sighting)) return;
    if (sighting.known === 'found' && sighting.identity.known === 'found') this.settleName(figure, sighting);
    if (this.showInImage(figure, sighting)) return;
    // Where a note lists all that is on, what the finder reads as worn besides is somewhere else in the scene.
    if (figure.listedHere && sighting.known === 'found' && !figure.pieces.has(sighting.identity)) return;
    this.doubtBoth(figure, sighting);
    const { identity, known } = sighting;
    const piece = this.pieceOf(identity, known, sighting.at);
    figure.outfit.pieces.set(identity, piece);
    figure.leftOff.delete(identity);
    figure.pieces.set(identity, { ...piece, carried: false, action: figure.pieces.get(identity)?.action ?? null });
    this.own(person, identity);
  }

  /** A garment that moves before the camera. */
  move({ kind, from, to, name, at }: Move): void {
    const person = kind === 'put on' ? (to ?? from) : kind === 'handed over' ? from : (from ?? to);
    const figure = person === null ? undefined : this.figures.get(person);
    if (!figure || kind === 'carried off' || (kind === 'handed over' && from === to)) return;
    const identity =
      this.closets.meant(name, figure.person, figure.outfit) ?? this.costumeHere(name) ?? this.closets.lying(name);
    if (!identity) return;
    if (kind === 'put on') {
      const piece = this.pieceOf(identity, identity.known, at);
      figure.outfit.pieces.set(identity, piece);
      figure.leftOff.delete(identity);
      figure.pieces.set(identity, { ...piece, carried: false, action: 'put on' });
      this.own(figure.person, identity);
    } else if (figure.outfit.pieces.has(identity)) {
      this.drop(figure, identity, kind === 'handed over' && to ? `handed to ${to}` : 'taken off', at);
    }
  }

  /** Everything on someone in this scene, with its wearer; what came off too. */
  wornPieces(): (readonly [person: string, identity: Identity])[] {
    return [...this.figures.values()].flatMap(({ person, pieces }) =>
      [...pieces.values()].filter(({ absent }) => !absent).map(({ identity }) => [person, identity] as const),
    );
  }

  /** The scene speaks of a garment that somebody has on. */
  mention(person: string, identity: Identity, at: Range): void {
    const figure = this.figures.get(person);
    const piece = figure?.pieces.get(identity);
    if (!figure || !piece) return;
    const known = this.pieceOf(identity, 'noted', at);
    figure.pieces.set(identity, { ...piece, ...known, carried: false });
    if (figure.outfit.pieces.has(identity)) figure.outfit.pieces.set(identity, known);
  }

  /** What everyone wore, in the order in which they came in. */
  finish(): Dressed[] {
    return [...this.figures.values()].map(({ person, change, changeOut, pieces, leftOff }) => ({
      person,
      change,
      changeOut,
      pieces: [...pieces.values(), ...leftOff.values()],
    }));
  }

  /** A new change that begins with this scene. */
  renumber(figure: Figure): void {
    figure.change = this.closets.nextNumber(figure.person);
    figure.changeOut = figure.change;
    figure.outfit.change = figure.change;
  }

  /** A garment comes off before the camera. */
  drop(figure: Figure, identity: Identity, action: string, at: Range): void {
    const before = figure.pieces.get(identity);
    const piece = before ?? { ...this.pieceOf(identity, identity.known, at), action: null };
    figure.pieces.set(identity, { ...piece, carried: false, action: addAction(piece.action, action) });
    figure.outfit.pieces.delete(identity);
    this.closets.own(figure.person, identity);
    this.closets.release(identity);
  }

  /** A garment is on, by a note. */
  set(figure: Figure, identity: Identity, item: NoteItem, action: string | null): void {
    const piece = this.pieceOf(identity, 'noted', item.at);
    figure.outfit.pieces.set(identity, piece);
    figure.leftOff.delete(identity);
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

  /** A note speaks of a garment: it is in the scene. */
  sightNote(identity: Identity, { name, at, count, description }: NoteItem, by: string): void {
    const worn = this.figures.has(by);
    // On someone who comes in later the garment is seen there; on someone who never does, it is only here to be got.
    if (!worn && this.isSeenLater(by)) return;
    this.input.sightings.push(sight(identity, 'noted', name, at, { by, worn, count, description }));
  }

  /** A garment as it is known from here on. */
  pieceOf(identity: Identity, known: Piece['known'], at: Range): Piece {
    return { identity, known, from: this.input.ground.id, line: at.start.line, absent: false };
  }

  private unseen(person: string): Figure {
    const { label } = this.input.day;
    const outfit = this.closets.outfit(person, label) ?? this.closets.begin(person, label);
    return makeFigure(person, null, outfit, new Map());
  }

  /** `coat` on someone in a grey coat is the grey coat, and so is the coat that somebody else has just taken off. */
  private settleName(figure: Figure, sighting: Sighting): void {
    const { name } = sighting.identity;
    const meant = this.closets.meant(name, figure.person, figure.outfit) ?? this.closets.lying(name);
    if (!meant || meant === sighting.identity) return;
    const before = sighting.identity;
    for (const other of this.input.sightings) if (other.identity === before) other.identity = meant;
  }

  /** True when a `changes to` note further down lists the garment: the note tells how it comes on, and nothing need be asked. */
  private isInChange(figure: Figure, { identity, at }: Sighting): boolean {
    const { ground } = this.input;
    const told = notesOf(ground.scene.notes, 'costume').some(
      (note) =>
        note.verb === 'changes to' &&
        note.person === figure.person &&
        note.at.start.offset > at.start.offset &&
        note.garments.some(({ name }) => sameThing(name, identity.name)),
    );
    if (!told || figure.pieces.has(identity)) return false;
    const when = whenChanged(ground, at);
    figure.changedBefore ||= when === 'before' || (when === null && figure.fresh);
    return true;
  }

  /** What an image of a montage shows on someone besides is on in that image: it neither stays nor clashes. */
  private showInImage(figure: Figure, { identity, known, at }: Sighting): boolean {
    const { offset } = at.start;
    const image = this.images.find(({ start, end }) => start <= offset && offset < end);
    if (!image || figure.outfit.pieces.has(identity)) return false;
    const others = imagesIn(figure.pieces.get(identity)?.action ?? null);
    const action = image.label === null ? null : onlyInImages([...new Set([...others, image.label])]);
    figure.pieces.set(identity, { ...this.pieceOf(identity, known, at), carried: false, action });
    return true;
  }

  /** A red dress after a blue one, a nightdress after day clothes, `now in` other clothes: a change, asked about. */
  private doubtBoth(figure: Figure, { identity, known, at, words }: Sighting): void {
    if (known !== 'found' || figure.fresh) return;
    const said = readSaidChange(this.input.ground, at);
    if (figure.outfit.pieces.has(identity) && said !== 'one') return;
    const worn = [...figure.pieces.values()].filter((piece) => piece.carried);
    const clashing = rivalsOf(identity, said, worn);
    if (clashing.length === 0 || this.isNoChange(figure.person)) return;
    const { person } = figure;
    const { index } = this.input.ground;
    const before = clashing.map((piece) => piece.identity.name).join(', ');
    const now = clashing.some((piece) => piece.identity === identity) ? words : identity.name;
    this.doubts.push({ scene: index, person, before, now, line: at.start.line });
    this.renumber(figure);
    for (const piece of said === 'one' ? clashing : worn) {
      figure.outfit.pieces.delete(piece.identity);
      figure.pieces.delete(piece.identity);
    }
  }

  private costumeHere(name: string): Identity | null {
    const here = this.input.sightings
      .map(({ identity }) => identity)
      .filter((one) => categoryOfIdentity(one) === 'costumes');
    const meant = [...new Set(here)].filter((one) => sameThing(one.name, name));
    return meant.length === 1 ? (meant[0] as Identity) : null;
  }
}
