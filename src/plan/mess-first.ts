import type { Breakdown, BreakdownScene, SceneElement, Wears } from '../breakdown/types.js';
import { findMessMaker } from '../trade/mess-makers.js';
import { findStateChanges } from '../trade/state-changes.js';
import { formatHours } from './copies.js';
import type { MessFirst } from './mess-types.js';
import type { Need, Use } from './need-types.js';
import { hoursBetween, type ShootingOrder } from './shooting-order.js';
import type { Slot } from './slot-types.js';

const messy = ['wet', 'bloody', 'dirty'] as const;
type Mess = (typeof messy)[number];

/**
 * Everything that gets wet, bloody or dirty in a scene that is shot before one that wants it clean. Where the states of a
 * thing say so, and the story has the clean scene first, one copy alone is a risk to warn of. Where blood, rain or a soaking is in a
 * scene and a garment of the same person is wanted clean later, nobody knows whether it is hit: that is a question.
 */
export function findMessFirst(breakdown: Breakdown, needs: readonly Need[], order: ShootingOrder): MessFirst[] {
  const own = needs.flatMap(messOfThing);
  const near = breakdown.scenes.flatMap((scene) => messNear(scene, needs, order));
  return [...own, ...near].sort((a, b) => a.scene.index - b.scene.index);
}

function messOfThing(need: Need): MessFirst[] {
  if (need.usedUp || copiesOf(need) > 1) return [];
  return need.uses.flatMap((use, index): MessFirst[] => {
    const kinds = messIn(use.stateOut);
    const clean = need.uses
      .slice(index + 1)
      .filter(
        (later) => later.storyOrder < use.storyOrder && !kinds.every((kind) => messIn(later.stateIn).includes(kind)),
      );
    const first = clean[0];
    // Said once, at the last messy scene before the clean one.
    const again = need.uses.slice(index + 1).find((later) => messIn(later.stateOut).length > 0);
    if (kinds.length === 0 || !first || (again && again.slot.index < first.slot.index)) return [];
    const words = `${need.name} is ${use.stateOut} in sc ${use.slot.label} and clean in ${scenesWords(clean)}, shot after it (${thereWords(use.slot, first.slot)}), with one copy: get a second, clean it in between, or shoot ${scenesWords(clean)} first`;
    return [{ scene: use.slot, clean: clean.map((one) => one.slot), things: [need.id], sure: true, words }];
  });
}

function messNear(scene: BreakdownScene, needs: readonly Need[], order: ShootingOrder): MessFirst[] {
  const slot = order.byScene.get(scene.id);
  // Without shooting days no order is fixed, and there is nothing to ask yet.
  if (!slot || slot.day === null) return [];
  const found = scene.wears.flatMap((wears) => {
    const [source] = sourcesOn(wears, scene);
    const hit = source ? garmentsHit(wears, source.kind, slot, needs) : [];
    // Where there are two of everything, it is settled.
    return source && hit.some(({ need }) => copiesOf(need) < 2)
      ? [{ person: wears.person, label: source.label, hit }]
      : [];
  });
  // One question for everybody near the same mess.
  const sources = [...new Set(found.map((one) => one.label))];
  return sources.map((label) =>
    askNear(
      slot,
      label,
      found.filter((one) => one.label === label),
    ),
  );
}

interface Hit {
  readonly need: Need;
  readonly clean: readonly Use[];
}

/** What a person wears that is wanted clean in a scene shot later. */
function garmentsHit(wears: Wears, kind: Mess, slot: Slot, needs: readonly Need[]): Hit[] {
  return wears.garments.flatMap((garment) => {
    if (garment.absent || messIn(garment.stateOut ?? garment.stateIn).includes(kind)) return [];
    const need = needs.find((one) => one.id === garment.id);
    const clean = need?.uses.filter((use) => use.slot.index > slot.index && !messIn(use.stateIn).includes(kind));
    return need && clean && clean.length > 0 ? [{ need, clean }] : [];
  });
}

interface Source {
  readonly kind: Mess;
  readonly label: string;
}

/** What may spoil the clothes of one person in a scene: a garment of theirs that gets so, make-up of theirs, an effect on all. */
function sourcesOn(wears: Wears, scene: BreakdownScene): Source[] {
  const spoilt = wears.garments.flatMap((one) => {
    const before = messIn(one.stateIn);
    const [kind] = messIn(one.stateOut).filter((mess) => !before.includes(mess));
    return kind ? [{ kind, label: `${one.name}: ${one.stateOut}` }] : [];
  });
  const near = scene.elements.flatMap((element) => {
    const maker = isMessy(element) ? findMessMaker(element.name) : null;
    return maker && (element.by === null || element.by === wears.person) ? [maker] : [];
  });
  return [...spoilt, ...near];
}

function isMessy({ category, carried }: SceneElement): boolean {
  return (category === 'makeup' || category === 'effects') && !carried;
}

function askNear(
  scene: Slot,
  label: string,
  people: readonly { readonly person: string; readonly hit: readonly Hit[] }[],
): MessFirst {
  const hits = people.flatMap((one) => one.hit);
  const slots = new Map(hits.flatMap((one) => one.clean.map((use) => [use.slot.scene, use.slot])));
  const clean = [...slots.values()].sort((a, b) => a.index - b.index);
  const names = people.map(({ person, hit }) => `${person}: ${hit.map(({ need }) => nameWithCopies(need)).join(', ')}`);
  const words = `sc ${scene.label}, ${label}: does it get on other clothes that are wanted clean in ${labels(clean)}, shot after it (${thereWords(scene, clean[0] as Slot)})? ${names.join('; ')}. If it may: a second copy, a cover, or shoot ${labels(clean)} first`;
  return { scene, clean, things: hits.map(({ need }) => need.id), sure: false, words };
}

function nameWithCopies(need: Need): string {
  const copies = copiesOf(need);
  return copies > 1 ? `${need.name} (${copies} copies: keep one clean)` : need.name;
}

/** Copies that there will be: as decided, else as advised. */
function copiesOf(need: Need): number {
  return need.decided ?? need.recommended;
}

function messIn(state: string | null): Mess[] {
  if (state === null) return [];
  const kinds = findStateChanges(state).map((row) => row.kind);
  return messy.filter((mess) => kinds.includes(mess));
}

function scenesWords(uses: readonly Use[]): string {
  return labels(uses.map((use) => use.slot));
}

function labels(slots: readonly Slot[]): string {
  return `sc ${slots.map((slot) => slot.label).join(', ')}`;
}

function thereWords(from: Slot, to: Slot): string {
  const hours = hoursBetween(from, to);
  return hours === null ? 'no day yet' : `${formatHours(hours)} in between`;
}
