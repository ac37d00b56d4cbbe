import type { ElementRegister, Identity } from './element-register.js';
import { obtain } from './grouping.js';
import { isNamed, sameThing } from './same-thing.js';
import type { Known } from './types.js';

/** A garment in a change of costume. */
export interface Piece {
  readonly identity: Identity;
  readonly known: Known;
  /** The scene that last speaks of it, and the line. */
  readonly from: string;
  readonly line: number;
  /** True when it is said not to be worn. */
  readonly absent: boolean;
}

/** What a person has on from some point of a story day. */
export interface Outfit {
  change: number;
  /** False until a scene has shown it. */
  used: boolean;
  /** True when a note gave the whole list. */
  listed: boolean;
  pieces: Map<Identity, Piece>;
}

/** Every person's clothes through the script: what is on, by story day, and what was ever worn. */
export class Closets {
  private readonly outfits = new Map<string, Map<string, Outfit>>();
  private readonly counters = new Map<string, number>();
  private readonly owned = new Map<string, Set<Identity>>();
  /** Garments that someone took off, with the story day: only on that day can another person pick them up. */
  private readonly letGo = new Map<Identity, string>();
  private today = '';
  private readonly wearers = new Map<Identity, string>();

  constructor(private readonly register: ElementRegister) {}

  /** The outfit of a person on a story day, or null before the first scene of that day. */
  outfit(person: string, day: string): Outfit | null {
    return this.outfits.get(person)?.get(day) ?? null;
  }

  /** Turns to a scene of a story day. */
  turnTo(day: string): void {
    this.today = day;
  }

  /** Begins a new change of costume. */
  begin(person: string, day: string): Outfit {
    for (const [identity, wearer] of this.wearers) if (wearer === person) this.wearers.delete(identity);
    const outfit: Outfit = { change: this.nextNumber(person), used: false, listed: false, pieces: new Map() };
    obtain(this.outfits, person, () => new Map()).set(day, outfit);
    return outfit;
  }

  /** Goes on in the clothes of another day. */
  keep(person: string, from: Outfit, day: string): Outfit {
    const outfit = { ...from, pieces: new Map(from.pieces) };
    obtain(this.outfits, person, () => new Map()).set(day, outfit);
    return outfit;
  }

  nextNumber(person: string): number {
    const number = (this.counters.get(person) ?? 0) + 1;
    this.counters.set(person, number);
    return number;
  }

  /** Notes that a garment is a person's, and on. Returns who had it on until now on this story day, when that was someone else. */
  own(person: string, identity: Identity): string | null {
    obtain(this.owned, person, () => new Set()).add(identity);
    this.wearers.set(identity, person);
    this.letGo.delete(identity);
    let before: string | null = null;
    for (const [other, days] of this.outfits) {
      const pieces = days.get(this.today)?.pieces;
      if (other === person || pieces?.get(identity)?.absent !== false) continue;
      pieces.delete(identity);
      before = other;
    }
    return before;
  }

  /** Notes that nobody wears a garment now: another person may put on this very one. */
  release(identity: Identity): void {
    this.wearers.delete(identity);
    this.letGo.set(identity, this.today);
  }

  /**
   * The garment that a note means by a name. A garment has a track apart from its owner: a name that someone else has just taken
   * off is that garment; a name that someone else still wears is another one.
   */
  garment(name: string, person: string): Identity {
    const mine = this.known(name, person);
    if (mine) return mine;
    const declared = this.register.declaredAs(name);
    if (declared && (this.wearers.get(declared) ?? person) === person) return declared;
    if (declared && (declared.definition || declared.known === 'marked')) return declared;
    const lent = this.lyingToday().find((one) => isNamed(one.names, name));
    return lent ?? this.register.garment(name, person);
  }

  /** A garment of this exact name that the person has worn, or null. */
  known(name: string, person: string): Identity | null {
    return [...(this.owned.get(person) ?? [])].find((one) => isNamed(one.names, name)) ?? null;
  }

  /** The one garment that a loose name can mean: among those worn now, else among all the person ever wore. */
  meant(name: string, person: string, outfit: Outfit | null): Identity | null {
    const exact = this.known(name, person);
    if (exact) return exact;
    return onlyOne(outfit ? [...outfit.pieces.keys()] : [], name) ?? onlyOne([...(this.owned.get(person) ?? [])], name);
  }

  /** The one garment taken off today, and on nobody, that a loose name can mean. */
  lying(name: string): Identity | null {
    return onlyOne(this.lyingToday(), name);
  }

  /** The one garment of anyone, on or off, that a name can mean: of exactly this name, else the only one like it. */
  everWorn(name: string): Identity | null {
    const all = [...new Set([...this.owned.values()].flatMap((set) => [...set]))];
    const [exact, ...others] = all.filter((one) => isNamed(one.names, name));
    return exact && others.length === 0 ? exact : onlyOne(all, name);
  }

  /** A thing of a new name. */
  declare(name: string): Identity {
    return this.register.declare(name, 'noted');
  }

  private lyingToday(): Identity[] {
    return [...this.letGo].filter(([, day]) => day === this.today).map(([identity]) => identity);
  }
}

function onlyOne(identities: readonly Identity[], name: string): Identity | null {
  const [only, ...others] = identities.filter((one) => sameThing(one.name, name));
  return only && others.length === 0 ? only : null;
}
