import { define, type MessageTable } from './define.js';

/** Messages about scenes, their headings and their numbers. */
export const sceneMessages = {
  'no-scene': define('error', 'A file without a scene', () => ({
    reason: 'Expected at least one scene heading, found none.',
    hint: 'Start each scene with a line like `## INT. KITCHEN - DAY`.',
  })),
  'scene-number-twice': define<{ number: string }>('error', 'One number on two scenes', ({ number }) => ({
    reason: `Expected each scene to have a number of its own, found ${number} again.`,
    hint: `Give one of them another number; a scene put in after ${number} is ${number}A.`,
  })),
  'scene-number-omitted': define<{ number: string }>(
    'warning',
    'A number in use that is called omitted',
    ({ number }) => ({
      reason: `Expected the number of an omitted scene to stay free, found ${number} on another line too.`,
      hint: `Take the line \`${number} OMITTED\` out, or give the scene another number.`,
    }),
  ),
  'scene-number-order': define<{ number: string; before: string }>(
    'warning',
    'Scene numbers out of order',
    ({ number, before }) => ({
      reason: `Expected a scene number after ${before}, found ${number}.`,
      hint: `If the scene was moved, that is fine; else number it so that it follows ${before}: ${before}A comes right after it.`,
    }),
  ),
  'scene-number-missing': define<{ after: string | null }>(
    'warning',
    'A scene without a number in a locked script',
    ({ after }) => ({
      reason: 'Expected a number, because the front matter says `numbers: locked`, found none.',
      hint: `Number the scene by hand${after ? `: ${after}A comes after ${after}` : ', as in `1 INT. KITCHEN - DAY`'}.`,
    }),
  ),
  'scene-line-with-text': define('info', 'A scene line with a sentence behind it', () => ({
    reason:
      'Expected the scene line to end with its time, found a sentence behind it; the sentence is read as the first action.',
    hint: 'Put the sentence into a line of its own, with a blank line above.',
  })),
  'heading-no-space': define('info', 'A heading without a space behind #', () => ({
    reason: 'Expected a space behind the `#` signs, found none.',
    hint: 'It is read as a heading all the same; write `## INT. KITCHEN - DAY`.',
  })),
  'heading-small-letters': define<{ written: string; text: string }>(
    'warning',
    'A scene line in small letters',
    ({ written, text }) => ({
      reason: `Expected capitals at the start of a scene line, found \`${written}\`; the line is read as action.`,
      hint: `If it is a scene, write \`${text.toUpperCase()}\`, or put \`## \` before it.`,
    }),
  ),
  'heading-setting-in-full': define<{ written: string; short: string }>(
    'info',
    'INTERIOR or EXTERIOR written in full',
    ({ written, short }) => ({
      reason: `Expected ${short}., found \`${written}\`.`,
      hint: `It is read as ${short}.; write \`${short}.\` to save the space.`,
    }),
  ),
  'heading-no-dash': define<{ time: string }>('info', 'A heading without a dash before its time', ({ time }) => ({
    reason: `Expected a dash before the time, found \`${time}\` without one.`,
    hint: `It is read as the time; write \` - ${time}\`.`,
  })),
  'heading-two-settings': define<{ place: string }>('warning', 'Two settings in one heading', ({ place }) => ({
    reason: `Expected one setting in a heading, found a second one; it is read as one scene at \`${place}\`.`,
    hint: 'If the camera only looks from one to the other, nothing need be done; if they are shot apart, give each a heading of its own.',
  })),
  'heading-no-place': define('warning', 'A heading without a place', () => ({
    reason: 'Expected a place behind INT or EXT, found none.',
    hint: 'Write where the scene plays: `INT. KITCHEN - DAY`.',
  })),
  'heading-no-time': define<{ meant: string | null }>('warning', 'A heading without a time', ({ meant }) => ({
    reason: 'Expected a time such as DAY or NIGHT at the end of the heading, found none.',
    hint: meant
      ? `Write ${meant} if that is meant, else \` - DAY\`, \` - NIGHT\` or another time of day behind the place.`
      : 'Write ` - DAY`, ` - NIGHT` or another time of day behind the place.',
  })),
  'heading-no-light': define<{ time: string }>('info', 'A time that tells no light', ({ time }) => ({
    reason: `Expected a time that tells day from night, found \`${time}\`; the light of the scene is not known.`,
    hint: `Write \` - ${time} - DAY\`, or NIGHT, DAWN or DUSK instead of DAY.`,
  })),
  'light-carried-far': define<{ light: string; from: string }>(
    'info',
    'A light carried over many headings',
    ({ light, from }) => ({
      reason: `Expected a time of day now and then, found ${light} carried from ${from}.`,
      hint: `Write ${light.toUpperCase()} in this heading if it is still so.`,
    }),
  ),
  'part-or-scene': define<{ text: string; meant: string; above: string | null }>(
    'warning',
    'A heading that may be a part or a scene',
    ({ text, meant, above }) => ({
      reason: `Expected INT or EXT before a place and a time, found \`${text}\`; it is read as a part of the script${above === null ? '' : `, and what stands under it counts to ${above}`}.`,
      hint: `If it is a scene, write \`## ${meant}\`.`,
    }),
  ),
  'text-under-part': define<{ text: string; above: string }>(
    'info',
    'Text under a heading that is no scene',
    ({ text, above }) => ({
      reason: `Expected a scene heading under \`${text}\`, found text; it counts to ${above}.`,
      hint: `If another scene begins there, write its heading above the text: \`## INT. PLACE - DAY\`; else nothing need be done.`,
    }),
  ),
  'scene-line-crowded': define('info', 'A scene line without blank lines round it', () => ({
    reason: 'Expected a blank line before and after a scene line, found text right beside it.',
    hint: 'It starts a scene all the same; put a blank line there.',
  })),
  'text-before-scene': define<{ title: string | null }>('warning', 'Text before the first scene', ({ title }) => ({
    reason: 'Expected a scene heading before the first action or speech, found text.',
    hint: title
      ? `If \`${title}\` is the title, put these four lines at the very top instead: \`---\`, \`title: ${quoteValue(title)}\`, \`author: …\`, \`---\`.`
      : 'It prints, but belongs to no scene; write `## INT. … - DAY` above it, or a title in the front matter.',
  })),
} as const satisfies MessageTable;

/** A value of the front matter: in quotes where signs could be read as more than text. */
function quoteValue(text: string): string {
  return /^[\w ,.\u2019'-]*$/.test(text) ? text : JSON.stringify(text);
}
