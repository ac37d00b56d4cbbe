import { describe, expect, it } from 'vitest';
import { countNeeded, countShort, countThere, shortWords } from '../../src/plan/short-copies.js';
import { lineOf, needOf, planOf } from './fixture.js';

/** Days of two scenes or more, called 8:00 to 18:00 unless said. */
const days = (...list: [string, string][]) =>
  `days:\n${list.map(([date, scenes]) => `  - { date: ${date}, call: 8:00, wrap: 18:00, scenes: [${scenes}] }`).join('\n')}\n`;

describe('what each take uses up', () => {
  it('asks for 11 letters when one is torn on camera', () => {
    // (4 takes × 2 setups + 1 rehearsal) = 9; 9 × 1.2 = 10.8, rounded up once: 11. Not 1 and not 4.
    const need = needOf(planOf({ scenes: [{ things: { letter: { in: 'whole', out: 'torn' } } }] }), 'letter');
    expect([need.minimum, need.recommended]).toEqual([9, 11]);
    expect(need.minimumReason).toContain('4 takes × 2 setups + 1 rehearsal = 9');
    expect(need.recommendedReason).toContain('10.8');
  });

  it('sends nobody for more copies than the book has decided', () => {
    // 9 takes and a rehearsal tear 9 envelopes; 6 are decided: 3 are short, and there is no ENVELOPE-7.
    const torn = { things: { envelope: { in: 'whole', out: 'torn' } } };
    const line = lineOf(planOf({ scenes: [torn] }, 'elements:\n  envelope: { copies: 6 }\n'), 'envelope');
    expect([countNeeded(line.need), countThere(line.need), countShort(line.need)]).toEqual([9, 6, 3]);
    expect(shortWords(line)).toBe('need 9, decided 6, SHORT 3');
    expect(line.need.copies).toEqual([[1, 2, 3, 4, 5, 6].map((copy) => `ENVELOPE-${copy}`)]);
    // Ten decided are enough for the nine, though fewer than the eleven that are better.
    const enough = lineOf(planOf({ scenes: [torn] }, 'elements:\n  envelope: { copies: 10 }\n'), 'envelope');
    expect([countNeeded(enough.need), shortWords(enough)]).toEqual([10, null]);
  });

  it('says whether too few are ordered, or here', () => {
    const torn = { things: { envelope: { in: 'whole', out: 'torn' } } };
    const words = (more: string) =>
      shortWords(lineOf(planOf({ scenes: [torn] }, `elements:\n  envelope: { copies: 6, ${more} }\n`), 'envelope'));
    expect(words('get: buy, ordered: 2027-01-11')).toBe('need 9, ordered 6, SHORT 3');
    expect(words('have: 7')).toBe('need 9, have 7, SHORT 2');
  });

  it('names every change when there are two', () => {
    // Two tickets torn in two scenes, 9 times each: 9 × 1.2 = 10.8, twice.
    const torn = { things: { ticket: { in: 'whole', out: 'torn' } } };
    const need = needOf(planOf({ scenes: [torn, torn] }), 'ticket');
    expect(need.recommended).toBe(22);
    expect(need.recommendedReason).toMatch(/^scene 1: 9 \+ 20 % spare = 10\.8; scene 2: 9 \+ 20 % spare = 10\.8/);
  });

  it('hands the letter of an earlier scene on, and a torn half to a later one', () => {
    // Whole in 1, torn in 2, in halves in 3: the letter of scene 1 is one of the nine, and a torn one serves scene 3.
    const scenes = [
      { things: { letter: { in: 'whole' } } },
      { things: { letter: { in: 'whole', out: 'torn' } } },
      { things: { letter: { in: 'torn' } } },
    ];
    const need = needOf(planOf({ scenes }, days(['2027-03-12', '1, 2, 3'])), 'letter');
    expect([need.minimum, need.recommended]).toEqual([9, 11]);
  });

  it('adds one when the torn state is shot first', () => {
    // Scene 3 (torn) is shot before scene 2 tears one: it needs its own, ready torn: 1 + 9 = 10; with spares 1 + 11 = 12.
    const scenes = [
      { things: { letter: { in: 'whole' } } },
      { things: { letter: { in: 'whole', out: 'torn' } } },
      { things: { letter: { in: 'torn' } } },
    ];
    const need = needOf(planOf({ scenes }, days(['2027-03-12', '3, 1, 2'])), 'letter');
    expect([need.minimum, need.recommended]).toEqual([10, 12]);
    expect(need.minimumReason).toContain('no way back');
  });

  it('never spares less than one whole piece', () => {
    // 1 take × 1 setup, no rehearsal: 1. 20 % is 0.2, so one whole piece: 2.
    const book = 'elements:\n  plate: { used up: yes, takes: 1, setups: 1, rehearsals: 0 }\n';
    expect(needOf(planOf({ scenes: [{ things: { plate: {} } }] }, book), 'plate').recommended).toBe(2);
  });

  it('spares nothing when the book says 0 %', () => {
    const book = 'elements:\n  plate: { used up: yes, takes: 1, setups: 1, rehearsals: 0, spare: 0% }\n';
    expect(needOf(planOf({ scenes: [{ things: { plate: {} } }] }, book), 'plate').recommended).toBe(1);
  });

  it('counts portions over all scenes and rounds once', () => {
    // Soup is eaten in two scenes, half a portion a take: 2 × 9 × 0.5 = 9; 9 + 1.8 = 10.8: 11, not 6 + 6 = 12.
    const book = 'elements:\n  soup: { per take: 0.5 portions }\n';
    const need = needOf(
      planOf({ scenes: [{ things: { soup: {} } }, { things: { soup: {} } }], categories: { soup: 'food' } }, book),
      'soup',
    );
    expect([need.minimum, need.recommended]).toEqual([9, 11]);
  });

  it('takes the counts of the book', () => {
    // 3 takes × 3 setups + 2 rehearsals = 11; × 1.1 = 12.1: 13.
    const book = 'elements:\n  cigarette: { used up: yes, takes: 3, setups: 3, rehearsals: 2, spare: 10% }\n';
    expect(needOf(planOf({ scenes: [{ things: { cigarette: {} } }] }, book), 'cigarette').recommended).toBe(13);
  });

  it('reckons liquids in millilitres with what is lost', () => {
    // 15 ml × 9 = 135 ml; 30 % stays on walls and clothes: 175.5, so 176 ml; bottles of 100 ml: 2.
    const book = 'elements:\n  blood: { per take: 15 ml, pack: 100 ml }\n';
    const plan = planOf({ scenes: [{ things: { blood: {} } }], categories: { blood: 'makeup' } }, book);
    expect([needOf(plan, 'blood').recommended, lineOf(plan, 'blood').packs]).toEqual([176, 2]);
  });

  it('counts a change between scenes as no copy', () => {
    // Torn between scenes 1 and 2, nobody sees it happen: one letter does.
    const scenes = [{ things: { letter: { in: 'whole' } } }, { things: { letter: { in: 'torn' } } }];
    expect(needOf(planOf({ scenes }, days(['2027-03-12', '1, 2'])), 'letter').minimum).toBe(1);
  });
});

describe('copies by state', () => {
  const coat = (state: string) => ({ wears: { NORA: { 'wool coat': { in: state } } } });

  it('lets one copy pass to a later state that is shot later', () => {
    const plan = planOf(
      { scenes: [coat('clean'), coat('torn at the sleeve')] },
      days(['2027-03-12', '1'], ['2027-03-13', '2']),
    );
    const need = needOf(plan, 'wool-coat');
    expect([need.minimum, need.recommended]).toEqual([1, 1]);
    expect(need.conversions.map((one) => [one.from, one.to, one.wayBack])).toEqual([
      ['clean', 'torn at the sleeve', false],
    ]);
  });

  it('needs two when the torn state is shot before the whole one', () => {
    const plan = planOf(
      { scenes: [coat('clean'), coat('torn at the sleeve')] },
      days(['2027-03-12', '2'], ['2027-03-13', '1']),
    );
    const need = needOf(plan, 'wool-coat');
    expect(need.minimum).toBe(2);
    expect(need.minimumReason).toContain('no way back');
  });

  it('needs a double when wool has one night to dry', () => {
    // Wrap 18:00, call 8:00: 14 h. Wool dries in 24 to 36 h.
    const need = needOf(
      planOf({ scenes: [coat('soaked'), coat('dry')] }, days(['2027-03-12', '1'], ['2027-03-13', '2'])),
      'wool-coat',
    );
    expect(need.minimum).toBe(2);
    expect(need.minimumReason).toContain('14 h there, 24.1 h needed');
  });

  it('needs none when cotton has one night to dry', () => {
    // 14 h there; cotton takes 8 to 12 h, and a few minutes to put it back in order.
    const shirt = (state: string) => ({ wears: { NORA: { 'cotton shirt': { in: state } } } });
    const need = needOf(
      planOf({ scenes: [shirt('soaked'), shirt('dry')] }, days(['2027-03-12', '1'], ['2027-03-13', '2'])),
      'cotton-shirt',
    );
    expect([need.minimum, need.recommended]).toEqual([1, 1]);
  });

  it('advises a double when the slowest cloth would not be dry', () => {
    // A day between: wrap Fri 18:00 to Sun 8:00 is 38 h: wool (24 to 36 h) is dry. On Saturday noon, 18 h, it is not.
    const at = (call: string) =>
      `days:\n  - { date: 2027-03-12, call: 8:00, wrap: 18:00, scenes: [1] }\n  - { date: 2027-03-13, call: ${call}, wrap: 23:30, scenes: [2] }\n`;
    // 18:00 to 23:00 of the next day is 29 h: at best dry (24), at worst not (36).
    const need = needOf(planOf({ scenes: [coat('soaked'), coat('dry')] }, at('23:00')), 'wool-coat');
    expect([need.minimum, need.recommended]).toEqual([1, 2]);
  });

  it('follows the book where it knows better', () => {
    const book = `${days(['2027-03-12', '1'], ['2027-03-13', '2'])}elements:\n  wool-coat: { material: synthetic }\n`;
    expect(needOf(planOf({ scenes: [coat('soaked'), coat('dry')] }, book), 'wool-coat').recommended).toBe(1);
  });

  it('asks for a pair when something gets soaked on camera', () => {
    const scenes = [{ wears: { JO: { suit: { in: 'dry', out: 'soaked' } } } }];
    const need = needOf(planOf({ scenes }), 'suit');
    expect(need.minimum).toBe(2);
  });

  it('takes the most at one time, not the sum over scenes', () => {
    const scenes = [
      { things: { oilskin: { count: 3 } } },
      { things: { oilskin: { count: 2 } } },
      { things: { oilskin: { count: 1 } } },
    ];
    const need = needOf(planOf({ scenes, categories: { oilskin: 'costumes' } }), 'oilskin');
    expect(need.minimum).toBe(3);
    expect(need.minimumReason).toContain('3 at one time in scene 1');
  });

  it('counts a garment worn by two at once as two', () => {
    const scenes = [{ wears: { ADA: { uniform: {} }, BO: { uniform: {} } } }];
    expect(needOf(planOf({ scenes }), 'uniform').minimum).toBe(2);
  });

  it('adds a spare for what is in hand in three scenes', () => {
    const scene = { things: { key: { by: 'NORA' } } };
    const need = needOf(planOf({ scenes: [scene, scene, scene] }), 'key');
    expect([need.minimum, need.recommended]).toEqual([1, 2]);
    expect(need.recommendedReason).toContain('the story stops without it');
  });

  it('asks when nobody knows whether a change can be undone', () => {
    const need = needOf(planOf({ scenes: [{ things: { clock: { in: 'ticking', out: 'haunted' } } }] }), 'clock');
    expect(need.minimum).toBe(1);
    expect(need.questions).toHaveLength(1);
    const sure = needOf(
      planOf(
        { scenes: [{ things: { clock: { in: 'ticking', out: 'haunted' } } }] },
        'elements:\n  clock: { states: { haunted: { undo: never } } }\n',
      ),
      'clock',
    );
    expect([sure.minimum, sure.questions.length]).toEqual([9, 0]);
  });

  it('lets the decision of the book win', () => {
    const need = needOf(
      planOf(
        { scenes: [{ things: { letter: { in: 'whole', out: 'torn' } } }] },
        'elements:\n  letter: { copies: 6, have: 2 }\n',
      ),
      'letter',
    );
    expect([need.recommended, need.decided, need.toGet]).toEqual([11, 6, 4]);
  });
});

describe('packs, lengths and batteries', () => {
  it('rounds packs up', () => {
    // 11 letters in packs of 10: 2 packs.
    expect(
      lineOf(
        planOf(
          { scenes: [{ things: { letter: { in: 'whole', out: 'torn' } } }] },
          'elements:\n  letter: { pack: 10 }\n',
        ),
        'letter',
      ).packs,
    ).toBe(2);
  });

  it('pools packs before it rounds', () => {
    // 4 and 5 candles from packs of 10: one pack, not two.
    const plan = planOf(
      { scenes: [{ things: { 'white candle': { count: 4 }, 'tall candle': { count: 5 } } }] },
      'elements:\n  white-candle: { pool: candles, pack: 10 }\n  tall-candle: { pool: candles, pack: 10 }\n',
    );
    expect([lineOf(plan, 'tall-candle').packs, lineOf(plan, 'white-candle').packs]).toEqual([1, 0]);
    expect(lineOf(plan, 'white-candle').pooledWith).toBe('tall-candle');
  });

  it('cuts pieces whole from a roll', () => {
    // 3 ribbons of 3 m from rolls of 5 m: one ribbon a roll, so 3 rolls; total metres would say 9 / 5 = 2.
    expect(
      lineOf(
        planOf({ scenes: [{ things: { ribbon: { count: 3 } } }] }, 'elements:\n  ribbon: { piece: 3 m, pack: 5 m }\n'),
        'ribbon',
      ).packs,
    ).toBe(3);
    // 9 of 1.2 m from 5 m: floor(5 / 1.2) = 4 a roll; 9 / 4 rounded up: 3 rolls.
    expect(
      lineOf(
        planOf(
          { scenes: [{ things: { ribbon: { count: 9 } } }] },
          'elements:\n  ribbon: { piece: 120 cm, pack: 5 m }\n',
        ),
        'ribbon',
      ).packs,
    ).toBe(3);
  });

  it('counts batteries by practical and day, twice in the cold', () => {
    // 2 lanterns × 4 AA × (2 days + 1 cold day again) = 24.
    const scenes = [{ things: { lantern: { count: 2 } } }, { things: { lantern: { count: 1 } } }];
    const book = `${days(['2027-03-12', '1'], ['2027-03-13', '2'])}scenes:\n  s2: { cold: yes }\nelements:\n  lantern: { batteries: 4 AA }\nkit:\n  batteries-aa: { pack: 8, price: 6.50 }\n`;
    const line = lineOf(planOf({ scenes }, book), 'batteries-aa');
    expect([line.need.recommended, line.packs, line.cost?.home.minor]).toEqual([24, 3, 1950]);
  });
});
