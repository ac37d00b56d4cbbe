import { eighths } from '../../src/base/eighths.js';
import type { Range } from '../../src/base/text-range.js';
import type {
  Breakdown,
  BreakdownScene,
  CostumeChange,
  ElementEntry,
  Garment,
  Mention,
  PersonEntry,
  PlaceEntry,
  Question,
  SceneCast,
  SceneElement,
  SceneExtra,
  SceneHazard,
  ScreenTime,
} from '../../src/breakdown/types.js';
import type { PurchaseLine } from '../../src/plan/types.js';

/** A range on one line; offsets are made up and must never reach an output. */
export function onLine(line: number): Range {
  return { start: { line, column: 1, offset: line * 1000 }, end: { line, column: 9, offset: line * 1000 + 8 } };
}

export const mention = (words: string, line: number): Mention => ({ words, line, at: onLine(line) });

export function makeTime(seconds: number, pageRule: number): ScreenTime {
  return { seconds, low: Math.round(seconds * 0.8), high: Math.round(seconds * 1.3), pageRule, noted: false };
}

export function makeCast(part: Partial<SceneCast> & Pick<SceneCast, 'name'>): SceneCast {
  return {
    id: part.name.toLowerCase(),
    presence: 'seen',
    voice: null,
    voiceOver: part.voice === 'voice-over',
    speaks: true,
    age: null,
    minor: false,
    known: 'marked',
    mentions: [],
    ...part,
  };
}

export function makeExtra(part: Partial<SceneExtra> & Pick<SceneExtra, 'name'>): SceneExtra {
  return { id: part.name.replaceAll(' ', '-'), count: null, known: 'noted', words: part.name, line: 1, ...part };
}

export function makeElement(part: Partial<SceneElement> & Pick<SceneElement, 'name'>): SceneElement {
  const line = part.line ?? 1;
  return {
    id: part.name.replaceAll(' ', '-'),
    category: 'props',
    known: 'marked',
    carried: false,
    from: null,
    by: null,
    worn: false,
    count: null,
    stateIn: null,
    stateOut: null,
    statesBetween: [],
    description: null,
    words: part.carried ? '' : part.name,
    line,
    mentions: part.carried ? [] : [mention(part.name, line)],
    confidence: null,
    strength: null,
    rules: [],
    ...part,
  };
}

export function makeGarment(part: Partial<Garment> & Pick<Garment, 'name'>): Garment {
  return {
    id: part.name.replaceAll(' ', '-'),
    known: 'noted',
    carried: false,
    from: null,
    stateIn: null,
    stateOut: null,
    statesBetween: [],
    absent: false,
    action: null,
    ...part,
  };
}

export function makeScene(part: Partial<BreakdownScene> & Pick<BreakdownScene, 'order' | 'place'>): BreakdownScene {
  return {
    id: `scene-${part.order}`,
    number: String(part.order),
    heading: `${part.setting ?? 'INT'}. ${part.place.toUpperCase()} - ${part.time ?? 'DAY'}`,
    setting: 'INT',
    placeId: part.place.toLowerCase().replaceAll(' ', '-'),
    placeParts: [part.place],
    time: 'DAY',
    light: 'day',
    qualifiers: [],
    part: null,
    page: 1,
    eighths: eighths(3),
    screenTime: makeTime(30, 22.5),
    storyDay: { label: 'D1', series: 'D', number: 1, reason: 'the first scene', sure: true },
    synopsis: '',
    cast: [],
    extras: [],
    elements: [],
    wears: [],
    perhapsWorn: [],
    hazards: [],
    tasks: [],
    questions: [],
    notes: [],
    comesFrom: [],
    goesTo: [],
    at: onLine(part.order * 10),
    ...part,
  };
}

export function makePerson(part: Partial<PersonEntry> & Pick<PersonEntry, 'name'>): PersonEntry {
  return {
    id: part.name.toLowerCase(),
    names: [part.name],
    age: null,
    minor: false,
    background: false,
    seen: [],
    heard: [],
    changes: [],
    ...part,
  };
}

export function makeChange(part: Partial<CostumeChange> & Pick<CostumeChange, 'number'>): CostumeChange {
  return { storyDay: 'D1', scenes: [], garments: [], ...part };
}

export function makeEntry(part: Partial<ElementEntry> & Pick<ElementEntry, 'name'>): ElementEntry {
  return {
    id: part.name.replaceAll(' ', '-'),
    names: [part.name],
    category: 'props',
    known: 'marked',
    description: null,
    count: null,
    scenes: [],
    by: [],
    states: [],
    strength: null,
    ...part,
  };
}

export function makePlace(part: Partial<PlaceEntry> & Pick<PlaceEntry, 'name'>): PlaceEntry {
  return {
    id: part.name.toLowerCase().replaceAll(' ', '-'),
    settings: ['INT'],
    areas: [],
    sets: [],
    scenes: [],
    dressing: [],
    ...part,
  };
}

export function makeHazard(part: Partial<SceneHazard> & Pick<SceneHazard, 'title'>): SceneHazard {
  return {
    id: 'H1',
    words: part.title,
    line: 1,
    because: 'a mark',
    children: [],
    precaution: 'Keep one adult watching.',
    reading: 'local guidance',
    qualified: 'a named adult',
    ...part,
  };
}

export function makeQuestion(part: Partial<Question> & Pick<Question, 'id' | 'text'>): Question {
  return {
    key: part.id,
    line: 1,
    settle: `Type "> answer: ${part.id}; your answer".`,
    kind: 'story',
    element: null,
    wants: 'words, yes or no',
    choices: [],
    ...part,
  };
}

export function makePurchase(part: Partial<PurchaseLine> & Pick<PurchaseLine, 'name'>): PurchaseLine {
  return {
    id: part.name.replaceAll(' ', '-'),
    department: 'props',
    category: 'props',
    description: null,
    scenes: ['1'],
    firstScene: '1',
    states: [],
    usedUp: false,
    inScript: null,
    usedBy: [],
    known: 'marked',
    ...part,
  };
}

export function makeBreakdown(part: Partial<Breakdown> = {}): Breakdown {
  return {
    title: 'Untitled',
    draft: null,
    date: null,
    author: null,
    paper: 'letter',
    pages: 1,
    eighths: eighths(3),
    screenTime: makeTime(30, 22.5),
    scenes: [],
    omitted: [],
    cast: [],
    elements: [],
    places: [],
    ...part,
  };
}
