import { formatDuration } from '../base/duration.js';
import { formatEighths } from '../base/eighths.js';
import { foldName } from '../base/slug.js';
import type { Breakdown, BreakdownScene } from '../breakdown/types.js';
import { type Explanation, quote, sceneName } from './explain-words.js';

/** Where background people of a name come from. */
export function explainExtras(asked: string, breakdown: Breakdown): Explanation[] {
  const lines = breakdown.scenes.flatMap((scene) =>
    scene.extras
      .filter(({ name, id }) => foldName(name) === asked || id === asked)
      .flatMap(({ known, count, words, line }) => [
        `${sceneName(scene, breakdown)}: ${known}, ${count === null ? 'nobody has said how many' : `${count} of them`}`,
        `  line ${line}: ${quote(words)}`,
      ]),
  );
  return lines.length > 0 ? [{ title: `${asked}, background people`, lines }] : [];
}

/** Why scenes play on a story day: `d2`, `f1`, `day 2`. */
export function explainDays(asked: string, breakdown: Breakdown): Explanation[] {
  const label = /^(?:story )?day (\d+)$/.exec(asked)?.[1];
  const wanted = label === undefined ? asked.toUpperCase() : `D${label}`;
  const lines = breakdown.scenes
    .filter(({ storyDay }) => storyDay.label === wanted)
    .map(
      (scene) => `${sceneName(scene, breakdown)}: ${scene.storyDay.reason}${scene.storyDay.sure ? '' : ' (not sure)'}`,
    );
  return lines.length > 0 ? [{ title: `${wanted}, a story day`, lines }] : [];
}

/** What is in a state, in which scenes. */
export function explainStates(asked: string, breakdown: Breakdown): Explanation[] {
  const is = (state: string | null) => state !== null && foldName(state) === asked;
  const lines = breakdown.scenes.flatMap((scene) => [
    ...scene.elements.filter(({ worn }) => !worn).flatMap((one) => stateLines(one, sceneName(scene, breakdown), is)),
    ...scene.wears.flatMap(({ person, garments }) =>
      garments.flatMap((one) =>
        stateLines({ ...one, name: `${one.name} of ${person}` }, sceneName(scene, breakdown), is),
      ),
    ),
  ]);
  return lines.length > 0 ? [{ title: `"${asked}", a state`, lines }] : [];
}

interface InState {
  readonly name: string;
  readonly stateIn: string | null;
  readonly stateOut: string | null;
  readonly from: string | null;
}

function stateLines({ name, stateIn, stateOut }: InState, scene: string, is: (state: string | null) => boolean) {
  if (is(stateIn)) return [`${scene}: ${name} comes in so`];
  return is(stateOut) ? [`${scene}: ${name} becomes so here`] : [];
}

/** Which scenes have a figure, and how it is reckoned: a length in eighths, a time on the screen, the totals. */
export function explainFigures(asked: string, breakdown: Breakdown): Explanation[] {
  return [
    ...scenesWith(asked, 'a length in pages', breakdown, (scene) => [
      ['the lines it fills', formatEighths(scene.eighths)],
    ]),
    ...scenesWith(asked, 'a time on the screen', breakdown, timesOf),
    ...explainTotals(asked, breakdown),
  ];
}

type Figures = (scene: BreakdownScene) => readonly (readonly [string, string])[];

function timesOf({ screenTime: { seconds, low, high, pageRule, noted } }: BreakdownScene) {
  const reckoned = [
    ['from what is said and done', formatDuration(seconds)],
    ['the least, from what is said and done', formatDuration(low)],
    ['the most, from what is said and done', formatDuration(high)],
  ] as const;
  const first = noted ? ([['from a time note', formatDuration(seconds)]] as const) : reckoned;
  return [...first, ['a minute a page', formatDuration(pageRule)] as const];
}

function scenesWith(asked: string, what: string, breakdown: Breakdown, figures: Figures): Explanation[] {
  if (!/\d[/:]\d/.test(asked)) return [];
  const lines = breakdown.scenes.flatMap((scene) => {
    const from = figures(scene).filter(([, figure]) => figure === asked);
    return from.length > 0 ? [`${sceneName(scene, breakdown)}: ${from.map(([words]) => words).join('; ')}`] : [];
  });
  return lines.length > 0 ? [{ title: `${asked}, ${what}`, lines }] : [];
}

function explainTotals(asked: string, { pages, eighths, screenTime, scenes }: Breakdown): Explanation[] {
  const { seconds, low, high, pageRule } = screenTime;
  const figures = [formatEighths(eighths), formatDuration(seconds), formatDuration(pageRule)];
  if (asked !== 'total' && asked !== 'totals' && !(scenes.length > 1 && figures.includes(asked) && /[/:]/.test(asked)))
    return [];
  const lines = [
    `length: ${formatEighths(eighths)} pages, the sum of ${scenes.length} scenes; laid out on ${pages} pages`,
    `on screen: ${formatDuration(seconds)}, ${formatDuration(low)} to ${formatDuration(high)}, the sum of the scenes; a minute a page gives ${formatDuration(pageRule)}`,
  ];
  return [{ title: 'the whole script', lines }];
}
