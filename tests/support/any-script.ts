import fc from 'fast-check';

const lineEnds = ['\n', '\n', '\n\n', '\n\n', '\r\n', '\r', '  \n', '\\\n', '\u2028', '\u0085'];

const headings = [
  '## 1. INT. KITCHEN - DAY',
  'EXT. YARD - NIGHT',
  '# int. hall – later',
  '##INT/EXT. CAR - CONTINUOUS',
  '12A INT. BAR - BACK ROOM - DUSK (FLASHBACK)',
  'I/E HOUSE - 1931',
  '3. EXT.',
  '14 OMITTED',
  '- INT. CELLAR - SAME',
  '# ACT TWO',
  '## THE MORNING',
  'interior kitchen day',
];

const cues = [
  'NORA',
  'NORA (V.O.)',
  'IVO (CONT’D)',
  'MR. PELL (on the phone)',
  'NURSE #2',
  '**NORA**',
  'Nora:',
  'NORA: Sit.',
  'ÉLODIE',
  '小明',
  '(softly)',
];

const action = [
  'Nora lifts the [storm lantern] off its hook.',
  'Ivo, 9, in a soaked *yellow* oilskin, hands her six crates of apples.',
  'He lights up and drives off. GUNSHOT. Blood on his sleeve.',
  'THREE NURSES push [a coil of rope](prop) and [the lamp][storm lantern].',
  'She takes off her coat; it is torn at the sleeve.',
  'A crowd of twenty runs through broken glass. The dog barks.',
  '- A boat burns.',
  '1. A bell.',
  'It rains.',
  'CUT TO:',
  'FADE IN:',
  '***',
  '---',
  'He reads "a *letter*" \\[x\\] &amp; [ ] [^1] ![map](map.png) [x](foo).',
];

const notes = [
  '> props: torch, 2 crates of apples (Nora),',
  '> six eggs',
  '> storm lantern: broken glass',
  '> Nora: wears coat, hat',
  '> Nora: changes to gown',
  '> Ivo: without hat',
  '> cast: Ivo',
  '> extras: twelve guests',
  '> day: 2 night',
  '> day: flashback',
  '> time: 0:40',
  '> time: NIGHT',
  '> synopsis: A thing happens.',
  '> safety: hold the rope',
  '> no: lantern',
  '> no everywhere: dog',
  '> answer: need-lantern-1; yes',
  '> lampe:',
  '> weapons: a knife',
];

const ends = [
  '[storm lantern]: prop "2; carried by Nora; was lamp; brass"',
  '[coat]: costume "worn by Ivo"',
  '[rope]: no such "thing"',
  '---\ntitle: Two: Cups\ncast: { NORA: { aliases: [MISS BELL], age: 9 } }\neighths: up\n---\n',
  '---\npaper: a4\nnumbers: locked\n---',
  '---\ntitle: [\n---',
  '<!-- private -->',
  '<!--',
  '-->',
  '<b>bold</b>',
  '<!DOCTYPE html>',
  '| a | b |\n| - | - |',
  '```\ncode\n```',
  '    indented',
];

const odd = [
  '[',
  ']',
  '](',
  '*',
  '**',
  '_',
  '>',
  '> ',
  '\\',
  '"',
  '“',
  '(',
  ')',
  '\t',
  ' ',
  '\u00a0',
  '\ufeff',
  '\u200d',
  '\u0000',
  '\uffff',
  '\u202e',
  '😀',
  'é',
  'e\u0301',
  'ﬁ',
  'שלום',
  'Привет',
  '&#0;',
  '&#x1F600;',
  '=',
  '{',
  '@',
  '1)',
  'x'.repeat(90),
];

const fronts = [
  '---\ntitle: Two Cups\ncast: { NORA: { aliases: [MISS BELL], age: 9 }, DRIVER: { background: true } }\n---\n\n',
  '---\npaper: a4\neighths: up\nnumbers: locked\n---\n\n',
  '---\nlanguage: fr\n---\n\n',
  '\n---\ntitle: X\n...\n',
];
const speeches = [
  'NORA\nSit down.',
  'IVO (O.S.)\n(from the stairs)\nHand me the [storm lantern].\nNow.',
  'MISS BELL (V.O.)\nI kept the letter.\nIVO\nSo did I.',
  'HIKER\n- One\n# Two',
  'NORA\n> storm lantern: wet\nThere.',
];

const oneOf = (all: readonly string[]) => fc.constantFrom(...all);
const piece = fc.oneof(
  { weight: 3, arbitrary: oneOf(headings) },
  { weight: 5, arbitrary: oneOf(action) },
  { weight: 3, arbitrary: oneOf(notes) },
  { weight: 2, arbitrary: oneOf(cues) },
  { weight: 2, arbitrary: oneOf(speeches) },
  { weight: 1, arbitrary: oneOf(ends) },
  { weight: 2, arbitrary: oneOf(odd) },
  { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 6 }) },
);
const front = fc.option(oneOf(fronts), { nil: '', freq: 1 });
const pieces = fc.array(fc.tuple(piece, fc.option(oneOf(lineEnds), { nil: '', freq: 5 })), { maxLength: 30 });

/** Texts made of what scripts are made of, put together in any order; most begin with a scene line. */
export const scriptLike = fc
  .tuple(front, fc.option(oneOf(headings), { nil: '', freq: 4 }), pieces)
  .map(([top, first, parts]) => `${top}${first}\n\n${parts.flat().join('')}`);

const block = fc.oneof(oneOf(action), oneOf(speeches), oneOf(notes));
const place = fc.tuple(
  oneOf(['INT. KITCHEN', 'EXT. YARD', 'INT. BAR - BACK ROOM', 'INT/EXT. CAR']),
  oneOf(['DAY', 'NIGHT', 'LATER', 'NIGHT (FLASHBACK)', 'THE NEXT MORNING']),
);
const scenes = fc.array(fc.tuple(place, fc.array(block, { maxLength: 7 })), { minLength: 1, maxLength: 7 });
const definition = fc.option(oneOf(ends.slice(0, 2)), { nil: '' });

/** Scripts as a careful writer has them: each scene under its heading, blank lines between all blocks. */
export const tidyScript = fc
  .tuple(front, scenes, definition)
  .map(
    ([top, all, end]) =>
      `${top}${all.map(([[where, when], body]) => [`## ${where} - ${when}`, ...body].join('\n\n')).join('\n\n')}\n\n${end}\n`,
  );

/** Any text at all, script or not. */
export const anyText = fc.oneof(
  { weight: 4, arbitrary: scriptLike },
  { weight: 2, arbitrary: tidyScript },
  { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 300 }) },
);
