import { describe, expect, it } from 'vitest';
import { compileText } from '../support/compile-text.js';
import { findFaults } from '../support/page-faults.js';
import { readInk } from '../support/pdf-ink.js';

const script = `---
title: The Extraordinarily Long-Winded Chronicle of Bartholomew Featherstonehaugh-Cholmondeley
draft: A
date: 2027-01-15
cast:
  BARTHOLOMEW FEATHERSTONEHAUGH-CHOLMONDELEY: { age: 9 }
  THE HONOURABLE MISS WILHELMINA VAN DER HOOGENBAND: { age: 40 }
---

## 101A. INT. WAREHOUSE OF THE UNITED NORTHERN SHIPPING AND FORWARDING COMPANY - SECOND LOADING BAY BEHIND THE OFFICE - NIGHT

> props: hand-painted commemorative porcelain soup tureen with lid (BARTHOLOMEW FEATHERSTONEHAUGH-CHOLMONDELEY), letter
> BARTHOLOMEW FEATHERSTONEHAUGH-CHOLMONDELEY: wears double-breasted midnight-blue velvet smoking jacket, knee-length breeches
> dressing: three-hundred-year-old grandfather clock with a cracked face

BARTHOLOMEW FEATHERSTONEHAUGH-CHOLMONDELEY smashes the hand-painted commemorative porcelain soup tureen with lid. He tears the letter. Blood runs down his velvet smoking jacket. He fires a pistol.

> letter: torn into a great many irregular pieces of different sizes
> hand-painted commemorative porcelain soup tureen with lid: smashed

THE HONOURABLE MISS WILHELMINA VAN DER HOOGENBAND
Donaudampfschifffahrtselektrizitätenhauptbetriebswerkbauunterbeamtengesellschaft!

## 101B. EXT. QUAY - DAWN

THE HONOURABLE MISS WILHELMINA VAN DER HOOGENBAND swims. Forty dock workers cheer.
`;

const book = `money: { currency: EUR, budget: 100000 }
locations:
  quay: { name: The Very Old Quay Behind the Customs House of the Free Port, address: 1234 Shore Road of the Northern Harbour, coordinates: "55.6, 12.3", zone: Europe/Copenhagen, hospital: 9 High Street, parking: on the gravel behind the third crane from the left, permission: yes }
places:
  quay: { at: quay }
days:
  - { date: 2027-03-12, call: 8:00, wrap: 18:00, at: quay, scenes: [101B, 101A] }
helpers:
  kim: { name: Kimberly-Alexandra Wolfeschlegelsteinhausen, does: [props, costume, production], phone: 555 0188, cash: 50 }
elements:
  letter: { get: buy, copies: 2, price: 2, box: THE LARGE BROWN SUITCASE WITH STRAPS, words: "My dearest, most esteemed and honoured Wilhelmina, when you read this I shall be far away.", note: a long note about the paper that must be aged in tea and dried flat between boards for a day }
  double-breasted-midnight-blue-velvet-smoking-jacket: { get: hire, owner: The Municipal Theatre Costume Department, price: 1234.50, per: week, deposit: 10000, collect: 2027-03-10, back: 2027-03-15 }
`;

const papers = ['sheets', 'costumes', 'props', 'indexes', 'purchases', 'questions'] as const;

async function findAll(text: string, withBook: boolean): Promise<{ names: string[]; faults: string[] }> {
  const { files } = await compileText(
    text,
    withBook ? [...papers, 'plan', 'callsheets'] : papers,
    withBook ? { text: book, file: 'book.yaml' } : null,
  );
  const printed = files.filter(({ name }) => name.endsWith('.pdf'));
  const faults = printed.map(async ({ name, content }) => {
    const pages = await readInk(content as Uint8Array);
    return pages.flatMap((page, at) => findFaults(page, `${name} page ${at + 1}`));
  });
  return { names: printed.map(({ name }) => name), faults: (await Promise.all(faults)).flat() };
}

describe('very long names of people, places and things', () => {
  it.each([
    ['letter', true, 8],
    ['letter', false, 6],
    ['a4', true, 8],
  ] as const)('stay inside their columns on %s, with a book: %s', async (paper, withBook, count) => {
    const { names, faults } = await findAll(script.replace('draft: A', `draft: A\npaper: ${paper}`), withBook);
    expect(names).toHaveLength(count);
    expect(faults).toEqual([]);
  });
});

describe('the eye for faults', () => {
  it('sees what is too small, coloured, outside the margins or over other text', () => {
    const text = { text: 'lamp', x: 60, right: 90, y: 100, size: 10 };
    const page = { width: 612, height: 792, texts: [text], coloured: false };
    expect(findFaults(page, 'page')).toEqual([]);
    expect(findFaults({ ...page, texts: [{ ...text, size: 9 }] }, 'page')).toEqual(['page: 9 points: lamp']);
    expect(findFaults({ ...page, texts: [{ ...text, right: 600 }] }, 'page')).toEqual(['page: outside: lamp']);
    expect(findFaults({ ...page, texts: [text, { ...text, text: 'tin', x: 80 }] }, 'page')).toEqual([
      'page: "tin" over "lamp"',
    ]);
    expect(findFaults({ ...page, coloured: true }, 'page')).toEqual(['page: colour']);
  });
});
