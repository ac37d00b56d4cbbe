import type { Mention, SceneCast, SceneElement, SceneExtra } from '../../breakdown/types.js';
import { roundHundredth } from './numbers.js';

/** A person in a scene as plain data. */
export function castJson(person: SceneCast) {
  return {
    id: person.id,
    name: person.name,
    presence: person.presence,
    voice: person.voice,
    voiceOver: person.voiceOver,
    speaks: person.speaks,
    age: person.age,
    minor: person.minor,
    known: person.known,
    mentions: person.mentions.map(mentionJson),
  };
}

/** People without a line in a scene, as plain data. */
export function extraJson(extra: SceneExtra) {
  return {
    id: extra.id,
    name: extra.name,
    count: extra.count,
    known: extra.known,
    words: extra.words,
    line: extra.line,
  };
}

/** An element in a scene as plain data. */
export function elementJson(element: SceneElement) {
  return {
    id: element.id,
    name: element.name,
    category: element.category,
    known: element.known,
    strength: element.strength,
    confidence: roundHundredth(element.confidence),
    rules: element.rules,
    carried: element.carried,
    from: element.from,
    by: element.by,
    worn: element.worn,
    count: element.count,
    stateIn: element.stateIn,
    stateOut: element.stateOut,
    statesBetween: element.statesBetween,
    description: element.description,
    words: element.words,
    line: element.line,
    mentions: element.mentions.map(mentionJson),
  };
}

function mentionJson({ words, line }: Mention) {
  return { words, line };
}
