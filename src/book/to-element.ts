import type { AmountReader } from './amounts.js';
import type { Path, PlacedDocument } from './book-places.js';
import { names } from './choices.js';
import type { WrittenElement } from './element-shape.js';
import type { BookElement, BookState, BookWeapon, Material, PrepTask } from './types.js';
import { parseBatteries, parseHours } from './written-values.js';

/** Turns one checked entry of `elements` or `kit` into what the plan reads; an empty entry gives an empty decision. */
export function toElement(
  id: string,
  entry: WrittenElement | null | undefined,
  path: Path,
  placed: PlacedDocument,
  amounts: AmountReader,
): BookElement {
  const written: WrittenElement = entry ?? {};
  const money = (key: 'price' | 'rough price' | 'deposit' | 'paid' | 'owed' | 'refund') =>
    amounts.read(written[key], [...path, key]);
  return {
    id,
    name: written.name ?? null,
    need: written.need ?? null,
    was: (written.was ?? []).map(String),
    ...supply(written),
    ...counts(written),
    states: toStates(written.states),
    price: money('price'),
    roughPrice: money('rough price'),
    per: written.per ?? (written.pack && written.get !== 'hire' ? 'pack' : 'piece'),
    taxIncluded: written['tax included'] ?? null,
    tax: written.tax ?? null,
    deposit: money('deposit'),
    depositReturned: written['deposit returned'] ?? null,
    prep: toPrep(written.prep),
    materials: toMaterials(written.materials, path, amounts),
    ...dates(written),
    paid: money('paid'),
    owed: money('owed'),
    paidBy: written['paid by'] ?? null,
    receipt: written.receipt ?? null,
    refund: money('refund'),
    ...papers(written),
    at: placed.keyAt(path),
  };
}

function supply(written: WrittenElement) {
  return {
    source: written.get ?? null,
    from: written.from ?? null,
    secondSource: written['second source'] ?? null,
    have: written.have ?? 0,
    owner: written.owner ?? null,
    deliveryDays: written.delivery ?? null,
    problem: written.problem ?? null,
    replaces: written.replaces ?? null,
  };
}

function counts(written: WrittenElement) {
  return {
    copies: written.copies ?? null,
    standIns: written['stand-ins'] ?? null,
    backgroundCopies: written['background copies'] ?? null,
    usedUp: written['used up'] ?? null,
    usedUpIn: names(written['used up in']),
    perTake: written['per take'] ?? null,
    takes: written.takes ?? null,
    setups: written.setups ?? null,
    rehearsals: written.rehearsals ?? null,
    spare: written.spare ?? null,
    together: written.together ?? null,
    fragile: written.fragile ?? null,
    material: written.material ?? null,
    piece: written.piece ?? null,
    pack: written.pack ?? null,
    pool: written.pool ?? null,
    batteries: written.batteries ? parseBatteries(written.batteries) : null,
  };
}

function dates(written: WrittenElement) {
  return {
    collect: written.collect ?? null,
    back: written.back ?? null,
    fitting: written.fitting ?? null,
    test: written.test ?? null,
    rehearsal: written.rehearsal ?? null,
    ordered: written.ordered ?? null,
    promised: written.promised ?? null,
    received: written.received ?? null,
    checked: written.checked ?? null,
    ready: written.ready ?? null,
    paidOn: written['paid on'] ?? null,
    refundOn: written['refund on'] ?? null,
  };
}

function papers(written: WrittenElement) {
  return {
    box: written.box ?? null,
    label: written.label ?? null,
    who: written.who ?? null,
    pictures: (written.pictures ?? []).filter((one) => one !== null && one !== undefined).map(String),
    words: written.words ?? null,
    weapon: toWeapon(written.weapon),
    note: written.note ?? null,
  };
}

function toStates(written: WrittenElement['states']): BookState[] {
  return Object.entries(written ?? {}).map(([state, entry]) => ({
    state,
    undo:
      entry?.undo === 'never'
        ? 'never'
        : entry?.undo === null || entry?.undo === undefined
          ? null
          : parseHours(String(entry.undo)),
    makeHours: entry?.make ?? null,
    onCamera: entry?.['on camera'] ?? null,
  }));
}

function toPrep(written: WrittenElement['prep']): PrepTask[] {
  return (written ?? []).flatMap((entry) => {
    if (entry === null || entry === undefined) return [];
    if (typeof entry === 'string') return [{ task: entry, who: null, hours: null, days: null, waitDays: null }];
    return [
      {
        task: entry.task,
        who: entry.who ?? null,
        hours: entry.hours ?? null,
        days: entry.days ?? null,
        waitDays: entry.wait ?? null,
      },
    ];
  });
}

function toMaterials(written: WrittenElement['materials'], path: Path, amounts: AmountReader): Material[] {
  return (written ?? []).flatMap((entry, index) => {
    if (!entry) return [];
    const at = [...path, 'materials', index];
    return [
      {
        what: entry.what,
        from: entry.from ?? null,
        price: amounts.read(entry.price, [...at, 'price']),
        pieces: entry.pieces ?? 1,
        deliveryDays: entry.delivery ?? null,
        ordered: entry.ordered ?? null,
        received: entry.received ?? null,
        paid: amounts.read(entry.paid, [...at, 'paid']),
        paidOn: entry['paid on'] ?? null,
      },
    ];
  });
}

function toWeapon(written: WrittenElement['weapon']): BookWeapon | null {
  if (!written) return null;
  return {
    kind: written.kind ?? null,
    bluntedBy: written['blunted by'] ?? null,
    bluntedOn: written['blunted on'] ?? null,
    keyHolder: written['key holder'] ?? null,
    noticeGiven: written['notice given'] ?? null,
  };
}
