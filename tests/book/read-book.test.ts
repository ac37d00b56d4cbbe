import { describe, expect, it } from 'vitest';
import { emptyBook, readBook } from '../../src/book/read-book.js';
import { fullBook } from './full-book.js';

const say = (text: string) =>
  readBook(text, 'book.yaml').messages.map(
    (one) =>
      `${one.place?.start.line}:${one.place?.start.column} ${one.severity} ${one.code} ${one.reason} ${one.hint}`,
  );

describe('an empty book', () => {
  it.each(['', '\n\n', '# nothing yet\n', 'money:\ndays:\nelements:\n'])(
    '%j is a book of defaults, each known as one',
    (text) => {
      const { book, messages } = readBook(text, 'book.yaml');
      expect(messages).toEqual([]);
      // Only where money stands differs: at its own line once the book has one.
      const { at, budgetAt } = emptyBook().money;
      expect({ ...book, money: { ...book?.money, at, budgetAt } }).toEqual(emptyBook());
      expect(book?.takes).toEqual({ value: 4, given: false });
      expect(book?.money.currency).toEqual({ value: 'EUR', given: false });
      expect(book?.workingDays).toEqual({ value: [1, 2, 3, 4, 5], given: false });
      expect(book?.spare.given).toBe(false);
    },
  );
});

describe('a full book', () => {
  const { book, messages } = readBook(fullBook, 'book.yaml');

  it('reads without a word', () => {
    expect(messages).toEqual([]);
  });

  it('holds what was written', () => {
    expect(book?.money).toMatchObject({
      currency: { value: 'EUR', given: true },
      budget: { minor: 120000 },
      pricesIncludeTax: { value: false, given: true },
    });
    expect(book?.days[0]).toMatchObject({
      date: '2027-03-12',
      call: { value: 450, given: true },
      wrap: { value: 1530 },
      locations: ['quay', 'hut'],
    });
    expect(book?.days[0]?.scenes.map((one) => one.text)).toEqual(['1', '2A', 'int-hut-night']);
    expect(book?.elements[0]).toMatchObject({
      source: 'make',
      price: { minor: 1250, currency: 'USD' },
      deliveryDays: 4,
      batteries: { count: 4, kind: 'AA' },
      usedUp: true,
    });
    expect(book?.elements[0]?.prep[1]).toEqual({ task: 'seal', who: 'sam', hours: 0.5, days: 1, waitDays: 1 });
    expect(book?.suppliers[0]).toMatchObject({
      deliveryDays: 4,
      deliversOn: [1, 2, 3, 4, 5, 6],
      shipping: { minor: 490 },
    });
    expect(book?.people[0]?.privately).toMatchObject({
      sizes: [
        { label: 'height', text: '168 cm' },
        { label: 'shoe', text: '38' },
      ],
      allergies: ['wool', 'latex'],
    });
    expect(book?.elements[1]).toMatchObject({ id: 'empty', source: null, price: null });
  });

  it('tells where each entry stands', () => {
    expect(book?.elements[0]?.at.start).toMatchObject({
      line: fullBook.split('\n').indexOf('  letter:') + 1,
      column: 3,
    });
  });
});

describe('mistakes', () => {
  it.each([
    [
      'money:\n  budgt: 3\n',
      '2:3 warning book-key-unknown Expected a known name under "money", found "budgt"; the line is left out. Did you mean "budget"?',
    ],
    [
      'elements:\n  letter:\n    price: 12.505\n',
      '3:12 error book-amount Expected an amount with at most 2 decimals in EUR, found 12.505. EUR has no smaller coin: write 2 decimals at most.',
    ],
    [
      'money: { currency: JPY, budget: 100.5 }\n',
      '1:33 error book-amount Expected an amount with no decimals in JPY, found 100.5. JPY has no smaller unit: write a whole number.',
    ],
    [
      'elements:\n  letter:\n    price: 12 USD\n',
      '3:12 error book-currency-rate Expected a rate for USD, found none. Write under money, rates: "USD: 0.92 on 2027-02-01", which is what one USD is worth in EUR.',
    ],
    [
      'days:\n  - date: 2027-02-30\n    scenes: [1]\n',
      '2:11 error book-value Expected a date such as 2027-03-12 (year-month-day), found "2027-02-30". Correct the line or leave it empty; until then it counts as empty.',
    ],
    [
      'days:\n  - scenes: [1]\n',
      '2:5 error book-day-without-date Expected a date for this shooting day, found none. Write "date: 2027-03-12"; the day is left out until then.',
    ],
    [
      'elements:\n  letter:\n    get: steal\n',
      '3:10 error book-value Expected one of own, borrow, make, buy, hire, cut, found "steal". Correct the line or leave it empty; until then it counts as empty.',
    ],
    [
      'elements:\n  letter:\n    prep:\n      - { task: dry, wait: long }\n',
      '4:28 error book-value Expected days, such as 4 or 2-4 days, found "long". Correct the line or leave it empty; until then it counts as empty.',
    ],
    [
      'money:\n  budget: 1\n  budget: 2\n',
      '3:3 error book-key-twice Expected each name once, found "budget" a second time. Join the two entries into one.',
    ],
    [
      'usual: { zone: Mars/Base }\n',
      '1:16 error book-value Expected a time zone such as Europe/Copenhagen, found "Mars/Base". Correct the line or leave it empty; until then it counts as empty.',
    ],
    [
      'just words\n',
      '1:1 error book-not-a-list-of-names Expected names followed by a colon (money:, days:, elements:), found "just words". Begin with a line such as "money:"; an empty file is a book too.',
    ],
  ])('%j', (text, message) => {
    expect(say(text)).toEqual([message]);
  });

  it('keeps the rest of the book', () => {
    const { book, messages } = readBook(
      'money: { budget: 500 }\nelements:\n  letter: { get: steal, have: 3 }\n  key: { get: own }\n',
      'book.yaml',
    );
    expect(messages).toHaveLength(1);
    expect(book?.elements.map((one) => [one.id, one.source, one.have])).toEqual([
      ['letter', null, 3],
      ['key', 'own', 0],
    ]);
    expect(book?.money.budget?.minor).toBe(50000);
  });

  it.each(['a: [', '\t- x', 'a: b: c', 'a: *b', '"', '{', '&a [*a]', '%YAML 9', '? ?', '!!binary x', 'days: &d [*d]'])(
    'survives %j',
    (text) => {
      expect(() => readBook(text, 'book.yaml')).not.toThrow();
      expect(readBook(text, 'book.yaml').messages.length).toBeGreaterThan(0);
    },
  );
});

describe('numbers that no shoot has', () => {
  it.each([
    ['prep: { hours a day: 0 }', 'Expected hours between 0.25 and 24, such as 3 or 4.5, found "0".'],
    ['usual: { rest hours: 48 }', 'Expected hours between 0 and 24, such as 3 or 4.5, found "48".'],
    ['money: { budget: -100 }', 'Expected an amount of 0 or more, such as 12.50 or 12.50 USD, found "-100".'],
    ['elements: { vase: { price: -5 } }', 'Expected an amount of 0 or more, such as 12.50 or 12.50 USD, found "-5".'],
    ['elements: { vase: { paid: "-3 USD" } }', 'Expected an amount of 0 or more'],
    ['elements: { vase: { states: { wet: { undo: 99999 h } } } }', 'Expected hours such as 12, or never'],
    ['elements: { vase: { prep: [{ task: dye, hours: 99999 h }] } }', 'Expected hours, such as 2, 1.5 or 30 min'],
  ])('%s is a message, and the rest of the book still counts', (text, reason) => {
    const { book, messages } = readBook(`${text}\nholidays: [2027-03-26]\n`, 'book.yaml');
    expect(messages).toHaveLength(1);
    expect(messages[0]?.reason).toContain(reason);
    expect(messages[0]?.place?.start.line).toBe(1);
    expect(book?.holidays).toEqual(['2027-03-26']);
  });

  it('takes an evening of a quarter of an hour, and nothing as a price', () => {
    const { book, messages } = readBook('prep: { hours a day: 0.25 }\nelements: { vase: { price: 0 } }\n', 'b.yaml');
    expect(messages).toEqual([]);
    expect([book?.prepHoursADay.value, book?.elements[0]?.price?.minor]).toEqual([0.25, 0]);
  });
});

describe('a share', () => {
  it.each([
    ['money: { tax: 300% }', false],
    ['elements: { cup: { spare: 120% } }', false],
    ['elements: { cup: { tax: 100.5% } }', false],
    ['elements: { cup: { spare: 100% } }', true],
    ['money: { tax: 19 }', true],
    ['money: { tax: 7,7 % }', true],
  ])('%s is never more than the whole', (text, isRead) => {
    const wrong = readBook(`${text}\n`, 'b.yaml').messages.filter((one) => one.code === 'book-value');
    expect(wrong.length === 0).toBe(isRead);
    for (const one of wrong) expect(one.reason).toContain('Expected a percentage up to 100%');
  });
});

describe('a name that belongs elsewhere or is called otherwise', () => {
  it.each([
    ['locations:\n  hut: { phone: 5 }\n', /Write "contact:"/],
    ['people:\n  ada: { age: 9 }\n', /in the script.*cast:/],
    ['people:\n  ada: { actor: Kim }\n', /"played by"/],
    ['days:\n  - { date: 2027-03-01, location: hut }\n', /"at"/],
    ['elements:\n  rope: { quantity: 3 }\n', /"copies"/],
    ['kit:\n  tape: { shop: corner }\n', /"from"/],
    ['scenes:\n  s1: { date: 2027-03-01 }\n', /under "days"/],
  ])('%s', (text, hint) => {
    const { messages } = readBook(text, 'book.yaml');
    expect(messages.map((one) => [one.code, one.hint])).toEqual([['book-key-unknown', expect.stringMatching(hint)]]);
  });
});

describe('a percentage', () => {
  it.each(['300', '300%', '120', '-5', '0.2', '"0,2"'])('%s is none that can be meant', (written) => {
    const { messages } = readBook(`money:\n  tax: ${written}\n`, 'book.yaml');
    expect(messages.map((one) => one.code)).toEqual(['book-value']);
  });

  it.each(['0', '20', '100', '0.5%', '7.7', '"8,1 %"'])('%s is read', (written) => {
    expect(readBook(`money:\n  tax: ${written}\n`, 'book.yaml').messages).toEqual([]);
  });
});

describe('an amount with a sign between its thousands', () => {
  it.each(['1,200', '1.200', '"12,500"', '1,200 USD'])('%s is asked about, for it has two meanings', (written) => {
    const { book, messages } = readBook(`money:\n  rates: { USD: 0.9 }\n  budget: ${written}\n`, 'book.yaml');
    expect([book?.money.budget, messages.map((one) => one.code)]).toEqual([null, ['book-value']]);
    expect(messages[0]?.reason).toContain('1200');
  });

  it.each([
    ['EUR', '1200.50', 120050],
    ['EUR', '0,90', 90],
    ['KWD', '1.200', 1200],
  ])('in %s %s is not', (currency, written, minor) => {
    const { book } = readBook(`money:\n  currency: ${currency}\n  budget: ${written}\n`, 'book.yaml');
    expect(book?.money.budget?.minor).toBe(minor);
  });
});

describe('names in one line', () => {
  it('are parted at commas', () => {
    const { book } = readBook(
      'days:\n  - { date: 2027-03-01, at: "a, b", scenes: "1, 2" }\n  - { date: 2027-03-02, scenes: [3, "4, 5"] }\n',
      'b',
    );
    expect(book?.days.map((day) => day.scenes.map((one) => one.text))).toEqual([
      ['1', '2'],
      ['3', '4', '5'],
    ]);
    expect(book?.days[0]?.locations).toEqual(['a', 'b']);
  });
});
