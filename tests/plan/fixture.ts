import { eighths } from '../../src/base/eighths.js';
import { slug } from '../../src/base/slug.js';
import { readBook } from '../../src/book/read-book.js';
import type { Book } from '../../src/book/types.js';
import type { Breakdown, BreakdownScene, ElementEntry, Garment, PersonEntry } from '../../src/breakdown/types.js';
import { makePlan } from '../../src/plan/make-plan.js';
import type { Plan } from '../../src/plan/plan-types.js';
import type { Light, Setting } from '../../src/script/types.js';
import type { CategoryName } from '../../src/trade/categories.js';

const nowhere = { start: { line: 1, column: 1, offset: 0 }, end: { line: 1, column: 1, offset: 0 } };

/** One thing in a scene: its states, who has it, how many. */
export interface Thing {
  readonly in?: string;
  readonly out?: string;
  readonly by?: string;
  readonly count?: number;
  readonly carried?: boolean;
}

export interface SceneSketch {
  readonly setting?: Setting;
  readonly place?: string;
  readonly light?: Light;
  readonly eighths?: number;
  readonly seconds?: number;
  readonly day?: string;
  readonly cast?: readonly string[];
  readonly things?: Readonly<Record<string, Thing>>;
  /** Person to garments; `!scarf` is a scarf that is not worn. */
  readonly wears?: Readonly<Record<string, Readonly<Record<string, Thing>>>>;
}

export interface Sketch {
  readonly scenes: readonly SceneSketch[];
  readonly categories?: Readonly<Record<string, CategoryName>>;
  readonly minors?: readonly string[];
}

/** A breakdown from a sketch: scene n has the number n and the id `sn`; a thing's id is the slug of its name. */
export function sketch({ scenes, categories = {}, minors = [] }: Sketch): Breakdown {
  const made = scenes.map((scene, index) => makeScene(scene, index, categories));
  const names = [
    ...new Set(
      scenes.flatMap((scene) => [
        ...Object.keys(scene.things ?? {}),
        ...Object.values(scene.wears ?? {}).flatMap((one) => Object.keys(one).map((name) => name.replace(/^!/, ''))),
      ]),
    ),
  ];
  const people = [...new Set(scenes.flatMap((scene) => [...(scene.cast ?? []), ...Object.keys(scene.wears ?? {})]))];
  const time = { seconds: 0, low: 0, high: 0, pageRule: 0, noted: false };
  return {
    title: 'A Test',
    draft: 'A',
    date: '2027-01-10',
    author: null,
    paper: 'a4',
    pages: 3,
    eighths: eighths(made.reduce((sum, one) => sum + one.eighths, 0)),
    screenTime: time,
    scenes: made,
    omitted: [],
    cast: people.map(
      (name): PersonEntry => ({
        id: slug(name),
        name,
        names: [name],
        age: null,
        minor: minors.includes(name),
        background: false,
        seen: made.filter((scene) => scene.cast.some((one) => one.name === name)).map((scene) => scene.id),
        heard: [],
        changes: [],
      }),
    ),
    elements: names.map((name) =>
      makeElement(name, scenes, categories[name] ?? (isWorn(name, scenes) ? 'costumes' : 'props')),
    ),
    places: [...new Set(made.map((scene) => scene.place))].map((name) => ({
      id: slug(name),
      name,
      settings: ['INT'],
      areas: [],
      scenes: made.filter((scene) => scene.place === name).map((scene) => scene.id),
      dressing: [],
      sets: [],
    })),
  };
}

function isWorn(name: string, scenes: readonly SceneSketch[]): boolean {
  return scenes.some((scene) => Object.values(scene.wears ?? {}).some((worn) => name in worn || `!${name}` in worn));
}

function makeScene(
  scene: SceneSketch,
  index: number,
  categories: Readonly<Record<string, CategoryName>>,
): BreakdownScene {
  const seconds = scene.seconds ?? 30;
  const place = scene.place ?? 'BOATHOUSE';
  return {
    id: `s${index + 1}`,
    number: String(index + 1),
    order: index + 1,
    heading: `${scene.setting ?? 'INT'}. ${place} - DAY`,
    setting: scene.setting ?? 'INT',
    place,
    placeId: slug(place),
    placeParts: [place],
    time: 'DAY',
    light: scene.light ?? 'day',
    qualifiers: [],
    part: null,
    page: 1,
    eighths: eighths(scene.eighths ?? 4),
    screenTime: { seconds, low: seconds, high: seconds, pageRule: 30, noted: false },
    storyDay: { label: scene.day ?? 'D1', series: 'D', number: 1, reason: 'a test', sure: true },
    synopsis: `Scene ${index + 1}.`,
    cast: [...new Set([...(scene.cast ?? []), ...Object.keys(scene.wears ?? {})])].map((name) => ({
      id: slug(name),
      name,
      presence: 'seen',
      voice: null,
      voiceOver: false,
      speaks: true,
      age: null,
      minor: false,
      known: 'marked',
      mentions: [],
    })),
    extras: [],
    elements: Object.entries(scene.things ?? {}).map(([name, thing]) => ({
      id: slug(name),
      name,
      category: categories[name] ?? 'props',
      known: 'marked',
      carried: thing.carried ?? false,
      from: null,
      by: thing.by ?? null,
      worn: false,
      count: thing.count ?? null,
      stateIn: thing.in ?? null,
      stateOut: thing.out ?? null,
      statesBetween: [],
      description: null,
      words: name,
      line: 1,
      mentions: [],
      confidence: null,
      strength: null,
      rules: [],
    })),
    wears: Object.entries(scene.wears ?? {}).map(([person, worn]) => ({
      person,
      change: 1,
      changeOut: 1,
      garments: Object.entries(worn).map(
        ([name, thing]): Garment => ({
          id: slug(name.replace(/^!/, '')),
          name: name.replace(/^!/, ''),
          known: 'marked',
          carried: false,
          from: null,
          stateIn: thing.in ?? null,
          stateOut: thing.out ?? null,
          statesBetween: [],
          absent: name.startsWith('!'),
          action: null,
        }),
      ),
    })),
    perhapsWorn: [],
    hazards: [],
    tasks: [],
    questions: [],
    notes: [],
    comesFrom: [],
    goesTo: [],
    at: nowhere,
  };
}

function makeElement(name: string, scenes: readonly SceneSketch[], category: CategoryName): ElementEntry {
  const at = scenes.flatMap((scene, index) => {
    const things = [scene.things?.[name], ...Object.values(scene.wears ?? {}).map((worn) => worn[name])].filter(
      (one) => one !== undefined,
    );
    return things.length > 0 ? [{ id: `s${index + 1}`, things }] : [];
  });
  const counts = at.flatMap((one) => one.things.map((thing) => thing.count ?? 0));
  return {
    id: slug(name),
    name,
    names: [name],
    category,
    known: 'marked',
    description: null,
    count: Math.max(0, ...counts) || null,
    scenes: at.map((one) => one.id),
    by: [],
    strength: null,
    states: at.flatMap((one) =>
      one.things.flatMap((thing) =>
        [thing.in, thing.out]
          .filter((state) => state !== undefined)
          .map((state) => ({ state, scene: one.id, onCamera: false })),
      ),
    ),
  };
}

/** A book that must read without a message. */
export function bookOf(text: string): Book {
  const { book, messages } = readBook(text, 'book.yaml');
  if (book === null || messages.length > 0)
    throw new Error(messages.map((one) => `${one.place?.start.line}: ${one.reason}`).join('\n'));
  return book;
}

/** The plan of a sketch and a book. */
export function planOf(scenes: Sketch, book = '', today = '2027-02-15'): Plan {
  return makePlan(sketch(scenes), bookOf(book), today).plan;
}

/** The need of one thing in a plan. */
export function needOf(plan: Plan, id: string) {
  const need = plan.needs.find((one) => one.id === id);
  if (!need) throw new Error(`no need ${id}`);
  return need;
}

/** The line of one thing in a plan. */
export function lineOf(plan: Plan, id: string) {
  const line = plan.lines.find((one) => one.id === id);
  if (!line) throw new Error(`no line ${id}`);
  return line;
}
