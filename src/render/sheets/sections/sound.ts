import type { BreakdownScene } from '../../../breakdown/types.js';
import { bold, type Inline } from '../../layout/inline.js';
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
  const counted = [countedWords(sounds.length, voices.length)];
  return [{ kind: 'section', label: 'Sound', blocks: [{ kind: 'entries', entries: fold > 0 ? counted : all }] }];
};

function voiceEntries(scene: BreakdownScene): Inline[] {
  return scene.cast
    .filter((person) => person.voiceOver || person.voice === 'phone')
    .map((person) => {
      const how = person.voiceOver ? 'the voice' : 'the far end of the phone';
      const seen = person.presence === 'seen' ? ', besides what is said in the picture' : '';
      return [`record ${how}: `, bold(person.name), seen];
    });
}

function countedWords(sounds: number, voices: number): string {
  const parts = [
    sounds > 0 ? countWords(sounds, 'sound') : '',
    voices > 0 ? `${countWords(voices, 'voice')} to record` : '',
  ];
  return `${parts.filter((part) => part !== '').join(', ')}: see “Left over” at the end`;
}
