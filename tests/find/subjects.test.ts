import { describe, expect, it } from 'vitest';
import { foundIn } from './finds-of.js';

const cast = ['ANNA', 'BILL', 'MR. KEEL'];
const holder = (text: string, name: string) => foundIn(text, cast).find((one) => one.name.endsWith(name))?.by;

describe('the subject of a verb', () => {
  it.each([
    ['stands behind it', 'At his heels comes Anna, with a lantern under one arm.', 'lantern', 'ANNA'],
    [
      'stands behind it without a name',
      'Out of the van climbs a courier, and he tips a parcel off.',
      'parcel',
      'courier',
    ],
    [
      'is whom a "who" goes on about',
      'The train throws Anna across the knees of Bill, 25, who wears a boater.',
      'boater',
      'BILL',
    ],
    [
      'stands before an aside',
      'The guests pour out, and Mr. Keel, with a basket under his arm, is swept away.',
      'basket',
      'MR. KEEL',
    ],
    ['stands before a comparison', 'Bill, quick as a wink, takes a biscuit.', 'biscuit', 'BILL'],
    ['wears what she has on', 'Anna has on a blue frock.', 'frock', 'ANNA'],
    ['is the one of the sentence before', 'Anna sits down. Reaches for the lantern.', 'lantern', 'ANNA'],
    ['is the nameless one of the sentence before', 'A nurse bends over him. Lifts a syringe.', 'syringe', 'nurse'],
  ])('%s', (_, text, name, by) => expect(holder(text, name)).toBe(by));
});

describe('who has a thing that has no verb of its own', () => {
  it.each([
    ['The guards stare at a boy in headphones.', 'headphones', 'boy'],
    ['Bill runs for the door, coat flying.', 'coat', 'BILL'],
    ['Anna pedals past on a bicycle.', 'bicycle', 'ANNA'],
    ['Anna is in Bill’s jersey.', 'jersey', 'ANNA'],
  ])('%s', (text, name, by) => expect(holder(text, name)).toBe(by));
});

describe('a noun that tells no gender', () => {
  it('learns it from the pronouns of the script', () => {
    const text = 'Bill waits. A judge tears a sheet off her clipboard. The judge nods. He opens his umbrella.';
    expect(holder(text, 'umbrella')).toBe('BILL');
  });
});
