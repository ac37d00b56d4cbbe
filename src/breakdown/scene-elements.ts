import type { Dressed } from './costume-plot.js';
import { categoryOfIdentity, type Identity } from './element-register.js';
import type { StateSpan } from './follow-states.js';
import { confidenceOf, mentionsOf, strongestOf, type Thing } from './merge-sightings.js';
import type { Garment, SceneElement, Wears } from './types.js';

type Spans = ReadonlyMap<Identity, StateSpan>;
type Ids = ReadonlyMap<Identity, string>;

const stateless: StateSpan = { stateIn: null, stateOut: null, between: [] };

/** Writes the things of a scene as the model holds them: those the text speaks of in its order, then those carried here. */
export function writeElements(things: readonly Thing[], spans: Spans, ids: Ids): SceneElement[] {
  const present = things.filter(({ carried }) => !carried);
  return [...present, ...things.filter(({ carried }) => carried)].map((thing) => writeElement(thing, spans, ids));
}

function writeElement(thing: Thing, spans: Spans, ids: Ids): SceneElement {
  const { identity, known, carried, from, by, worn, count, description, line, sightings } = thing;
  const { stateIn, stateOut, between } = spans.get(identity) ?? stateless;
  const mentions = carried ? [] : mentionsOf(sightings);
  return {
    id: ids.get(identity) as string,
    name: identity.name,
    category: categoryOfIdentity(identity),
    known,
    carried,
    from,
    by,
    worn,
    count,
    stateIn,
    stateOut,
    statesBetween: between,
    description,
    words: mentions[0]?.words ?? '',
    line,
    mentions,
    confidence: confidenceOf(known, sightings),
    strength: known === 'implied' ? strongestOf(sightings) : null,
    rules: [...new Set(sightings.flatMap(({ rules }) => rules))],
  };
}

/** Writes what everyone wears, with the states of the garments. */
export function writeWears(dressed: readonly Dressed[], spans: Spans, ids: Ids): Wears[] {
  return dressed.map(({ person, change, changeOut, pieces }) => ({
    person,
    change,
    changeOut,
    garments: pieces.map((piece): Garment => {
      const { identity, known, carried, from, absent, action } = piece;
      const { stateIn, stateOut, between } = absent ? stateless : (spans.get(identity) ?? stateless);
      const id = ids.get(identity) as string;
      return {
        id,
        name: identity.name,
        known,
        carried,
        from: carried ? from : null,
        stateIn,
        stateOut,
        statesBetween: between,
        absent,
        action,
      };
    }),
  }));
}

/** The garments that are in a scene by continuity alone, as things of the scene. */
export function carryGarments(dressed: readonly Dressed[], here: ReadonlySet<Identity>): Thing[] {
  return dressed.flatMap(({ person, pieces }) =>
    pieces
      .filter(({ identity, carried, absent }) => carried && !absent && !here.has(identity))
      .map(({ identity, known, from, line }) => ({
        identity,
        known,
        carried: true,
        from,
        by: person,
        worn: true,
        count: identity.definition?.count ?? null,
        description: identity.definition?.description ?? null,
        line,
        sightings: [],
      })),
  );
}
