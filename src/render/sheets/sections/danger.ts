import type { BreakdownScene, SceneHazard } from '../../../breakdown/types.js';
import { hazardCaution } from '../../../trade/hazards.js';
import type { Block, TableRow } from '../../layout/blocks.js';
import { blank, bold, danger, type Inline, inlineRuns, italic } from '../../layout/inline.js';
import type { Section } from '../sheet-context.js';

/**
 * The danger box: always there, always framed. Folded once, what to read moves to the pages of cautions; twice, only the
 * first sentence of each precaution stays; three times, none of it.
 */
export const writeDanger: Section = (scene, _context, fold) => [
  { kind: 'frame', blocks: scene.hazards.length === 0 ? [nothingRaised] : raised(scene, fold) },
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
  const where = fold > 0 ? ' More stands on the pages of cautions at the end.' : '';
  return [
    title,
    ...(fold < 2 ? [hazardTable(scene.hazards, fold)] : scene.hazards.map((hazard) => hazardLine(hazard, fold))),
    { kind: 'paragraph', size: 10, after: 0, text: italic(hazardCaution + where) },
  ];
}

function hazardTable(hazards: readonly SceneHazard[], fold: number): Block {
  const rows = hazards.map((hazard): TableRow => {
    const what: Inline[] = [bold(hazard.title), raisedBy(hazard), ['in charge ', blank(84)]];
    const lines: Inline[] = [hazard.precaution, ...qualifiedWords(hazard)];
    if (fold === 0 && hazard.reading !== '') lines.push([bold('Read: '), hazard.reading]);
    return { cells: [{ stack: what }, { stack: lines }] };
  });
  return { kind: 'table', headed: false, columns: [{ head: '', width: 136 }, { head: '' }], rows };
}

function qualifiedWords(hazard: SceneHazard): Inline[] {
  return hazard.qualified === '' || hazard.qualified === '-' ? [] : [[bold('Must be qualified: '), hazard.qualified]];
}

function hazardLine(hazard: SceneHazard, fold: number): Block {
  const precaution = fold === 2 ? [` ${firstSentence(hazard.precaution)}`] : [];
  const qualified = fold === 2 ? qualifiedWords(hazard).flatMap((words) => [' ', ...inlineRuns(words)]) : [];
  const text = [bold(hazard.title), ' ', ...inlineRuns(raisedBy(hazard)), '.', ...precaution, ...qualified];
  return { kind: 'paragraph', size: 10, after: 1, hang: 12, text: [...text, '  In charge ', blank(84)] };
}

/** What raised a hazard: the words of the script when there are any, else the reason. */
export function raisedBy(hazard: SceneHazard): Inline {
  return hazard.words === '' ? hazard.because : `“${hazard.words}” (line ${hazard.line})`;
}

function firstSentence(text: string): string {
  return /^.*?[.!?](?=\s|$)/s.exec(text)?.[0] ?? text;
}
