import type { DraftFacts, NamedFacts, SceneFacts, ThingFacts } from '../../src/compare/types.js';

export function makeThing(name: string, part: Partial<ThingFacts> = {}): ThingFacts {
  const id = name.replaceAll(' ', '-');
  return { id, name, category: 'props', by: null, count: null, stateIn: null, stateOut: null, ...part };
}

export function makeSceneFacts(part: Partial<SceneFacts> & Pick<SceneFacts, 'id'>): SceneFacts {
  return {
    label: part.id,
    setting: 'INT',
    place: `PLACE ${part.id}`,
    placeId: null,
    time: 'DAY',
    light: 'day',
    storyDay: 'D1',
    eighths: 8,
    synopsis: `What happens in ${part.id}.`,
    cast: [],
    extras: [],
    things: [],
    wears: [],
    dangers: [],
    ...part,
  };
}

/** A draft whose people and things are those of its scenes. */
export function makeDraft(scenes: readonly SceneFacts[], part: Partial<DraftFacts> = {}): DraftFacts {
  const garments = scenes.flatMap((scene) => scene.wears.flatMap((wears) => wears.garments));
  return {
    title: 'Two Cups',
    draft: 'A',
    date: null,
    scenes,
    people: distinct(scenes.flatMap((scene) => scene.cast.map(({ name }) => ({ id: name.toLowerCase(), name })))),
    things: distinct([...scenes.flatMap((scene) => scene.things), ...garments]),
    days: null,
    ...part,
  };
}

function distinct(list: readonly { readonly id: string; readonly name: string }[]): NamedFacts[] {
  return [...new Map(list.map(({ id, name }) => [id, { id, name, names: [name] }])).values()];
}
