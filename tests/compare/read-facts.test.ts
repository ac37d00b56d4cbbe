import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { compareDrafts } from '../../src/compare/compare-drafts.js';
import { factsOf } from '../../src/compare/draft-facts.js';
import { readFacts } from '../../src/compare/read-facts.js';
import { daysJson } from '../../src/render/json/days-json.js';
import { compileText, jsonOf } from '../support/compile-text.js';

const sample = (name: string) => readFileSync(new URL(`../../samples/slack-water/${name}`, import.meta.url), 'utf8');
const compiled = await compileText(sample('slack-water.md'), ['json'], {
  file: 'book.yaml',
  text: sample('slack-water.book.yaml'),
});
const json = jsonOf(compiled) ?? '';

/** The breakdown with one field set. */
function withField(change: (value: Record<string, unknown>) => void): string {
  const value = JSON.parse(json);
  change(value);
  return JSON.stringify(value);
}

describe('an earlier breakdown.json', () => {
  it('reads as the very draft that wrote it: nothing differs, days and all', () => {
    if (!compiled.breakdown) throw new Error('the sample was refused');
    const read = readFacts(json);
    if ('why' in read) throw new Error(read.why);
    const changes = compareDrafts(read, factsOf(compiled.breakdown, daysJson(compiled.production)));
    expect(changes).toEqual({ since: { draft: 'B', date: '2026-03-02' }, scenes: [], whole: [], daysCompared: true });
    expect(read.days).toHaveLength(4);
    expect(read.days?.[0]).toMatchObject({
      number: 1,
      date: '2027-04-23',
      call: '08:00',
      places: ['The old toll house'],
    });
  });

  it('needs no shooting days: the first version had none', () => {
    const read = readFacts(withField((value) => delete value.shootingDays));
    expect(read).toMatchObject({ title: 'Slack Water', days: null });
  });

  it.each([
    ['no JSON', '{"version": 1', /no JSON/],
    ['empty', '', /no JSON/],
    ['a list', '[1, 2]', /no breakdown/],
    ['nothing', 'null', /no breakdown/],
    ['an older version', withField((value) => Object.assign(value, { version: 0 })), /expected version 1 .* found 0/],
    ['without a version', withField((value) => delete value.version), /no breakdown/],
    ['without scenes', withField((value) => delete value.scenes), /^scenes is not as expected/],
    ['with a scene that is none', withField((value) => Object.assign(value, { scenes: [4] })), /^scenes\.0 /],
  ])('that is %s gives the reason', (_, text, why) => {
    expect(readFacts(text)).toEqual({ why: expect.stringMatching(why) });
  });
});
