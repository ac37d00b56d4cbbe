import type { Diagnostic } from '../base/diagnostic.js';
import { foldName } from '../base/slug.js';
import { sayScript } from '../messages/script.js';
import { flashbackWords, presentWords } from '../trade/story-day-words.js';
import type { Heading, Light, Note, Scene } from './types.js';

/** A light carried over more headings than this gets a message (trade usage: long runs lose it). */
const longestCarry = 3;

/** Gives each scene its light: of its heading, of a `day` note, or carried from the scene before (rule L3). */
export function carryLights(scenes: readonly Scene[], messages: Diagnostic[]): Scene[] {
  const lights = new CarriedLights();
  return scenes.map((scene) => ({ ...scene, heading: lights.light(takeNotedLight(scene, messages), messages) }));
}

/** The light that the `day` notes of a scene tell; null when none does. The last one counts. */
export function lightOfNotes(notes: readonly Note[]): Light | null {
  return notes.reduce<Light | null>((light, note) => (note.kind === 'day' ? (note.light ?? light) : light), null);
}

/** A note knows better than the heading, but the two should not say different things. */
function takeNotedLight({ heading, notes }: Scene, messages: Diagnostic[]): Heading {
  const light = lightOfNotes(notes);
  if (light === null || light === heading.light) return heading;
  if (heading.light !== null) {
    const note = notes.findLast((one) => one.kind === 'day' && one.light !== null);
    const time = heading.time ?? heading.light.toUpperCase();
    messages.push(sayScript('note-day-light', { light, time }, note?.at ?? heading.at));
  }
  return { ...heading, light, lightInherited: false };
}

/** A light that headings such as CONTINUOUS take over. */
interface CarriedLight {
  readonly light: Light | null;
  /** The heading that told it, and how many have taken it over since. */
  readonly from: string;
  readonly carried: number;
  readonly place: string;
}

const unknown: CarriedLight = { light: null, from: '', carried: 0, place: '' };

/** Follows the light from heading to heading. What is remembered has a light of its own: behind it the one before goes on. */
class CarriedLights {
  #main = unknown;
  #past: CarriedLight | null = null;

  /** The heading with the light it takes over, when it does. */
  light(heading: Heading, messages: Diagnostic[]): Heading {
    const { light, from, carried } = this.#before(heading);
    this.#add(heading);
    if (!heading.lightInherited) {
      const { time, line } = heading;
      if (time !== null && heading.light === null) messages.push(sayScript('heading-no-light', { time }, line.at));
      return heading;
    }
    if (light !== null && carried + 1 > longestCarry) {
      messages.push(sayScript('light-carried-far', { light, from }, heading.line.at));
    }
    return { ...heading, light };
  }

  /** The light that a heading takes over when it does not tell one. */
  #before(parts: Heading): CarriedLight {
    if (this.#past === null) return this.#main;
    const place = placeOf(parts);
    const staysInPast = isPast(parts) || (place === this.#past.place && place !== this.#main.place);
    return staysInPast ? this.#past : this.#main;
  }

  /** Goes on to a heading. */
  #add(parts: Heading): void {
    const before = this.#before(parts);
    const next = { ...follow(before, parts), place: placeOf(parts) };
    if (isPast(parts) || before === this.#past) this.#past = next;
    else {
      this.#main = next;
      this.#past = null;
    }
  }
}

function follow(before: CarriedLight, parts: Heading): CarriedLight {
  if (parts.light !== null) return { ...before, light: parts.light, from: parts.text, carried: 0 };
  if (parts.lightInherited) return { ...before, carried: before.carried + 1 };
  // A YEAR LATER and 6 AM leave the light before behind, and tell none.
  return parts.time === null ? before : { ...unknown, from: parts.text };
}

function isPast({ time, qualifiers }: Heading): boolean {
  const parts = [time ?? '', ...qualifiers].filter((part) => !presentWords.some((words) => words.test(part)));
  return parts.some((part) => flashbackWords.some((words) => words.test(part)));
}

function placeOf({ placeParts }: Heading): string {
  return foldName(placeParts[0] ?? '');
}
