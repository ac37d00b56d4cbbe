import type { BreakdownScene, SceneHazard } from '../../../breakdown/types.js';
import { hazardCaution } from '../../../trade/hazards.js';
import type { Block, TableRow } from '../../layout/blocks.js';
import { blank, bold, danger, type Inline, italic } from '../../layout/inline.js';
import type { Section } from '../sheet-context.js';

/**
 * The danger box: always there, always framed. Folded once, what to read moves to the pages of cautions; folded twice,
 * only the first sentence of each precaution stays.
 */
export const writeDanger: Section = (scene, _context, fold) => [
  {
    kind: 'frame',
    blocks: scene.hazards.length === 0 ? [nothingRaised] : raised(scene, fold),
  },
];

const nothingRaised: Block = {
  kind: 'paragraph',
  after: 0,
  text: [bold('Danger.'), '  Nothing raised. Checked by ', blank(140)],
};

function raised(scene: BreakdownScene, fold: number): Block[] {
  const title: Block = {
    kind: 'paragraph',
    size: 13,
    after: 1,
    text: [danger, ' ', bold('Danger')],
    keepWithNext: true,
  };
  const rows = scene.hazards.map((hazard) => hazardRow(hazard, fold));
  const where = fold > 0 ? ' What to read stands on the pages of cautions at the end.' : '';
  return [
    title,
    { kind: 'table', headed: false, columns: [{ head: '', width: 136 }, { head: '' }], rows },
    { kind: 'paragraph', size: 10, after: 0, text: italic(hazardCaution + where) },
  ];
}

function hazardRow(hazard: SceneHazard, fold: number): TableRow {
  const what: Inline[] = [bold(hazard.title), raisedBy(hazard), ['in charge ', blank(84)]];
  const precaution = fold > 1 ? firstSentence(hazard.precaution) : hazard.precaution;
  const lines: Inline[] = [precaution];
  if (hazard.qualified !== '' && hazard.qualified !== '-') lines.push([bold('Must be qualified: '), hazard.qualified]);
  if (fold === 0 && hazard.reading !== '') lines.push([bold('Read: '), hazard.reading]);
  return { cells: [{ stack: what }, { stack: lines }] };
}

/** What raised a hazard: the words of the script when there are any, else the reason. */
export function raisedBy(hazard: SceneHazard): Inline {
  return hazard.words === '' ? hazard.because : `“${hazard.words}” (line ${hazard.line})`;
}

function firstSentence(text: string): string {
  return /^.*?[.!?](?=\s|$)/s.exec(text)?.[0] ?? text;
}
