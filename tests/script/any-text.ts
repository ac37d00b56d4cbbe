import fc from 'fast-check';

/** Stretches of text that meet each other badly: signs of Markdown, of the conventions, and odd characters. */
const stretches = [
  ...[
    '\n',
    '\n',
    '\n\n',
    '\r\n',
    '\r',
    ' ',
    '\t',
    '    ',
    '\u00a0',
    '\u2028',
    '\ufeff',
    '\uffff',
    '\0',
    '\ud800',
    '😀',
  ],
  ...[
    '# ',
    '## ',
    '##',
    '- ',
    '1. ',
    '12) ',
    '> ',
    '>',
    '***',
    '---',
    '...',
    '===',
    '```',
    '|',
    '=',
    '*',
    '**',
    '_',
    '\\',
  ],
  ...['INT. KITCHEN - DAY', 'EXT. YARD', 'int. hall - night', '14 OMITTED', 'SAME', ' - ', '—', '(FLASHBACK)', 'A12 '],
  ...['NORA', 'NORA (V.O.)', 'Tom', '小明', 'é', 'Hello there.', 'a', ':', 'CUT TO:', 'FADE IN:'],
  ...['Nora: wears a, b', 'props: 2 apples (Nora),', 'day: 2', 'time: 0:40', 'no: a', 'cast: Edda', '"', '“', '(', ')'],
  ...[
    '[lamp]',
    '[a][lamp]',
    '[x](prop)',
    '[x](foo)',
    '![p](a.png)',
    '[lamp]: prop "2; carried by Nora"',
    '[',
    ']',
    '(',
  ],
  ...[
    '<!--',
    '-->',
    '<b>',
    '&amp;',
    '&#0;',
    '&#x41;',
    '&',
    '\\[',
    '@',
    'title: x',
    'cast:',
    '  NORA: {age: 3}',
    '{',
    '[',
  ],
];

/** Texts made of such stretches. */
export const nastyText = fc.array(fc.constantFrom(...stretches), { maxLength: 60 }).map((parts) => parts.join(''));

/** Any text at all. */
export const anyText = fc.oneof(
  nastyText,
  fc.string({ unit: 'binary', maxLength: 200 }),
  fc.string({ maxLength: 200 }),
);
