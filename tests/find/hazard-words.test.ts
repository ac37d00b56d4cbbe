import { describe, expect, it } from 'vitest';
import { raiseHazards } from '../../src/find/hazards.js';
import { hazards } from '../../src/trade/hazards.js';
import { milderHazards, ownHazards } from '../../src/trade/hazards-further.js';
import { severityOf } from '../../src/trade/hazards-order.js';
import { implications } from '../../src/trade/implications/implications.js';
import { saidByDanger } from '../../src/trade/implications/said-by-danger.js';
import { breakDown } from '../support/break-down.js';
import { findsOf } from './finds-of.js';
import { readOne } from './implied/read-one.js';

const idsOf = (body: string, heading?: string) => {
  const { script, sentences } = readOne(body, heading);
  return raiseHazards(sentences, script, []).map(({ hazard }) => hazard);
};

/** With the whole finder, under whose elements a hazard may hide too. */
const found = (text: string) => findsOf(text, ['NORA', 'TOM']).hazards.map(({ hazard }) => hazard);

interface Case {
  readonly id: string;
  readonly heading?: string;
  readonly yes: readonly string[];
  readonly no: readonly string[];
}

const cases: readonly Case[] = [
  {
    id: 'H11',
    yes: [
      'A cart stands on the very edge of the quarry.',
      'They push the safe over the drop.',
      'Nora comes along the edge of the quay.',
      'Ines dangles from a windowsill.',
      'Below them a sheer drop.',
      'On the wire, three metres up, Nora walks with a parasol.',
      'Nora comes down the fire escape.',
      'Two men climb over the moving train.',
    ],
    no: [
      'Nora sits on the very edge of the bed.',
      'On the brink of tears, Nora drops the pipette.',
      'The drop falls.',
      'Tom climbs on a chair.',
      'Nora climbs down from the lorry.',
      'The driver climbs down with a spanner.',
      'Nora joins the bridge club.',
      'Weed hangs from the beams.',
      'A sparrow on the wire.',
      'In the tunnel the roof comes down.',
      'Tom trains the binoculars on the ridge.',
    ],
  },
  {
    id: 'H15',
    yes: ['A boy from the village, MAREK, seventeen, waits.', 'A boy hugs NORA, forty.', 'A girl waits.'],
    no: ['A boy from the village, MAREK, nineteen, waits.', 'JOAN, a girl of twenty-two, waits.'],
  },
  { id: 'H2', yes: ['Nora cuts the bread.', 'Tom cuts the rope.'], no: ['Nora cuts him short.', 'Tom cuts a class.'] },
  { id: 'H11', heading: 'EXT. RIDGE - DAY', yes: ['Nora waits.'], no: [] },
  { id: 'H11', heading: 'INT. RIDGE ROAD SCHOOL - DAY', yes: [], no: ['Nora waits.'] },
  {
    id: 'H4',
    yes: ['She plants a rocket in the snow and pulls the cord.', 'A rocket bursts green in the sky.'],
    no: ['A toy rocket.', 'Rocket and tomatoes in a bowl.', 'A poster across the road: BAKERY BLAST.'],
  },
  {
    id: 'H8',
    yes: ['A horse-drawn cart.', 'A St Bernard lies on the step.', 'A wasp lands on the jam.'],
    no: ['A moth circles the bulb.'],
  },
  { id: 'H11', heading: 'EXT. CLIFF ROAD - DAY', yes: ['Nora waits.'], no: [] },
  { id: 'H11', heading: 'EXT. ROOF TERRACE - DAY', yes: ['Nora waits.'], no: [] },
  {
    id: 'H5',
    yes: [
      'Nora pours petrol over the floor.',
      'Tom sloshes paraffin along the wall.',
      'Diesel leaks from the drum.',
      'Tom lights a flare.',
      'Nora takes his pipe, fills it, and lights it.',
      'A paraffin heater in the corner.',
      'Tom breathes fire.',
    ],
    no: [
      'Nora breathes a word.',
      'Nora pours tea.',
      'Tom wears flares.',
      'His nostrils flare.',
      'Nora pays for petrol.',
    ],
  },
  {
    id: 'H19',
    yes: [
      'Her son, five, drinks bleach.',
      'Tom carries a jerrycan.',
      'The flask foams over and eats a neat hole in the bench.',
      'A bottle of turpentine.',
      'Nora sews his forehead with fishing line.',
      'A drip swings from a hook above the stretcher.',
      'NORA\nYou’re bleeding.',
    ],
    no: [
      'The tap drips.',
      'NORA\nHe bled once.',
      'Nora fills the flask with tea.',
      'A diesel engine idles.',
      'Nora sews a shirt.',
    ],
  },
  {
    id: 'H16',
    yes: [
      'The mixer throws a blue spark.',
      'The sprinklers come on.',
      'The winch screams, sparks and stops.',
      'A broken neon sign hangs by its cable.',
    ],
    no: ['The sprinkler waters the lawn.', 'Neon buzzes.', 'Her eyes spark.'],
  },
  {
    id: 'H7',
    yes: [
      'The sprinklers come on.',
      'A wave breaks over the rail and sweeps her legs away.',
      'Water floods the floor.',
      'Water creeps round his boots.',
    ],
    no: ['The sprinkler waters the lawn.', 'Nora waves.', 'A wave of her hand.', 'Applause floods the room.'],
  },
  {
    id: 'H9',
    yes: ['A bicycle leans on the wall.', 'A tank rumbles over the hill, its turret turning.'],
    no: ['Bicycle clips and a ledger.', 'Nora fills the tank.', 'A fish tank.'],
  },
  {
    id: 'H18',
    yes: ['The beams of the attic are rotten.', 'Ines is buried alive.', 'Tom hides in the fridge.'],
    no: ['A tube of glue stands on the coal bunker.', 'Nora puts the milk in the fridge.'],
  },
  { id: 'H18', heading: 'INT. ATTIC - DAY', yes: ['The attic floor is rotten.'], no: ['Nora reads.'] },
  { id: 'H18', heading: 'INT. COAL FACE - DAY', yes: ['Nora waits.'], no: [] },
  { id: 'H18', heading: 'INT. PIT STOP CAFE - DAY', yes: [], no: ['Nora waits.'] },
  { id: 'H17', heading: 'EXT. DESERT HIGHWAY - DAY', yes: ['Nora waits.'], no: [] },
  {
    id: 'H17',
    heading: 'EXT. YARD - DAY',
    yes: ['Heat. A dog sleeps.'],
    no: ['In the heat of the argument he stands.'],
  },
  {
    id: 'H3',
    yes: [
      'Nora plunges off the wall.',
      'They hit each other.',
      'Nora, strapped to the board, turns.',
      'She hangs by one wrist.',
      'Tom swings a pick.',
      'A wall collapses on Tom.',
      'Nora chokes on a grape.',
    ],
    no: [
      'Nora plunges her hand in.',
      'His gaze falls on Nora.',
      'A girl chases a chicken.',
      'A bag strapped to the bike.',
    ],
  },
  {
    id: 'H6',
    yes: ['Dust. Coughing.', 'Red smoke drifts off.', 'Flour hangs in the air.'],
    no: ['A bag of flour.', 'Dust on the shelf.', 'Plaster dust.', 'Breath smoke.'],
  },
  {
    id: 'H21',
    heading: 'EXT. STREET - DAY',
    yes: [
      'Ines aims a gun at Tom.',
      'Tom carries a rifle.',
      'Two cops run.',
      'A patrol car waits.',
      'Nora punches Tom.',
      'A siren, close.',
    ],
    no: ['A siren, far away.', 'Nora hugs Tom.', 'Tom nails it with a nail gun.'],
  },
  {
    id: 'H21',
    heading: 'INT. ROOM - DAY',
    yes: ['A constable waits.'],
    no: ['A siren, then nearer.', 'Nora punches Tom.'],
  },
];

describe('hazards by their words', () => {
  for (const { id, heading = 'INT. ROOM - DAY', yes, no } of cases) {
    for (const text of yes) it(`${id}: ${heading}: ${text}`, () => expect(idsOf(text, heading)).toContain(id));
    for (const text of no) it(`no ${id}: ${heading}: ${text}`, () => expect(idsOf(text, heading)).not.toContain(id));
  }
});

describe('what is only pictured, compared or a figure of speech', () => {
  it.each([
    'A photo of a burning ship hangs over the bar.',
    'On the wall, a poster of a burning castle.',
    'The TV news shows a bomb.',
    'In the painting, a house burns.',
    'On TV, a building explodes.',
    'A wave of panic hits her.',
    'Panic strikes her.',
    'A sea of faces.',
    'A hat like a dropped bomb.',
    'Hair the colour of fire.',
    'He has a horse tattoo, and a drawing of a snake.',
    'It is as bright as a fire.',
    'A poster on the wall: BAKERY BLAST, FOUR UNHURT.',
    'A framed photograph: a boat on its side.',
  ])('raises nothing: %s', (text) => expect(found(text)).toEqual([]));

  it.each([
    ['The photo of Tom burns.', 'H5'],
    ['A photograph: Tom holds it over a candle.', 'H5'],
    ['Nora holds the photo of Tom over a candle.', 'H5'],
    ['Tom drops the portrait of Nora in the fire.', 'H5'],
    ['A candle burns on the television.', 'H5'],
    ['The sign shows a house and Tom lights a match.', 'H5'],
    ['A painting of a lady, and a snake beside it.', 'H8'],
    ['A crab the size of a plate bites him. Blood.', 'H19'],
    ['A wave of the hand, and Tom shoots.', 'H1'],
    ['A film of petrol lies on the water.', 'H19'],
    ['The silhouette of a man with a rifle.', 'H1'],
    ['Nora looks like she shoots him. She shoots him.', 'H1'],
  ])('still raises what is there: %s', (text, id) => expect(found(text)).toContain(id));
});

describe('the order of a danger box', () => {
  it('has a place for every row', () => {
    const places = [...hazards, ...ownHazards, ...milderHazards].map(({ id }) => severityOf(id));
    expect(new Set(places).size).toBe(hazards.length + ownHazards.length + milderHazards.length);
    expect(Math.max(...places)).toBe(places.length - 1);
  });

  it('puts the writer’s note first, then what kills before what only needs leave', () => {
    const { scenes } = breakDown('## 1 EXT. YARD - NIGHT\n\nNora waits.\n\n> safety: mind the well\n', {
      others: (script) => ({
        hazards: ['H14', 'H6', 'H15', 'H1'].map((hazard) => ({
          scene: 0,
          hazard,
          words: 'Nora',
          at: script.scenes[0]?.at as never,
          because: 'told',
          children: [],
        })),
      }),
    });
    expect(scenes[0]?.hazards.map(({ id }) => id)).toEqual(['note', 'H1', 'H15', 'H6', 'H14']);
  });
});

describe('work that the danger box says already', () => {
  const tell = (hazards: readonly string[]) =>
    breakDown('## 1 EXT. YARD - DAY\n\nNora waits.\n', {
      others: (script) => {
        const at = script.scenes[0]?.at as never;
        return {
          hazards: hazards.map((hazard) => ({ scene: 0, hazard, words: 'Nora', at, because: 'told', children: [] })),
          tasks: ['child', 'climb', 'boat', 'blade'].map((id) => ({
            scene: 0,
            text: id,
            kind: 'task' as const,
            strength: 'likely' as const,
            words: 'Nora',
            at,
            rule: `implication 1: ${id}`,
          })),
        };
      },
    }).scenes[0]?.tasks.map(({ text }) => text);

  it('is not said twice, and stays where no danger says it', () => {
    expect(tell(['H15', 'H11', 'H7', 'H2'])).toEqual(['blade']);
    expect(tell(['H2'])).toEqual(['child', 'climb', 'boat', 'blade']);
  });

  it('names rules and hazards that there are', () => {
    for (const [id, hazard] of Object.entries(saidByDanger)) {
      expect(implications.map((one) => one.id)).toContain(id);
      expect(hazards.map((one) => one.id)).toContain(hazard);
    }
  });
});
