import { answeredId } from './answers.js';
import { notesOf, type SceneGround } from './ground.js';
import type { SceneNote } from './types.js';

/** The notes that speak to everyone, and the answers given, in their order. The id of a question is for the script, not for people. */
export function listNotes({ scene }: SceneGround, sceneIds: readonly string[]): SceneNote[] {
  const free = notesOf(scene.notes, 'free').map(({ line, at }) => ({ kind: 'free' as const, text: line, at }));
  const answers = notesOf(scene.notes, 'answer').map(({ question, line, at }) => {
    const matter = nameMatter(answeredId(question), sceneIds);
    return { kind: 'answer' as const, text: matter === null ? line : `${matter}: ${line}`, at };
  });
  return [...free, ...answers]
    .sort((a, b) => a.at.start.offset - b.at.start.offset)
    .map(({ kind, text, at }) => ({ kind, text, line: at.start.line }));
}

/** What a question is about, by the first word of its id. */
const matters: ReadonlyMap<string, (subject: string) => string> = new Map<string, (subject: string) => string>([
  ['day', () => 'story day'],
  ['who', () => 'who it is'],
  ['past', () => 'what stands here in the past'],
  ['clothes', (person) => `clothes of ${person}`],
  ['change', (person) => `costume change of ${person}`],
  ['state', (thing) => `state of ${thing}`],
  ['count', (people) => `number of ${people}`],
  ['place', (place) => `place ${place}`],
  ['wet', (person) => `clothes of ${person} wet`],
  ['still', (thing) => `${thing} still to be seen`],
  ['there', (person) => `${person} still there`],
  ['which', (thing) => `which ${thing}`],
  ['need', (thing) => thing],
]);

/** The matter of a question in words: `state-letter-int-bar-day` is `state of letter`; null for an id of another make. */
function nameMatter(id: string, sceneIds: readonly string[]): string | null {
  const [kind = '', ...rest] = id.split('-');
  const subject = rest.join('-');
  const scenes = sceneIds.filter((one) => subject === one || subject.endsWith(`-${one}`));
  const longest = scenes.sort((a, b) => b.length - a.length)[0] ?? '';
  const words = longest === '' ? subject : subject.slice(0, -longest.length);
  return matters.get(kind)?.(words.replaceAll('-', ' ').trim()) ?? null;
}
