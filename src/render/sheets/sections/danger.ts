import type { BreakdownScene, SceneHazard } from '../../../breakdown/types.js';
import type { Block } from '../../layout/blocks.js';
import { blank, bold, danger, type Inline, inlineRuns, italic } from '../../layout/inline.js';
import { inChargeOf } from '../../plan/scene-day-words.js';
import type { Section } from '../sheet-context.js';
import { quoteWords } from '../sheet-words.js';

/**
 * The danger box: always there, always framed. Each danger has a line or two: its name, the words that raised it, the
 * leading precaution, who must be qualified, who is in charge. The whole text stands on the pages of cautions. Folded
 * once, rows stand close; twice, only names and words stay.
 */
export const writeDanger: Section = (scene, { production }, fold) => [
  {
    kind: 'frame',
    blocks:
      scene.hazards.length === 0 ? [nothingRaised] : raised(scene, fold, production && inChargeOf(scene, production)),
  },
];

const nothingRaised: Block = {
  kind: 'paragraph',
  after: 0,
  text: [bold('Danger.'), '  Nothing raised. Checked by ', blank(140)],
};

const reminder =
  'In full, with what to read: “Cautions” at the end. Local codes and licensed people decide. There may be other dangers.';

const shortReminder = 'In full: “Cautions”. Local codes and licensed people decide. There may be other dangers.';

function raised(scene: BreakdownScene, fold: number, charge: string | null): Block[] {
  const inCharge: Inline = charge === null ? ['in charge\u00a0', blank(50)] : ['in charge\u00a0', bold(charge)];
  const columns = [{ head: '' }, { head: '', fit: true }];
  const rows = scene.hazards.map((one) => ({ cells: [shortWords(one, scene, fold), inCharge] }));
  const table: Block = { kind: 'table', headed: false, tight: fold > 0, ruled: fold === 0, columns, rows };
  if (fold > 0)
    return [{ kind: 'paragraph', size: 10, after: 1, text: [danger, bold(' Danger  '), italic(shortReminder)] }, table];
  return [
    { kind: 'paragraph', size: 13, after: 2, text: [danger, ' ', bold('Danger')] },
    table,
    { kind: 'paragraph', size: 10, after: 0, text: italic(reminder) },
  ];
}

function shortWords(hazard: SceneHazard, scene: BreakdownScene, fold: number): Words[] {
  const title = [bold(hazard.title), '  ', ...inlineRuns(raisedBy(hazard)), '. '];
  if (fold > 1) return title;
  if (isSaidElectric(hazard, scene)) return [...title, saidElectric];
  return [...title, `${leadingSentences(hazard.precaution)} `, ...shortQualified(hazard)];
}

const saidElectric = 'Said to be electric; if a real flame is used, see “Cautions”.';

/** True for a flame that is only a lamp which the writer describes as electric; another flame beside it makes it false. */
function isSaidElectric(hazard: SceneHazard, scene: BreakdownScene): boolean {
  if (hazard.id !== 'H5' || hazard.words === '') return false;
  const lamp = scene.elements.find(
    (one) => one.name === hazard.words || one.mentions.some((mention) => mention.words === hazard.words),
  );
  if (!lamp || !/\b(?:electric|battery|batteries|led)\b/i.test(lamp.description ?? '')) return false;
  const head = lamp.name.split(' ').at(-1) ?? lamp.name;
  const others = [...hazard.because.matchAll(/also “([^”]+)”/g)].map((match) => match[1] ?? '');
  return others.every((words) => words.toLowerCase().includes(head.toLowerCase()));
}

/** The first of those who must be qualified; the rest stands with the cautions. */
function shortQualified(hazard: SceneHazard): Words[] {
  const [first = ''] = hazard.qualified.split(/;|\.(?=\s|$)/);
  return first === '' || first === '-' ? [] : [bold('Qualified: '), `${first.trim()}.`];
}

/** What raised a hazard: the words of the script, the writer's own note, or the reason. */
export function raisedBy(hazard: SceneHazard): Inline {
  if (hazard.id === 'note') return 'the writer’s safety note';
  if (hazard.words === '') return hazard.because;
  const words = quoteWords(hazard.words);
  return hazard.children.length === 0 ? words : [`${words}, `, bold('child near: '), hazard.children.join(', ')];
}

type Words = Extract<Inline, readonly unknown[]>[number];

/** Who must be qualified, when the table names anyone. */
export function qualifiedWords(hazard: SceneHazard): Words[] {
  return hazard.qualified === '' || hazard.qualified === '-'
    ? []
    : [bold('Must be qualified: '), `${hazard.qualified} `];
}

/** What to read, when anything is published. */
export function readingWords(hazard: SceneHazard): Words[] {
  return hazard.reading === '' ? [] : [bold('Read: '), hazard.reading];
}

/** How much of a precaution stays when it is folded: whole sentences, at least one, of about a line. */
const shortLength = 90;

function leadingSentences(text: string): string {
  let kept = '';
  for (const [sentence] of text.matchAll(/.*?(?:[.!?](?=\s|$)|$)\s*/gs)) {
    if (kept !== '' && kept.length + sentence.length > shortLength) break;
    kept += sentence;
  }
  return kept.trim();
}
