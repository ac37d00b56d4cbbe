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
