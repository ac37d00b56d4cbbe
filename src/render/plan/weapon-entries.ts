import type { Book } from '../../book/types.js';
import { type Block, blank, bold, danger, type TableRow, tick } from '../layout/kit.js';
import { dateWords } from './plan-words.js';

const columns = [
  { head: 'What', share: 1.4 },
  { head: 'Real, replica\nor soft', share: 1 },
  { head: 'Made harmless by, on', share: 1.4 },
  { head: 'Key holder', share: 1.2 },
  { head: 'Notice\ngiven', width: 42 },
  { head: 'Out', width: 40 },
  { head: 'In', width: 40 },
];

/** What the book says of every weapon and blade, with blanks for the count out and in. */
export function weaponEntryBlocks(book: Book): Block[] {
  const weapons = book.elements.filter((one) => one.weapon !== null);
  if (weapons.length === 0) return [];
  const rows = weapons.map(
    ({ id, name, weapon }): TableRow => ({
      cells: [
        bold(name ?? id.replace(/-/g, ' ')),
        weapon?.kind ?? blank(50),
        weapon?.bluntedBy ? `${weapon.bluntedBy}, ${dateWords(weapon.bluntedOn)}` : blank(80),
        weapon?.keyHolder ?? blank(70),
        weapon?.noticeGiven === true ? 'yes' : tick,
        blank(36),
        blank(36),
      ],
    }),
  );
  return [
    {
      kind: 'keep',
      blocks: [
        { kind: 'heading', level: 3, text: [danger, ' Weapons and blades: who holds the key'] },
        { kind: 'table', columns, rows },
        {
          kind: 'paragraph',
          text: 'Locked and covered but for takes; shown safe to everyone who is near it; carried in a closed case, out of sight of the public; counted out and in with the time. Nothing live on the premises. Local law and licensed people decide.',
        },
      ],
    },
  ];
}
