import { define, type MessageTable, speaker } from './define.js';

/** Messages of the breakdown layer. */
export const breakdownMessages = {
  'element-two-categories': define<{ name: string; first: string; second: string }>(
    'warning',
    'One thing has two categories',
    ({ name, first, second }) => ({
      reason: `Expected one category for "${name}", found "${first}" and "${second}"; it is listed once.`,
      hint: `If these are two things, give them two names; if one, write the same category in both places.`,
    }),
  ),
  'element-without-category': define<{ name: string }>('info', 'A mark without a category', ({ name }) => ({
    reason: `Nothing says what kind of thing "${name}" is: it is listed as a prop.`,
    hint: `Say it behind the brackets, [${name}](prop), or in a line at the end of the script: [${name}]: prop "…".`,
  })),
  'definition-unused': define<{ name: string }>('info', 'A definition that nothing refers to', ({ name }) => ({
    reason: `Expected something in the script called \`${name}\`, found only its definition: it is on no list.`,
    hint: `Put brackets round it where it appears: \`[${name}]\`; or write it in a note of its scene: "> props: ${name}".`,
  })),
  'definition-of-several': define<{ name: string; called: readonly string[] }>(
    'warning',
    'A definition that can mean several things',
    ({ name, called }) => ({
      reason: `Expected one thing that \`${name}\` can mean, found ${called.map((one) => `"${one}"`).join(' and ')}: the definition is on no list.`,
      hint: `Put brackets round the words that it means, such as \`[the ${called[0]}][${name}]\`.`,
    }),
  ),
  'state-read-as': define<{ typed: string; name: string }>(
    'info',
    'A state note was read for a thing of a longer name',
    ({ typed, name }) => ({
      reason: `"${typed}" is no name of its own here: the state was read as that of "${name}".`,
      hint: `Write "> ${name}: …" to say so, or mark [${typed}] if it is another thing.`,
    }),
  ),
  'state-names-many': define<{ name: string; owners: readonly string[] }>(
    'warning',
    'A state note that can mean several garments',
    ({ name, owners }) => ({
      reason: `Expected one "${name}" in this scene, found those of ${owners.join(' and ')}: the state was given to all.`,
      hint: `Name them apart in the costume notes, such as "${owners[0]}'s ${name}", and use that name here.`,
    }),
  ),
  'refusal-of-marked': define<{ name: string }>('warning', 'A refused thing is marked', ({ name }) => ({
    reason: `"${name}" is refused by a note but stands in brackets or in a note of this script: it stays in the lists.`,
    hint: `Take the brackets off [${name}], or delete the note that refuses it.`,
  })),
  'refusal-without-effect': define<{ name: string }>('info', 'A refused thing is not proposed', ({ name }) => ({
    reason: `Nothing named "${name}" is proposed here any more: the refusal is kept but has no effect.`,
    hint: 'Keep the note if the words may come back, or delete it.',
  })),
  'answer-of-another-kind': define<{ key: string; text: string; wanted: string }>(
    'warning',
    'An answer that does not settle its question',
    ({ key, text, wanted }) => ({
      reason: `Expected ${wanted} to “${text}”, found another kind of answer: the question stays open.`,
      hint: `Write \`> answer: ${key}; …\` with ${wanted}.`,
    }),
  ),
  'answer-without-question': define<{ id: string; near: string | null }>(
    'warning',
    'An answer to no question',
    ({ id, near }) => ({
      reason: `Expected the id of a question that this script asks, found \`${id}\`: the answer settles nothing.`,
      hint: near
        ? `If \`${near}\` is meant, write \`> answer: ${near} …\`; else delete the note.`
        : 'Copy the id from the list of questions, or delete the note if the question is gone.',
    }),
  ),
  'answer-not-needed': define<{ label: string; reason: string }>(
    'info',
    'An answer about a story day that is sure by now',
    ({ label, reason }) => ({
      reason: `Expected a doubt about the story day, found that it is ${label} without the answer: ${reason}.`,
      hint: 'Delete the note if that is right; else write "> day: …" with the number of the right day.',
    }),
  ),
  'scenes-share-name': define<{ heading: string; other: number }>(
    'info',
    'Two scenes of one heading without numbers',
    ({ heading, other }) => ({
      reason: `Expected scenes that can be told apart, found \`${heading}\` here and in line ${other}, both without a number.`,
      hint: 'Number the scenes and put `numbers: locked` in the front matter before a book or answers refer to them.',
    }),
  ),
  'costume-note-unseen': define<{ person: string }>('info', 'A costume note for someone not seen', ({ person }) => ({
    reason: `The note dresses ${person}, who is not seen in this scene; it holds from the next scene of the same story day.`,
    hint: `If ${person} is there without a word, add the note "> cast: ${person}".`,
  })),
  'costume-note-nobody': define<{ person: string }>(
    'info',
    'A costume note for someone whom no scene of the day shows',
    ({ person }) => ({
      reason: `The note dresses ${person}, whom neither this scene nor a later one of the same story day shows; what it puts on ${person} is listed in this scene, to be got.`,
      hint: `If ${person} is there without a word, add the note "> cast: ${person}".`,
    }),
  ),
  'garment-not-worn': define<{ person: string; garment: string }>(
    'info',
    'A garment is taken off that was not on',
    ({ person, garment }) => ({
      reason: `${person} takes off "${garment}", but no note or line says that ${person} wears it before.`,
      hint: `Name it where ${person} is dressed: "> ${person}: wears …, ${garment}".`,
    }),
  ),
  'costume-changed-unsaid': define<{ person: string; from: string; to: string }>(
    'info',
    'Other clothes on the same story day',
    ({ person, from, to }) => ({
      reason: `${person} wears "${to}" here and wore "${from}" earlier on the same story day: read as a change of costume.`,
      hint: `Write "> ${person}: changes to …" for a change, or list the garments that stay on.`,
    }),
  ),
  'background-speaks': define<{ person: string }>('info', 'A background person has a line', ({ person }) => ({
    reason: `${person} is called background in "cast:" but speaks; a person with a line usually counts as cast.`,
    hint: `Take "background" off ${person} in the front matter to move the person from the extras to the cast.`,
  })),
  'note-for-whole-script': define<{ text: string }>('info', 'A note before the first scene', ({ text }) => ({
    reason: `"${text}" stands before the first scene, where only refusals, answers and "wears" hold for the whole script.`,
    hint: 'Move the note under the heading of the scene it speaks of.',
  })),
} as const satisfies MessageTable;

export const sayBreakdown = speaker('breakdown', breakdownMessages);
