import type { BreakdownScene, Garment, PerhapsWorn, SceneCast, SceneExtra, Wears } from '../../../breakdown/types.js';
import { isOnAfter, isOnBefore } from '../../../breakdown/worn-when.js';
import type { Block, TableRow } from '../../layout/blocks.js';
import { blank, bold, type Inline, inlineRuns, joinInline } from '../../layout/inline.js';
import { knownWords, stateWords } from '../../layout/known-words.js';
import { extraWords, speakerAmong } from '../../words/extras-words.js';
import { perhapsWords } from '../../words/perhaps-worn.js';
import type { Section, SheetContext } from '../sheet-context.js';

/**
 * Who is in the scene, how, in which costume change, and in which state. Folded once, rows stand close and background people share one;
 * folded twice, all stand in running text without garments.
 */
export const writePeople: Section = (scene, context, fold) => {
  if (scene.cast.length + scene.extras.length === 0) return section([{ kind: 'paragraph', text: 'Nobody is named.' }]);
  if (fold > 1) return section([{ kind: 'paragraph', text: runIn(scene, context) }]);
  const marked = context.changes?.subjects.get(scene.id) ?? new Set<string>();
  const rows = [
    ...scene.cast.map((person) => ({ ...castRow(person, scene, context), changed: marked.has(person.name) })),
    ...(fold === 0 ? scene.extras.map((extra) => extraRow(extra, scene, context)) : sharedRow(scene, context)),
  ];
  const columns = [{ head: '', width: 96 }, { head: '', fit: true }, { head: '' }];
  return section([{ kind: 'table', headed: false, ruled: fold === 0, tight: fold > 0, size: 10.5, columns, rows }]);
};

function section(blocks: readonly Block[]): Block[] {
  return [{ kind: 'section', label: 'People', blocks }];
}

function castRow(person: SceneCast, scene: BreakdownScene, context: SheetContext): TableRow {
  const name: Inline[] = [[bold(person.name), space(knownWords(person, context.labels))]];
  if (person.minor) name.push([bold('MINOR'), person.age ? `, age ${person.age}` : '']);
  const how: Inline[] = [presenceWords(person)];
  if (person.minor) how.push(['hours ', blank(48)]);
  if (person.presence === 'heard') return { cells: [{ stack: name }, presenceWords(person)] };
  return { cells: [{ stack: name }, { stack: how }, { stack: costumeLines(person, scene, context) }] };
}

function space(words: string): string {
  return words === '' ? '' : ` ${words}`;
}

const voices = {
  'voice-over': 'heard only: recorded voice',
  'off-screen': 'heard only, off screen: called that day',
  phone: 'heard only, on the phone',
} as const;

/** How a person is there: `speaks`, `silent`, or heard and how. */
export function presenceWords(person: SceneCast): string {
  if (person.presence === 'seen') return person.speaks ? 'speaks' : 'silent';
  return person.voice ? voices[person.voice] : 'heard only';
}

function wearsOf(person: SceneCast, scene: BreakdownScene): Wears | undefined {
  return scene.wears.find((wears) => wears.person === person.name || wears.person === person.id);
}

/** What a person comes in, and under it what they change into before the camera; `?` where nothing tells. */
function costumeLines(person: SceneCast, scene: BreakdownScene, context: SheetContext): Inline[] {
  const wears = wearsOf(person, scene);
  if (!wears) return [['costume: ? not told ', blank(90)]];
  const { garments, change, changeOut } = wears;
  const perhaps = scene.perhapsWorn.find((one) => one.person === wears.person);
  if (changeOut === change) return [changeLine(`change ${change}`, garments, perhaps, context)];
  return [
    changeLine(`change ${change}`, garments.filter(isOnBefore), perhaps, context),
    changeLine(`then ${changeOut} on camera`, garments.filter(isOnAfter), undefined, context),
  ];
}

function changeLine(
  change: string,
  garments: readonly Garment[],
  perhaps: PerhapsWorn | undefined,
  context: SheetContext,
): Inline {
  const told = garments.map((garment) => garmentWords(garment, context));
  if (perhaps) return [bold(change), `: ${[...told, perhapsWords(perhaps, context.labels)].join('; ')} `, blank(60)];
  return told.length === 0 ? [bold(change), ': ? not told ', blank(110)] : [bold(change), `: ${told.join('; ')}`];
}

/** `change 2`, or `change 2, then 3 on camera`. */
export function changeWords(wears: Wears): string {
  return wears.changeOut === wears.change
    ? `change ${wears.change}`
    : `change ${wears.change}, then ${wears.changeOut} on camera`;
}

/** A garment with its states and how it is known; one that must not be worn reads `no scarf`. */
export function garmentWords(garment: Garment, context: SheetContext): string {
  if (garment.absent) return `${garment.action === 'left off' ? 'from then on ' : ''}no ${garment.name}`;
  const state = stateWords(garment);
  // A garment worn on from the scene before is the normal case: only the finder's own reading needs its word.
  const known = knownWords({ known: garment.known }, context.labels);
  return [garment.name + (state ? `, ${state}` : ''), known].filter((part) => part !== '').join(' ');
}

function extraRow(extra: SceneExtra, scene: BreakdownScene, context: SheetContext): TableRow {
  const count: Inline[] = extra.count === null ? [['how many? ', blank(60)]] : [];
  return { cells: [extraName(extra, scene, context), 'background', ...count] };
}

function extraName(extra: SceneExtra, scene: BreakdownScene, context: SheetContext): Inline {
  return [bold(extraWords(extra)), space(knownWords(extra, context.labels)), speakerAmong(extra, scene.cast)];
}

function sharedRow(scene: BreakdownScene, context: SheetContext): TableRow[] {
  if (scene.extras.length === 0) return [];
  const words = scene.extras.map((extra): Inline => {
    const count = extra.count === null ? [' how many? ', blank(28)] : [];
    return [...inlineRuns(extraName(extra, scene, context)), ...count];
  });
  return [{ cells: ['background', joinInline(words)] }];
}

function runIn(scene: BreakdownScene, context: SheetContext): Inline {
  const cast = scene.cast.map((person): Inline => {
    const wears = person.presence === 'seen' ? wearsOf(person, scene) : undefined;
    const words = [presenceWords(person), ...(person.minor ? ['MINOR'] : []), ...(wears ? [changeWords(wears)] : [])];
    return [bold(person.name), space(knownWords(person, context.labels)), ` (${words.join(', ')})`];
  });
  const extras = scene.extras.map(
    (extra) => `${extraWords(extra)}${speakerAmong(extra, scene.cast)}${extra.count === null ? ' (how many?)' : ''}`,
  );
  return joinInline([...cast, ...extras]);
}
