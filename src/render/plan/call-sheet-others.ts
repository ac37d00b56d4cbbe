import { formatClockTime } from '../../base/clock-time.js';
import type { BreakdownScene } from '../../breakdown/types.js';
import type { PlanDay } from '../../plan/day-types.js';
import type { Slot } from '../../plan/slot-types.js';
import { listSpeakersAmong } from '../../plan/speakers-among.js';
import { blank, bold, type Inline, type TableRow } from '../layout/kit.js';
import { labelOf } from '../words/scene-list-words.js';
import type { CallSheetGround } from './call-sheet-types.js';
import { calledAt, helperWords } from './plan-words.js';

/** Whoever comes without a part: people in the background, children among them with somebody for them, animals with their owner. */
export function otherCallRows(day: PlanDay, scenes: readonly BreakdownScene[], ground: CallSheetGround): TableRow[] {
  const groups = groupById(scenes.flatMap((scene, place) => comersIn(scene, day.scenes[place] as Slot)));
  return groups.flatMap((all): TableRow[] => {
    const first = all[0] as Comer;
    const counts = all.flatMap((one) => (one.count === null ? [] : [one.count]));
    const called = [...new Set(all.flatMap((one) => one.called))];
    const count = counts.length > 0 ? Math.max(...counts) - called.length : null;
    // Everybody of the group has a row by name.
    if (count !== null && count < 1) return [];
    const labels = [...new Set(all.map((one) => labelOf(one.scene, ground.index)))];
    return [
      {
        cells: [
          formatClockTime(calledAt(first.slot, day) % 1440),
          [nameOf(first, count, ground), called.length > 0 ? ` beside ${called.join(' and ')}` : ''].flat(),
          labels.join(', '),
          first.kind === 'animal' ? ownerWords(first.id, ground) : '',
        ],
      },
    ];
  });
}

interface Comer {
  readonly kind: 'extra' | 'animal';
  readonly id: string;
  readonly name: string;
  readonly count: number | null;
  /** Those of the group who are called by name in a row of their own. */
  readonly called: readonly string[];
  readonly scene: string;
  readonly slot: Slot;
}

function comersIn(scene: BreakdownScene, slot: Slot): Comer[] {
  const animals = scene.elements.filter((one) => one.category === 'animals' && one.known !== 'implied');
  return [
    ...scene.extras.map((extra): Comer => {
      const called = listSpeakersAmong(extra, scene.cast).map((person) => person.name);
      const { id, name, count } = extra;
      return { kind: 'extra', id, name, count, called, scene: scene.id, slot };
    }),
    ...animals.map(
      ({ id, name, count }): Comer => ({ kind: 'animal', id, name, count, called: [], scene: scene.id, slot }),
    ),
  ];
}

function groupById(comers: readonly Comer[]): Comer[][] {
  const groups = new Map<string, Comer[]>();
  for (const one of comers) {
    const key = `${one.kind}/${one.id}`;
    groups.set(key, [...(groups.get(key) ?? []), one]);
  }
  return [...groups.values()];
}

function nameOf({ kind, id, name }: Comer, count: number | null, { production }: CallSheetGround): Inline {
  const words = count !== null && count > 1 ? `${count} × ${name}` : name;
  const group = kind === 'extra' ? production.plan.background.find((one) => one.id === id) : undefined;
  if (!group?.minor) return bold(words);
  const sign = group.entry?.minor ? '  MINOR' : '  MINOR?';
  return [bold(words), bold(sign), ' with ', group.with ?? blank(60)];
}

/** Who brings an animal and stays with it. */
function ownerWords(id: string, { production }: CallSheetGround): Inline {
  const line = production.plan.lines.find((one) => one.id === id);
  const owner = line?.owner ?? line?.from ?? null;
  const helper = line?.who ? `, ask ${helperWords(line.who, production.book)}` : '';
  return owner === null ? ['with its owner ', blank(60)] : `with ${owner}${helper}`;
}
