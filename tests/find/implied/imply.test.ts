import { describe, expect, it } from 'vitest';
import { imply } from '../../../src/find/imply.js';
import type { Find } from '../../../src/find/types.js';
import { readAll, readOne } from './read-one.js';

function implied(body: string, elements: readonly Find[] = [], heading?: string) {
  const { script, sentences } = readOne(body, heading);
  return { ...imply(sentences, script, elements), script };
}

const namesIn = (body: string, elements: readonly Find[] = []) =>
  implied(body, elements).elements.map(({ name }) => name);

const found = (name: string, scene = 0): Find => ({
  scene,
  known: 'found',
  name,
  category: 'props',
  count: null,
  by: null,
  worn: false,
  state: null,
  words: name,
  at: { start: { line: 1, column: 1, offset: 0 }, end: { line: 1, column: 2, offset: 1 } },
  confidence: 0.9,
  rules: [],
  strength: null,
});

describe('an implied element', () => {
  it('quotes its words at their place, with its rule and how sure it is', () => {
    const { elements, script } = implied('Nora lights up by the door.');
    expect(elements).toContainEqual(
      expect.objectContaining({
        name: 'matches or lighter',
        known: 'implied',
        category: 'props',
        by: 'Nora',
        words: 'lights up',
        strength: 'likely',
        rules: ['implication 1: lighting-up'],
      }),
    );
    for (const { words, at } of elements) expect(script.source.slice(at.start.offset, at.end.offset)).toBe(words);
  });

  it('is worn when it is a costume with a wearer', () => {
    expect(implied('Nora stands there, soaked.').elements).toEqual([
      expect.objectContaining({ name: 'dry costume double', by: 'Nora', worn: true }),
    ]);
  });

  it('goes to the person a pronoun means, when only one was named', () => {
    expect(implied('Nora sits. She writes.').elements[0]?.by).toBe('Nora');
    expect(implied('Nora and Ines sit. She writes.').elements[0]?.by).toBeNull();
  });

  it('is listed once a scene, however often its words stand', () => {
    expect(namesIn('Nora writes. Tom writes. Nora writes.').filter((name) => name === 'pen')).toEqual(['pen']);
  });

  it('comes in each scene that implies it', () => {
    const { script, sentences } = readAll('## INT. A - DAY\n\nNora bleeds.\n\n## INT. B - DAY\n\nNora bleeds.\n');
    expect(imply(sentences, script, []).elements.map(({ scene }) => scene)).toEqual([0, 1]);
  });

  it('keeps the surest of two reasons', () => {
    const { elements } = implied('Ines stabs him. His nose bleeds.');
    expect(elements.filter(({ name }) => name === 'stage blood')).toEqual([
      expect.objectContaining({ strength: 'certain' }),
    ]);
  });
});

describe('an implied element that is there already', () => {
  it('is not listed when the finder found it', () => {
    expect(namesIn('Nora writes.', [found('fountain pen')])).not.toContain('pen');
    expect(namesIn('Nora writes.', [found('fountain pen', 1)])).toContain('pen');
  });

  it('is not listed when it is marked, noted or worn', () => {
    expect(namesIn('Nora takes the [biro] and writes.')).not.toContain('pen');
    expect(namesIn('Nora writes.\n\n> props: 2 pens')).not.toContain('pen');
    expect(namesIn('Nora lies in bed.\n\n> Nora: wears pyjamas')).not.toContain('nightwear');
  });

  it('is not listed when something that does its work is named', () => {
    expect(namesIn('Nora strikes a match and lights up.')).not.toContain('matches or lighter');
    expect(namesIn('A police constable in plain clothes, a policeman in uniform.')).not.toContain('police uniform');
  });

  it('is listed when it is only spoken of', () => {
    expect(namesIn('Nora writes.\n\nTOM\nUse a pen.')).toContain('pen');
  });
});

describe('speech', () => {
  it('implies nothing to get', () => {
    const { elements } = implied('TOM\nHe bled all night. She smokes, she drinks, she drives.');
    expect(elements).toEqual([]);
  });

  it('warns of a thing only spoken of, until the action has it', () => {
    const speech = 'TOM\nHe keeps a pistol at home.';
    expect(implied(speech).tasks.map(({ text }) => text)).toContain(
      'Only spoken of: pistol. Get nothing unless a later draft shows it.',
    );
    expect(implied(`${speech}\n\nTom takes out the pistol.`).tasks.map(({ text }) => text)).not.toContain(
      'Only spoken of: pistol. Get nothing unless a later draft shows it.',
    );
  });

  it('counts what a parenthetical does', () => {
    expect(implied('NORA\n(lights up)\nWell?').elements[0]).toMatchObject({ name: 'matches or lighter', by: 'Nora' });
  });
});

describe('what is not there', () => {
  const cases = [
    'Nora does not smoke.',
    'No blood.',
    'Tom freezes as if shot.',
    'It hangs like a knife.',
    'Nobody writes.',
  ];
  for (const text of cases) it(`"${text}" implies nothing to get`, () => expect(namesIn(text)).toEqual([]));
  it('but what only looks like it does', () => expect(namesIn('It looks like blood.')).toEqual([]));
  it('asks about it', () => expect(implied('It looks like blood.').tasks.length).toBeGreaterThan(0));
});

describe('a costume double', () => {
  it.each([
    ['Nora falls in the mud.', 'clean costume double', 'Nora'],
    ['Nora spills red wine down herself.', 'clean costume double', 'Nora'],
    ['Tom tips a bucket of water over Nora.', 'dry costume double', null],
    ['Nora lands in a puddle.', 'dry costume double', null],
    ['Nora stands there in a wet coat.', 'dry costume double', 'Nora'],
  ])('%s: %s', (body, name, by) => {
    expect(implied(body).elements).toContainEqual(expect.objectContaining({ name, by, category: 'costumes' }));
  });

  it.each([
    'Nora, in a black dress, pours wine.',
    'Tom tips the milk into the sink and wipes his sleeve.',
    'Nora drips honey on her toast.',
    'Nora kneels beside the ditch.',
    'Nora splashes water on her face.',
  ])('is needed by nobody: %s', (body) => {
    expect(namesIn(body).filter((name) => name.endsWith('double'))).toEqual([]);
  });
});

describe('questions', () => {
  const ids = (body: string) => implied(body).questions.map(({ id }) => id);

  it('have an id made of the rule and the word, whatever the scene is called', () => {
    expect(ids('Ines opens the parcel.')).toEqual(['what-is-in-parcel']);
    expect(ids('Nora waits. Ines opens the parcel.')).toEqual(['what-is-in-parcel']);
  });

  it('tell which of them one answer settles for the whole script', () => {
    const scene = '## INT. ROOM - DAY\n\nNora eats. She has a bruise.\n\nNORA\nYes.\n\n';
    const { script, sentences } = readAll(scene + scene);
    expect(imply(sentences, script, []).questions.map(({ id, once }) => [id, once])).toEqual([
      ['what-food', false],
      ['which-side-bruise-nora', true],
      ['what-food', false],
      ['which-side-bruise-nora', true],
    ]);
  });

  it('are not asked when the sentence answers them', () => {
    expect(ids('A bruise on her left cheek.')).toEqual([]);
    expect(ids('A bruise on her cheek.')).toEqual(['which-side-bruise']);
  });

  it('are not asked when the next sentences, the next scene or a later word answers them', () => {
    const asked = (body: string) => implied(body).questions.map(({ id }) => id);
    expect(asked('Nora opens the parcel. She sighs.')).toContain('what-is-in-parcel');
    expect(asked('Nora opens the parcel. Inside it, a doll.')).toEqual([]);
    expect(asked('Tom puts his coat around Nora.')).toEqual(['who-keeps']);
    expect(asked('Tom puts his coat around Nora. She hands the coat back.')).toEqual([]);
    expect(asked('Tom puts his coat around Nora.\n\n## EXT. YARD - DAY\n\nNora, in the coat, waits.')).toEqual([]);
    expect(asked('A bruise on her face.')).toContain('which-side-bruise');
    expect(asked('A bruise on her face.\n\n## EXT. YARD - DAY\n\nThe bruise on her left cheek shows.')).toEqual([]);
  });

  it('are not asked when a thing of the scene answers them', () => {
    expect(ids('Nora eats.')).toEqual(['what-food']);
    expect(ids('A cheese pie on the table. Nora eats.')).toEqual([]);
  });
});

describe('the rules', () => {
  it('do not depend on the order or number of calls', () => {
    const once = implied('Nora bleeds and writes. Guests eat.');
    const again = implied('Nora bleeds and writes. Guests eat.');
    expect(again.elements).toEqual(once.elements);
    expect(again.questions).toEqual(once.questions);
  });

  it('stand in the order of the text', () => {
    const { tasks } = implied('Nora writes. Tom vomits. Ines knits. A dog.');
    const offsets = tasks.map(({ at }) => at.start.offset);
    expect(offsets).toEqual([...offsets].sort((a, b) => a - b));
  });
});
