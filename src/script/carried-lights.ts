import { foldName } from '../base/slug.js';
import { flashbackWords, presentWords } from '../trade/story-day-words.js';
import type { HeadingParts } from './scene-heading.js';
import type { Light } from './types.js';

/** A light that headings such as CONTINUOUS take over. */
export interface CarriedLight {
  readonly light: Light | null;
  /** The heading that told it, and how many have taken it over since. */
  readonly from: string;
  readonly carried: number;
  readonly place: string;
}

const unknown: CarriedLight = { light: null, from: '', carried: 0, place: '' };

/** Follows the light from heading to heading. What is remembered has a light of its own: behind it the one before goes on. */
export class CarriedLights {
  #main = unknown;
  #past: CarriedLight | null = null;

  /** The light that a heading takes over when it does not tell one. */
  before(parts: HeadingParts): CarriedLight {
    if (this.#past === null) return this.#main;
    const place = placeOf(parts);
    const staysInPast = isPast(parts) || (place === this.#past.place && place !== this.#main.place);
    return staysInPast ? this.#past : this.#main;
  }

  /** Goes on to a heading. */
  add(parts: HeadingParts): void {
    const before = this.before(parts);
    const next = { ...follow(before, parts), place: placeOf(parts) };
    if (isPast(parts) || before === this.#past) this.#past = next;
    else {
      this.#main = next;
      this.#past = null;
    }
  }
}

function follow(before: CarriedLight, parts: HeadingParts): CarriedLight {
  if (parts.light !== null) return { ...before, light: parts.light, from: parts.text, carried: 0 };
  return parts.inheritsLight ? { ...before, carried: before.carried + 1 } : before;
}

function isPast({ time, qualifiers }: HeadingParts): boolean {
  const parts = [time ?? '', ...qualifiers].filter((part) => !presentWords.some((words) => words.test(part)));
  return parts.some((part) => flashbackWords.some((words) => words.test(part)));
}

function placeOf({ placeParts }: HeadingParts): string {
  return foldName(placeParts[0] ?? '');
}
