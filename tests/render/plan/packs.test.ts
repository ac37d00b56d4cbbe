import { readFileSync } from 'node:fs';
import { parse as parseCsv } from 'csv-parse/sync';
import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';
import { compileText } from '../../support/compile-text.js';
import { pdfLines } from '../../support/pdf-lines.js';
import { readPdf } from '../../support/pdf-positions.js';

const script = `---
title: The Lamp Room
draft: C
date: 2027-01-15
cast:
  ADA: { age: 40 }
  MO: { age: 11 }
---

## 1. INT. LAMP ROOM - DAY

> Ada: wears grey coat, boots
> props: letter (Ada)

Ada holds the letter.

## 2. EXT. PIER - DAWN

Ada tears the letter. MO watches from the rail.

> Ada: wears grey coat, boots
> letter: torn
> grey coat: soaked

## 3. INT. LAMP ROOM - NIGHT

> props: letter

The letter lies on the table.
`;

const book = `money: { currency: EUR, budget: 100, rates: { USD: 0.5 on 2027-01-02 } }
locations:
  pier: { name: West Pier, address: 1 Shore Road, coordinates: "55.6, 12.3", zone: Europe/Copenhagen, hospital: 9 High Street }
places:
  pier: { at: pier }
days:
  - { date: 2027-03-12, call: 8:00, wrap: 18:00, at: pier, scenes: [2] }
  - { date: 2027-03-13, call: 8:00, wrap: 18:00, scenes: [1] }
people:
  ada: { played by: An Actor, phone: 555 0199, sizes: { chest: 97 cm }, allergies: [latex] }
  mo: { played by: A Child, minor: yes, sizes: { chest: 71 cm }, hours a day: 4 }
helpers:
  kim: { name: Kim, does: [props], phone: 555 0188, cash: 50 }
  sam: { name: Sam, does: [costume] }
elements:
  letter: { get: buy, price: 2 USD, label: L, paid: 3, paid by: kim, receipt: "17", words: Come at once. }
  grey-coat: { get: hire, owner: The theatre, price: 20, per: week, deposit: 80, collect: 2027-03-10, back: 2027-03-15, note: "=2+3" }
scenes:
  ext-pier-dawn: { in charge: kim, reset: [new letter, dry coat], reset minutes: 9 }
kit:
  tape: { need: 2, get: own, have: 2 }
`;

const compiled = await compileText(script, ['props', 'costumes', 'purchases', 'plan', 'callsheets', 'calendar'], {
  text: book,
  file: 'book.yaml',
});
const contentOf = (name: string) => {
  const file = compiled.files.find((one) => one.name === name);
  if (!file) throw new Error(`${name} was not written: ${compiled.messages.map((one) => one.reason).join('; ')}`);
  return file.content;
};
const linesOf = (name: string) => pdfLines(contentOf(name));
const [props, costumes, plan, calls, purchases] = (await Promise.all(
  ['props.pdf', 'costumes.pdf', 'plan.pdf', 'callsheets.pdf', 'purchases.pdf'].map(linesOf),
)) as [string[], string[], string[], string[], string[]];

describe('call sheets', () => {
  it('are one side a day', async () => {
    const { pages } = await readPdf(contentOf('callsheets.pdf') as Uint8Array);
    expect(pages).toHaveLength(2);
  });

  it('say when, where, who, what is dangerous, and where the hospital is', () => {
    const text = calls.join('\n');
    expect(text).toContain('Day 1 of 2: Friday, 12 March 2027');
    expect(text).toContain('Call 08:00 · Wrap 18:00');
    expect(text).toContain('West Pier, 1 Shore Road');
    expect(text).toContain('Hospital: 9 High Street');
    expect(text).toContain('sunrise 06:35');
    expect(text).toMatch(/ADA, An Actor/);
    expect(text).toMatch(/MO, A Child\s+MINOR/);
    expect(text).toMatch(
      /MO is under age and would be on set about \d h \d\d min; 4 hours a day is entered in the book\./,
    );
    expect(text).not.toMatch(/\b(?:is|are) safe\b/);
  });

  it('watch the light', () => {
    expect(calls.join(' ')).toMatch(/scene 2 \(dawn\): 05:58 to 07:24; the day is called 08:00 to 18:00/);
  });
});

describe('the prop helper’s pack', () => {
  it('begins with the helper, the days, the next tasks and the money', () => {
    const text = props.join('\n');
    expect(text).toContain('For Kim');
    expect(text).toContain('Shooting day 1 of 2, Fri 12 March: call 08:00, West Pier, 1 Shore Road');
    expect(text).toContain('Kim: given EUR 50.00, spent 3.00, left 47.00.');
    expect(text).toContain('Scene 2, Fri 12 March: you are the one who says stop.');
  });

  it('pulls by day, with the copies that go', () => {
    const from = props.indexOf('What to pull, day by day');
    const rows = props.slice(from, from + 12);
    expect(rows.join('\n')).toMatch(/2 11 × letter L-\d+ to L-\d+ .*torn/);
  });

  it('gives the figures with their reasons', () => {
    const text = props.join(' ');
    expect(text).toContain('torn on camera in scene 2 (shooting day 1): 4 takes');
    expect(text).toContain('Come at once.');
  });

  it('says of each state how it begins and whether it can be undone, and leaves room for a picture', () => {
    const text = props.join('\n');
    expect(text).toMatch(/letter\s+torn on camera in sc 2 no way back 9/);
    expect(text).toContain('Picture of it as it must look:');
  });

  it('has a sheet for the place with the Sun at both ends of the day', () => {
    const sheet = props.slice(props.indexOf('Place sheet: West Pier')).join(' ');
    expect(sheet).toContain('Address: 1 Shore Road');
    expect(sheet).toContain('Nearest hospital: 9 High Street');
    expect(sheet).toMatch(/Day 1, Fri 12 March 08:00 2 08:\d\d: in the (?:south-east|east) \(1\d\d°\), \d+° high\./);
  });

  it('has reset cards and the box for every day', () => {
    expect(props.join('\n')).toMatch(
      /Scene 2\. After "cut", 9 minutes\s+More than 5 minutes: tell whoever plans the day\./,
    );
    expect(props.join('\n')).toContain('2 × tape (here already)');
  });

  it('holds nobody’s sizes, allergies of the skin or number but the crew’s', () => {
    const text = [...props, ...plan, ...calls, ...purchases].join(' ');
    expect(text).not.toMatch(/97 cm|71 cm|latex|555 0199/);
  });
});

describe('the costume helper’s pack', () => {
  const text = costumes.join('\n');

  it('has sizes of grown people on a page of its own, and never those of a child', () => {
    expect(text).toContain('97 cm');
    expect(text).toContain('latex');
    expect(text).not.toContain('71 cm');
    expect(text).toContain('Under age: sizes are kept by whoever is responsible for the child');
  });

  it('says what goes back, by when, and what may not be done to it', () => {
    expect(text).toMatch(/grey coat .*The theatre EUR 60\.00 EUR 240\.00/);
    expect(text.replace(/\n/g, ' ')).toContain('Nothing hired is cut, dyed or let near blood');
  });

  it('asks for the small things of every change', () => {
    expect(text).toMatch(/underlayer, socks, jewellery, glasses, watch, bag\?/);
  });

  it('keeps people warm', () => {
    expect(text).toContain('To keep people warm and covered');
    expect(text).toMatch(/For ADA: a dry change/i);
  });
});

describe('the plan on paper', () => {
  it('prints totals that are the sums of the printed lines', () => {
    const from = plan.indexOf('What makes the forecast');
    const rows = plan.slice(
      from + 2,
      plan.findIndex((line, at) => at > from && line.startsWith('Together')),
    );
    const amounts = rows.map((line) =>
      Number((/(-?[\d,]+\.\d\d) -?[\d,]+\.\d\d -?[\d,]+\.\d\d$/.exec(line)?.[1] ?? 'NaN').replace(/,/g, '')),
    );
    const total = plan.find((line) => line.startsWith('Together'));
    const printed = Number((/^Together (-?[\d,]+\.\d\d)/.exec(total ?? '')?.[1] ?? 'NaN').replace(/,/g, ''));
    expect(amounts.length).toBeGreaterThan(1);
    expect(amounts.reduce((sum, one) => sum + one, 0)).toBeCloseTo(printed, 9);
  });

  it('shows peak cash apart from cost, unscheduled scenes, continuity and every assumption', () => {
    const text = plan.join('\n');
    expect(text).toMatch(/Peak cash \d+\.\d\d the most that is out at one time/);
    expect(text).toContain('In no shooting day: scene 3.');
    expect(text).toContain('Takes: 4 of each setup.');
    expect(text).toMatch(/sc 3: letter, torn/);
  });
});

describe('the purchase list with a book', () => {
  const rows: Record<string, string>[] = parseCsv(String(contentOf('purchases.csv')), { columns: true, bom: true });

  it('is read back by another reader, with plain amounts and ISO dates', () => {
    const letter = rows.find((row) => row.line === 'letter');
    // The letter of scene 1 is shot after the eleven of scene 2 are torn: 12 × 2.00 USD = 24.00 USD; at 0.5 that is 12.00 EUR.
    expect(letter).toMatchObject({
      'to get': '12',
      'unit price': '2.00',
      currency: 'USD',
      'line cost': '12.00',
      'budget currency': 'EUR',
      'first needed': '2027-03-12',
      paid: '3.00',
      receipt: '17',
    });
    expect(letter?.['order by']).toMatch(/^2027-03-\d\d$/);
  });

  it('makes cells inert that a spreadsheet would run', () => {
    expect(rows.find((row) => row.line === 'grey-coat')?.note).toMatch(/^[^=]/);
  });

  it('is on paper too', () => {
    expect(purchases.join('\n')).toMatch(/letter/);
  });
});

describe('the calendar', () => {
  it('is read by a general library', () => {
    const events = new ICAL.Component(ICAL.parse(String(contentOf('tasks.ics')))).getAllSubcomponents('vevent');
    const texts = events.map((one) => String(one.getFirstPropertyValue('summary')));
    expect(texts).toContain('shooting day 1 of 2 at West Pier: scenes 2');
    expect(new Set(events.map((one) => one.getFirstPropertyValue('uid'))).size).toBe(events.length);
  });
});

describe('the sample', () => {
  it('has a book that reads without an error, with every scene in a day', async () => {
    const folder = new URL('../../../samples/slack-water/', import.meta.url);
    const text = readFileSync(new URL('slack-water.book.yaml', folder), 'utf8');
    const sample = await compileText(readFileSync(new URL('slack-water.md', folder)), ['callsheets'], {
      text,
      file: 'slack-water.book.yaml',
    });
    expect(sample.messages.filter((one) => one.severity === 'error')).toEqual([]);
    expect(sample.production?.plan.unscheduled).toEqual([]);
    const { pages } = await readPdf(sample.files[0]?.content as Uint8Array);
    expect(pages).toHaveLength(4);
  });
});
