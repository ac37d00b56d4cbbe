import { describe, expect, it } from 'vitest';
import { compileText } from '../support/compile-text.js';

async function peopleOf(action: string, more = '') {
  const { breakdown } = await compileText(`${more}## INT. PARIS FLAT - DAY\n\n${action}\n`);
  const [scene] = breakdown?.scenes ?? [];
  return { cast: scene?.cast.map(({ name }) => name), extras: scene?.extras.map(({ name }) => name), scene };
}

it('with a title and a full name is the speaker whose cue gives a part of it', async () => {
  const { cast } = await peopleOf('DR. PRIYA RAO, 38, lifts a flask. Priya waits.\n\nPRIYA\nNo.');
  expect(cast).toEqual(['PRIYA']);
});

// Common practice: a person's first appearance stands in capitals, often with an age.
describe('somebody who never speaks', () => {
  it.each([
    ['PIA (17) climbs out of the hatch. Pia waits.', ['Pia']],
    ['PIA, in a soaked jacket, climbs out. Pia, dripping, waits.', ['Pia']],
    ['ZORA enters and sits down.', ['Zora']],
    ['He looks up. MAX (40s), a tall man, opens the door.', ['Max']],
    ['HOPE (20s) laughs.', ['Hope']],
    ['DETECTIVE KRAUSE enters. Krause smiles.', ['Detective Krause']],
    ['Jules, 40, reads. Mary-Jane, 12, waits.', ['Jules', 'Mary-Jane']],
    ['Zora opens the door. Zora sits down.', ['Zora']],
    ['O’BRIEN, 50, drinks.', ['O’Brien']],
    ['MRS. KOWALSKI, 70, sweeps. Mrs. Kowalski leaves.', ['Mrs. Kowalski']],
    ['MR. WU nods. Mr. Wu smiles.', ['Mr. Wu']],
    ['MR. WU, 60, counts. MRS. WU, 58, folds a towel.', ['Mr. Wu', 'Mrs. Wu']],
    ['DR. HALL, 60, waits.', ['Dr. Hall']],
    ['MISS BELL, 19, nods. Miss Bell opens a book.', ['Miss Bell']],
    ['SERGEANT PIKE, 50, salutes. FATHER MOON prays.', ['Sergeant Pike', 'Father Moon']],
    ['KIT, 12, peers in. Kit grins.', ['Kit']],
    ['Her son, PIOTR, waits.', ['Piotr']],
  ])('is cast by the words of %s', async (action, names) => {
    expect((await peopleOf(action)).cast).toEqual(names);
  });

  it.each([
    'A Morris Minor stands in the yard. A St Bernard sleeps.',
    'THUNDER rolls. Thunder again. The WIND howls. CRASH! A BMW, an old one, stops.',
    'SIREN wails. Siren stops. MUSIC, with drums, fades.',
    'A GIRL (9) runs. BOY, 12, throws a stone. The OLD MAN (80) coughs.',
    'Paris sleeps. Paris wakes up. LATER, in the dark, rain falls.',
    'SMASH CUT TO a letter. ANGLE ON the clock. SUPER, in white: 1931. TV, a big one, hums.',
    'Room Twelve (30). A bell rings.',
    'Mother Nature wins. The NURSE BELL rings. CRATES, 12, stand by the wall.',
  ])('is nobody in the words of %s', async (action) => {
    expect((await peopleOf(action)).cast).toEqual([]);
  });

  it.each([
    'HUGO, 30, her assistant, waits.',
    'OLD MARTIN, 70, the boatman, waits.',
    'MRS. KOWALSKI, 70, the landlady, waits.',
    'LEN, forty-five, miner, waits.',
  ])('is no second person beside the description in %s', async (action) => {
    const { cast, extras } = await peopleOf(action);
    expect([cast?.length, extras]).toEqual([1, []]);
  });

  it('leaves people in a list the people they are', async () => {
    expect((await peopleOf('PIA, 17, waits. Pia hugs the boy, the porter watches.')).extras).toEqual(['boy', 'porter']);
  });

  it('is whoever a note dresses or puts there, and has what the action says', async () => {
    const { cast, scene } = await peopleOf('Benno holds the map.\n\n> Benno: wears life vest');
    expect(cast).toEqual(['Benno']);
    expect(scene?.elements.map(({ name, by }) => [name, by])).toEqual([
      ['map', 'Benno'],
      ['life vest', 'Benno'],
    ]);
  });

  it('has one name, and none that the script knows already', async () => {
    const front = '---\ncast: { MR. PELL: { aliases: [PELL] } }\n---\n\n';
    expect(
      (await peopleOf('PELL, 70, waits. PELL (70) sleeps. ZORA KLINE, 30, waits. Zora sits down.', front)).cast,
    ).toEqual(['MR. PELL', 'Zora Kline']);
  });

  it('is not counted again by a description behind the name', async () => {
    const { cast, extras } = await peopleOf('PIA (17), a thin girl, and OLD TOM, 70, a sailor, come in. A man waits.');
    expect(cast).toEqual(['Pia', 'Old Tom']);
    expect(extras).toEqual(['man']);
    expect((await peopleOf('Ida, a nurse and a waiter sit down.')).extras).toEqual(['nurse', 'waiter']);
  });
});
