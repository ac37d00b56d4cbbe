import { define, type MessageTable } from './define.js';

/** Messages about notes. */
export const noteMessages = {
  'note-new-element': define<{ name: string }>('info', 'A note that makes a new element', ({ name }) => ({
    reason: `Expected a category, a person or a thing of the script before the colon, found \`${name}\`; it is noted as a new element.`,
    hint: `If it is only a remark, leave the colon out; else nothing need be done.`,
  })),
  'note-turned-round': define<{ name: string; category: string }>(
    'info',
    'A note with its name and its kind the wrong way round',
    ({ name, category }) => ({
      reason: `Expected a state of \`${name}\`, found \`${category}\`, which is a kind of thing; \`${name}\` is noted as one of that kind.`,
      hint: `Write \`> ${category}: ${name}\`.`,
    }),
  ),
  'note-day-unreadable': define<{ value: string }>('warning', 'A story day that cannot be read', ({ value }) => ({
    reason: `Expected a story day from 1 on, such as \`2\`, \`2 night\` or \`flashback\`, found \`${value}\`.`,
    hint: 'Write `> day: 2`.',
    actual: value,
  })),
  'note-day-light': define<{ light: string; time: string }>(
    'warning',
    'A note that tells another light than the heading',
    ({ light, time }) => ({
      reason: `Expected the note to agree with the heading, which says ${time}, found ${light}; the note counts.`,
      hint: `Write ${light.toUpperCase()} in the heading, or take \`${light}\` out of the note.`,
      actual: light,
    }),
  ),
  'note-time-unreadable': define<{ value: string }>('warning', 'A screen time that cannot be read', ({ value }) => ({
    reason: `Screen time expected, such as \`0:40\` or \`40 s\`, found \`${value}\`.`,
    hint: 'Write `> time: 0:40`; the time of day stands in the heading.',
    actual: value,
  })),
  'note-person-unclear': define<{ person: string; value: string }>(
    'warning',
    'A note on a person that says nothing known',
    ({ person, value }) => ({
      reason: `Expected wears, changes to, puts on, takes off or without, found \`${value}\`; the note stays a remark.`,
      hint: `Write \`> ${person}: ${meantClothes(value)}\`, or \`> makeup: ${value} (${person})\`.`,
    }),
  ),
  'note-kind-no-colon': define<{ kind: string; rest: string }>(
    'info',
    'A list of things without a colon',
    ({ kind, rest }) => ({
      reason: `Expected a colon behind \`${kind}\`, found none; the note stays a remark, and nothing is listed.`,
      hint: `If it is a list, write \`> ${kind}: ${rest}\`.`,
    }),
  ),
  'note-empty': define<{ key: string }>('warning', 'A note with nothing behind its colon', ({ key }) => ({
    reason: `Expected something behind \`${key}:\`, found nothing.`,
    hint: 'Write it on the same line, or take the note out.',
  })),
  'note-twice': define<{ key: string }>('warning', 'Two notes of which one counts', ({ key }) => ({
    reason: `Expected one \`${key}:\` in a scene, found another further down; the last one counts.`,
    hint: 'Take one of the two out.',
  })),
  'note-wears-late': define<{ person: string }>('warning', 'A list of clothes behind a change', ({ person }) => ({
    reason: `Expected what ${person} wears before what ${person} changes in the scene, found it behind; it is read as what ${person} comes in with.`,
    hint: `Move the note up under the heading, or write \`> ${person}: changes to …\` for what is put on here.`,
  })),
  'note-none': define<{ key: string; written: string }>('info', 'A list that says it is empty', ({ key, written }) => ({
    reason: `Expected names behind \`${key}:\`, found \`${written}\`; nothing is listed.`,
    hint: 'Take the note out; what is found in the text and shall not be there is refused with `> no: lamp`.',
  })),
  'cast-note-counts': define<{ name: string; count: number; one: string }>(
    'info',
    'Several people without a name in the cast',
    ({ name, count, one }) => ({
      reason: `Expected the names of people, found ${count} ${name}; they are listed with the extras.`,
      hint: `If each is a part of its own, name them: \`> cast: ${one} 1, ${one} 2\`.`,
    }),
  ),
  'note-person-no-colon': define<{ person: string; verb: string }>(
    'info',
    'A note on a person without a colon',
    ({ person, verb }) => ({
      reason: `Expected a colon behind ${person}, found \`${verb}\`; the note stays a remark.`,
      hint: `If it is about clothes, write \`> ${person}: ${verb} …\`.`,
    }),
  ),
  'note-looks-like-script': define<{ text: string }>('info', 'A note that looks like script', ({ text }) => ({
    reason: `Expected a note behind \`>\`, found \`${text}\`; it is not read as script.`,
    hint: 'Take the `>` away if it belongs to the script.',
  })),
} as const satisfies MessageTable;

/** What a note on a person most likely means to say of clothes. */
function meantClothes(value: string): string {
  const [, lacking] = /^(?:no|not|minus)\s+(\S.*)$/i.exec(value) ?? [];
  return lacking === undefined ? 'wears a coat, boots' : `without ${lacking}`;
}
