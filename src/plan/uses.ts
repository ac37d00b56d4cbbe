import { foldName } from '../base/slug.js';
import type { BookElement } from '../book/types.js';
import type { Breakdown, BreakdownScene, ElementEntry } from '../breakdown/types.js';
import { isPaper } from '../trade/drying-times.js';
import { quantityDefaults } from '../trade/quantity-defaults.js';
import { findStateChanges } from '../trade/state-changes.js';
import { isSealed } from '../trade/used-up-words.js';
import { crowdWearing } from './crowd-wear.js';
import type { Use } from './need-types.js';
import type { ShootingOrder } from './shooting-order.js';
import { isPressed } from './state-conversion.js';

/** What the breakdown says of one thing in one scene, whether it lies there, is carried or worn. */
export interface Appearance {
  readonly scene: BreakdownScene;
  readonly stateIn: string | null;
  readonly stateOut: string | null;
  readonly by: readonly string[];
  readonly count: number;
  readonly worn: boolean;
  readonly carried: boolean;
  /** A garment that is not worn here, and that this matters. */
  readonly absent: boolean;
  readonly action: string | null;
}

/** Every scene in which a thing appears, in story order, by the id of the thing. */
export function listAppearances(breakdown: Breakdown): ReadonlyMap<string, readonly Appearance[]> {
  const all = new Map<string, Appearance[]>();
  for (const scene of breakdown.scenes) {
    for (const [id, one] of appearancesIn(scene)) {
      const list = all.get(id) ?? [];
      list.push(one);
      all.set(id, list);
    }
  }
  return all;
}

function appearancesIn(scene: BreakdownScene): Map<string, Appearance> {
  const here = new Map<string, Appearance>();
  for (const element of scene.elements) {
    here.set(element.id, {
      scene,
      stateIn: element.stateIn,
      stateOut: element.stateOut,
      by: element.by === null ? [] : [element.by],
      count: Math.max(1, element.count ?? 1, crowdWearing(scene, element)?.count ?? 1),
      worn: element.worn,
      carried: element.carried,
      absent: false,
      action: null,
    });
  }
  for (const wears of scene.wears) {
    for (const garment of wears.garments) {
      const known = here.get(garment.id);
      const by = [...new Set([...(known?.by ?? []), ...(garment.absent ? [] : [wears.person])])];
      here.set(garment.id, {
        scene,
        stateIn: known?.stateIn ?? garment.stateIn,
        stateOut: known?.stateOut ?? garment.stateOut,
        by,
        count: Math.max(known?.count ?? 1, by.length),
        worn: !garment.absent || (known?.worn ?? false),
        carried: garment.carried && (known?.carried ?? true),
        absent: garment.absent && !known,
        action: garment.action,
      });
    }
  }
  return here;
}

/** Turns the appearances of one thing into uses in shooting order, with the copies that each one asks for. */
export function listUses(
  entry: ElementEntry,
  appearances: readonly Appearance[],
  book: BookElement | null,
  order: ShootingOrder,
  perTake: (scene: string) => { atLeast: number; advised: number },
): Use[] {
  // A count of the whole script that no scene tells is that of its first scene.
  const told = Math.max(1, ...appearances.map((one) => one.count));
  const defined = (entry.count ?? 1) > told ? (entry.count ?? 1) : 1;
  const uses = appearances
    .filter((one) => !one.absent)
    .map((one): Use => {
      const slot = order.byScene.get(one.scene.id);
      if (!slot) throw new Error(`no slot for scene ${one.scene.id}`);
      const stateOut = one.stateOut ?? one.stateIn;
      const onCamera =
        stateOut !== null && stateOut !== one.stateIn ? changeOnCamera(one.stateIn, stateOut, entry, book) : null;
      // The book's own figure wins over what the script tells.
      const count = book?.together ?? Math.max(one.count, one.scene.id === entry.scenes[0] ? defined : 1);
      const demand = askedFor(onCamera, count, perTake(one.scene.id));
      return {
        scene: one.scene.id,
        slot,
        storyOrder: one.scene.order,
        stateIn: one.stateIn,
        stateOut,
        by: one.by,
        count,
        worn: one.worn,
        carried: one.carried,
        onCamera,
        ...demand,
      };
    });
  return uses.sort((a, b) => a.slot.index - b.slot.index);
}

function askedFor(onCamera: Use['onCamera'], count: number, perTake: { atLeast: number; advised: number }) {
  if (onCamera === 'copy each take') return { atLeast: perTake.atLeast * count, advised: perTake.advised * count };
  const held = onCamera === 'a pair' ? count * quantityDefaults.wornDoubles.value : count;
  return { atLeast: held, advised: held };
}

/** What one take of a change costs: as the book says, else by the words of the state; wet paper and a broken seal stay so, creased cloth is pressed. */
function changeOnCamera(
  from: string | null,
  to: string,
  { name, category }: ElementEntry,
  book: BookElement | null,
): 'copy each take' | 'a pair' | 'reset' {
  const said = book?.states.find((one) => foldName(one.state) === foldName(to));
  if (said?.onCamera) return said.onCamera;
  if (said?.undo === 'never') return 'copy each take';
  const before = new Set(from === null ? [] : findStateChanges(from).map((row) => row.kind));
  const pressed = isPressed(book?.material ?? null, name, category === 'costumes');
  const rows = findStateChanges(to).filter((row) => !before.has(row.kind) && !(row.kind === 'crumpled' && pressed));
  if (rows.some((row) => row.onCamera === 'copy each take')) return 'copy each take';
  if (rows.some((row) => row.kind === 'wet') && isPaper(book?.material ?? null, name)) return 'copy each take';
  if (isSealed(name) && /\bopen(?:ed)?\b/i.test(to) && !/\bopen(?:ed)?\b/i.test(from ?? '')) return 'copy each take';
  return rows.some((row) => row.onCamera === 'a pair') ? 'a pair' : 'reset';
}
