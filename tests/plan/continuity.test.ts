import { describe, expect, it } from 'vitest';
import { planOf } from './fixture.js';

const track = (plan: ReturnType<typeof planOf>, id: string) => {
  const found = plan.tracks.find((one) => one.id === id);
  if (!found) throw new Error(`no track ${id}`);
  return found;
};
const duties = (plan: ReturnType<typeof planOf>, id: string) =>
  track(plan, id).inStory.map((entry) => entry.duties.map((one) => `${one.kind} ${one.scene.label}: ${one.what}`));

describe('continuity in both orders', () => {
  const scenes = [
    { things: { lantern: { in: 'lit', by: 'IDA' } } },
    { things: { lantern: { in: 'lit', out: 'cracked', by: 'IDA' } } },
    { things: { lantern: { in: 'cracked', by: 'JO' } } },
  ];

  it('lets the scene shot first set what the others match', () => {
    // Shot 3, 1, 2: scene 3 sets the crack for 2; scene 2 matches 1 (lit) and 3 (cracked).
    const plan = planOf({ scenes }, 'days:\n  - { date: 2027-03-12, scenes: [3, 1, 2] }\n');
    expect(duties(plan, 'lantern')).toEqual([
      ['sets 2: lit'],
      ['match 1: lit', 'match 3: cracked'],
      ['sets 2: cracked'],
    ]);
    expect(track(plan, 'lantern').inShooting.map((entry) => entry.slot.label)).toEqual(['3', '1', '2']);
  });

  it('follows the story where it is shot in order', () => {
    const plan = planOf({ scenes }, 'days:\n  - { date: 2027-03-12, scenes: [1, 2, 3] }\n');
    expect(duties(plan, 'lantern')).toEqual([
      ['sets 2: lit'],
      ['match 1: lit', 'sets 3: cracked'],
      ['match 2: cracked'],
    ]);
  });

  it('gives a garment a life apart from its owner, and counts absence', () => {
    const coat = [
      { wears: { IDA: { coat: { in: 'dry' } } } },
      { things: { coat: { in: 'dry' } } },
      { wears: { JO: { coat: { in: 'dry' } }, IDA: { '!scarf': {} } } },
      { wears: { IDA: { '!scarf': {} } } },
    ];
    const plan = planOf({ scenes: coat });
    expect(track(plan, 'coat').inStory.map((entry) => [entry.by, entry.worn])).toEqual([
      [['IDA'], true],
      [[], false],
      [['JO'], true],
    ]);
    expect(track(plan, 'scarf').inStory.map((entry) => [entry.absent, entry.duties[0]?.what])).toEqual([
      [true, 'not worn'],
      [true, 'not worn'],
    ]);
    // Not worn in any scene: nothing to get for it but the one that exists.
    expect(plan.needs.find((need) => need.id === 'scarf')?.uses).toEqual([]);
  });

  it('keeps flashbacks among themselves', () => {
    const plan = planOf({
      scenes: [
        { day: 'D1', things: { oar: {} } },
        { day: 'F1', things: { oar: {} } },
        { day: 'D1', things: { oar: {} } },
      ],
    });
    expect(duties(plan, 'oar')).toEqual([['sets 3: as it looks'], [], ['match 1: as it looks']]);
  });

  it('keeps one flashback apart from another', () => {
    const plan = planOf({
      scenes: [
        { day: 'F1', things: { vest: {} } },
        { day: 'F2', things: { vest: {} } },
        { day: 'F1', things: { vest: {} } },
      ],
    });
    expect(duties(plan, 'vest')).toEqual([['sets 3: as it looks'], [], ['match 1: as it looks']]);
  });

  it('matches no garment on one body to itself on another', () => {
    // The hat goes from Ida to Jo between 1 and 2: 2 owes nothing to 1; 3 matches 2.
    const plan = planOf({
      scenes: [{ wears: { IDA: { hat: {} } } }, { wears: { JO: { hat: {} } } }, { wears: { JO: { hat: {} } } }],
    });
    expect(duties(plan, 'hat')).toEqual([[], ['sets 3: as it looks'], ['match 2: as it looks']]);
  });

  it('asks for no match where the state has changed in between', () => {
    const plan = planOf({ scenes: [{ things: { shirt: { in: 'wet' } } }, { things: { shirt: { in: 'dry' } } }] });
    expect(duties(plan, 'shirt')).toEqual([[], []]);
  });
});

describe('what must change overnight', () => {
  const shirt = (state: string) => ({ wears: { IDA: { 'cotton shirt': { in: state } } } });

  it('sets hours needed against hours there', () => {
    const plan = planOf(
      { scenes: [shirt('soaked'), shirt('dry')] },
      'days:\n  - { date: 2027-03-12, call: 8:00, wrap: 18:00, scenes: [1] }\n  - { date: 2027-03-13, call: 8:00, wrap: 18:00, scenes: [2] }\n',
    );
    expect(plan.overnight.map((one) => [one.name, one.short, one.words])).toEqual([
      [
        'cotton shirt',
        false,
        'COTTON-SHIRT: from soaked to dry after scene 1 (shooting day 1), for scene 2 (shooting day 2): 8.1 h to 12.1 h needed, 14 h there',
      ],
    ]);
    expect(plan.tasks.find((task) => task.kind === 'convert')?.date).toBe('2027-03-12');
  });
});

describe('tasks that come in crowds', () => {
  it('are one a day and helper: to decide, and to pack', () => {
    const plan = planOf(
      { scenes: [{ things: { key: {}, bag: {}, cup: {} } }] },
      'days:\n  - { date: 2027-03-12, scenes: [1] }\nhelpers:\n  kim: { does: [props] }\n',
    );
    expect(plan.tasks.filter((task) => task.kind !== 'shoot').map((task) => [task.id, task.what])).toEqual([
      ['decide/kim/props/1', 'decide where these come from, and order them: bag, 2 × cup, key'],
      ['pack/kim/props/1', 'pack: bag, cup, key'],
    ]);
  });
});

describe('tasks', () => {
  const book = `prep: { starts: 2027-02-22 }
helpers:
  sam: { does: [costume] }
  kim: { does: [props] }
days:
  - { date: 2027-03-12, scenes: [1] }
elements:
  coat: { get: buy, delivery: 4, fitting: 2027-03-08, prep: [{ task: dye, who: kim }] }
  key: { get: hire, owner: the museum, collect: 2027-03-10, back: 2027-03-15, delivery: 1 }
`;
  const plan = planOf({ scenes: [{ wears: { IDA: { coat: {} } }, things: { key: {} } }] }, book, '2027-02-22');

  it('stand in order of date with who does them', () => {
    // Coat: shot Fri 12, packed Thu 11; dye 2 h and 2 days to dry = 3 days: Mon 8 to Wed 10, after the fitting of Mon 8; in hand on the last
    // delivery day before Mon 8: Fri 5; 4 working days: ordered by Mon 1 March, better Fri 26 February.
    // Key: fetched Wed 10, booked a working day before, Tue 9, better Mon 8.
    expect(
      plan.tasks.filter((task) => task.kind !== 'ask').map((task) => `${task.date} ${task.who ?? '-'} ${task.what}`),
    ).toEqual([
      '2027-02-26 sam order coat',
      '2027-03-08 kim book the hire of key (the museum)',
      '2027-03-08 sam fit coat',
      '2027-03-08 kim coat: dye (2 h), then 2 days to dry or settle',
      '2027-03-10 kim fetch key (the museum), photograph its condition',
      '2027-03-11 kim pack: key',
      '2027-03-11 sam pack: coat',
      '2027-03-12 - shooting day 1 of 1: scenes 1',
      '2027-03-15 kim key: back with the museum today',
    ]);
  });

  it('says what is late', () => {
    const late = planOf({ scenes: [{ wears: { IDA: { coat: {} } }, things: { key: {} } }] }, book, '2027-03-05');
    expect(late.tasks.filter((task) => task.late).map((task) => task.what)).toContain('order coat');
  });
});
