import { describe, expect, it } from 'vitest';
import { findsOf, foundIn, scriptOf } from './finds-of.js';

const cast = ['ANNA', 'BILL'];
const movesIn = (text: string) =>
  findsOf(text, cast).moves.map(({ kind, name, from, to }) => [kind, name, from, to].join(' '));
const statesOf = (text: string, name: string) =>
  foundIn(text, cast)
    .filter((one) => one.name === name && one.state !== null)
    .map(({ state, stateBegins }) => [state, stateBegins]);

describe('a pronoun means the thing last in hand', () => {
  it.each([
    ['Anna takes the letter. Pockets it. Later hands it to Bill.', 'handed over letter ANNA BILL'],
    ['Bill gives the coat to Anna. She puts it on.', 'put on coat  ANNA'],
    ['Anna takes Bill’s cap and puts it on.', 'put on cap  ANNA'],
    ['Bill picks up the knife. He puts it down on the table.', 'put down knife BILL '],
    ['Anna takes off her boots. She carries them upstairs.', 'carried off boots ANNA ANNA'],
    ['A girl gives Anna a doll. Anna hands it to a nurse.', 'handed over doll ANNA nurse'],
  ])('moves it: %s', (text, move) => expect(movesIn(text)).toContain(move));

  it('changes its state over several sentences', () => {
    expect(statesOf('Anna takes the letter. She reads it. She tears it.', 'letter')).toEqual([['torn', true]]);
  });

  it('means things of its number only', () => {
    const text = 'Anna picks up a cup and two plates. She smashes them.';
    expect(statesOf(text, 'plates')).toEqual([['smashed', true]]);
    expect(statesOf(text, 'cup')).toEqual([]);
  });

  it('tells who handles what only a pronoun hands them', () => {
    const text = 'A parcel lies on the mat. Bill picks up a mug. A stone lands on the mat. He kicks it.';
    expect(foundIn(text, cast).filter(({ name, by }) => name === 'stone' && by !== null)).toEqual([]);
  });

  it('reaches no thing of another scene', () => {
    const text = '## 1 INT. HALL - DAY\n\nAnna takes the letter.\n\n## 2 INT. YARD - DAY\n\nAnna tears it.\n';
    expect(statesOf(text, 'letter')).toEqual([]);
  });
});

describe('a pronoun that may mean two things', () => {
  const text = 'Anna takes the letter and a map. She tears it.';

  it('asks, and changes neither', () => {
    const { questions } = findsOf(text, cast);
    expect(questions.map((one) => one.text)).toContain('Which one is "it" in "tears it": the letter or the map?');
    expect([...statesOf(text, 'letter'), ...statesOf(text, 'map')]).toEqual([]);
  });

  it('means the one that the answer names', () => {
    const answered = `${text}\n\n> answer: which-tears-it-letter-map the map`;
    expect(scriptOf(answered, cast).scenes[0]?.notes.length).toBe(1);
    expect(statesOf(answered, 'map')).toEqual([['torn', true]]);
    expect(statesOf(answered, 'letter')).toEqual([]);
  });

  it('asks nothing where only one of them is put on', () => {
    const { questions } = findsOf('Bill takes the key and a cap. He puts it on.', cast);
    expect(questions.filter(({ id }) => id.startsWith('which'))).toEqual([]);
    expect(movesIn('Bill takes the key and a cap. He puts it on.')).toContain('put on cap  BILL');
  });
});

describe('what is put on from a hanger', () => {
  it.each([
    ['Bill shrugs into a coat.', 'put on coat  BILL'],
    ['Anna changes into a blue dress.', 'put on blue dress  ANNA'],
  ])('is on from there: %s', (text, move) => expect(movesIn(text)).toContain(move));
});
