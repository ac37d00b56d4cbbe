import type { Breakdown, SceneElement } from '../../src/breakdown/types.js';
import type { CategoryName } from '../../src/trade/categories.js';
import { hazards } from '../../src/trade/hazards.js';
import {
  makeBreakdown,
  makeCast,
  makeElement,
  makeExtra,
  makeGarment,
  makeHazard,
  makeQuestion,
  makeScene,
} from './make-breakdown.js';

const times = <T>(count: number, make: (i: number) => T): T[] => Array.from({ length: count }, (_, i) => make(i + 1));

function things(category: CategoryName, count: number, part: Partial<SceneElement> = {}): SceneElement[] {
  return times(count, (i) => makeElement({ name: `${category} thing ${i}`, category, ...part }));
}

/** A breakdown of one scene with `size` of everything; from about 8 on its sheet cannot show all of it unfolded. */
export function crowdedScene(size: number): Breakdown {
  const scene = makeScene({
    order: 1,
    place: 'Market hall',
    synopsis: 'Everything happens at once.',
    cast: times(size, (i) => makeCast({ name: `Person ${i}`, age: i === 1 ? '9' : null, minor: i === 1 })),
    extras: times(size, (i) => makeExtra({ name: `kind ${i}`, count: i })),
    elements: [
      ...things('props', size, { by: 'Person 1', stateIn: 'dry', stateOut: 'soaked' }),
      ...things('dressing', size),
      ...things('sound', size),
      ...things('effects', size),
      ...things('makeup', size, { by: 'Person 1' }),
    ],
    wears: times(size, (i) => ({
      person: `Person ${i}`,
      change: 1,
      changeOut: 2,
      garments: [makeGarment({ name: `coat ${i}`, stateIn: 'dry', stateOut: 'soaked', action: 'taken off' })],
    })),
    hazards: hazards
      .slice(0, Math.min(size, hazards.length))
      .map(({ source: _source, ...hazard }) => makeHazard(hazard)),
    tasks: times(size, (i) => ({
      text: `Prepare task ${i}`,
      strength: i % 3 === 0 ? 'certain' : i % 3 === 1 ? 'likely' : 'ask',
      words: `words of task ${i}`,
      line: i,
      rule: `I${i}`,
    })),
    questions: times(size, (i) => makeQuestion({ id: `question-${i}`, text: `What about matter ${i}?` })),
    notes: times(size, (i) => ({ kind: 'free', text: `Note ${i} to everyone.`, line: i })),
    comesFrom: [],
    goesTo: [],
  });
  return makeBreakdown({ title: 'Market', scenes: [scene], paper: 'a4' });
}
