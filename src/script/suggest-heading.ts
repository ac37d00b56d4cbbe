import { foreignSettings } from '../trade/settings.js';
import { montageWord } from '../trade/story-day-words.js';
import { matchSceneStart } from './scene-heading.js';
import { takeSceneNumber } from './scene-number.js';
import { hasTime } from './split-heading.js';
import { readTime } from './time-of-day.js';

/** The scene heading that a line without a readable setting may be meant as: its number kept, what is missing put in. */
export function suggestHeading(text: string): string {
  const plain = text
    .trim()
    .replace(/^#\s*([\w-]+)\s*#\s*/, '$1. ')
    .replace(sceneWord, (_, number: string) => `${number}. `);
  const numbered = takeSceneNumber(`${plain} `);
  const number = numbered ? `${numbered.number}. ` : '';
  const rest = (numbered ? plain.slice(numbered.length) : plain).trim().toUpperCase();
  if (matchSceneStart(rest)) return number + rest;
  const { setting, place } = takeForeignSetting(rest);
  return `${number}${setting}. ${complete(place)}`;
}

const sceneWord = /^scene\s+(\d+[a-z]?)\s*[:.,)\u2010-\u2015-]?\s*/i;

/** True for a line such as `Scene 1: Kitchen, morning`, which names a scene in words. */
export function namesScene(text: string): boolean {
  return /^scene\s+\d+[a-z]?(?:\s*[:.,)\u2010-\u2015-]|\s*$)/i.test(text) && !/[.!?]\s+\S.*[.!?]$/.test(text);
}

/** `INNEN. KÜCHE` is an interior in another language. */
function takeForeignSetting(rest: string): { setting: string; place: string } {
  const [first = ''] = rest.split(/[\s./,:]/);
  const row = foreignSettings.find(({ word }) => word === first);
  return row
    ? { setting: row.setting, place: rest.slice(first.length).replace(/^[\s./,:-]+/, '') }
    : { setting: 'INT', place: rest };
}

function complete(place: string): string {
  if (place === '') return 'PLACE - DAY';
  if (montageWord.test(place)) return 'PLACE - DAY (MONTAGE)';
  if (readTime(place) !== null) return `PLACE - ${place}`;
  const [, front, time] = /^(.+?),\s*([^,]+)$/.exec(place) ?? [];
  if (front !== undefined && time !== undefined && readTime(time) !== null) return `${front} - ${time}`;
  return hasTime(place) ? place : `${place} - DAY`;
}
