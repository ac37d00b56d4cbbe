import { describe, expect, it } from 'vitest';
import { compileText } from '../../support/compile-text.js';
import { pdfLines } from '../../support/pdf-lines.js';

const script = `---
title: Two Yards
draft: A
date: 2027-01-15
---

## 1. INT. SHED - DAY

> props: lamp (Ada), tin (Ada), notice
> dressing: stove, shelf
> Ada: wears grey coat

ADA lifts the lamp. Rain hammers the roof.

## 2. EXT. RIVER - DAY

> Ada: wears grey coat
> grey coat: soaked

ADA carries the lamp and the tin into the river.
`;
const bookWith = (elements: string) => `days:
  - { date: 2027-03-12, call: 8:00, wrap: 18:00, scenes: [2] }
  - { date: 2027-03-13, call: 8:00, wrap: 18:00, scenes: [1] }
elements:
  stove: { note: gas is off }
  notice: { words: Keep the door shut. }
${elements}`;

async function linesWith(elements: string) {
  const compiled = await compileText(script, ['props', 'costumes'], { text: bookWith(elements), file: 'book.yaml' });
  const linesOf = (name: string) => pdfLines(compiled.files.find((file) => file.name === name)?.content);
  return { props: await linesOf('props.pdf'), costumes: await linesOf('costumes.pdf') };
}

const plain = await linesWith('  lamp: { get: own, have: 1 }\n');
const pullOf = (lines: readonly string[]) =>
  lines.slice(lines.indexOf('What to pull, day by day'), lines.indexOf('How many of each, and why'));

describe('the pull list', () => {
  it('has what stands in the place in one row, with its note', () => {
    expect(pullOf(plain.props).join(' ')).toMatch(
      /There already, or brought by its owner: shelf \(sc 1\), stove \(sc 1; gas is off\)/,
    );
  });

  it('names no box where the book names none, and puts what is in no box last', async () => {
    expect(plain.props.join(' ')).not.toMatch(/\bBOX\b/);
    const { props } = await linesWith('  lamp: { box: RED }\n');
    const text = pullOf(props).join(' ');
    expect(text.indexOf('BOX RED')).toBeGreaterThan(0);
    expect(text.indexOf('IN NO BOX')).toBeGreaterThan(text.indexOf('BOX RED'));
  });

  it('has the exact words of a thing without a card', () => {
    expect(pullOf(plain.props).join(' ')).toContain('“Keep the door shut.”');
  });
});

describe('the packs', () => {
  it('tell a note of a thing once in the list by scene, and no list of changes beside that of how many', async () => {
    const { props } = await linesWith('  lamp: { note: It is hot }\n');
    const list = props
      .slice(props.indexOf('In hand, scene by scene'), props.indexOf('What to pull, day by day'))
      .join(' ');
    expect(list.split('It is hot')).toHaveLength(2);
    expect(list).not.toContain('Things that change or are used up');
  });

  it('name the dangers with their scenes on the first page, and the person in charge on the sheet of the place', () => {
    const first = plain.props.slice(0, plain.props.indexOf('In hand, scene by scene')).join(' ');
    expect(first).toMatch(/Dangers: .*Water \(sc 2\).* Who is in charge of each stands on the place sheets\./);
    expect(first).not.toContain('Person in charge');
    expect(plain.props.join(' ')).toMatch(/Place sheet: River .*Person in charge Water 2/);
  });

  it('say between the days which copy is made ready by hand', () => {
    // Scene 2, shot first, has the coat soaked from its start: nothing shot before wets it.
    expect(plain.costumes.join(' ')).toMatch(
      /Made ready by hand Thu 11 March: grey coat: have .* ready soaked for scene 2/,
    );
  });

  it('name whom to phone on each sheet that is handed out alone', async () => {
    const helpers =
      'helpers:\n  lou: { name: Lou, does: [camera], phone: 555 0101 }\n  ana: { name: Ana, does: [production], phone: 555 0102 }\n';
    const { props, costumes } = await linesWith(`  lamp: { get: own, have: 1 }\n${helpers}`);
    const call = 'If something is wrong, phone Ana, 555 0102.';
    const sheets = props.join(' ').split('Place sheet: ').slice(1);
    expect(sheets.length).toBe(2);
    for (const sheet of sheets) expect(sheet).toContain(call);
    for (const lines of [props, costumes]) expect(lines[lines.indexOf('What to pull, day by day') + 1]).toBe(call);
    expect(plain.props.join(' ')).toContain('If something is wrong, phone.');
  });
});
