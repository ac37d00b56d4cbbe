import fc from 'fast-check';
import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';
import { addDays, type CalendarDate } from '../../src/base/calendar-date.js';
import { escapeText, foldLine, writeCalendar } from '../../src/plan/calendar-file.js';
import type { Task } from '../../src/plan/plan-types.js';

const task = (id: string, what: string, more: Partial<Task> = {}): Task => ({
  id,
  what,
  date: '2027-03-12' as CalendarDate,
  until: null,
  things: [],
  kind: 'order',
  who: null,
  elements: [],
  late: false,
  done: false,
  ...more,
});
const write = (tasks: Task[], today = '2027-02-15') =>
  writeCalendar('Slack Water', tasks, today as CalendarDate, (id) => id.toUpperCase());
const read = (text: string) =>
  new ICAL.Component(ICAL.parse(text)).getAllSubcomponents('vevent').map((one) => new ICAL.Event(one));

/* RFC 5545, read back by ical.js, a general calendar library. */
describe('the calendar file', () => {
  it('is read back whole', () => {
    const events = read(
      write([
        task('letter/order', 'order 11 × letter (paper shop; "cream, A5")\nask for a sample', { who: 'sam' }),
        task('coat/work-1', 'dye the coat', { until: '2027-03-14' as CalendarDate, done: true }),
      ]),
    );
    expect(events.map((one) => one.summary)).toEqual([
      'SAM: order 11 × letter (paper shop; "cream, A5")\nask for a sample',
      'done: dye the coat',
    ]);
    expect(events.map((one) => [one.startDate.toString(), one.endDate.toString(), one.startDate.isDate])).toEqual([
      ['2027-03-12', '2027-03-13', true],
      ['2027-03-12', '2027-03-15', true],
    ]);
  });

  it('leaves out what has no date, and keeps identities from run to run', () => {
    const [first, second] = ['2027-02-15', '2027-02-20'].map((today) =>
      read(write([task('a/order', 'one'), task('b/order', 'two', { date: null })], today)),
    );
    expect(first?.map((one) => one.uid)).toEqual(['a-order.slack-water@prepwright']);
    expect(second?.map((one) => one.uid)).toEqual(first?.map((one) => one.uid));
  });

  it('has the parts that RFC 5545 demands, and its stamp from the date of the plan', () => {
    const calendar = new ICAL.Component(ICAL.parse(write([task('a/order', 'one')])));
    expect([calendar.getFirstPropertyValue('version'), typeof calendar.getFirstPropertyValue('prodid')]).toEqual([
      '2.0',
      'string',
    ]);
    const event = calendar.getFirstSubcomponent('vevent');
    expect(event?.getFirstPropertyValue('dtstamp')?.toString()).toBe('2027-02-15T00:00:00Z');
  });

  it('folds at 75 octets, never inside a character, and ends lines with CRLF', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 300 }), fc.integer({ min: 0, max: 30 }), (what, days) => {
        const text = write([task('x/order', what, { until: addDays('2027-03-12' as CalendarDate, days) })]);
        for (const line of text.split('\r\n')) expect(Buffer.byteLength(line, 'utf8')).toBeLessThanOrEqual(75);
        expect(text.replace(/\r\n/g, '')).not.toMatch(/[\r\n]/);
        const expected = what.replace(/\r\n|\r/g, '\n').replace(/(?![\t\n])\p{Cc}/gu, ' ');
        expect(read(text)[0]?.summary).toBe(expected);
      }),
    );
  });

  it('folds a long line with one space', () => {
    expect(foldLine('x'.repeat(76))).toBe(`${'x'.repeat(75)}\r\n x\r\n`);
    expect(escapeText('a;b,c\\d\ne')).toBe('a\\;b\\,c\\\\d\\ne');
  });
});
