import { describe, expect, it } from 'vitest';
import { findsOf, foundIn } from './finds-of.js';

const cast = ['ANNA', 'BILL'];
const holder = (text: string, name: string) => foundIn(text, cast).find((one) => one.name.endsWith(name))?.by;

describe('who holds and wears things without having a name', () => {
  it.each([
    ['A girl holds gold scissors.', 'scissors', 'girl'],
    ['THREE NURSES carry trays.', 'trays', 'nurses'],
    ['The guard puts on his cap.', 'cap', 'guard'],
    ['A boy with a kite runs past Bill.', 'kite', 'boy'],
    ['Three policemen in capes wait.', 'capes', 'policemen'],
  ])('names the entry of the extras: %s', (text, name, by) => {
    expect(holder(text, name)).toBe(by);
    expect(findsOf(text, cast).people.map((one) => one.name)).toContain(by);
  });

  it.each([
    ['A guard stands by the door. He checks his watch.', 'watch', 'guard'],
    ['Bill waits outside. A CASHIER argues with Anna. He cuts it in half with scissors.', 'scissors', 'cashier'],
    ['Three policemen wait. They lift their whistles.', 'whistles', 'policemen'],
  ])('lets a pronoun mean somebody without a name: %s', (text, name, by) => expect(holder(text, name)).toBe(by));

  it('gives what a description of somebody of a name holds to that person', () => {
    expect(holder('Anna, a tall woman with a cane, waits.', 'cane')).toBe('ANNA');
  });

  it('keeps what somebody of a name holds where nameless people stand by', () => {
    expect(holder('A guard yawns. Anna opens her umbrella.', 'umbrella')).toBe('ANNA');
  });
});

describe('who wears what belongs to somebody else', () => {
  it.each([
    ['Anna wears a cap and Bill waits. Anna shivers in Bill’s jersey.', 'jersey', 'ANNA'],
    ['Bill waits. Anna wears his jacket.', 'jacket', 'ANNA'],
    ['A girl sits on the steps, now in Bill’s pullover.', 'pullover', 'girl'],
    ['Bill buttons Anna’s coat.', 'coat', 'ANNA'],
    ['Anna, in a nurse’s tunic, waits.', 'tunic', 'ANNA'],
  ])('tells the one who has it on: %s', (text, name, by) => expect(holder(text, name)).toBe(by));
});
