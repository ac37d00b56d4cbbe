import { formatDuration } from '../../base/duration.js';
import { formatEighths } from '../../base/eighths.js';
import type { BreakdownScene } from '../../breakdown/types.js';
import type { Block, TableRow } from '../layout/blocks.js';
import { bold } from '../layout/inline.js';
import { extraWords, speakerAmong } from '../words/extras-words.js';
import { labelOf, type SheetContext } from './sheet-context.js';
import { placeWords, quietWords } from './sheet-words.js';

/** The list of scenes, a row each, for pages on their side. */
export function writeSceneList(context: SheetContext): Block[] {
  return [
    { kind: 'heading', level: 1, text: 'The scenes, in story order', bookmark: 'The scenes' },
    {
      kind: 'table',
      columns: [
        { head: 'Scene', fit: true },
        { head: 'Where', fit: true },
        { head: 'Place', share: 2.2 },
        { head: 'Light', fit: true },
        { head: 'Day', fit: true },
        { head: 'Pages', fit: true, align: 'right' },
        { head: 'Time', fit: true, align: 'right' },
        { head: 'People', share: 2.2 },
        { head: 'What happens', share: 4 },
      ],
      rows: context.breakdown.scenes.map((scene) => sceneRow(scene, context)),
    },
  ];
}

function sceneRow(scene: BreakdownScene, context: SheetContext): TableRow {
  const { storyDay } = scene;
  return {
    changed: context.changes?.sentences.has(scene.id) ?? false,
    cells: [
      bold(labelOf(scene, context)),
      scene.setting,
      placeWords(scene.placeParts),
      lightWords(scene),
      storyDay.sure ? storyDay.label : `${storyDay.label} ?`,
      formatEighths(scene.eighths),
      formatDuration(scene.screenTime.seconds),
      peopleWords(scene),
      scene.synopsis,
    ],
  };
}

/** The light; the time as written when it says more. */
function lightWords(scene: BreakdownScene): string {
  const written = scene.time ? quietWords(scene.time) : '';
  return scene.light ?? written;
}

/** How many names a row lists before it counts. */
const mostPeople = 9;

function peopleWords(scene: BreakdownScene): string {
  const cast = scene.cast.map((person) => (person.presence === 'heard' ? `${person.name} (heard)` : person.name));
  const extras = scene.extras.map((extra) => `${extraWords(extra)}${speakerAmong(extra, scene.cast)}`);
  const all = [...cast, ...extras];
  const more = all.length - mostPeople;
  return more > 1 ? `${all.slice(0, mostPeople).join(', ')} and ${more} more` : all.join(', ');
}
