import { main } from '../../src/cli/main.js';
import { compileText } from '../support/compile-text.js';
import { createTestHost } from '../support/test-host.js';

/** Runs `review` over a text; every question is answered by a function of its words, null ends the input. */
export async function reviewText(text: string, answer: (question: string) => string | null) {
  const host = createTestHost({ 'script.md': text });
  const ask = async () => answer(host.printed.out.trimEnd().split('\n').at(-1) ?? '');
  const exit = await main(['review', 'script.md'], { ...host, ask });
  return { exit, text: String(host.written.get('script.md') ?? text), ...host.printed };
}

/** The open questions of a text, by id. */
export async function questionsOf(text: string) {
  const { breakdown } = await compileText(text);
  const all = (breakdown?.scenes ?? []).flatMap((scene) => scene.questions.map((one) => ({ ...one, scene: scene.id })));
  return new Map(all.map((one) => [one.id, one]));
}
