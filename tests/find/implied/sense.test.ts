import { describe, expect, it } from 'vitest';
import { findsOf } from '../finds-of.js';

const implied = (text: string) =>
  findsOf(text, ['NORA', 'TOM'])
    .elements.filter(({ known }) => known === 'implied')
    .map(({ name }) => name);
const tasks = (text: string) => findsOf(text, ['NORA', 'TOM']).tasks.map(({ text: said }) => said);

const atSea = (text: string) => `## 1 EXT. SEA - DAY\n\n${text}\n`;
const onRoad = (text: string) => `## 1 EXT. ROAD - DAY\n\n${text}\n`;

describe('things that the words do imply', () => {
  it.each([
    ['Nora takes his pipe, fills it, and lights it for him.', 'matches or lighter'],
    ['Nora takes his pipe, fills it, and lights it for him.', 'tobacco substitute'],
    ['Tom sets the lamp down and lights it.', 'matches or lighter'],
    ['They toast. Corks pop.', 'glass or cup'],
    [atSea('Nora rows.'), 'rowing boat with oars'],
    ['Nora pulls on the oars. She rows hard across the water.', 'rowing boat with oars'],
    ['Nora lies in the bathtub.', 'modesty wear'],
    ['Tom, in his coat, drips on the mat.', 'dry costume double'],
    ['Nora whisks eggs.', 'bowl'],
    ['Tom fries bacon.', 'pan'],
    ['Nora guts a cod.', 'knife'],
    ['Tom digs with a sigh.', 'spade'],
    ['Tom digs with Nora.', 'spade'],
    ['Nora writes with her left hand.', 'pen'],
    ['The nurse injects Tom.', 'syringe without a needle'],
    ['Nora bandages his hand.', 'bandage'],
    ['Tom sits at the wheel.', 'car'],
    ['Two paramedics kneel.', "paramedic's uniform"],
    ['Nora reads the letter and burns it in a saucer.', 'fire extinguisher'],
    ['NORA\nYou’re bleeding.', 'stage blood'],
  ])('%s: %s', (text, name) => expect(implied(text)).toContain(name));
});

describe('things that the words do not imply', () => {
  it.each([
    ['The children toast sausages on sticks.', 'glass or cup'],
    ['Nora toasts a crumpet.', 'glass or cup'],
    ['They row about money.', 'rowing boat with oars'],
    [onRoad('Nora and Tom row over the bill.'), 'rowing boat with oars'],
    ['Nora sleeps in the bathtub in the dress.', 'modesty wear'],
    ['Tom hides in the bath.', 'towel'],
    ['Mustard drips on the plaster.', 'dry costume double'],
    ['Nora whisks eggs.', 'pan'],
    ['Tom stirs.', 'pan'],
    ['Tom digs with the lid of his tin.', 'spade'],
    ['Nora sweeps the yard with a branch.', 'broom'],
    ['Nora writes with a burnt stick.', 'pen'],
    ['A fire engine. Tom sits at the wheel.', 'car'],
    ['The audience: babies, coats.', 'rehearsal doll'],
  ])('%s: %s', (text, name) => expect(implied(text)).not.toContain(name));

  it.each([
    ['A wedding dress has spilled out onto the road.', /refill/i],
    ['Tom slides in on his socks.', /pocket/i],
    ['Nora drinks bleach.', /refill|fizz/i],
    ['Nora whisks eggs.', /hot pan/i],
    ['Tom waves a plastic sword.', /blunted/i],
    ['Tom lights his pipe.', /herbal/i],
    ['Tom climbs on a chair.', /^Height/],
    ['The goat trots across the ring.', /small worn/i],
    ['A boy from the village, MAREK, nineteen, waits.', /^Child/],
    ['A baby cries.', /^Tears/],
    ['The kettle snatched off its ring. Milk on the hob, off its ring.', /small worn/i],
  ])('%s: no work %s', (text, work) => expect(tasks(text).filter((said) => work.test(said))).toEqual([]));

  it('say what is work after all', () => {
    expect(tasks('Nora spills her tea.').some((said) => /refill/i.test(said))).toBe(true);
    expect(tasks('Tom tucks the key into his sock.').some((said) => /pocket/i.test(said))).toBe(true);
    expect(tasks('Nora drinks bleach.').some((said) => /clean new container/.test(said))).toBe(true);
    expect(tasks('Nora pours champagne.').some((said) => /fizz/i.test(said))).toBe(true);
    expect(tasks('The kettle boils over.').some((said) => /boiling/i.test(said))).toBe(true);
    expect(tasks('She turns the ring on her finger.').some((said) => /small worn/i.test(said))).toBe(true);
    expect(tasks('Nora cries.').some((said) => /^Tears/.test(said))).toBe(true);
    expect(tasks('Nora climbs the mast.').some((said) => /^Height/.test(said))).toBe(true);
    expect(tasks('Tom waves a sword.').some((said) => /blunted/.test(said))).toBe(true);
  });
});

describe('an implied thing equal to one that is found', () => {
  it.each([
    ['Tom’s fingers are bandaged.', 'bandage'],
    ['Tom bleeds from the nose.', 'stage blood'],
    ['Nora lies in bed under the window.', 'bedding'],
  ])('is not listed twice: %s', (text, name) => expect(implied(text)).not.toContain(name));

  it('is listed where the found one is something else', () => {
    expect(implied('Tom’s boots are muddied. Nora bandages his hand.')).toContain('bandage');
    expect(implied('Nora stabs Tom.')).toContain('stage blood');
  });
});
