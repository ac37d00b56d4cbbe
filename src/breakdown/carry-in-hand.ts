import type { Move } from '../find/types.js';
import { categoryOfIdentity } from './element-register.js';
import type { SceneGround } from './ground.js';
import type { Thing } from './merge-sightings.js';
import { sameThing } from './same-thing.js';

/** What the pass of things in hand is told of a scene. */
export interface HandInput {
  readonly ground: SceneGround;
  /** Index of the scene it continues without any gap; null when there is none. */
  readonly continues: number | null;
  readonly isSeen: (person: string) => boolean;
  readonly things: readonly Thing[];
  /** Garments that someone took off in this scene and still has. */
  readonly takenOff: ReadonlySet<Thing['identity']>;
  readonly refuses: (name: string) => boolean;
}

/**
 * Carries what people hold into a scene that goes on without a gap. Only what a mark or a note gives to a person goes along, or what
 * the words say is carried off; what is put down stays, what is handed over goes with its new holder.
 */
export function carryInHand(inputs: readonly HandInput[]): Thing[][] {
  const carried: Thing[][] = [];
  for (const [index, input] of inputs.entries()) {
    const before = input.continues === null ? undefined : inputs[input.continues];
    if (!before || input.continues === null || input.continues >= index) {
      carried.push([]);
      continue;
    }
    const held = [...before.things, ...(carried[input.continues] ?? [])];
    const here = new Set(input.things.map(({ identity }) => identity));
    const along = held.map((thing) => leaveWith(thing, before, input)).filter((thing) => thing !== null);
    carried.push(along.filter(({ identity }) => !here.has(identity) && !input.refuses(identity.name)));
  }
  return carried;
}

const held: ReadonlySet<string> = new Set(['props', 'graphics', 'food']);

function leaveWith(thing: Thing, before: HandInput, input: HandInput): Thing | null {
  const category = categoryOfIdentity(thing.identity);
  const loose = category === 'costumes' && before.takenOff.has(thing.identity);
  if (thing.known === 'implied' || (!held.has(category) && !loose)) return null;
  const last = lastMove(before.ground.finds.moves, thing);
  const sure = thing.carried || thing.known === 'marked' || thing.known === 'noted';
  if (last?.kind === 'put down' || (!sure && last?.kind !== 'carried off')) return null;
  const holders =
    last?.kind === 'handed over'
      ? [last.to]
      : last?.kind === 'carried off'
        ? [last.to, last.from, thing.by]
        : [thing.by];
  const by = holders.find((person) => person !== null && before.isSeen(person) && input.isSeen(person)) ?? null;
  if (by === null) return null;
  return { ...thing, carried: true, from: thing.from ?? before.ground.id, by, worn: false };
}

function lastMove(moves: readonly Move[], thing: Thing): Move | undefined {
  return moves.findLast((move) => thing.identity.names.some((name) => sameThing(name, move.name)));
}
