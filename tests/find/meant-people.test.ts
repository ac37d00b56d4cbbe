import { describe, expect, it } from 'vitest';
import { compileText } from '../support/compile-text.js';

async function peopleOf(action: string) {
  const { breakdown } = await compileText(`## INT. BARN - DAY\n\n${action}\n\n## INT. LOFT - DAY\n\nRain.\n`);
  const [scene] = breakdown?.scenes ?? [];
  return [scene?.cast.map(({ name }) => name), scene?.extras.map(({ name }) => name)];
}

describe('people without a name', () => {
  it.each([
    ['Two girls wait by the door: IDA, ten, and ADA, nine.', ['Ida', 'Ada'], []],
    ['Two girls wait: IDA, ten, and ADA, nine. The girls, in coats, run off.', ['Ida', 'Ada'], []],
    ['OLD TOBIAS, 70, sits. The old man coughs.', ['Old Tobias'], []],
    ['The MILKMAN, a thin fellow, rings.', [], ['milkman']],
    ['A cleaner, OTTO (50), mops. Otto waits.', ['Otto'], []],
    ['Her husband, OTTO, sits by the bed. Otto writes the figure down.', ['Otto'], []],
  ])('are the people of a name whom they mean: %s', async (action, cast, extras) => {
    expect(await peopleOf(action)).toEqual([cast, extras]);
  });

  it.each([
    ['Three girls wait by the door: IDA, ten, and ADA, nine.', ['girls']],
    ['Two girls wait: IDA, ten, and ADA, nine. Four girls run in.', ['girls']],
    ['OLD TOBIAS, 70, a sailor, sits. An old man comes in. The old man coughs.', ['old man']],
    ['The MILKMAN, a porter and a waiter sit down.', ['milkman', 'porter', 'waiter']],
  ])('are others where the words do not fit: %s', async (action, extras) => {
    expect((await peopleOf(action))[1]).toEqual(extras);
  });
});

describe('a title', () => {
  const cast = '---\ncast:\n  DANNY: {}\n  DR. PATEL: {}\n---\n\n## 1. INT. SURGERY - DAY\n\n';
  const extrasOf = async (action: string) =>
    (await compileText(cast + action)).breakdown?.scenes[0]?.extras.map(({ name }) => name);

  it('is the one person who bears it', async () => {
    expect(await extrasOf('DANNY greets DR. PATEL. Danny punches the doctor.\n')).toEqual([]);
  });

  it('is somebody else where another one comes in', async () => {
    expect(await extrasOf('DR. PATEL reads. A doctor comes in. The doctor waves.\n')).toEqual(['doctor']);
    expect(await extrasOf('DANNY greets DR. PATEL. Danny kisses the nurse.\n')).toEqual(['nurse']);
  });
});

describe('things and animals of one word', () => {
  const elementsOf = async (action: string) =>
    (await compileText(`## 1. INT. ROOM - DAY\n\n${action}`)).breakdown?.scenes[0]?.elements
      .filter(({ category }) => category === 'props' || category === 'animals')
      .map(({ name, category }) => `${name}, ${category}`);

  it('are one where a name is set behind, and where only a toy was brought in', async () => {
    expect(await elementsOf('A fat ginger cat, BISCUIT, sleeps. Biscuit wakes. The cat yawns.\n')).toEqual([
      'Biscuit the cat, animals',
    ]);
    expect(await elementsOf('ANNA, 30, hugs a stuffed rabbit. Anna throws the rabbit.\n')).toEqual([
      'stuffed rabbit, props',
    ]);
  });

  it('are two where a live one comes in', async () => {
    const both = await elementsOf('ANNA, 30, hugs a stuffed rabbit. A rabbit hops in. The rabbit eats.\n');
    expect(both).toEqual(expect.arrayContaining(['stuffed rabbit, props', 'rabbit, animals']));
  });
});
