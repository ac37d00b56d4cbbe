import { describe, expect, it } from 'vitest';
import { foundIn } from './finds-of.js';

const names = (text: string) => foundIn(text, ['ANNA', 'BILL']).map(({ name }) => name);

describe('a wider word for a thing just named', () => {
  it('means the only one that fits, as often as it comes', () => {
    expect(names('Anna lifts a lantern. The light swings. She carries the light out.')).not.toContain('light');
  });

  it('means none of two', () => {
    expect(names('Anna lifts a lantern. Bill lifts a torch. She carries the light out.')).toContain('light');
  });
});
