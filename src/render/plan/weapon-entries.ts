import type { Book, BookElement } from '../../book/types.js';
import { namesFirearm } from '../../trade/firearm-words.js';
import { type Block, blank, bold, danger, type TableRow, tick } from '../layout/kit.js';
import { dateWords } from './plan-words.js';

/** A weapon or blade that the book knows, toy or not. */
export type WeaponEntry = BookElement & { readonly weapon: NonNullable<BookElement['weapon']> };

/** Every weapon and blade of the book, in its order. */
export function listWeaponEntries(book: Book | null): WeaponEntry[] {
  return (book?.elements ?? []).filter((one): one is WeaponEntry => one.weapon !== null);
}

/** The name of a weapon as it prints. */
export function weaponName({ id, name }: BookElement): string {
  return name ?? id.replace(/-/g, ' ');
}

const columns = [
  { head: 'What', share: 1.4 },
  { head: 'Real, replica\nor soft', share: 1 },
  { head: 'Made harmless by, on', share: 1.4 },
  { head: 'Key holder', share: 1.2 },
  { head: 'Notice\ngiven', width: 42 },
];

/** What the book says of every weapon and blade, with the rules for its kind: of what is live only where there is a gun. */
export function weaponEntryBlocks(weapons: readonly WeaponEntry[]): Block[] {
  if (weapons.length === 0) return [];
  const rows = weapons.map(
    (entry): TableRow => ({
      cells: [
        bold(weaponName(entry)),
        entry.weapon.kind ?? blank(50),
        entry.weapon.bluntedBy ? `${entry.weapon.bluntedBy}, ${dateWords(entry.weapon.bluntedOn)}` : blank(80),
        entry.weapon.keyHolder ?? blank(70),
        entry.weapon.noticeGiven === true ? 'yes' : tick,
      ],
    }),
  );
  return [
    {
      kind: 'keep',
      blocks: [
        { kind: 'heading', level: 3, text: [danger, ' Who holds the key'] },
        { kind: 'table', columns, rows },
        { kind: 'paragraph', text: rulesFor(weapons) },
      ],
    },
  ];
}

function rulesFor(weapons: readonly WeaponEntry[]): string {
  const guns = weapons.some((one) => namesFirearm(weaponName(one)));
  const blades = weapons.some((one) => !namesFirearm(weaponName(one)));
  return [
    'Locked and covered but for takes; shown harmless to everyone who is near it; carried in a closed case, out of sight of the public; counted out and in with the time.',
    ...(guns ? ['Nothing live on the premises: no cartridge, no blank, not for a test.'] : []),
    ...(blades ? ['Edges and points blunted or soft; near a child soft only.'] : []),
    'Local law and licensed people decide.',
  ].join(' ');
}
