import { slug } from '../base/slug.js';
import type { Range } from '../base/text-range.js';
import { wantedBy } from './answer-fits.js';
import { questionIds } from './answers.js';
import { doubtful } from './merge-sightings.js';
import type { Asked, SceneDoubts } from './questions.js';
import type { Question, SceneElement } from './types.js';

/** Asks which of two things a word means. */
export function* askWhich({ ground, unclear }: SceneDoubts): Generator<Asked> {
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
      wants: 'words',
      choices: names,
    };
  }
}

/** Asks for a yes or no about things that are doubtful or only implied, the likeliest first. */
export function* askElements({ ground, elements }: SceneDoubts): Generator<Asked> {
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
    yield {
      id: questionIds.need(id, ground.id),
      text,
      line,
      settle,
      kind: 'element',
      element: id,
      wants: 'yes or no',
      choices: [],
    };
  }
}

function isDoubtful({ known, carried, confidence }: SceneElement): boolean {
  if (carried) return false;
  return known === 'implied' || (known === 'found' && (confidence ?? 1) < doubtful);
}

/** Passes on what the finder asks, and the decisions that the words imply. */
export function* askFinder({ ground }: SceneDoubts): Generator<Asked> {
  for (const { id: subject, once, text, at } of ground.finds.questions) {
    const id = once ? subject : `${subject}-${ground.id}`;
    yield decision(id, 'element', text, at);
  }
  for (const { kind, rule, text, at } of ground.finds.tasks) {
    if (kind !== 'question') continue;
    const id = `task-${slug(rule)}-${slug(text).slice(0, 24)}-${ground.id}`;
    yield decision(id, 'task', text, at);
  }
}

function decision(id: string, kind: Question['kind'], text: string, at: Range): Asked {
  const settle = `Type "> answer: ${id} …" with your decision.`;
  return { id, text, line: at.start.line, settle, kind, element: null, wants: wantedBy(text), choices: [] };
}
