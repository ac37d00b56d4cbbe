import type { BreakdownScene, ScreenTime } from '../../breakdown/types.js';
import { wearsJson } from './costume-json.js';
import { castJson, elementJson, extraJson } from './item-json.js';
import { roundTenth } from './numbers.js';

/** A scene as plain data: what it is, how long, who and what is in it, and what it leaves open. */
export function sceneJson(scene: BreakdownScene) {
  return {
    ...identityJson(scene),
    ...measureJson(scene),
    synopsis: scene.synopsis,
    cast: scene.cast.map(castJson),
    extras: scene.extras.map(extraJson),
    elements: scene.elements.map(elementJson),
    wears: scene.wears.map(wearsJson),
    perhapsWorn: scene.perhapsWorn.map(({ person, garments, from }) => ({ person, garments, from })),
    ...openJson(scene),
    comesFrom: scene.comesFrom.map(({ scene: id, what }) => ({ scene: id, what })),
    goesTo: scene.goesTo.map(({ scene: id, what }) => ({ scene: id, what })),
  };
}

function identityJson(scene: BreakdownScene) {
  return {
    id: scene.id,
    number: scene.number,
    order: scene.order,
    heading: scene.heading,
    setting: scene.setting,
    place: scene.place,
    placeId: scene.placeId,
    placeParts: scene.placeParts,
    time: scene.time,
    light: scene.light,
    qualifiers: scene.qualifiers,
    part: scene.part,
    line: scene.at.start.line,
  };
}

function measureJson(scene: BreakdownScene) {
  return {
    page: scene.page,
    eighths: scene.eighths,
    screenTime: timeJson(scene.screenTime),
    storyDay: scene.storyDay.label,
    storyDayReason: scene.storyDay.reason,
    storyDaySure: scene.storyDay.sure,
  };
}

function openJson(scene: BreakdownScene) {
  return {
    hazards: scene.hazards.map(({ id, title, words, line, because, children, precaution, reading, qualified }) => ({
      id,
      title,
      words,
      line,
      because,
      children,
      precaution,
      reading,
      qualified,
    })),
    tasks: scene.tasks.map(({ text, strength, words, line, rule }) => ({ text, strength, words, line, rule })),
    questions: scene.questions.map(({ id, key, text, line, settle, kind, element, wants, choices }) => ({
      id,
      key,
      text,
      line,
      settle,
      kind,
      element,
      wants,
      choices,
    })),
    notes: scene.notes.map(({ kind, text, line }) => ({ kind, text, line })),
  };
}

/** Screen time in seconds, to a tenth. */
export function timeJson(time: ScreenTime) {
  return {
    seconds: roundTenth(time.seconds),
    low: roundTenth(time.low),
    high: roundTenth(time.high),
    pageRule: roundTenth(time.pageRule),
    noted: time.noted,
  };
}
