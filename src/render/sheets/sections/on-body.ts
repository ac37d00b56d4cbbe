import type { BreakdownScene, Garment } from '../../../breakdown/types.js';
import { bold, type Inline } from '../../layout/inline.js';
import { changesState, stateWords } from '../../layout/known-words.js';
import type { Section, SheetContext } from '../sheet-context.js';
import { foldedWords } from '../sheet-words.js';
import { elementName, elementsIn } from './element-words.js';

/** What happens to clothes, hair and skin inside the scene; folded, in running text, then a count. */
export const writeOnBody: Section = (scene, context, fold) => {
  const all = [...garmentActions(scene), ...otherEntries(scene, context)];
  const entries: Entry[] = fold > 1 && all.length > 0 ? [[foldedWords(all.length, 'thing')]] : all;
  if (entries.length === 0) return [];
  const blocks =
    fold > 0
      ? [{ kind: 'paragraph', text: entries.flatMap((entry, i) => (i === 0 ? entry : ['; ', ...entry])) } as const]
      : [{ kind: 'entries', entries } as const];
  return [{ kind: 'section', label: 'Costume and make-up', blocks }];
};

type Entry = Extract<Inline, readonly unknown[]>;

/** A change on camera is one entry, whatever its garments; besides it stand only those to which more happens. */
function garmentActions(scene: BreakdownScene): Entry[] {
  return scene.wears.flatMap(({ person, change, changeOut, garments }): Entry[] => {
    const whole: Entry[] = change === changeOut ? [] : [[bold(person), `: change ${change} → ${changeOut} on camera`]];
    const own = garments.filter((one) => changesState(one) || (one.action !== null && !isTold(one, whole.length > 0)));
    return [...whole, ...own.map((one): Entry => [bold(person), `: ${one.name} ${actionWords(one)}`])];
  });
}

/** True when the entry for the whole change, or the list of what is worn, already tells what happens. */
function isTold({ action }: Garment, inChange: boolean): boolean {
  return action === 'left off' || (inChange && (action === 'put on' || action === 'taken off'));
}

function actionWords(garment: Garment): string {
  const state = changesState(garment) ? stateWords(garment) : '';
  return [garment.action ?? '', state].filter((part) => part !== '').join(', ');
}

/** Make-up and hair, and clothes that nobody is known to wear. */
function otherEntries(scene: BreakdownScene, context: SheetContext): Entry[] {
  const worn = new Set(scene.wears.flatMap((wears) => wears.garments.map((garment) => garment.id)));
  return elementsIn(scene, ['costumes', 'makeup'])
    .filter((element) => element.category === 'makeup' || !worn.has(element.id))
    .map((element): Entry => {
      const state = stateWords(element);
      const who = element.by ? [bold(element.by), ': '] : [];
      const name = elementName(element, context) as Entry;
      const whose = element.by === null && element.category === 'costumes' ? ', whose?' : '';
      return [...who, ...name, state ? `, ${state}` : '', whose];
    });
}
