import { foldName } from '../base/slug.js';
import { findStateChanges } from '../trade/state-changes.js';
import { isNo, isYes } from './answer-fits.js';
import type { Identity } from './element-register.js';
import type { SceneGround } from './ground.js';
import { notesOf } from './ground.js';
import type { Thing } from './merge-sightings.js';
import { isNamed, sameThing } from './same-thing.js';
import type { StoryDay } from './types.js';

/** What the state pass is told of a scene. */
export interface StateInput {
  readonly ground: SceneGround;
  readonly day: StoryDay;
  readonly things: readonly Thing[];
  /** From which offset on a thing is in the picture; null when it has not been by the end of the scene. */
  readonly seenFrom: (thing: Thing) => number | null;
}

/** The state of a thing as it comes into a scene and as it leaves it. */
export interface StateSpan {
  readonly stateIn: string | null;
  readonly stateOut: string | null;
  /** States it passes through on camera between the two: a letter is opened, then burnt. */
  readonly between: readonly string[];
}

/** A state that lived through the night: kept, and asked about. */
export interface StateDoubt {
  readonly scene: number;
  readonly identity: Identity;
  readonly state: string;
  readonly line: number;
  /** What the words of this scene say instead, or null when only a night lies between. */
  readonly words: string | null;
  readonly since: string;
}

export interface FollowedStates {
  readonly spans: readonly ReadonlyMap<Identity, StateSpan>[];
  readonly doubts: readonly StateDoubt[];
}

interface Track {
  readonly state: string;
  readonly day: string;
  readonly noted: boolean;
  readonly since: string;
}

/**
 * Follows the states of things in story order. A state is kept until it changes; a new story day keeps it and asks; a flashback starts
 * from none and gives none back. `order` lists scene indexes as the story runs; `answerOf` gives what the writer
 * answered to the question for a state: a no ends it, a yes keeps it, other words are the state as the thing comes in.
 */
export function followStates(
  inputs: readonly StateInput[],
  order: readonly number[],
  answerOf: (identity: Identity, scene: SceneGround) => string | null,
): FollowedStates {
  const lines = new Map<string, Map<Identity, Track>>();
  const spans: Map<Identity, StateSpan>[] = inputs.map(() => new Map());
  const doubts: StateDoubt[] = [];
  for (const index of order) {
    const input = inputs[index] as StateInput;
    const line = input.day.series === 'D' ? 'D' : input.day.label;
    const tracks = lines.get(line) ?? new Map<Identity, Track>();
    lines.set(line, tracks);
    for (const thing of input.things) {
      const kept = tracks.get(thing.identity) ?? null;
      const answer = kept ? (answerOf(thing.identity, input.ground) ?? '') : '';
      const track = isNo(answer) ? null : kept;
      if (!track) tracks.delete(thing.identity);
      const told = answer === '' || isNo(answer) || isYes(answer) ? null : answer.replace(/^still\s+/i, '');
      const result = followOne(thing, input, track, told);
      spans[index]?.set(thing.identity, result.span);
      doubts.push(...result.doubts);
      if (result.track) tracks.set(thing.identity, result.track);
    }
  }
  return { spans, doubts };
}

interface StateEvent {
  readonly state: string;
  readonly noted: boolean;
  readonly onCamera: boolean;
}

function followOne(thing: Thing, input: StateInput, track: Track | null, told: string | null) {
  const { ground, day } = input;
  const answered = told === null ? [] : [{ state: told, noted: true, onCamera: false }];
  const events = [...answered, ...readEvents(thing, input, track)];
  const given = events.some(({ onCamera }) => !onCamera);
  const doubts = askAbout(thing, input, track, given);
  let stateIn = track?.state ?? null;
  let current = track;
  let first = true;
  const onCameraStates: string[] = [];
  for (const { state, noted, onCamera } of events) {
    if (current && foldName(current.state) === foldName(state)) continue;
    if (!onCamera && first) stateIn = state;
    else onCameraStates.push(state);
    first = false;
    current = { state, day: day.label, noted, since: ground.label };
  }
  const stateOut = current?.state ?? null;
  // Nobody films a bun again that is eaten: the next scene has another.
  const isGone = current !== null && !current.noted && current.state === 'eaten';
  if (isGone) current = null;
  const kept = current && current === track ? { ...current, day: day.label } : current;
  return { span: { stateIn, stateOut, between: onCameraStates.slice(0, -1) }, doubts, track: kept };
}

function readEvents(thing: Thing, { ground, seenFrom }: StateInput, track: Track | null): StateEvent[] {
  const notes = stateNotes(ground, thing);
  const found = thing.sightings.filter(({ state }) => state !== null);
  if (notes.length === 0 && found.length === 0) return [];
  const from = seenFrom(thing);
  if (notes.length > 0) {
    const noted = notes.map(({ state, at }, position) => ({
      state,
      noted: true,
      onCamera: position > 0 || (from !== null && from < at.start.offset),
    }));
    return [...noted, ...endInFire(noted, found)];
  }
  // Words that describe a thing where they first name it tell how it comes in; only a later mention, or a
  // deed that changes it, can be a change.
  const first = thing.sightings.find(({ seen }) => seen) ?? null;
  const said = track?.noted ? found.filter(({ known }) => known === 'noted') : found;
  return said.map((one) => ({
    state: one.state as string,
    noted: one.known === 'noted',
    onCamera: one.stateBegins || (one.known === 'noted' ? track !== null : first !== null && one !== first),
  }));
}

/** What a deed burns is burnt in the end, whatever a note tells of it before. */
function endInFire(noted: readonly StateEvent[], found: Thing['sightings']): StateEvent[] {
  const burns = (state: string | null) =>
    state !== null && findStateChanges(state).some(({ kind }) => kind === 'burnt');
  if (noted.some(({ state }) => burns(state))) return [];
  return found.flatMap(({ state, stateBegins }) =>
    stateBegins && state !== null && burns(state) ? [{ state, noted: false, onCamera: true }] : [],
  );
}

function stateNotes(ground: SceneGround, thing: Thing) {
  if (!ground.scene.notes.some(({ kind }) => kind === 'state')) return [];
  return notesOf(ground.scene.notes, 'state').filter(({ element, at }) => {
    if (isNamed(thing.identity.names, element)) return true;
    return thing.sightings.some((one) => one.known === 'noted' && one.at.start.offset === at.start.offset);
  });
}

function askAbout(thing: Thing, { ground, day }: StateInput, track: Track | null, given: boolean): StateDoubt[] {
  if (!track || given) return [];
  const { identity, line } = thing;
  const doubt = { scene: ground.index, identity, state: track.state, line, since: track.since };
  const other = thing.sightings.find(
    ({ state }) => state !== null && foldName(state) !== foldName(track.state) && !sameThing(state, track.state),
  );
  if (track.noted && other?.state && stateNotes(ground, thing).length === 0) return [{ ...doubt, words: other.state }];
  return track.day === day.label ? [] : [{ ...doubt, words: null }];
}
