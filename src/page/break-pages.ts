import { breakRules } from '../trade/page-measures.js';
import { type Split, splitAnywhere, splitAtLine, splitAtSentence } from './page-splits.js';
import { layRows, type Position, type Row, unitStart } from './rows.js';
import { setText, type TypesetBlock } from './typeset.js';
import type { Unit } from './units.js';

/** A row with its place on the page (1-based). */
export interface PlacedRow {
  readonly row: number;
  readonly line: Row;
  readonly block: TypesetBlock;
}

export interface BrokenPages {
  readonly pages: readonly (readonly PlacedRow[])[];
  readonly forced: readonly ForcedSplit[];
}

/** A block that had to be parted inside a sentence, and the page (1-based) that ends there. */
export interface ForcedSplit {
  readonly block: TypesetBlock;
  readonly page: number;
}

const more = setText(breakRules.more, 'more', 'more');

/** Puts units on pages of `height` rows by the rules for page ends. */
export function breakPages(units: readonly Unit[], height: number): BrokenPages {
  const breaker = new PageBreaker(height);
  for (const unit of units) {
    if (unit[0]?.kind === 'page break') breaker.turnPage();
    else breaker.place(unit);
  }
  return { pages: breaker.pages.filter((page) => page.length > 0), forced: breaker.forced };
}

class PageBreaker {
  readonly pages: PlacedRow[][] = [[]];
  readonly forced: ForcedSplit[] = [];
  /** Rows used on the last page. */
  private used = 0;

  constructor(private readonly height: number) {}

  /** Starts a page, unless the last one is still empty. */
  turnPage(): void {
    if (this.used === 0) return;
    this.pages.push([]);
    this.used = 0;
  }

  /** Places a unit, over as many pages as it needs. */
  place(unit: Unit): void {
    let from: Position | null = unitStart;
    while (from) {
      const blank = this.used === 0 ? 0 : 1;
      const room = this.height - this.used - blank;
      const rows = layRows(unit, from, Math.max(0, room) + 1);
      if (rows.length <= room) {
        this.put(unit, rows, blank);
        return;
      }
      const split = this.chooseSplit(unit, rows, room, blank);
      if (split) this.putSplit(unit, split, blank);
      this.turnPage();
      if (split) from = split.rest;
    }
  }

  /** Where to part a unit that does not fit; null moves all of it to the next page. */
  private chooseSplit(unit: Unit, rows: readonly (Row | null)[], room: number, blank: number): Split | null {
    const split = splitAtSentence(unit, rows, room);
    const filled = split ? this.used + blank + split.rows.length + (split.more ? 1 : 0) : this.used;
    const empty = this.height - filled;
    if (empty <= this.height * breakRules.mostEmpty) return split;
    const anyway = splitAtLine(unit, rows, room);
    if (anyway) {
      const block = unit[anyway.rest.block] as TypesetBlock;
      if (this.forced.at(-1)?.block !== block) this.forced.push({ block, page: this.pages.length });
      return anyway;
    }
    return split ?? (this.used === 0 ? splitAnywhere(unit, rows, room) : null);
  }

  private putSplit(unit: Unit, split: Split, blank: number): void {
    this.put(unit, split.rows, blank);
    const block = unit[split.rest.block] as TypesetBlock;
    if (!split.more) return;
    this.used += 1;
    const line: Row = { paragraph: more, from: 0, to: more.tokens.starts.length, block: split.rest.block, index: -1 };
    this.pages.at(-1)?.push({ row: this.used, line, block });
  }

  private put(unit: Unit, rows: readonly (Row | null)[], blank: number): void {
    this.used += blank;
    for (const line of rows) {
      this.used += 1;
      if (line) this.pages.at(-1)?.push({ row: this.used, line, block: unit[line.block] as TypesetBlock });
    }
  }
}
