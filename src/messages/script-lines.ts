import { define, type MessageTable } from './define.js';

/** Messages about speech, action, tags and private text. */
export const lineMessages = {
  'comment-open': define('error', 'Private text without its end', () => ({
    reason: 'Expected `-->` at the end of the private text, found the end of the file.',
    hint: 'Write `-->` where the private text ends; until then nothing below `<!--` is read.',
  })),
  'tag-printed': define<{ tag: string }>('info', 'A tag that prints as typed', ({ tag }) => ({
    reason: `Expected plain words, found the tag \`${tag}\`; it prints as typed.`,
    hint: 'Take it out, or write `<!-- … -->` round what nobody shall see.',
  })),
  'cue-alone': define<{ name: string }>('warning', 'A name with a blank line under it', ({ name }) => ({
    reason: `Expected what ${name} says on the line right below the name, found a blank line; both are read as action.`,
    hint: 'Delete the blank line between the name and the words.',
  })),
  'cue-crowded': define<{ name: string }>('warning', 'A name under a line of action', ({ name }) => ({
    reason: `Expected a blank line before ${name} if that is who speaks, found action right above; the lines are read as action.`,
    hint: `Put a blank line before ${name}, and one behind the words.`,
  })),
  'cue-inside': define<{ name: string }>('info', 'A name in the middle of a paragraph', ({ name }) => ({
    reason: `Expected a blank line before ${name} speaks, found none.`,
    hint: 'It is read as a new speech; put a blank line before the name.',
  })),
  'cue-near': define<{ name: string; other: string }>('info', 'A name one letter from another', ({ name, other }) => ({
    reason: `Is ${name} the same person as ${other}? The name stands over one speech only.`,
    hint: `Write ${other} there, or add \`${name}\` to \`cast:\` when they are two people.`,
    actual: name,
    expected: [other],
  })),
  'cue-beside': define<{ name: string }>('warning', 'Two names side by side over a speech', ({ name }) => ({
    reason: `Expected one name over a speech, found two columns; they are read as one speech of ${name}.`,
    hint: 'Write the two speeches one under the other; for words said together begin the second with `(at once)`.',
  })),
  'cue-colon': define<{ name: string }>('info', 'A name with a colon', ({ name }) => ({
    reason: `Expected the name alone on its line, found \`${name}:\`.`,
    hint: `It is read as a speech; write \`${name}\` without the colon.`,
  })),
  'cue-bare-extension': define<{ extension: string }>('info', 'An extension without parentheses', ({ extension }) => ({
    reason: `Expected \`(${extension})\` behind the name, found it without parentheses.`,
    hint: `It is read as meant; write \`(${extension})\`.`,
  })),
  'cue-age': define<{ name: string; age: string }>('info', 'An age behind a name', ({ name, age }) => ({
    reason: `Expected ${name} alone on the line, found the age ${age} behind it; it is read as a speech of ${name}.`,
    hint: `Write the age where ${name} is first seen, or in the front matter: \`cast: {${name}: {age: ${age}}}\`.`,
  })),
  'cue-title': define<{ name: string; other: string }>(
    'info',
    'A name with and without its title',
    ({ name, other }) => ({
      reason: `Is ${name} the same person as ${other}? They are read as two.`,
      hint: `If so, write in the front matter \`cast: {${other}: {aliases: [${name}]}}\`; if not, add both to \`cast:\`.`,
      actual: name,
      expected: [other],
    }),
  ),
  'cue-parenthesis-open': define<{ text: string }>('info', 'A parenthesis behind a name left open', ({ text }) => ({
    reason: 'Expected `)` behind the name, found none.',
    hint: `It is read as meant; write \`${text}\`.`,
  })),
  'speech-on-one-line': define<{ name: string }>('info', 'A name and words on one line', ({ name }) => ({
    reason: `Expected ${name} on a line of its own, found the words behind a colon; the line is read as action.`,
    hint: `If ${name} speaks, write the name on one line and the words on the next.`,
  })),
  'speech-sign': define<{ sign: string }>('info', 'A list or heading sign in a speech', ({ sign }) => ({
    reason: `Expected words right under a speech, found the sign \`${sign}\`; the line is read as speech.`,
    hint: 'If it is no speech, put a blank line before it.',
  })),
  'speech-without-words': define<{ name: string }>('info', 'A speech that is only a parenthetical', ({ name }) => ({
    reason: `Expected words that ${name} says, found only a line in parentheses.`,
    hint: 'Write the words on the next line, without a blank line between.',
  })),
  'line-may-be-scene': define<{ text: string; meant: string }>(
    'info',
    'A line that may be a scene',
    ({ text, meant }) => ({
      reason: `Expected INT or EXT before a place and a time, found \`${text}\`; the line is read as action.`,
      hint: `If it is a scene, write \`${meant}\`, or the same with EXT.`,
    }),
  ),
  'heading-behind-words': define<{ text: string; meant: string }>(
    'warning',
    'A scene heading behind other words',
    ({ text, meant }) => ({
      reason: `Expected INT or EXT at the start of the line, found \`${text}\`; it is read as action, and what follows stays in the scene above.`,
      hint: `If a scene begins here, write \`${meant}\`, and what it is in parentheses at the end, as in \`(FLASHBACK)\`.`,
    }),
  ),
  'transition-no-colon': define<{ text: string }>('info', 'A transition without its colon', ({ text }) => ({
    reason: `Expected a colon behind \`${text}\`, found none.`,
    hint: `It is read as a transition; write \`${text.replace(/\.$/, '')}:\`.`,
  })),
  'transition-inside': define<{ text: string }>('info', 'A transition without blank lines round it', ({ text }) => ({
    reason: `Expected a blank line before and after \`${text}\`, found text right beside it.`,
    hint: 'It is read as a transition; put a blank line there.',
  })),
  'line-not-in-note': define('warning', 'A line under a note without its sign', () => ({
    reason: 'Expected `>` before a further line of the note, found none; the line is read as script and prints.',
    hint: 'Write `> ` before it, or put a blank line between the two.',
  })),
  'line-not-in-item': define('info', 'A line under a list item without its indent', () => ({
    reason: 'Expected spaces before a further line of the list item, found none; the line is read by itself.',
    hint: 'Put spaces before it, or a blank line between the two.',
  })),
  'picture-left-out': define('info', 'A picture in the script', () => ({
    reason: 'Expected words, found a picture; the script prints without it.',
    hint: 'Name pictures in the production book, where the sheets find them.',
  })),
  'line-too-long': define<{ most: number; length: number }>(
    'error',
    'A line too long to be read',
    ({ most, length }) => ({
      reason: `Expected a line of at most ${most} characters, found one of ${length}: the script was not read.`,
      hint: 'Break it into paragraphs, with a blank line between two; perhaps the line ends were lost when the text was copied.',
    }),
  ),
  'emphasis-too-much': define<{ most: number }>('warning', 'A paragraph full of stars or underlines', ({ most }) => ({
    reason: `Expected at most ${most} stars and underlines in a paragraph, found more: they print as typed, and nothing in it is italic or bold.`,
    hint: 'Put blank lines between the paragraphs, or take out the signs that are not meant.',
  })),
  'nested-too-deep': define<{ most: number }>('warning', 'Signs of lists or notes within each other', ({ most }) => ({
    reason: `Expected at most ${most} signs such as \`>\` or \`-\` before a line, found more: the rest prints as typed.`,
    hint: 'One `>` makes a note, one `-` an item of a list; take out the others.',
  })),
} as const satisfies MessageTable;
