import type { Breakdown, BreakdownScene, Question } from '../../breakdown/types.js';
import type { CategoryName } from '../../trade/categories.js';
import { severityOf } from '../../trade/hazards-order.js';
import { type Block, blank, bold, danger, type Inline, inlineRuns, joinInline } from '../layout/kit.js';
import type { RenderInput } from '../types.js';
import { answerSpace } from './answer-space.js';
import { changedSection } from './changed-section.js';
import { concernOf } from './question-kinds.js';
import { labelOf, type SceneIndex, scenesWords } from './scene-list-words.js';
import { draftWords } from './story-words.js';

/** What the first page of a helper's pack says. */
export interface ReadFirst {
  /** `Costumes`. */
  readonly title: string;
  /** How to use the paper, in order. */
  readonly howTo: readonly Inline[];
  /** The categories whose open questions concern this helper. */
  readonly categories: ReadonlySet<CategoryName>;
  /** The categories whose changes concern this helper. */
  readonly reach: ReadonlySet<CategoryName>;
  /** A sentence that says where each danger has its person in charge. */
  readonly dangersStand: string;
}

type ReadFirstInput = Pick<RenderInput, 'breakdown' | 'production' | 'comparison'>;

/** The first page of a helper's pack: whose it is, how to use it, dangers, and questions that wait for an answer. */
export function readFirstBlocks(input: ReadFirstInput, index: SceneIndex, pack: ReadFirst): Block[] {
  const { breakdown } = input;
  return [
    { kind: 'heading', level: 1, text: `${pack.title}: ${breakdown.title}`, bookmark: pack.title },
    {
      kind: 'paragraph',
      text: [bold('Read this first. '), `This paper is for ${draftWords(breakdown)}. `, ageWords(breakdown)],
    },
    changedSection(input, pack.reach),
    { kind: 'section', label: 'For', blocks: [{ kind: 'entries', entries: blanks }] },
    { kind: 'section', label: 'How to use it', blocks: [{ kind: 'entries', entries: pack.howTo }] },
    { kind: 'section', label: 'Signs', blocks: [{ kind: 'entries', entries: signs }] },
    dangerSection(input, index, pack.dangersStand),
    questionBlock(breakdown, index, pack.categories),
  ];
}

function ageWords({ draft, date }: Breakdown): string {
  return draft === null && date === null
    ? 'It names no draft and no date: ask whether it is the newest.'
    : 'Paper with another draft or date on it may be old: ask before you use it.';
}

const blanks: Inline[] = [
  ['Your name ', blank(120), '   Ask, or phone ', blank(120)],
  ['Shooting days ', blank(120), '   Where ', blank(150)],
];

const signs: Inline[] = [
  [bold('dry → soaked'), ': it changes while the camera runs. Before → after.'],
  [bold('(carried from sc 3)'), ': this scene does not name it, but it must still be there and look the same.'],
  [
    bold('(found)'),
    ': read in the text, nobody has confirmed it. ',
    bold('(implied)'),
    ': not in the text at all. Ask.',
  ],
];

/** The dangers with their scenes in a few lines; more of them is told further on. */
function dangerSection({ breakdown }: ReadFirstInput, index: SceneIndex, stand: string): Block {
  const found = groupDangers(breakdown).map(
    ([title, scenes]): Inline => [bold(title), `\u00a0(${scenesWords(idsOf(scenes), index)})`],
  );
  const blocks: Block[] = [
    {
      kind: 'paragraph',
      text: [
        danger,
        bold(' Dangers: '),
        ...(found.length === 0 ? [noDangers] : inlineRuns(joinInline(found))),
        found.length === 0 ? '' : `. ${stand}`,
      ],
    },
    { kind: 'paragraph', text: alone, after: 0 },
  ];
  return { kind: 'frame', blocks };
}

function idsOf(scenes: readonly BreakdownScene[]): string[] {
  return scenes.map((scene) => scene.id);
}

const noDangers = 'The script raised none. That does not mean there is none: look at each place and say what you see.';
const alone = 'Do nothing dangerous alone. Local rules and qualified people decide, not this paper.';

/** The scenes of each danger, the worst first. */
function groupDangers(breakdown: Breakdown): [string, BreakdownScene[]][] {
  const byTitle = new Map<string, { id: string; scenes: BreakdownScene[] }>();
  for (const scene of breakdown.scenes) {
    for (const hazard of scene.hazards) {
      const entry = byTitle.get(hazard.title) ?? { id: hazard.id, scenes: [] };
      entry.scenes.push(scene);
      byTitle.set(hazard.title, entry);
    }
  }
  return [...byTitle]
    .sort((a, b) => severityOf(a[1].id) - severityOf(b[1].id))
    .map(([title, { scenes }]) => [title, scenes]);
}

const mostQuestions = 8;

function questionBlock(breakdown: Breakdown, index: SceneIndex, wanted: ReadonlySet<CategoryName>): Block {
  const kinds = new Map(
    breakdown.elements.flatMap(({ id, name, category }) => [id, name].map((key) => [key, category] as const)),
  );
  const concerns = (question: Question) => wanted.has(concernOf(question, kinds) ?? 'cast');
  const all = breakdown.scenes.flatMap((scene) =>
    scene.questions
      .filter(concerns)
      .map((question): Inline => [`? sc ${labelOf(scene.id, index)}: ${question.text}`, ...answerSpace(question, 110)]),
  );
  const shown = all.slice(0, mostQuestions);
  const more = all.length - shown.length;
  const rest: Inline[] = more > 0 ? [`and ${more} more: see the list of questions.`] : [];
  const entries = all.length === 0 ? ['None about these things.'] : [...shown, ...rest];
  return { kind: 'section', label: 'Open questions', blocks: [{ kind: 'entries', entries }] };
}
