import { describe, expect, it } from 'vitest';
import { findsOf, foundIn } from './finds-of.js';

const cast = ['ANNA', 'BILL'];
const holder = (text: string, name: string) => foundIn(text, cast).find((one) => one.name.endsWith(name))?.by ?? null;

describe('who has what is itself the subject', () => {
  it.each([
    ['A handcart towed by a man rolls past.', 'handcart', 'man'],
    ['A lantern held by a girl swings.', 'lantern', 'girl'],
    ['The letter is snatched by a girl on a bicycle.', 'letter', 'girl'],
    ['A bottle goes from Anna to Bill.', 'bottle', 'ANNA'],
    ['A slice of cake goes from Bill to Anna.', 'cake', 'BILL'],
    ['On Bill’s shoulder sits a parrot.', 'parrot', 'BILL'],
    ['A watch dangles from Anna’s wrist.', 'watch', 'ANNA'],
    ['A schoolgirl, satchel bumping on her hip, waits.', 'satchel', 'schoolgirl'],
    ['The watch is on Bill’s wrist now.', 'watch', 'BILL'],
    ['A car drives by Anna.', 'car', null],
    ['A man with a hen under each arm stops.', 'hen', 'man'],
    ['A lamp hangs over the table.', 'lamp', null],
  ])('%s', (text, name, by) => expect(holder(text, name)).toBe(by));
});

describe('whose verb it is', () => {
  it.each([
    ['Wrapped in blankets, the children drink cocoa.', 'blankets', 'children'],
    ['Anna sits down. Bill laughs. He gives Anna a rose and hangs his jacket on a hook.', 'jacket', 'BILL'],
    ['Bill laughs. He gives Anna a rose. She sniffs it. A dog leaves a paw print on his shirt.', 'shirt', 'BILL'],
    ['ANNA (30), scrubs, trainers, enters.', 'scrubs', 'ANNA'],
    ['Leaning on a stick, an old woman with a basket crosses.', 'stick', 'old woman'],
    ['Holding a lamp, Anna waits.', 'lamp', 'ANNA'],
    ['Anna appears at the top of the steps wearing a helmet.', 'helmet', 'ANNA'],
    ['A boy between her knees holding a lantern looks at Bill.', 'lantern', 'boy'],
    ['Bill, now in an overall two sizes too big, pushes a barrow.', 'barrow', 'BILL'],
    ['One of the robbers drops a sack.', 'sack', 'robbers'],
    ['Anna empties her bag: a purse, a comb.', 'comb', 'ANNA'],
    ['A cup slips off the table. Bill’s hand shoots out. He catches it.', 'cup', null],
    ['Anna passes a shelf holding jars.', 'jars', null],
  ])('%s', (text, name, by) => expect(holder(text, name)).toBe(by));
});

describe('on whose body it is', () => {
  it.each([
    ['Anna ties a scarf round Bill’s neck.', 'scarf', 'BILL'],
    ['Anna slips into a black gown.', 'gown', 'ANNA'],
    ['Anna, in her father’s cap, closes the door.', 'cap', 'ANNA'],
    ['The coat of the guard is torn. The guard sleeps.', 'coat', 'guard'],
    ['Anna has the can strapped in with her.', 'can', 'ANNA'],
    ['Bill snatches up the poker; she has the tongs. Anna waits.', 'poker', 'BILL'],
    ['At the wheel, goggles pushed up on his forehead: Bill.', 'goggles', 'BILL'],
    ['Bill kneels in the gutter in his good trousers.', 'trousers', 'BILL'],
    ['A guard, lantern raised, stands in the doorway.', 'lantern', 'guard'],
    ['Anna examines the wound.', 'wound', null],
    ['Anna cleans the wound on Bill’s arm.', 'wound', 'BILL'],
    ['A clerk stamps a form. The clerk’s knuckles are bruised.', 'knuckles', 'clerk'],
  ])('%s', (text, name, by) => expect(holder(text, name)).toBe(by));
});

describe('what the sentences around tell', () => {
  it.each([
    ['A letter lies on the mat. Bill picks it up.', 'letter', 'BILL'],
    ['A porter empties his pockets. A key. A comb.', 'comb', 'porter'],
    ['Anna passes things down to Bill. A bag of flour.', 'flour', 'ANNA'],
    ['Anna looks round the kitchen. A comb.', 'comb', null],
    ['Anna opens the door. Bill gives her a key. She drops it.', 'key', 'BILL'],
    ['Waiters run past under trays, baskets, a hamper.', 'hamper', 'waiters'],
  ])('%s', (text, name, by) => {
    const had = foundIn(text, cast).filter((one) => one.name.endsWith(name));
    expect(had.find((one) => one.by !== null)?.by ?? null).toBe(by);
  });

  it('makes a prop of what lies there and is picked up', () => {
    const had = foundIn('A letter lies on the mat. Bill picks it up.', cast).filter(({ name }) => name === 'letter');
    expect(had.map(({ category }) => category)).toEqual(['props', 'props']);
  });

  const scene = (...paragraphs: string[]) => `## 1 INT. ROOM - DAY\n\n${paragraphs.join('\n\n')}\n`;

  it('takes "him" and "her" behind a verb for somebody else than the doer', () => {
    const text = scene('Bill reads. A boy stands behind him. He points his pencil at the wall.');
    expect(foundIn(text, cast).find((one) => one.name === 'pencil')?.by).not.toBeNull();
    expect(
      holder(
        scene('Anna sits. A deckhand runs after her. She hooks a parasol over her arm and gives him a coin.'),
        'parasol',
      ),
    ).toBe('ANNA');
  });

  it('knows from a speech who is there', () => {
    const text = scene('A pedlar waits. Bill sits.', 'BILL\nThe envelope, Anna.', 'She takes a comb from her bag.');
    expect(holder(text, 'comb')).toBe('ANNA');
  });

  it('learns a woman from the pronoun behind her own deed, never from her object', () => {
    const text =
      '## 1 INT. ROOM - DAY\n\nRowan wipes her hands and nods to Sam. Sam waits.\n\nShe opens an umbrella.\n';
    expect(foundIn(text, ['ROWAN', 'SAM']).find((one) => one.name === 'umbrella')?.by).toBe('ROWAN');
  });
});

describe('people called by what they are', () => {
  const scene =
    '## 1 INT. STAIRS - DAY\n\nA woman in scrubs carries a grocery bag. A thin man leans on a broom.\n\nWOMAN IN SCRUBS\nLate.\n\nTHIN MAN\nVery.\n\nThe woman eats a sandwich.\n';
  it.each([
    ['bag', 'WOMAN IN SCRUBS'],
    ['scrubs', 'WOMAN IN SCRUBS'],
    ['broom', 'THIN MAN'],
    ['sandwich', 'WOMAN IN SCRUBS'],
  ])('gives what a description has to the one who speaks under it: %s', (name, by) => {
    const had = foundIn(scene, cast).filter((one) => one.name.endsWith(name));
    expect(had.find((one) => one.by !== null)?.by).toBe(by);
  });

  it('knows the man in the hat for the one who speaks as the hat', () => {
    const text = '## 1 INT. SHED - DAY\n\nAnna waits. A man in a straw hat lights a pipe.\n\nSTRAW HAT\nNext.\n';
    expect(holder(text, 'pipe')).toBe('STRAW HAT');
  });

  it('knows the only man without a name for the stranger', () => {
    const text =
      '## 1 INT. SHED - DAY\n\nA stranger waits.\n\nSTRANGER\nCold.\n\nThe man draws a compass. The woman opens an umbrella.\n';
    expect(holder(text, 'compass')).toBe('STRANGER');
    expect(holder(text, 'umbrella')).not.toBe('STRANGER');
  });

  it('gives what a man behind somebody wears to the man', () => {
    expect(
      foundIn('In the mirror: a man behind Mr. Plum, in a mask.', ['MR. PLUM']).find((one) => one.name === 'mask')?.by,
    ).toBe('man');
  });

  it('keeps others apart', () => {
    const text =
      '## 1 INT. STAIRS - DAY\n\nA woman in scrubs waits. A woman in tweed opens an umbrella.\n\nWOMAN IN SCRUBS\nLate.\n';
    expect(holder(text, 'umbrella')).toBe('woman');
  });
});

describe('what changes its place', () => {
  const kinds = (text: string) => findsOf(text, cast).moves.map(({ name, kind }) => `${name} ${kind}`);

  it('puts nothing down on a body', () => {
    expect(kinds('Anna puts a lamp on her head.')).toEqual([]);
    expect(kinds('Anna puts a lamp on the table.')).toEqual(['lamp put down']);
    expect(kinds('Anna puts a hat on the table.')).toEqual(['hat put down']);
    expect(kinds('Anna puts a hat on.')).toEqual(['hat put on']);
  });

  it('puts nothing on that only holds a thing', () => {
    expect(kinds('Anna slips a coin into her glove.')).not.toContain('glove put on');
    expect(kinds('Anna slips into a black gown.')).toEqual(['black gown put on']);
  });
});
