import { breakRules } from '../trade/page-measures.js';
import { isSentenceEnd, type Position, positionAfter, type Row } from './rows.js';
import type { TypesetBlock } from './typeset.js';
import type { Unit } from './units.js';

/** A place where a unit may be parted: the rows that stay, and where it goes on. */
export interface Split {
  readonly rows: readonly (Row | null)[];
  readonly rest: Position;
  /** True when a speech is parted: one more row is needed for (MORE). */
  readonly more: boolean;
}

/** The last place after a sentence at which the unit may be parted within `room` rows, or null. */
export function splitAtSentence(unit: Unit, rows: readonly (Row | null)[], room: number): Split | null {
  for (let at = Math.min(rows.length, room) - 1; at >= 0; at--) {
    const row = rows[at];
    if (!row || !mayPart(unit, rows, at, row, room)) continue;
    for (let token = row.to - 1; token >= row.from; token--) {
      const split = isSentenceEnd(unit, row, token) && cutAfter(unit, rows, at, row, token + 1);
      if (split) return split;
    }
  }
  return null;
}

/** The last line end at which the unit may be parted within `room` rows, inside a sentence or not; or null. */
export function splitAtLine(unit: Unit, rows: readonly (Row | null)[], room: number): Split | null {
  for (let at = Math.min(rows.length, room) - 1; at >= 0; at--) {
    const row = rows[at];
    const split = row && mayPart(unit, rows, at, row, room) && cutAfter(unit, rows, at, row, row.to);
    if (split) return split;
  }
  return null;
}

/** Parts a unit that no page can hold wherever the page is full. */
export function splitAnywhere(unit: Unit, rows: readonly (Row | null)[], room: number): Split | null {
  for (let at = Math.min(rows.length, room) - 1; at >= 0; at--) {
    const row = rows[at];
    if (!row || row.index < 0) continue;
    const block = unit[row.block] as TypesetBlock;
    const rest = positionAfter(unit, row, row.to) ?? { block: row.block + 1, paragraph: 0, token: 0 };
    const more = block.cue !== null && rest.block === row.block;
    if (rest.block < unit.length && at + 1 + (more ? 1 : 0) <= room) return { rows: rows.slice(0, at + 1), rest, more };
  }
  return null;
}

/** Only an action or a speech may be parted, with two of its lines before the break and room for (MORE). */
function mayPart(unit: Unit, rows: readonly (Row | null)[], at: number, row: Row, room: number): boolean {
  const block = unit[row.block] as TypesetBlock;
  if (row.paragraph.kind !== 'action' && row.paragraph.kind !== 'dialogue') return false;
  if (block.kind === 'speech' && at + 2 > room) return false;
  let lines = 0;
  for (let up = at; up >= 0 && rows[up]?.block === row.block; up--) {
    if (rows[up]?.paragraph.kind === row.paragraph.kind) lines += 1;
    if (lines >= breakRules.leastLinesBefore) return true;
  }
  return false;
}

function cutAfter(unit: Unit, rows: readonly (Row | null)[], at: number, row: Row, token: number): Split | null {
  const rest = positionAfter(unit, row, token);
  if (!rest || !hasSpokenOrSeen(unit, rest)) return null;
  return {
    rows: [...rows.slice(0, at), { ...row, to: token }],
    rest,
    more: (unit[row.block] as TypesetBlock).cue !== null,
  };
}

/** A parenthetical alone is no speech to go on with. */
function hasSpokenOrSeen(unit: Unit, rest: Position): boolean {
  const { paragraphs } = unit[rest.block] as TypesetBlock;
  for (let at = rest.paragraph; at < paragraphs.length; at++) {
    const paragraph = paragraphs[at];
    if (paragraph && paragraph.kind !== 'parenthetical' && paragraph.tokens.starts.length > 0) return true;
  }
  return false;
}
