import type { Breakdown } from '../../breakdown/types.js';
import { type Block, blank, bold, type Inline } from '../layout/kit.js';
import type { Production } from '../types.js';
import { isMinor, peopleOf } from './plan-words.js';

/** What is measured on everyone who wears something, in the order of a tape from head to foot. */
const measures = ['height', 'head', 'neck', 'chest', 'waist', 'hip', 'inside leg', 'glove', 'shoe'];

/**
 * Sizes and allergies of everyone who is dressed. Sizes of people under age are not printed: they are kept by whoever is
 * responsible for the child and never lie on a set.
 */
export function measurementBlocks(breakdown: Breakdown, { book }: Production): Block[] {
  const people = peopleOf(breakdown, book);
  const dressed = breakdown.cast.filter((person) => person.changes.length > 0 || person.seen.length > 0);
  const cards = dressed.map((person): Block => {
    const entry = people.get(person.id) ?? null;
    const minor = isMinor(person.id, breakdown, book);
    const sizes = entry?.privately.sizes ?? [];
    const named = (label: string) => sizes.find((one) => one.label.toLowerCase() === label)?.text ?? null;
    const more = sizes.filter((one) => !measures.includes(one.label.toLowerCase()));
    const tape: Inline = minor
      ? 'Under age: sizes are kept by whoever is responsible for the child; ask there.'
      : [
          ...measures.flatMap((label) => [
            `${label} `,
            named(label) === null ? blank(34) : bold(named(label) as string),
            '   ',
          ]),
          ...more.map((one) => `${one.label} ${one.text}   `),
        ];
    const entries: Inline[] = [
      tape,
      [
        bold('Allergies: '),
        entry && entry.privately.allergies.length > 0 ? bold(entry.privately.allergies.join(', ')) : blank(90),
        '   wool, latex, dye, make-up asked? ',
        blank(40),
      ],
      ['To hide (tattoos, piercings, hair): ', blank(150)],
      [
        bold('Own clothes: '),
        entry && entry.owns.length > 0 ? entry.owns.join(', ') : blank(110),
        '   dirt, blood, cutting allowed: ',
        bold('no'),
        ', unless written here: ',
        blank(60),
        '   agreed if spoilt: ',
        blank(60),
      ],
    ];
    const name: Inline = entry?.playedBy ? [bold(person.name), `\n${entry.playedBy}`] : bold(person.name);
    return { kind: 'section', label: name, labelWidth: 84, blocks: [{ kind: 'entries', entries }] };
  });
  if (cards.length === 0) return [];
  return [
    { kind: 'heading', level: 2, text: 'Sizes and allergies: private', bookmark: 'Sizes' },
    {
      kind: 'paragraph',
      text: [
        'Asked on the first day of preparation, checked with a tape at the fitting. ',
        bold('This page stays in your hands'),
        ': it does not lie on a set, and is torn up after the shoot.',
      ],
    },
    ...cards,
  ];
}
