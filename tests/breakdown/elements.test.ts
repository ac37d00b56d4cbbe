import { describe, expect, it } from 'vitest';
import { breakDown, elementsOf } from '../support/break-down.js';

const head = '---\ncast: { NORA: {}, JOSEF: {} }\n---\n\n## 1. INT. KITCHEN - DAY\n\n';

/** `name category known` of a scene, in order. */
function listOf({ scenes }: ReturnType<typeof breakDown>, scene = 0): string[] {
  return (scenes[scene]?.elements ?? []).map(({ name, category, known, carried }) =>
    [name, category, known, ...(carried ? ['carried'] : [])].join(' '),
  );
}

describe('marked elements', () => {
  it('take their category on the spot, from a definition, from the finder, else are props with a message', () => {
    const result = breakDown(
      `${head}Nora lifts the [lantern], [a coil of rope](gear), the [big ladle] and a [thing].\n\n[lantern]: dressing "2; brass"\n`,
      { elements: [{ name: 'ladle', category: 'food', words: 'ladle', by: 'NORA', count: 1 }] },
    );
    expect(listOf(result)).toEqual([
      'lantern dressing marked',
      'coil of rope gear marked',
      'big ladle food marked',
      'thing props marked',
    ]);
    expect(result.codes).toEqual(['element-without-category']);
    const elements = elementsOf(result.scenes[0]);
    expect(elements.lantern).toMatchObject({ count: 2, description: 'brass', words: 'lantern', confidence: null });
    expect(elements['big ladle']).toMatchObject({ by: 'NORA', count: 1, rules: ['told by hand'] });
  });

  it('are one under a full reference and under an earlier name', () => {
    const result = breakDown(
      `${head}Nora lifts the [old light][storm lantern]. The [Storm  Lantern] burns. Her [lamp] burns.\n\n[storm lantern]: prop "was lamp"\n`,
    );
    expect(listOf(result)).toEqual(['storm lantern props marked']);
    expect(result.scenes[0]?.elements[0]?.mentions.map(({ words }) => words)).toEqual([
      'old light',
      'Storm  Lantern',
      'lamp',
    ]);
    expect(result.breakdown.elements).toMatchObject([{ id: 'storm-lantern', names: ['storm lantern', 'lamp'] }]);
  });

  it('stay two under two names', () => {
    expect(listOf(breakDown(`${head}The [brass key](prop) and the [iron key](prop).\n`))).toEqual([
      'brass key props marked',
      'iron key props marked',
    ]);
  });

  it('count in speech only with a definition or a category', () => {
    const speech = 'NORA\nGive me the [lantern], the [torch](prop) and the [moon].\n';
    expect(listOf(breakDown(`${head}${speech}\n[lantern]: prop "brass"\n`))).toEqual([
      'lantern props marked',
      'torch props marked',
    ]);
  });

  it('meet one message when two categories are said', () => {
    const result = breakDown(`${head}A [rope](prop). The [rope](stunt) swings.\n`);
    expect(result.codes).toEqual(['element-two-categories']);
    expect(listOf(result)).toEqual(['rope props marked']);
  });
});

describe('noted elements', () => {
  it('come from lists with counts, people and descriptions', () => {
    const { scenes } = breakDown(`${head}> props: 2 crates of apples (Nora), letter (sealed)\n\nNora waits.\n`);
    expect(elementsOf(scenes[0])['crates of apples']).toMatchObject({
      known: 'noted',
      count: 2,
      by: 'NORA',
      category: 'props',
    });
    expect(elementsOf(scenes[0]).letter).toMatchObject({ description: 'sealed', by: null });
  });

  it('and marked ones are one entry, marked', () => {
    const result = breakDown(`${head}> dressing: wall clock\n\nThe [wall clock] ticks.\n`);
    expect(listOf(result)).toEqual(['wall clock dressing marked']);
  });
});

describe('found elements', () => {
  it('never double a mark or a note of the scene', () => {
    const result = breakDown(
      `${head}> props: knife\n\nNora lifts the [storm lantern]. The lantern smokes. She wipes the knife.\n`,
      {
        elements: [
          { name: 'storm lantern', category: 'props', words: 'storm lantern', by: 'NORA' },
          { name: 'lantern', category: 'dressing', words: 'lantern#2', state: 'smoking' },
          { name: 'knife', category: 'props', words: 'knife#2', by: 'NORA' },
        ],
      },
    );
    expect(listOf(result)).toEqual(['knife props noted', 'storm lantern props marked']);
    expect(elementsOf(result.scenes[0]).knife).toMatchObject({ by: 'NORA' });
    expect(result.codes).toEqual([]);
  });

  it('under a mark give it no second thing, and a sound beside a mark stays a sound', () => {
    const result = breakDown(`${head}The [hat with a feather] falls. The [lantern] rattles.\n`, {
      elements: [
        { name: 'hat', category: 'costumes', words: 'hat' },
        { name: 'feather', category: 'props', words: 'feather' },
        { name: 'rattle', category: 'sound', words: 'lantern] rattles' },
        { name: 'lantern', category: 'props', words: 'lantern' },
      ],
    });
    expect(listOf(result)).toEqual([
      'hat with a feather costumes marked',
      'lantern props marked',
      'rattle sound found',
    ]);
  });

  it('are asked about when they can mean two marked things', () => {
    const result = breakDown(`${head}The [brass key](prop) and the [iron key](prop). She takes the key.\n`, {
      elements: [{ name: 'key', category: 'props', words: 'the key' }],
    });
    expect(listOf(result)).toEqual(['brass key props marked', 'iron key props marked']);
    expect(result.scenes[0]?.questions).toMatchObject([
      { id: 'which-key-int-kitchen-day', kind: 'element', text: 'Which one is "the key": brass key or iron key?' },
    ]);
  });

  it('of one name and category are one over the script, and the largest count in one scene is the count', () => {
    const { breakdown } = breakDown(
      `${head}Two crates.\n\n## 2. EXT. YARD - DAY\n\nSix crates.\n\n## 3. EXT. LANE - DAY\n\nA crate.\n`,
      {
        elements: [
          { name: 'crates', category: 'props', words: 'Two crates', count: 2 },
          { name: 'crates', category: 'props', words: 'Six crates', count: 6 },
          { name: 'crates', category: 'props', words: 'A crate', count: null },
        ],
      },
    );
    expect(breakdown.elements).toMatchObject([
      { id: 'crates', count: 6, scenes: ['int-kitchen-day', 'ext-yard-day', 'ext-lane-day'] },
    ]);
  });

  it('are what a noted vessel holds; one shoe does not count the shoes; words are those of the mark', () => {
    const result = breakDown(
      `${head}> food: bottle of plum brandy\n> props: black shoes\n\nA wet [lantern]. Plum brandy. One shoe.\n`,
      {
        elements: [
          { name: 'lantern', category: 'props', words: 'A wet [lantern]' },
          { name: 'plum brandy', category: 'food', words: 'Plum brandy' },
          { name: 'shoe', category: 'props', words: 'One shoe', count: 1 },
        ],
      },
    );
    expect(listOf(result)).toEqual([
      'bottle of plum brandy food noted',
      'black shoes props noted',
      'lantern props marked',
    ]);
    expect(elementsOf(result.scenes[0])['black shoes']?.count).toBeNull();
    expect(elementsOf(result.scenes[0]).lantern).toMatchObject({ words: 'lantern', mentions: [{ words: 'lantern' }] });
  });

  it('met by a bare name are the thing with a number', () => {
    const result = breakDown(`${head}> dressing: calendar 1998\n\nThe calendar hangs there.\n`, {
      elements: [{ name: 'calendar', category: 'props', words: 'The calendar' }],
    });
    expect(listOf(result)).toEqual(['calendar 1998 dressing noted']);
  });

  it('elsewhere in the script are the thing that was marked or noted once', () => {
    const result = breakDown(
      `${head}The [storm lantern](prop).\n\n## 2. EXT. YARD - DAY\n\nThe lantern. A lantern.\n`,
      {
        elements: [
          { name: 'lantern', category: 'props', words: 'The lantern' },
          { name: 'lantern', category: 'props', words: 'A lantern' },
        ],
      },
    );
    expect(listOf(result, 1)).toEqual(['storm lantern props found', 'lantern props found']);
  });

  it('keep the coats of two people apart, and their ids', () => {
    const { breakdown } = breakDown(`${head}Nora in a coat. Josef in a coat. A coat on a hook.\n`, {
      elements: [
        { name: 'coat', category: 'costumes', words: 'coat', by: 'NORA', worn: true },
        { name: 'coat', category: 'costumes', words: 'coat#2', by: 'JOSEF', worn: true },
      ],
    });
    expect(breakdown.elements.map(({ id, by }) => `${id} ${by}`)).toEqual(['coat-nora NORA', 'coat-josef JOSEF']);
  });
});

describe('implied elements', () => {
  it('are listed with their strength, and not twice when one is present', () => {
    const result = breakDown(`${head}Nora lights up. The [matches](prop) are wet.\n`, {
      elements: [
        { name: 'matches', category: 'props', words: 'lights up', known: 'implied', strength: 'likely' },
        { name: 'ashtray', category: 'props', words: 'lights up', known: 'implied', strength: 'ask', confidence: 0.4 },
      ],
    });
    expect(listOf(result)).toEqual(['ashtray props implied', 'matches props marked']);
    expect(result.breakdown.elements).toMatchObject([
      { name: 'ashtray', strength: 'ask' },
      { name: 'matches', strength: null },
    ]);
    expect(result.scenes[0]?.questions).toMatchObject([
      { id: 'need-ashtray-int-kitchen-day', kind: 'element', element: 'ashtray' },
    ]);
  });
});

describe('refusals', () => {
  const told = {
    elements: [
      {
        name: 'ashtray',
        category: 'props' as const,
        words: 'lights up',
        known: 'implied' as const,
        strength: 'likely' as const,
      },
      { name: 'coffee cup', category: 'props' as const, words: 'coffee cup' },
      { name: 'coffee cup', category: 'props' as const, words: 'coffee cup#2' },
    ],
  };
  const rest = 'Nora lights up over a coffee cup.\n\n## 2. EXT. YARD - DAY\n\nThe coffee cup.\n';

  it('hold in their scene', () => {
    const result = breakDown(`${head}> no: ashtrays, cup\n\n${rest}`, told);
    expect(listOf(result)).toEqual([]);
    expect(listOf(result, 1)).toEqual(['coffee cup props found']);
    expect(result.codes).toEqual([]);
  });

  it('hold everywhere, wherever they stand', () => {
    const result = breakDown(`${head}${rest}\n> no everywhere: coffee cup\n`, told);
    expect(listOf(result)).toEqual(['ashtray props implied']);
    expect(listOf(result, 1)).toEqual([]);
  });

  it('never strike what is marked, and say so; without effect they say so too', () => {
    const result = breakDown(`${head}> no: lantern, unicorn\n\nThe [lantern](prop).\n`);
    expect(listOf(result)).toEqual(['lantern props marked']);
    expect(result.codes.toSorted()).toEqual(['refusal-of-marked', 'refusal-without-effect']);
  });

  it('of one word spare a mark of that head, and the category the finder gives it', () => {
    const result = breakDown(`${head}> no: key\n\nThe [brass key]. A key.\n`, {
      elements: [
        { name: 'brass key', category: 'dressing', words: 'brass key' },
        { name: 'key', category: 'props', words: 'A key' },
      ],
    });
    expect(listOf(result)).toEqual(['brass key dressing marked']);
    expect(result.codes).toEqual([]);
  });

  it('keep dressing out of a scene where it would be carried', () => {
    const result = breakDown(
      `${head}The [wall clock](dressing) ticks.\n\n## 2. INT. KITCHEN - NIGHT\n\n> no: wall clock\n\nNora waits.\n`,
    );
    expect(listOf(result, 1)).toEqual([]);
  });
});

describe('definitions without brackets', () => {
  const rusty = { category: 'vehicles' as const, by: null };
  const script = (definitions: string) =>
    `${head}Nora gets out of a rusty van. The van has a horn.\n\nA blue van passes.\n\n${definitions}\n`;
  const found = {
    elements: [
      { ...rusty, name: 'van', words: 'a rusty van', state: 'rusty' },
      { ...rusty, name: 'van', words: 'The van' },
      { ...rusty, name: 'blue van', words: 'A blue van' },
    ],
  };

  it('describe what the words of the action name in full, and go on meaning it', () => {
    const result = breakDown(script('[rusty van]: vehicle "1; borrow from Steve"'), found);
    expect(listOf(result)).toEqual(['rusty van vehicles found', 'blue van vehicles found']);
    const van = elementsOf(result.scenes[0])['rusty van'];
    expect(van).toMatchObject({ description: 'borrow from Steve', count: 1, stateIn: null, stateOut: null });
    expect(van?.mentions.map(({ words }) => words)).toEqual(['a rusty van', 'The van']);
    expect(result.codes).toEqual([]);
  });

  it('describe the only thing that they can mean', () => {
    const result = breakDown(script('[motor van]: vehicle "hired"'), { elements: found.elements.slice(0, 2) });
    expect(listOf(result)).toEqual(['motor van vehicles found']);
    expect(result.codes).toEqual([]);
  });

  it('ask which of several they mean, and say when nothing is called so', () => {
    const red = { ...rusty, name: 'red van', words: 'a rusty van' };
    const result = breakDown(script('[van]: vehicle "hired"\n[piano]: prop "hired"'), {
      elements: [red, ...found.elements.slice(2)],
    });
    expect(listOf(result)).toEqual(['red van vehicles found', 'blue van vehicles found']);
    expect(result.codes).toEqual(['definition-of-several', 'definition-unused']);
  });
});
