import { describe, expect, it } from 'vitest';
import { listOf } from './finds-of.js';

describe('what shows on a body', () => {
  it.each([
    ['Felix, a plaster across his palm, waits.', 'plaster (makeup)'],
    ['Nora sleeps, her arm in a sling.', 'sling (makeup)'],
    ["Felix's leg is in a plaster cast.", 'plaster cast (makeup)'],
    ['Felix has a bandage round his head.', 'bandage (makeup)'],
    ['Nora looks down. Her palm is scarlet.', 'scarlet palm (makeup)'],
    ["Felix's eye is swelling shut.", 'swelling eye (makeup)'],
    ['Nora puts a plaster on his knee.', 'plaster (props)'],
    ['Nora winds gauze round his hand.', 'gauze (props)'],
    ['Nora puts on a scarlet glove.', 'scarlet glove (costumes)'],
  ])('%s: %s', (text, element) => expect(listOf(text)).toContain(element));
});
