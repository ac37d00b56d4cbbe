import { slug } from '../base/slug.js';
import { placeOnBody } from '../trade/body-order.js';
import { isNo } from './answer-fits.js';
import { type Answers, questionIds } from './answers.js';
import { partsOf } from './same-thing.js';
import type { SceneDress } from './scene-dress.js';
import { sight } from './sighting.js';
import type { Soaking } from './soaked.js';
import type { Wears } from './types.js';

/** A garment that an answer names, and what it is in. */
interface Soaked {
  readonly name: string;
  readonly state: string;
}

/** What somebody of whom no garment is told has on, as far as an answer knows. */
const allClothes = 'clothes';
const everything = /\b(?:all|everything|everywhere|both|yes|y|the lot)\b/i;

/** The id of the question which clothes are wet, or dirty. */
export function soakingId({ kind, person }: Soaking, scene: string): string {
  return questionIds[kind](slug(person), scene);
}

/**
 * Reads which garments an answer names, each with its state: `coat soaked, boots`, `all, muddy`. Where nothing is told of what the
 * person wears, the answer tells it: `jersey, socks`, or yes for all that is on. None when it says no, or names none.
 */
export function readSoaked(answer: string, worn: readonly string[], state: string): Soaked[] {
  if (isNo(answer)) return [];
  const parts = answer
    .split(/[,;.]| and /)
    .map((part) => part.trim())
    .filter((part) => part !== '');
  const said = parts.filter((part) => !everything.test(part) && nameIn(part, worn) === null);
  if (parts.some((part) => everything.test(part))) {
    const all = worn.length > 0 ? worn : [allClothes];
    const how = stateOf(parts.join(' ').replace(everything, ''), '') || state;
    return all.map((name) => ({ name, state: said.length > 0 || parts.length === 1 ? how : state }));
  }
  if (worn.length === 0) return parts.filter(isGarment).map((name) => ({ name: name.toLowerCase(), state }));
  return parts.flatMap((part) => {
    const name = nameIn(part, worn);
    return name === null ? [] : [{ name, state: stateOf(part, name) || state }];
  });
}

function isGarment(name: string): boolean {
  return placeOnBody(name).zone !== 'not placed';
}

/** The garment that a part of an answer names: by its whole name, else by its head when no other has that head. */
function nameIn(part: string, worn: readonly string[]): string | null {
  const folded = part.toLowerCase();
  const whole = worn.find((name) => folded.includes(name.toLowerCase()));
  if (whole !== undefined) return whole;
  const words = folded.split(/\s+/);
  const alike = worn.filter((name) => words.includes(partsOf(name).head) || words.includes(lastWord(name)));
  return alike.length === 1 ? (alike[0] as string) : null;
}

function lastWord(name: string): string {
  return name.toLowerCase().split(' ').at(-1) as string;
}

/** The words of a part beside the garment: `the coat is soaked` says `soaked`. */
function stateOf(part: string, name: string): string {
  const bare = part
    .toLowerCase()
    .replace(name.toLowerCase(), '')
    .replace(lastWord(name) || /$^/, '');
  return bare
    .replace(/\b(?:the|a|an|his|her|their|is|are|of it|of them|them|it|only|just|clothes)\b/g, '')
    .replace(/\s+/g, ' ')
    .trim();
}

/** Gives the clothes that the writer answered are wet or dirty their state, from the words on that say so. */
export function soakClothes(dress: SceneDress, soakings: readonly Soaking[], answers: Answers): void {
  for (const soaking of soakings) {
    const { person, at, begins, words } = soaking;
    const answer = answers.get(soakingId(soaking, dress.input.ground.id));
    if (answer === null || !dress.hasSeen(person)) continue;
    const worn = dress.wornPieces().filter(([wearer]) => wearer === person);
    const names = worn.map(([, identity]) => identity.name);
    for (const { name, state } of readSoaked(answer, names, soaking.state)) {
      const known = worn.find(([, identity]) => identity.name === name)?.[1] ?? null;
      const identity = known ?? dress.closets.garment(name, person);
      if (known) dress.mention(person, identity, at);
      else dress.wear(person, { name, at, by: person, count: null, description: null });
      dress.input.sightings.push(
        sight(identity, 'noted', words, at, { by: person, worn: true, state, stateBegins: begins }),
      );
    }
  }
}

/** Somebody gets wet or dirty, with the clothes on them that the scene does not already give a state at its end. */
export interface SoakedDoubt {
  readonly soaking: Soaking;
  readonly garments: readonly string[];
  /** All that is told to be on. */
  readonly worn: readonly string[];
}

/** Finds of whom to ask: all who get wet or dirty, unless every garment told has a state by itself. */
export function doubtSoaked(soakings: readonly Soaking[], wears: readonly Wears[]): SoakedDoubt[] {
  return soakings.flatMap((soaking) => {
    const on = wears.find(({ person }) => person === soaking.person);
    if (!on) return [];
    const told = on.garments.filter(({ absent }) => !absent);
    const garments = told.filter(({ stateOut }) => stateOut === null).map(({ name }) => name);
    return told.length > 0 && garments.length === 0 ? [] : [{ soaking, garments, worn: told.map(({ name }) => name) }];
  });
}
