import { compareRanges, type Range } from '../base/text-range.js';
import type { Line, Speech, VoiceKind } from '../script/types.js';
import { placeInLine } from './action-text.js';
import { namesOfCue, peopleOfGroup } from './cue-people.js';
import { notesOf, type SceneGround } from './ground.js';
import { obtain } from './grouping.js';
import { judgeMention } from './judge-mention.js';
import type { NameMatcher } from './name-matcher.js';
import type { KnownPerson, PeopleIndex } from './people-index.js';
import type { Known, Mention, SceneCast } from './types.js';

/** Someone in a scene, with what later passes ask about them. */
export interface Presence {
  readonly person: KnownPerson;
  readonly cast: SceneCast;
  /** Where the person is first seen, in source offsets; null when only heard or noted. */
  readonly firstSeen: number | null;
}

interface Evidence {
  readonly kind: 'cue' | 'acts' | 'seen' | 'heard';
  readonly known: Known;
  readonly voice: VoiceKind | null;
  readonly words: string;
  readonly at: Range;
}

/**
 * Tells who is in a scene, in the order in which they come in, and whether they are seen or only heard.
 *
 * A voice over, on the line or off screen is heard; the same person is seen when the action shows them. For a recorded or
 * distant voice that takes a sentence in which they do something, since a name alone may be what the others listen to.
 */
export function tellPresence(ground: SceneGround, people: PeopleIndex, matcher: NameMatcher): Presence[] {
  const found = new Map<KnownPerson, Evidence[]>();
  for (const [person, evidence] of gatherEvidence(ground, people, matcher)) {
    obtain(found, person, () => []).push(evidence);
  }
  const presences = [...found].map(([person, evidence]) => weigh(person, evidence));
  return presences.sort((a, b) => compareRanges(a.at, b.at)).map(({ presence }) => presence);
}

function* gatherEvidence(
  { scene, actions, finds }: SceneGround,
  people: PeopleIndex,
  matcher: NameMatcher,
): Generator<[KnownPerson, Evidence]> {
  for (const block of scene.blocks) {
    if (block.kind === 'speech') {
      yield* speechEvidence(block, people);
    }
    if (block.kind !== 'action') continue;
    for (const line of block.lines) yield* markEvidence(line, people);
  }
  for (const action of actions) {
    for (const match of matcher(action)) {
      const sense = judgeMention(match);
      if (sense === 'absent') continue;
      const words = action.text.slice(match.start, match.end);
      const voice = sense === 'heard' ? ('off-screen' as const) : null;
      yield [
        match.person,
        {
          kind: sense,
          known: match.person.listed ? 'marked' : 'found',
          voice,
          words,
          at: action.place(match.start, match.end),
        },
      ];
    }
  }
  for (const note of notesOf(scene.notes, 'items')) {
    if (note.category !== 'cast' && note.category !== 'extras') continue;
    for (const item of note.items) {
      const person = people.find(item.name);
      if (person) yield [person, { kind: 'seen', known: 'noted', voice: null, words: item.name, at: item.at }];
    }
  }
  yield* groupEvidence(finds, people);
  for (const find of finds.people) {
    const person = find.kind === 'cast' ? people.find(find.name) : null;
    if (!person) continue;
    const seen = find.presence === 'seen';
    const voice = seen ? null : ('off-screen' as const);
    yield [person, { kind: seen ? 'seen' : 'heard', known: 'found', voice, words: find.words, at: find.at }];
  }
}

/** A group that stands for people with numbers, `the cops` for COP 1 and COP 2, shows them all. */
function* groupEvidence(finds: SceneGround['finds'], people: PeopleIndex): Generator<[KnownPerson, Evidence]> {
  const groups = [
    ...finds.people.filter(({ kind, presence }) => kind === 'extras' && presence === 'seen'),
    ...finds.elements.filter(({ category, known }) => category === 'extras' && known === 'found'),
  ];
  for (const { name, count, words, at } of groups) {
    for (const one of peopleOfGroup(name, count, (other) => people.find(other) !== null)) {
      const person = people.find(one);
      if (person) yield [person, { kind: 'seen', known: 'found', voice: null, words, at }];
    }
  }
}

/** Who speaks, and whom a parenthetical turns to: `(to Josef)` wants Josef there, unless it is said into a phone. */
function* speechEvidence({ cue, lines }: Speech, people: PeopleIndex): Generator<[KnownPerson, Evidence]> {
  for (const { name, voice } of namesOfCue(cue, (one) => people.find(one) !== null)) {
    const speaker = people.find(name);
    if (speaker) yield [speaker, { kind: 'cue', known: 'marked', voice, words: cue.text, at: cue.at }];
  }
  for (const { kind, line } of lines) {
    const to = kind === 'parenthetical' ? /\bto ([^,;)]+)/i.exec(line.text) : null;
    const listener =
      to && !/\b(?:phone|radio|into|intercom|camera)\b/i.test(line.text) ? people.find(to[1] ?? '') : null;
    if (!to || !listener || cue.voice === 'voice-over' || cue.voice === 'phone') continue;
    const start = to.index + 3;
    const at = placeInLine(line, start, start + (to[1] ?? '').length);
    yield [listener, { kind: 'seen', known: 'found', voice: null, words: to[1] ?? '', at }];
  }
}

function* markEvidence(line: Line, people: PeopleIndex): Generator<[KnownPerson, Evidence]> {
  for (const mark of line.marks) {
    const person = people.find(mark.name);
    if (person) yield [person, { kind: 'acts', known: 'marked', voice: null, words: mark.words, at: mark.at }];
  }
}

const rank: Record<Known, number> = { marked: 0, noted: 1, found: 2, implied: 3 };

function weigh(person: KnownPerson, unsorted: readonly Evidence[]): { presence: Presence; at: Range } {
  const evidence = [...unsorted].sort((a, b) => compareRanges(a.at, b.at));
  const cues = evidence.filter(({ kind }) => kind === 'cue');
  const distant = cues.length > 0 && cues.every(({ voice }) => voice === 'voice-over' || voice === 'phone');
  const seenBy = evidence.filter((one) => isSeen(one, distant));
  const first = evidence[0] as Evidence;
  const cast: SceneCast = {
    id: person.id,
    name: person.name,
    presence: seenBy.length > 0 ? 'seen' : 'heard',
    voice: seenBy.length > 0 ? null : pickVoice(evidence),
    voiceOver: cues.some(({ voice }) => voice === 'voice-over'),
    speaks: cues.length > 0,
    age: person.age,
    minor: person.minor,
    known: evidence.reduce<Known>((best, { known }) => (rank[known] < rank[best] ? known : best), 'implied'),
    mentions: pickMentions(evidence),
  };
  const firstSeen = seenBy.find(({ known }) => known !== 'noted')?.at.start.offset ?? null;
  return { presence: { person, cast, firstSeen }, at: first.at };
}

function isSeen({ kind, voice, known }: Evidence, distant: boolean): boolean {
  if (kind === 'cue') return voice === 'on-screen';
  return kind === 'acts' || (kind === 'seen' && (!distant || known === 'noted'));
}

function pickVoice(evidence: readonly Evidence[]): SceneCast['voice'] {
  const voice = evidence.find((one) => one.voice !== null && one.voice !== 'on-screen')?.voice;
  return voice && voice !== 'on-screen' ? voice : 'off-screen';
}

/** A mark and the name inside it are one mention; speeches of one person are told by the first cue. */
function pickMentions(evidence: readonly Evidence[]): Mention[] {
  const mentions: Mention[] = [];
  let spoken = false;
  for (const { kind, words, at } of evidence) {
    const last = mentions.at(-1);
    if (kind === 'cue' && spoken) continue;
    if (last && at.start.offset < last.at.end.offset) continue;
    spoken ||= kind === 'cue';
    mentions.push({ words, line: at.start.line, at });
  }
  return mentions;
}
