import type { Move } from '../find/types.js';
import { stillOnBody } from '../trade/outer-garments.js';
import { categoryOfIdentity } from './element-register.js';
import { notesOf, type SceneGround } from './ground.js';
import type { Thing } from './merge-sightings.js';
import { sameThing } from './same-thing.js';

/** What the pass of things in hand is told of a scene. */
export interface HandInput {
  readonly ground: SceneGround;
  /** Index of the scene it continues without any gap; null when there is none. */
  readonly continues: number | null;
  /** Key of the set: setting, place and areas. */
  readonly set: string;
  readonly isSeen: (person: string) => boolean;
  readonly things: readonly Thing[];
  /** Garments that someone took off in this scene and still has. */
  readonly takenOff: ReadonlySet<Thing['identity']>;
  readonly refuses: (name: string) => boolean;
  /** What the writer answered to whether a garment comes along into this scene; null without an answer. */
  readonly comesAlong: (thing: Thing) => boolean | null;
}

/** A garment taken off in one place, whose wearer goes on to another: it may lie where it was taken off, or come along. */
export interface AlongDoubt {
  readonly scene: number;
  readonly identity: Thing['identity'];
  readonly person: string;
  readonly since: string;
}

/**
 * Carries what people hold into a scene that goes on without a gap. Only what a mark or a note gives to a person goes along, or what
 * the words say is carried off; what is put down stays, what is handed over goes with its new holder. A garment taken off lies
 * where it was taken off, unless the words or the writer say that it comes along.
 */
export function carryInHand(inputs: readonly HandInput[]): { things: Thing[][]; doubts: AlongDoubt[] } {
  const carried: Thing[][] = [];
  const doubts: AlongDoubt[] = [];
  for (const [index, input] of inputs.entries()) {
    const before = input.continues === null ? undefined : inputs[input.continues];
    if (!before || input.continues === null || input.continues >= index) {
      carried.push([]);
      continue;
    }
    const inHand = carried[input.continues] ?? [];
    const here = new Set(input.things.map(({ identity }) => identity));
    const along = [...before.things, ...inHand]
      .map((thing) => leaveWith(thing, before, input, inHand.includes(thing)))
      .filter((thing) => thing !== null)
      .filter(({ identity }) => !here.has(identity) && !input.refuses(identity.name));
    const coming = along.filter((thing) => !isLeftBehind(thing, before, input) || input.comesAlong(thing) === true);
    carried.push(coming);
    const open = along.filter((thing) => !coming.includes(thing) && input.comesAlong(thing) === null);
    for (const { identity, by } of open)
      doubts.push({ scene: index, identity, person: by as string, since: before.ground.label });
  }
  return { things: carried, doubts };
}

const held: ReadonlySet<string> = new Set(['props', 'graphics', 'food']);

function leaveWith(thing: Thing, before: HandInput, input: HandInput, inHand: boolean): Thing | null {
  const category = categoryOfIdentity(thing.identity);
  const loose = category === 'costumes' && (inHand || before.takenOff.has(thing.identity));
  if (thing.known === 'implied' || (!held.has(category) && !loose)) return null;
  const last = lastMove(before.ground.finds.moves, thing);
  const sure = loose || thing.carried || thing.known === 'marked' || thing.known === 'noted';
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

/** True for a garment taken off in a place that its wearer leaves, with no word that it goes along. */
function isLeftBehind(thing: Thing, before: HandInput, input: HandInput): boolean {
  if (!before.takenOff.has(thing.identity) || before.set === input.set) return false;
  const { scene, finds } = before.ground;
  const states = notesOf(scene.notes, 'state').filter(({ element }) => sameThing(element, thing.identity.name));
  if (states.some(({ state }) => stillOnBody.test(state))) return false;
  return lastMove(finds.moves, thing)?.kind !== 'carried off';
}

function lastMove(moves: readonly Move[], thing: Thing): Move | undefined {
  return moves.findLast((move) => thing.identity.names.some((name) => sameThing(name, move.name)));
}
