import type { BreakdownScene, Garment } from '../../../breakdown/types.js';
import { bold, type Inline } from '../../layout/inline.js';
import { stateWords } from '../../layout/known-words.js';
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

function garmentActions(scene: BreakdownScene): Entry[] {
  return scene.wears.flatMap((wears) =>
    wears.garments
      .filter((garment) => garment.action !== null || changes(garment))
      .map((garment): Entry => [bold(wears.person), `: ${garment.name} ${actionWords(garment)}`]),
  );
}

function changes(garment: Garment): boolean {
  return garment.stateOut !== null && garment.stateOut !== garment.stateIn;
}

function actionWords(garment: Garment): string {
  const state = changes(garment) ? stateWords(garment.stateIn, garment.stateOut) : '';
  return [garment.action ?? '', state].filter((part) => part !== '').join(', ');
}

/** Make-up and hair, and clothes that nobody is known to wear. */
function otherEntries(scene: BreakdownScene, context: SheetContext): Entry[] {
  const worn = new Set(scene.wears.flatMap((wears) => wears.garments.map((garment) => garment.id)));
  return elementsIn(scene, ['costumes', 'makeup'])
    .filter((element) => element.category === 'makeup' || !worn.has(element.id))
    .map((element): Entry => {
      const state = stateWords(element.stateIn, element.stateOut);
      const who = element.by ? [bold(element.by), ': '] : [];
      const name = elementName(element, context) as Entry;
      const whose = element.by === null && element.category === 'costumes' ? ', whose?' : '';
      return [...who, ...name, state ? `, ${state}` : '', whose];
    });
}
