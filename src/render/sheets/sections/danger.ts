import type { BreakdownScene, SceneHazard } from '../../../breakdown/types.js';
import type { Block, TableRow } from '../../layout/blocks.js';
import { blank, bold, danger, type Inline, inlineRuns, italic } from '../../layout/inline.js';
import { inChargeOf } from '../../plan/scene-day-words.js';
import type { Section } from '../sheet-context.js';
import { quoteWords } from '../sheet-words.js';

/**
 * The danger box: always there, always framed. Folded once, what to read moves to the pages of cautions; twice, only the
 * first sentences of each precaution stay; three times, none.
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

const reminder = 'Local codes and licensed people decide. There may be other dangers.';
const whole = 'General cautions: rules change, check them. ';
const more = 'Full text: “Cautions” at the end. ';

function raised(scene: BreakdownScene, fold: number, charge: string | null): Block[] {
  const inCharge: Inline = charge === null ? ['in charge ', blank(62)] : ['in charge ', bold(charge)];
  const { hazards } = scene;
  const columns = [{ head: '' }, { head: '', width: 104 }];
  const row = (cells: TableRow['cells']): Block => ({ kind: 'table', headed: false, columns, rows: [{ cells }] });
  const short = hazards.map((one) => ({ cells: [shortWords(one, fold), inCharge] }));
  return [
    { kind: 'paragraph', size: 13, after: 2, text: [danger, ' ', bold('Danger')] },
    ...(fold < 2
      ? hazards.flatMap((one, i) => [
          ...(i > 0 ? [ruleAbove] : []),
          row([titleWords(one), inCharge]),
          ...fullWords(one, fold),
        ])
      : [{ kind: 'table', headed: false, tight: fold > 2, ruled: fold < 3, columns, rows: short } as const]),
    { kind: 'paragraph', size: 10, after: 0, text: italic((fold === 0 ? whole : more) + reminder) },
  ];
}

const ruleAbove: Block = { kind: 'rule', weight: 'row' };

function fullWords(hazard: SceneHazard, fold: number): Block[] {
  if (hazard.precaution === '') return [];
  const words = [`${hazard.precaution} `, ...qualifiedWords(hazard), ...(fold === 0 ? readingWords(hazard) : [])];
  return [{ kind: 'paragraph', size: 10, after: 1, text: words }];
}

function shortWords(hazard: SceneHazard, fold: number): Words[] {
  if (fold > 2) return titleWords(hazard);
  return [...titleWords(hazard), ` ${leadingSentences(hazard.precaution)} `, ...qualifiedWords(hazard)];
}

function titleWords(hazard: SceneHazard): Words[] {
  return [bold(hazard.title), '  ', ...inlineRuns(raisedBy(hazard)), '.'];
}

/** What raised a hazard: the words of the script, the writer's own note, or the reason. */
export function raisedBy(hazard: SceneHazard): Inline {
  if (hazard.id === 'note') return `safety note (line ${hazard.line})`;
  return hazard.words === '' ? hazard.because : `${quoteWords(hazard.words)} (line ${hazard.line})`;
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
