import { slug } from '../base/slug.js';
import { questionIds } from './answers.js';
import { doubtful } from './merge-sightings.js';
import type { SceneDoubts } from './questions.js';
import type { Question, SceneElement } from './types.js';

/** Asks which of two things a word means. */
export function* askWhich({ ground, unclear }: SceneDoubts): Generator<Question> {
  for (const { find, meant } of unclear) {
    const names = meant.map(({ name }) => name);
    const text = `Which one is "${find.words}": ${names.join(' or ')}?`;
    const settle = `Mark it with its name: [${find.words}][${names[0]}].`;
    yield {
      id: questionIds.which(slug(find.name), ground.id),
      text,
      line: find.at.start.line,
      settle,
      kind: 'element',
      element: null,
    };
  }
}

/** Asks for a yes or no about things that are doubtful or only implied, the likeliest first. */
export function* askElements({ ground, elements }: SceneDoubts): Generator<Question> {
  const asked = elements.filter((one) => isDoubtful(one)).sort((a, b) => (b.confidence ?? 0) - (a.confidence ?? 0));
  for (const { id, name, category, known, words, line, strength } of asked) {
    const text =
      known === 'implied'
        ? `"${words}": does this scene need ${name}?${strength === 'ask' || strength === null ? '' : ` (implied, ${strength})`}`
        : `"${words}": is ${name} something to prepare (${category})?`;
    const settle =
      known === 'implied'
        ? `Yes: "> ${category}: ${name}". No: "> no: ${name}".`
        : `Yes: put [${words}] in brackets. No: "> no: ${name}".`;
    yield { id: questionIds.need(id, ground.id), text, line, settle, kind: 'element', element: id };
  }
}

function isDoubtful({ known, carried, confidence }: SceneElement): boolean {
  if (carried) return false;
  return known === 'implied' || (known === 'found' && (confidence ?? 1) < doubtful);
}

/** Passes on what the finder asks, and the decisions that the words imply. */
export function* askFinder({ ground }: SceneDoubts): Generator<Question> {
  for (const { id, text, at } of ground.finds.questions) {
    const settle = `Type "> answer: ${id} …" with your decision.`;
    yield { id, text, line: at.start.line, settle, kind: 'element', element: null };
  }
  for (const { kind, rule, text, at } of ground.finds.tasks) {
    if (kind !== 'question') continue;
    const id = `task-${slug(rule)}-${slug(text).slice(0, 24)}-${ground.id}`;
    const settle = `Type "> answer: ${id} …" with your decision.`;
    yield { id, text, line: at.start.line, settle, kind: 'task', element: null };
  }
}
