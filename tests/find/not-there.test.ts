import { describe, expect, it } from 'vitest';
import { foundIn, listOf } from './finds-of.js';

const names = (text: string) => foundIn(text, ['ANNA', 'BILL']).map(({ name }) => name);

describe('what is named and not there', () => {
  it('is an animal that is only heard', () => {
    expect(names('A dog howls.')).toEqual(['dog howls']);
    expect(names('Far off, cows low.')).toEqual(['cows low']);
    expect(names('A dog barks. It runs at Anna. The dog snaps at her.')).toContain('dog');
    expect(names('A dog barks at Bill.')).toContain('dog');
  });

  it('is what a letter tells, with or without quotation marks', () => {
    expect(names('Anna opens the letter. It reads: Dear Anna, I have sold the piano. Keep the cat.')).not.toContain(
      'piano',
    );
    expect(names('Anna opens the letter. It reads: Dear Anna, I have sold the piano. Keep the cat.')).not.toContain(
      'cat',
    );
    expect(names('The letter says that the horse is lame and the saddle gone.')).toEqual(['letter']);
    expect(names('Bill reads: "Sell the horse. Keep the saddle. Burn the cart."')).toEqual([]);
  });

  it('is a letter over several paragraphs, until somebody does something', () => {
    const text = 'Bill reads:\n\nDear Bill,\n\nI have sold the piano. Keep my saddle.\n\nBill lifts a lamp.';
    expect(names(text)).toEqual(['lamp']);
  });

  it('is what a picture shows', () => {
    const pictured = names('A photograph of a ship hangs over the bed. Beside it, a portrait of a man with a dog.');
    expect(pictured).toContain('photograph');
    expect(pictured).toContain('portrait');
    for (const one of ['ship', 'dog', 'man']) expect(pictured).not.toContain(one);
  });

  it('is what a picture shows happening, what somebody speaks about, and a feeling', () => {
    expect(names('The photo of a burning ship hangs over the bar.')).toEqual(['photo']);
    expect(names('They row about money. Anna dreams about horses.')).toEqual([]);
    expect(names('A mist of tears.')).toEqual([]);
    expect(names('Anna takes a bow.')).toEqual([]);
    expect(names('A piano falls from the roof.')).toEqual(['piano', 'piano falls']);
  });

  it('is a saying, dirt, the tank of a car, light that only falls', () => {
    expect(names('Nobody speaks of the elephant in the room.')).toEqual([]);
    expect(names('Bill shakes off the grit.')).toEqual([]);
    expect(names('Bill fills the tank.')).toEqual([]);
    expect(names('The light comes through the slats.')).not.toContain('light');
    expect(names('A red cross marks the spot.')).toEqual([]);
    expect(names('Anna hits the brakes.')).toEqual([]);
    expect(names('Nobody has a knife.')).toEqual([]);
    expect(names('Anna drops the subject.')).toEqual([]);
  });
});

describe('words that could be verbs', () => {
  it('are things where they make one thing with the word before', () => {
    expect(names('Bill, in bicycle clips and goggles, comes in.')).toEqual(['bicycle clips', 'goggles']);
    expect(names('Anna takes a newspaper cutting about the flood from her purse.')).toContain('newspaper cutting');
  });

  it('are verbs in a chain of verbs', () => {
    expect(names('Anna snatches it off the stove with her bare hand, yelps, and drops it.')).toEqual(['stove']);
  });

  it('are things behind a verb that needs one', () => {
    expect(names('Anna spreads dripping on the bread.')).toContain('dripping');
    expect(names('Anna is washing dishes.')).not.toContain('washing');
  });
});

describe('what light and liquids do', () => {
  it('is an effect', () => {
    expect(foundIn('Blue light crosses the curtains.', [])).toContainEqual(
      expect.objectContaining({ name: 'light', category: 'effects' }),
    );
    expect(foundIn('The lights go out.', [])).toContainEqual(
      expect.objectContaining({ name: 'lights', category: 'effects' }),
    );
    expect(foundIn('The flask foams over.', [])).toContainEqual(
      expect.objectContaining({ name: 'flask foams', category: 'effects' }),
    );
  });
});

describe('words in the mouth of a scene', () => {
  it('tell what is heard and not seen', () => {
    const sounds = (text: string) =>
      foundIn(text, ['ANNA'])
        .filter(({ category }) => category === 'sound')
        .map(({ name }) => name);
    expect(sounds('Trays crash somewhere.')).toEqual(['trays crash']);
    expect(sounds('From the pit, a pop and a hiss.')).toEqual(['pop', 'hiss']);
    expect(sounds('Something hammers on the steel.')).toEqual(['hammers']);
  });

  it('tell what is worn or stuck on somebody, and no further thing', () => {
    expect(names('Anna, stitches in her eyebrow, waits.')).toEqual(['stitches']);
    expect(names('The pen leaks over the cuff of her coat.')).toEqual(['pen', 'coat']);
    expect(names('Bill drags the dog by his collar.')).toEqual(['dog']);
    expect(names('Bill has hold of her tie.')).toEqual(['tie']);
    expect(names('Bill has put his bow tie on the table.')).toEqual(['bow tie', 'table']);
  });

  it('tell of people and no animals', () => expect(names('A young BILL sits.')).toEqual([]));
});

describe('words that tell of others', () => {
  it('are owners of a kind, trades, measures and comparisons', () => {
    expect(names("On the table, a visitors' book.")).toEqual(['table', "visitors' book"]);
    expect(names('ANNA, wardrobe, crawls round Bill.')).toEqual([]);
    expect(names('Bill carries a bundle the length of a man.')).toEqual(['bundle']);
    expect(names('Anna tucks it in as you would a child.')).toEqual([]);
    expect(names('Bill draws the bolt.')).toEqual([]);
    expect(names('They both stand still.')).toEqual([]);
  });

  it('are no verbs in a list of clothes', () => {
    expect(names('Bill, city shoes wrapped in paper, carries a lantern.')).toEqual(['city shoes', 'paper', 'lantern']);
    expect(names('A stove, a table, snowshoes on nails.')).toEqual(['stove', 'table', 'snowshoes']);
    expect(names("Anna, in somebody's long johns, sits.")).toEqual(['long johns']);
  });

  it('call the cow of a pantomime a costume', () => {
    expect(listOf('A pantomime cow stands on the stage. The cow curtsies.')).toEqual(['pantomime cow (costumes)']);
  });
});

describe('what is let, done before, or said of something else', () => {
  it('is no event and nobody', () => {
    expect(listOf('Anna lifts the lid, looks, and lets it fall.')).not.toContain('fall (stunts)');
    expect(listOf('Two teenagers who have been sent here by a magistrate wait.')).toEqual([]);
    expect(names('Bill takes off his hat, as you would for a hearse.')).toEqual(['hat']);
    expect(names('A voice, quite close at hand, a long laugh.')).not.toContain('close');
    expect(listOf('Empty. One bare bulb.')).toEqual(['bulb (dressing)']);
    expect(listOf('A rowing-boat drifting past.')).not.toContain('rowing-boat drifting (stunts)');
  });

  it('is a part, where it has come off', () => {
    expect([...new Set(names('Bill holds up the handle. Anna glues the handle to the cup.'))]).toEqual([
      'handle',
      'cup',
    ]);
    expect(names('Bill turns the handle.')).toEqual([]);
  });

  it('is there with the box that holds it', () => {
    expect(names('On the hatch, a cake tin, a box of programmes.')).toEqual(['cake tin', 'box', 'programmes']);
  });

  it('is food, where some of it is there', () => expect(names('Anna finds some gum.')).toEqual(['gum']));
});
