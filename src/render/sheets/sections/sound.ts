import type { BreakdownScene, SceneCast } from '../../../breakdown/types.js';
import { bold, type Inline, inlineRuns, joinInline } from '../../layout/inline.js';
import type { Section } from '../sheet-context.js';
import { countWords } from '../sheet-words.js';
import { elementsIn, elementWords } from './element-words.js';

/** Sounds and music, and voices to record apart; folded, a count. */
export const writeSound: Section = (scene, context, fold) => {
  const sounds = elementsIn(scene, ['sound', 'music']);
  const voices = voiceEntries(scene);
  if (sounds.length + voices.length === 0) return [];
  const all: Inline[] = [
    ...voices,
    ...(sounds.length > 0 ? [sounds.map((one) => elementWords(one, context)).join('; ')] : []),
  ];
  const counted = [countedWords(sounds.length, countVoices(scene))];
  return [{ kind: 'section', label: 'Sound', blocks: [{ kind: 'entries', entries: fold > 0 ? counted : all }] }];
};

/** Voices by how they are recorded, one line each; of people who are also seen it says so. */
function voiceEntries(scene: BreakdownScene): Inline[] {
  const over = scene.cast.filter((person) => person.voiceOver);
  const far = scene.cast.filter((person) => !person.voiceOver && person.voice === 'phone');
  return [...voiceLine('the voice', over), ...voiceLine('the far end of the phone', far)];
}

function voiceLine(what: string, people: readonly SceneCast[]): Inline[] {
  if (people.length === 0) return [];
  const names = people.map((person): Inline => [bold(person.name), person.presence === 'seen' ? ' (also seen)' : '']);
  return [[`record ${what}: `, ...inlineRuns(joinInline(names))]];
}

function countVoices({ cast }: BreakdownScene): number {
  return cast.filter((person) => person.voiceOver || person.voice === 'phone').length;
}

function countedWords(sounds: number, voices: number): string {
  const parts = [
    sounds > 0 ? countWords(sounds, 'sound') : '',
    voices > 0 ? `${countWords(voices, 'voice')} to record` : '',
  ];
  return `${parts.filter((part) => part !== '').join(', ')}: see “Left over” at the end`;
}
