import { describe, expect, it } from 'vitest';
import { foundIn } from './finds-of.js';

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
    ['A lamp hangs over the table.', 'lamp', null],
  ])('%s', (text, name, by) => expect(holder(text, name)).toBe(by));
});

describe('whose verb it is', () => {
  it.each([
    ['Wrapped in blankets, the children drink cocoa.', 'blankets', 'children'],
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
    ['Anna examines the wound.', 'wound', null],
    ['Anna cleans the wound on Bill’s arm.', 'wound', 'BILL'],
    ['A clerk stamps a form. The clerk’s knuckles are bruised.', 'knuckles', 'clerk'],
  ])('%s', (text, name, by) => expect(holder(text, name)).toBe(by));
});
