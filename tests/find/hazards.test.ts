import { describe, expect, it } from 'vitest';
import { raiseHazards } from '../../src/find/hazards.js';
import type { Find } from '../../src/find/types.js';
import { hazardCaution, hazardOf, hazards } from '../../src/trade/hazards.js';
import { hazardCues } from '../../src/trade/hazards-cues.js';
import { milderHazards, ownHazards } from '../../src/trade/hazards-further.js';
import { implications } from '../../src/trade/implications/implications.js';
import { readAll, readOne } from './implied/read-one.js';

function raised(body: string, heading?: string, elements: readonly Find[] = []) {
  const { script, sentences } = readOne(body, heading);
  return raiseHazards(sentences, script, elements);
}

const idsOf = (body: string, heading?: string) => raised(body, heading).map(({ hazard }) => hazard);

describe('the hazard table', () => {
  it('has the rows H1 to H21 in order, each with cues and all its texts', () => {
    expect(hazards.map(({ id }) => id)).toEqual(Array.from({ length: 21 }, (_, at) => `H${at + 1}`));
    for (const { id, cues } of hazardCues) expect(cues.length, id).toBeGreaterThan(0);
    for (const hazard of hazards) for (const text of Object.values(hazard)) expect(text.length).toBeGreaterThan(1);
  });

  it('finds a row by its id and refuses any other', () => {
    expect(hazardOf('H5').title).toBe('Open flame');
    expect(hazardOf('H22').title).toBe('Intimacy');
    expect(() => hazardOf('H99')).toThrow('H99');
  });

  it('reads a place whose space behind INT. is missing', () => {
    expect(idsOf('Tom sits.', 'INT.TAXI - DAY')).toEqual(idsOf('Tom sits.', 'INT. TAXI - DAY'));
    expect(idsOf('Tom sits.', 'INT.TAXI - DAY')).not.toEqual([]);
  });

  it('says less of a kiss and of a toy blade, and no less where there is more', () => {
    expect(idsOf('Nora kisses Tom.')).toEqual(['H22']);
    expect(idsOf('Nora kisses Tom. Tom, naked, runs out.')).toContain('H20');
    expect(idsOf('Tom waves a plastic sword.')).toEqual(['H23']);
    expect(idsOf('Tom waves a plastic sword. Nora has a knife.')).toEqual(['H2']);
  });

  it('names the children of whom the same words tell', () => {
    const near = (body: string, id: string) => raised(body).find(({ hazard }) => hazard === id)?.children;
    expect(near('A little girl cuts paper with scissors.', 'H2')).toEqual(['little girl']);
    expect(near('Ines, ten, sits on the step. She has a knife.', 'H2')).toEqual(['Ines']);
    expect(near('Nora chops wood with the axe. A boy of nine watches from the door.', 'H2')).toEqual(['boy of nine']);
    expect(near('Nora chops wood with the axe.\n\nIndoors, a boy of nine reads.', 'H2')).toEqual([]);
    expect(near('POLLY, ten, waits. Nora lights the stove. Polly strokes the dog.', 'H8')).toEqual(['Polly']);
    expect(near('Ines, ten, waits.\n\nTom smokes and takes the child by the hand.', 'H5')).toEqual(['Ines']);
    expect(near('Ines, ten, waits.\n\nTom smokes. A boy watches.', 'H5')).toEqual(['boy']);
    expect(near('Nora has a knife.', 'H2')).toEqual([]);
  });

  it('raises electricity where a scene has water about and a thing on mains power, in whatever sentences', () => {
    expect(idsOf('Nora lies in the bath. A radio plays on the stool.')).toContain('H16');
    expect(idsOf('A pipe bursts. Water sprays everywhere. The toaster stands on the floor.')).toContain('H16');
    expect(idsOf('Nora swims. A radio plays on the bank.', 'EXT. LAKE - DAY')).not.toContain('H16');
    expect(idsOf('Nora drinks water. A radio plays.')).not.toContain('H16');
  });

  it('sends every reader to the current text', () => {
    for (const { id, reading } of [...hazards, ...ownHazards, ...milderHazards])
      expect(reading, id).toMatch(/Check the current text\.$/);
    expect(hazardCaution).toMatch(/local codes and licensed people decide/i);
  });

  it('never says that anything is safe', () => {
    const texts = [
      hazardCaution,
      ...[...hazards, ...ownHazards, ...milderHazards].flatMap(({ title, precaution, reading, qualified }) => [
        title,
        precaution,
        reading,
        qualified,
      ]),
      ...implications.flatMap(({ tasks, questions, elements }) => [
        ...tasks.map(({ text }) => text),
        ...questions.map(({ text }) => text),
        ...elements.map(({ name }) => name),
      ]),
    ];
    for (const text of texts) {
      expect(text).not.toMatch(/\b(?:safe|safely|harmless to|no risk|riskless|no danger|not dangerous|cannot hurt)\b/i);
    }
  });
});

/** Words that raise a row, and words in another sense that do not. */
const cases: readonly (readonly [id: string, yes: readonly string[], no: readonly string[]])[] = [
  [
    'H1',
    [
      'A rifle hangs over the mantel.',
      'Nora shoots him.',
      'A GUNSHOT.',
      'A shot. He drops.',
      'Ines cocks the hammer.',
      'Ines aims at Tom.',
      'The stranger draws.',
      'Two armed men wait.',
      'NORA\nDrop the gun.',
    ],
    [
      'Nora fires him.',
      'A gunmetal sky.',
      'The camera shot is ready.',
      'Tom downs a shot.',
      'Ines aims the camera at Tom.',
      'Tom shoots her a look.',
      'TOM\nI sold my gun.',
    ],
  ],
  [
    'H2',
    ['A knife lies by the bread.', 'Tom swings an axe.', 'Ines slices the loaf.'],
    ['Nora axes the plan.', 'A blade of grass.'],
  ],
  [
    'H3',
    [
      'Nora punches Tom.',
      'They are locked in a struggle.',
      'He swings a fist.',
      'Tom falls down the stairs.',
      'Nora throws Tom against the wall.',
      'Ines jumps off the wall.',
    ],
    ['Nora fights back tears.', 'Night falls.', 'Tom falls asleep.', 'Nora throws Tom a napkin.'],
  ],
  [
    'H4',
    ['The car explodes.', 'Fireworks over the bay.', 'The blast shakes the street.'],
    ['Nora explodes with laughter.', 'The light bulb flashes.'],
  ],
  [
    'H5',
    [
      'Nora lights up.',
      'Nora and Tom smoke by the bins.',
      'A candle on the sill.',
      'The bin is burning.',
      'Tom strikes a match.',
      'In the dark, a match.',
      'Tom lights his pipe.',
    ],
    [
      'Tom wins the match.',
      'Nora burns with shame.',
      'Priya runs the desk and fires questions.',
      'Tom burns his lip.',
      'The fire escape is empty.',
      'Tom taps the pipe with a spanner.',

      'Her eyes light up.',
    ],
  ],
  ['H6', ['Smoke fills the hall.', 'A cloud of dust.'], ['The smoke alarm blinks.', 'Dust on the shelf.']],
  ['H7', ['Nora wades out.', 'They row along the river.'], ['A water-colour of a field.', 'Tom dives into his bag.']],
  [
    'H8',
    ['A dog sleeps by the door.', 'A snake on the path.'],
    ['A dog-eared book.', 'Tom barks orders.', 'A stuffed rabbit on the bed.'],
  ],
  [
    'H9',
    ['Nora drives.', 'A van stops.', 'Tom swerves. The car skids.'],
    ['Tom drops the car keys in a bowl.', 'A toy car on the mat.', 'The noise drives Tom mad.'],
  ],
  ['H10', ['They walk along the train tracks.', 'A train pulls in.'], ['Tom trains every day.', 'A train of thought.']],
  [
    'H11',
    [
      'Nora climbs the ladder.',
      'Tom stands on the roof.',
      'Two men climb over the moving train.',
      'Ines climbs into the duct.',
    ],
    [
      'Nora climbs into bed.',
      'The ladder in her tights.',
      'Tom throws it out of the window.',
      'Nora climbs into the cab.',
    ],
  ],
  ['H12', ['A helicopter circles.'], ['A paper plane lands on the desk.', 'She folds the letter into a plane.']],
  ['H13', ['A drone hovers over the yard.'], ['The drone of the fridge.']],
  [
    'H15',
    ['A boy waits.', 'PIP (12) waits.', 'Ines, 9, waits.', 'A six-year-old waits.', 'A girl in her mid-teens waits.'],
    ['A man, 30, waits.', 'The boys in the poster grin.', 'Bus 12, late, waits.'],
  ],
  ['H16', ['The generator dies.', 'A bare wire sparks.'], ['Tom wires the money.']],
  ['H17', [], []],
  ['H18', ['They enter the derelict mill.'], ['An abandoned dinner on the table.']],
  [
    'H19',
    [
      'A syringe on the tray.',
      'Blood on the step.',
      'His nose bleeds.',
      'He wraps his bleeding hand.',
      'Blood runs down his arm.',
      'He is covered in blood.',
      'Blood on his brother’s shirt.',
    ],
    ['Her blood runs cold.', 'She threads a needle.'],
  ],
  [
    'H20',
    ['Ines undresses.', 'Ines slips out of her dress.'],
    ['Nora kisses the photograph.', 'A naked bulb.', 'Nora climbs into bed.'],
  ],
  ['H21', ['A constable takes notes.', 'A police car races past.'], ['A robust table.', 'A siren, far away.']],
];

describe('hazards from words', () => {
  for (const [id, yes, no] of cases) {
    for (const text of yes) it(`${id} is raised by "${text}"`, () => expect(idsOf(text)).toContain(id));
    for (const text of no) it(`${id} is not raised by "${text}"`, () => expect(idsOf(text)).not.toContain(id));
  }
});

describe('hazards from headings', () => {
  const headings: readonly (readonly [string, string])[] = [
    ['EXT. FIELD - NIGHT', 'H14'],
    ['EXT. FIELD - DUSK', 'H14'],
    ['INT/EXT. PORCH - NIGHT', 'H14'],
    ['EXT. ROOF - DAY', 'H11'],
    ['EXT. CANAL - DAY', 'H7'],
    ['EXT. RIVER BANK - DAY', 'H7'],
    ['EXT. RIVER - DAY', 'H7'],
    ['INT. TRAIN - DAY', 'H10'],
    ['INT. TAXI - DAY', 'H9'],
    ['INT. ABANDONED MILL - DAY', 'H18'],
    ['INT. CELLAR - DAY', 'H18'],
    ['EXT. DESERT - DAY', 'H17'],
    ['INT. SCHOOL - CORRIDOR - DAY', 'H15'],
    ['INT. HELICOPTER - DAY', 'H12'],
  ];
  for (const [heading, id] of headings) {
    it(`${heading} raises ${id}`, () => expect(idsOf('Nora waits.', heading)).toContain(id));
  }

  it('a plain room by day raises nothing', () => expect(idsOf('Nora waits.')).toEqual([]));
  it('a night indoors is no night outside', () => expect(idsOf('Nora waits.', 'INT. ROOM - NIGHT')).toEqual([]));
  it('weather outside raises H17', () => {
    expect(idsOf('Snow drives across the yard.', 'EXT. YARD - DAY')).toContain('H17');
    expect(idsOf('A glass with ice in it.', 'EXT. YARD - DAY')).not.toContain('H17');
  });
});

describe('hazards from what the writer wrote', () => {
  it('a weapon in any category is one', () => {
    const [hazard] = raised('Nora waits.\n\n> dressing: rifle over the mantel');
    expect(hazard).toMatchObject({ hazard: 'H1', because: 'a note' });
  });

  it('a mark that speaks of something else by another name counts', () => {
    const { script, sentences } = readOne('Nora hides [the thing][hunting knife] under the stairs.');
    expect(raiseHazards(sentences, script, [])).toContainEqual(
      expect.objectContaining({ hazard: 'H2', words: 'hunting knife', because: 'a mark' }),
    );
  });

  it('a definition counts in the scenes that use its element', () => {
    const text =
      '## INT. ROOM - DAY\n\nNora opens the [crate].\n\n## INT. HALL - DAY\n\nNora waits.\n\n[crate]: prop "full of fireworks"\n';
    const { script, sentences } = readAll(text);
    expect(raiseHazards(sentences, script, [])).toEqual([
      expect.objectContaining({ scene: 0, hazard: 'H4', because: 'the definition of “crate”' }),
    ]);
  });

  it('an age in the cast raises H15 wherever the child is seen, and nowhere else', () => {
    const text =
      '---\ncast:\n  Pip: {age: 9}\n  Nora: {age: 40}\n---\n\n## INT. ROOM - DAY\n\nPip waits.\n\n## INT. HALL - DAY\n\nNora waits.\n';
    const { script, sentences } = readAll(text);
    expect(raiseHazards(sentences, script, [])).toEqual([
      expect.objectContaining({ scene: 0, hazard: 'H15', words: 'Pip', because: 'the age of Pip: 9 (front matter)' }),
    ]);
  });

  it('an age in brackets is quoted with both', () => {
    expect(raised('PIP (12) waits.')).toContainEqual(expect.objectContaining({ hazard: 'H15', words: 'PIP (12)' }));
  });

  it('an age given once counts in later scenes', () => {
    const text = '## INT. ROOM - DAY\n\nPIP (12) waits.\n\nPIP\nHello.\n\n## INT. HALL - DAY\n\nPip runs in.\n';
    const { script, sentences } = readAll(text);
    const scenes = raiseHazards(sentences, script, []).filter(({ hazard }) => hazard === 'H15');
    expect(scenes.map(({ scene }) => scene)).toEqual([0, 1]);
  });
});

describe('hazards from the finder', () => {
  const animal = (words: string, start: number): Find => ({
    scene: 0,
    known: 'found',
    name: words,
    category: 'animals',
    count: null,
    by: null,
    worn: false,
    state: null,
    words,
    at: { start: { line: 1, column: 1, offset: start }, end: { line: 1, column: 1, offset: start + words.length } },
    confidence: 0.01,
    rules: [],
    strength: null,
  });

  it('a low confidence hides nothing', () => {
    expect(raised('Nora waits.', 'INT. ROOM - DAY', [animal('axolotl', 9999)])).toEqual([
      expect.objectContaining({ hazard: 'H8', words: 'axolotl' }),
    ]);
  });
});

describe('hazards of a scene', () => {
  it('come once each, in the order of the table, with the longest words and one other', () => {
    const found = raised('A hunting rifle leans on the bed. Nora fires. A dog barks at a candle.');
    expect(found.map(({ hazard }) => hazard)).toEqual(['H1', 'H5', 'H8']);
    expect(found[0]).toMatchObject({ words: 'hunting rifle', because: 'the action; also “fires”' });
  });

  it('quote words that stand at their place', () => {
    const { script, sentences } = readOne('Nora drives.\nA *hunting* rifle\nleans on the bed.');
    for (const { words, at } of raiseHazards(sentences, script, [])) {
      const source = script.source.slice(at.start.offset, at.end.offset).replaceAll('*', '');
      expect(source.replaceAll('\n', ' ')).toContain(words);
    }
  });
});
