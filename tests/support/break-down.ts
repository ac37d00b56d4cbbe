import { movePoint } from '../../src/base/text-range.js';
import { buildBreakdown } from '../../src/breakdown/build-breakdown.js';
import type { BreakdownScene, SceneElement } from '../../src/breakdown/types.js';
import { type Find, type Finds, type Move, noFinds, type PersonFind } from '../../src/find/types.js';
import { paginate } from '../../src/page/paginate.js';
import { readScriptText } from '../../src/script/read-script.js';
import type { Script } from '../../src/script/types.js';

/** What a finder would have read, told by the words it rests on; the place is looked up in the source. */
export interface Told {
  readonly elements?: readonly (Pick<Find, 'name' | 'category'> & { readonly words: string } & Partial<Find>)[];
  readonly people?: readonly (Pick<PersonFind, 'name' | 'kind'> & { readonly words: string } & Partial<PersonFind>)[];
  readonly moves?: readonly (Pick<Move, 'name' | 'kind'> & { readonly words: string } & Partial<Move>)[];
  readonly others?: (script: Script) => Partial<Finds>;
}

/** Breaks a script text down, with a finder's reading told by hand. */
export function breakDown(text: string, told: Told = {}) {
  const { script, messages: readMessages } = readScriptText(text, 'test.md');
  if (!script) throw new Error('The text cannot be read.');
  const laid = paginate(script);
  const finds: Finds = {
    ...noFinds,
    elements: (told.elements ?? []).map((one) => ({ ...plainFind, ...locate(script, one.words), ...one })),
    people: (told.people ?? []).map((one) => ({ ...plainPerson, ...locate(script, one.words), ...one })),
    moves: (told.moves ?? []).map((one) => ({ from: null, to: null, ...locate(script, one.words), ...one })),
    ...told.others?.(script),
  };
  const { breakdown, messages } = buildBreakdown(script, laid.pages, finds);
  return {
    script,
    breakdown,
    scenes: breakdown.scenes,
    messages,
    codes: messages.map(({ code }) => code),
    readMessages,
  };
}

const plainFind = {
  known: 'found' as const,
  count: null,
  by: null,
  worn: false,
  state: null,
  confidence: 0.9,
  rules: ['told by hand'],
  strength: null,
};

const plainPerson = { count: null, presence: 'seen' as const, confidence: 0.9 };

/** The scene and place of the first stretch of these words; `words#2` is the second one. */
export function locate(script: Script, told: string) {
  const [words = '', nth = '1'] = told.split('#');
  let offset = -1;
  for (let count = 0; count < Number(nth); count++) offset = script.source.indexOf(words, offset + 1);
  if (offset < 0) throw new Error(`No "${told}" in the script.`);
  const before = script.source.slice(0, offset).split('\n');
  const start = { line: before.length, column: (before.at(-1)?.length ?? 0) + 1, offset };
  const scene = script.scenes.findIndex(({ at }) => at.start.offset <= offset && offset < at.end.offset);
  return { scene, words, at: { start, end: movePoint(start, words.length) } };
}

/** The elements of a scene by name. */
export function elementsOf(scene: BreakdownScene | undefined): Record<string, SceneElement> {
  return Object.fromEntries((scene?.elements ?? []).map((element) => [element.name, element]));
}

/** The states of one element through the script, `in > out` a scene, `-` where it is not. */
export function statesOf(scenes: readonly BreakdownScene[], name: string): string[] {
  return scenes.map((scene) => {
    const element = scene.elements.find((one) => one.name === name);
    return element ? `${element.stateIn ?? ''} > ${element.stateOut ?? ''}` : '-';
  });
}

/** What a person wears in every scene: the change, then the garments with what happens to them. */
export function clothesOf(scenes: readonly BreakdownScene[], person: string): string[] {
  return scenes.map((scene) => {
    const wears = scene.wears.find((one) => one.person === person);
    if (!wears) return '-';
    const change = wears.change === wears.changeOut ? `${wears.change}` : `${wears.change} to ${wears.changeOut}`;
    const garments = wears.garments.map(
      ({ name, carried, absent, action }) =>
        `${absent ? 'no ' : ''}${name}${carried ? ' (carried)' : ''}${action ? ` (${action})` : ''}`,
    );
    return `${change}: ${garments.join(', ')}`;
  });
}
