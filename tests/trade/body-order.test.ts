import { describe, expect, it } from 'vitest';
import { bodyOrder, placeOnBody } from '../../src/trade/body-order.js';

describe('head to foot', () => {
  it.each([
    ['woollen hat', 'head'],
    ['round glasses', 'face'],
    ["Stefan's scarf", 'neck'],
    ['red scarves', 'neck'],
    ['blue tie', 'neck'],
    ['yellow oilskin', 'body'],
    ['coat with a fur collar', 'body'],
    ['leather gloves', 'hands'],
    ['wedding ring', 'hands'],
    ['belt', 'waist'],
    ['work trousers', 'legs'],
    ['pair of rubber boots', 'feet'],
    ['black shoes, laces broken', 'feet'],
    ['thick socks', 'feet'],
    ['striped pyjamas', 'body'],
    ['canvas bag', 'carried'],
    ['zorb', 'not placed'],
  ])('%s: %s', (name, zone) => {
    expect(placeOnBody(name).zone).toBe(zone);
  });

  it('goes down the body and from the outside in', () => {
    const names = ['socks', 'work trousers', 'shirt', 'jumper', 'raincoat', 'bag', 'hat', 'blue tie', 'belt', 'gloves'];
    const sorted = [...names].sort((a, b) => placeOnBody(a).order - placeOnBody(b).order);
    expect(sorted).toEqual([
      ...['hat', 'blue tie', 'raincoat', 'jumper', 'shirt', 'gloves', 'belt', 'work trousers', 'socks', 'bag'],
    ]);
  });

  it('names no word twice', () => {
    const words = bodyOrder.flatMap((row) => row.words);
    expect(words.filter((word, i) => words.indexOf(word) !== i)).toEqual([]);
  });
});
