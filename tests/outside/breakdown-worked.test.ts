import { describe, expect, it } from 'vitest';
import { breakDown, clothesOf, elementsOf, statesOf } from '../support/break-down.js';

describe('worked breakdowns of teachers, written in our own words', () => {
  /** The Film Look, thefilmlook.com, how to break down your script: a wrestler of the eighties arrives at a show past his fans. */
  it('a person with two names is one person; what fans wear on their hands is costume', () => {
    const { scenes, breakdown, codes } = breakDown(`---
cast:
  STAN: { aliases: [THE HAMMER] }
---

## 1. EXT. COMMUNITY HALL - NIGHT

> Stan: wears washed-out jeans, multicoloured jacket
> extras: fans
> costumes: bandana, foam hand
> props: leaflets

STAN walks past the fans. THE HAMMER does not look at the leaflets.

THE HAMMER
Evening.
`);
    expect(scenes[0]?.cast.map(({ name, presence }) => `${name} ${presence}`)).toEqual(['STAN seen']);
    expect(breakdown.cast).toMatchObject([{ names: ['STAN', 'THE HAMMER'] }]);
    expect(scenes[0]?.extras.map(({ name }) => name)).toEqual(['fans']);
    const byCategory = (wanted: string) =>
      scenes[0]?.elements.filter(({ category }) => category === wanted).map(({ name }) => name);
    expect(byCategory('costumes')?.toSorted()).toEqual([
      'bandana',
      'foam hand',
      'multicoloured jacket',
      'washed-out jeans',
    ]);
    expect(byCategory('props')).toEqual(['leaflets']);
    expect(codes).toEqual([]);
  });

  /** Don't Shoot the Costumer, dontshootthecostumer.wordpress.com, glossary, continuity: a jacket put on indoors is followed through four scenes. */
  it('a jacket is the same costume through three scenes; its change in the fourth is noted and carried on', () => {
    const { scenes, breakdown } = breakDown(`---
cast: { LEO: {} }
---

## 1. INT. FLAT - DAY

> Leo: wears white shirt

Leo looks for his keys.

> Leo: puts on jacket

## 2. EXT. STREET - CONTINUOUS

Leo walks to his car.

## 3. INT. CAR - DAY

Leo drives.

## 4. EXT. SEA FRONT - DAY

Leo gets out into the heat.

> Leo: takes off jacket
> jacket: hung over his shoulder

## 5. EXT. PIER - CONTINUOUS

Leo walks to the end.
`);
    expect(clothesOf(scenes, 'LEO')).toEqual([
      '1: white shirt, jacket (put on)',
      '1: white shirt (carried), jacket (carried)',
      '1: white shirt (carried), jacket (carried)',
      '1: white shirt (carried), jacket (taken off)',
      '1: white shirt (carried)',
    ]);
    expect(statesOf(scenes, 'jacket')).toEqual([
      ' > ',
      ' > ',
      ' > ',
      ' > hung over his shoulder',
      'hung over his shoulder > hung over his shoulder',
    ]);
    expect(elementsOf(scenes[4])).toMatchObject({
      jacket: { carried: true, by: 'LEO', worn: false, from: 'ext-sea-front-day' },
    });
    expect(breakdown.elements.find(({ id }) => id === 'jacket')?.scenes).toHaveLength(5);
  });

  /** University of British Columbia, faculty.arts.ubc.ca/rgardiner/crslib2/prop/prop1.htm, properties course: tea is poured from a pot into a cup; the rest of the service is on a dresser. */
  it('what is handled is a prop, the rest of the tea service dresses the place and stays there', () => {
    const { scenes } = breakDown(
      '---\ncast: { MAY: {} }\n---\n\n## 1. INT. PARLOUR - DAY\n\n> props: teapot (May), cup\n> dressing: tea service\n\nMay pours.\n\n## 2. INT. PARLOUR - NIGHT\n\nMay sleeps.\n',
    );
    expect(scenes[0]?.elements.map(({ name, category }) => `${name} ${category}`)).toEqual([
      'teapot props',
      'cup props',
      'tea service dressing',
    ]);
    expect(scenes[1]?.elements.map(({ name, carried }) => `${name} ${carried}`)).toEqual(['tea service true']);
  });
});
