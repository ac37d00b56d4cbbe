import { describe, expect, it } from 'vitest';
import { findElements } from '../../src/find/find-elements.js';
import { noFinds } from '../../src/find/types.js';
import { readScript } from '../../src/script/read-script.js';
import { findsOf, foundIn, lexicon, listOf } from './finds-of.js';

const one = (text: string, name: string) => {
  const found = foundIn(text).find((find) => find.name === name);
  if (!found) throw new Error(`${name} is not among ${listOf(text).join(', ')}`);
  return found;
};

describe('names', () => {
  it('are the head with the words that tell it apart', () => {
    expect(listOf('Nora lifts the rusty old storm lantern she bought.')).toEqual(['storm lantern (props)']);
  });

  it('leave states and measures out', () => {
    expect(listOf('Nora drops a battered suitcase and a coil of rope.')).toEqual(['suitcase (props)', 'rope (props)']);
  });

  it('are one for one thing: a bare name after a fuller one', () => {
    const text = 'Nora lights a storm lantern. Felix takes the lantern from her. He hangs her lantern up.';
    expect(listOf(text)).toEqual(['storm lantern (props)']);
  });

  it('stay two where the script has two', () => {
    const text = 'Nora winds a red scarf round her neck. Felix ties a blue scarf to the gate.';
    expect(foundIn(text).map((find) => find.name)).toEqual(expect.arrayContaining(['red scarf', 'blue scarf']));
  });

  it('reach over scenes when the script has only one', () => {
    const text = [
      '## 1 INT. HALL - NIGHT',
      'Nora lights a storm lantern.',
      '## 2 EXT. LANE - NIGHT',
      'Felix kicks the lantern over.',
    ].join('\n\n');
    expect(foundIn(text).map((find) => find.name)).toEqual(['storm lantern', 'storm lantern']);
  });
});

describe('category by use', () => {
  it.each([
    ['A plate stands on the shelf.', 'plate (dressing)'],
    ['Nora carries a plate.', 'plate (props)'],
    ['Felix reads under a lamp.', 'lamp (dressing)'],
    ['Felix smashes the window with the lamp.', 'lamp (props)'],
    ['Nora sits at the table.', 'table (dressing)'],
    ['Nora eats an apple.', 'apple (food)'],
    ['Felix wears a colander.', 'colander (costumes)'],
    ['Nora, in a raincoat, waits.', 'raincoat (costumes)'],
    ['A dog sleeps by the stove.', 'dog (animals)'],
    ['Nora winds up a toy dog.', 'dog (props)'],
    ['A van stops.', 'van (vehicles)'],
    ['Nora loads a pistol.', 'pistol (props)'],
    ['Rain falls on the yard.', 'rain (effects)'],
    ['A phone buzzes.', 'phone buzzes (sound)'],
    ['Nora falls down the stairs.', 'falls (stunts)'],
    ['Her left eye is swollen.', 'swollen left eye (makeup)'],
    ['The fox speaks.', 'fox speaks (visual-effects)'],
    ['A window shatters.', 'window shatters (effects)'],
  ])('%s', (text, expected) => {
    expect(listOf(text).map((name) => name.replace('toy dog', 'dog'))).toContain(expected);
  });

  it('counts handling anywhere in the script', () => {
    const text = [
      '## 1 INT. HALL - DAY',
      'A vase stands on the shelf.',
      '## 2 INT. HALL - NIGHT',
      'Nora throws the vase at Felix.',
    ].join('\n\n');
    const vases = foundIn(text).filter((find) => find.name === 'vase');
    expect(vases.map((find) => find.category)).toEqual(['props', 'props']);
    expect(vases[0]?.rules).toContain('somebody handles it elsewhere in the script');
  });

  it('keeps as dressing what stands in several scenes and nobody touches', () => {
    const text = [
      '## 1 INT. HALL - DAY',
      'Nora waits beside a crate.',
      '## 2 INT. HALL - NIGHT',
      'Felix sits on the crate.',
    ];
    expect(foundIn(text.join('\n\n')).map((find) => find.category)).toEqual(['dressing', 'dressing']);
  });
});

describe('what is not there', () => {
  it.each([
    'Silence hangs between them like a wet sheet.',
    'Nora does not bat an eyelid.',
    'She remembers the piano.',
    'There is no lamp.',
    'Hope is a light.',
    'Felix is a bear of a man.',
    'Night falls.',
    'The room smells of coffee.',
  ])('%s', (text) => {
    expect(listOf(text)).toEqual([]);
  });
});

describe('speech', () => {
  const say = (words: string) => listOf(`NORA\n${words}`);

  it('gives only what is plainly present', () => {
    expect(say('Put that knife down.')).toEqual(['knife (props)']);
    expect(say('Hold this mirror.')).toEqual(['mirror (props)']);
    expect(say('Nice hat.')).toEqual(['hat (costumes)']);
  });

  it('takes one word that answers a question for no thing that is there, unless the question points at it', () => {
    const answer = (question: string, word: string) => listOf(`FELIX\n${question}\n\nNORA\n${word}`);
    expect(answer('What will you call her?', 'Shotgun.')).toEqual([]);
    expect(answer('What is this?', 'Shotgun.')).toEqual(['shotgun (props)']);
    expect(answer('Quick!', 'Torch!')).toEqual(['torch (props)']);
  });

  it('gives nothing for what is only spoken of', () => {
    expect(say('My mother had a piano. She sold it.')).toEqual([]);
    expect(say('We could book a table somewhere.')).toEqual([]);
    expect(say("Don't count your chickens.")).toEqual([]);
  });
});

describe('counts, states and people', () => {
  it.each([
    ['Felix stacks six crates.', 'crates', 6],
    ['Nora drops a pair of candlesticks.', 'candlesticks', 2],
    ['Nora buys a pair of scissors.', 'scissors', 1],
    ['Felix eats a dozen eggs.', 'eggs', 12],
    ['Nora counts twenty-two coins.', 'coins', 22],
    ['Nora lifts a crate.', 'crate', null],
  ])('%s', (text, name, count) => {
    expect(one(text, name).count).toBe(count);
  });

  it('gives the state that the words tell', () => {
    expect(one('Nora wrings out the soaked coat.', 'coat').state).toBe('soaked');
    expect(one('Nora hangs up her coat, torn at the sleeve.', 'coat').state).toBe('torn at the sleeve');
    expect(one('His shirt is soaked.', 'shirt').state).toBe('soaked');
    expect(one('Nora lifts a lamp.', 'lamp').state).toBeNull();
  });

  it('tells who handles and who wears', () => {
    expect(one('Nora lifts a crate.', 'crate')).toMatchObject({ by: 'NORA', worn: false });
    expect(one('Felix enters in a raincoat.', 'raincoat')).toMatchObject({ by: 'FELIX', worn: true });
    expect(one('Nora stops. She opens a letter.', 'letter').by).toBe('NORA');
    expect(one("Felix wipes Nora's scarf.", 'scarf').by).toBe('NORA');
  });

  it('says where and why', () => {
    const found = one('Nora lifts a storm lantern.', 'storm lantern');
    expect(found.words).toBe('a storm lantern');
    expect(found.rules).toContain('somebody handles it');
    expect(found.confidence).toBeGreaterThan(0.9);
  });
});

describe('people of the action', () => {
  it('are extras with counts, never elements', () => {
    const { people, elements } = findsOf('THREE NURSES hurry past. A crowd of tourists waits.');
    expect(people.map(({ name, kind, count }) => ({ name, kind, count }))).toEqual([
      { name: 'nurses', kind: 'extras', count: 3 },
      { name: 'tourists', kind: 'extras', count: null },
    ]);
    expect(elements.filter((find) => find.known === 'found')).toEqual([]);
  });

  it('have their number after "of", which tells an age of one person', () => {
    expect(findsOf('A crowd of twenty in their Sunday clothes.').people[0]?.count).toBe(20);
    expect(findsOf('A girl of ten waits.').people[0]?.count).toBe(1);
  });

  it('are cast when they have a name', () => {
    const { people } = findsOf('OLD MAGGIE, 70s, waits by the door.');
    expect(people).toEqual([expect.objectContaining({ kind: 'cast', presence: 'seen' })]);
  });

  it('are not reported when the script knows them', () => {
    expect(findsOf('Nora waves. The driver nods.', ['NORA', 'THE DRIVER']).people).toEqual([]);
  });
});

describe('what is only heard', () => {
  it('is a sound and no animal', () => {
    expect(listOf('A dog barks somewhere.')).toEqual(['dog barks (sound)']);
  });
});

describe('moves', () => {
  it.each([
    ['Nora puts on her coat.', { kind: 'put on', name: 'coat', from: null, to: 'NORA' }],
    ['Nora takes off her coat.', { kind: 'taken off', name: 'coat', from: 'NORA', to: null }],
    ['Nora hands Felix a key.', { kind: 'handed over', name: 'key', from: 'NORA', to: 'FELIX' }],
    ['Nora gives the key to Felix.', { kind: 'handed over', name: 'key', from: 'NORA', to: 'FELIX' }],
    ['Nora sets the lantern on a crate.', { kind: 'put down', name: 'lantern', from: 'NORA', to: 'on a crate' }],
    ['Felix carries the crate out.', { kind: 'carried off', name: 'crate', from: 'FELIX', to: 'FELIX' }],
    ['Felix leaves with the suitcase.', { kind: 'carried off', name: 'suitcase', from: 'FELIX', to: 'FELIX' }],
  ])('%s', (text, move) => {
    expect(findsOf(text).moves).toContainEqual(expect.objectContaining(move));
  });
});

describe('other languages', () => {
  it('leave the finder silent, and it says so', () => {
    const text = '---\ntitle: X\nlanguage: de\n---\n\n## 1 INT. ZIMMER - TAG\n\nNora hebt die Lampe.\n';
    const { script } = readScript(new TextEncoder().encode(text), 'x.md');
    const { finds, messages } = findElements(script as NonNullable<typeof script>, lexicon);
    expect(finds).toEqual(noFinds);
    expect(messages.map((message) => message.code)).toEqual(['language-not-read']);
  });

  it('are not feared where the language is English', () => {
    const text = '---\ntitle: X\nlanguage: en-GB\n---\n\n## 1 INT. ROOM - DAY\n\nNora lifts a lamp.\n';
    const { script } = readScript(new TextEncoder().encode(text), 'x.md');
    expect(findElements(script as NonNullable<typeof script>, lexicon).messages).toEqual([]);
  });
});

describe('capitals', () => {
  it('are evidence where the writer uses them for few things', () => {
    expect(listOf('Nora waits. A SHOT. Felix runs.')).toContain('shot (sound)');
  });

  it('say nothing in a script that shouts', () => {
    const loud = 'THE ROOM IS a MESS of HOPE and TIME. NORA sees the POINT of the LINE. The CASE is a MATTER of FORM.';
    expect(foundIn(loud).every((find) => !find.rules.includes('the writer put it in capitals'))).toBe(true);
  });
});

describe('marks', () => {
  it('make an element of a doubtful word, and give it a category by use', () => {
    expect(listOf('Nora wants a lamp.')).toEqual([]);
    expect(listOf('Nora wants a [lamp].')).toEqual(['lamp (dressing)']);
    const [marked] = foundIn('Nora wants a [lamp].');
    expect(marked?.rules).toContain('the writer marked it');
  });
});
