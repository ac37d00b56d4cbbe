import { describe, expect, it } from 'vitest';
import { breakDown, clothesOf, elementsOf, type Told } from '../support/break-down.js';

/** Scenes told as `HEADING | paragraph | paragraph`. */
function script(...scenes: string[]): string {
  const body = scenes.map((scene, index) => {
    const [heading, ...lines] = scene.split(' | ');
    return `## ${index + 1}. ${heading}\n\n${lines.join('\n\n') || 'Nora waits.'}`;
  });
  return `---\ncast: { NORA: {}, JOSEF: {} }\n---\n\n${body.join('\n\n')}\n`;
}

function noras(told: Told | null, ...scenes: string[]): string[] {
  return clothesOf(breakDown(script(...scenes), told ?? {}).scenes, 'NORA');
}

describe('change numbers', () => {
  it('rise with the story day, even when nothing is known of the clothes', () => {
    expect(noras(null, 'INT. BAR - DAY', 'INT. BAR - NIGHT', 'INT. BAR - NEXT MORNING')).toEqual(['1: ', '1: ', '2: ']);
  });

  it('of a flashback are of their own; after it the change before goes on', () => {
    expect(
      noras(
        null,
        'INT. BAR - DAY | > Nora: wears apron | Nora waits.',
        'INT. ATTIC - DAY (FLASHBACK) | Nora plays.',
        'INT. BAR - DAY | Nora waits.',
        'INT. BAR - NEXT MORNING | Nora waits.',
      ),
    ).toEqual(['1: apron', '2: ', '1: apron (carried)', '3: ']);
  });

  it('count only scenes in which the person is seen', () => {
    expect(noras(null, 'INT. BAR - DAY | Josef sits. | NORA (V.O.)\nHe sat.', 'INT. BAR - NEXT MORNING')).toEqual([
      '-',
      '1: ',
    ]);
  });

  it('stay overnight when the writer answers yes', () => {
    const scenes = ['INT. BAR - NIGHT | > Nora: wears apron | Nora sleeps.', 'INT. BAR - DAWN | Nora wakes.'];
    const asked = breakDown(script(...scenes)).scenes[1]?.questions ?? [];
    expect(asked).toMatchObject([{ id: 'clothes-nora-int-bar-dawn', kind: 'story' }]);
    expect(noras(null, ...scenes)).toEqual(['1: apron', '2: ']);
    const answered = [
      scenes[0] as string,
      'INT. BAR - DAWN | > answer: clothes-nora-int-bar-dawn; yes, she slept in them | Nora wakes.',
    ];
    expect(noras(null, ...answered)).toEqual(['1: apron', '1: apron (carried)']);
    expect(breakDown(script(...answered)).scenes[1]?.questions).toEqual([]);
  });
});

describe('costume notes', () => {
  it('hold for the story day: wears, puts on, takes off, without', () => {
    expect(
      noras(
        null,
        'INT. BAR - DAY | > Nora: wears grey dress, apron | Nora waits.',
        'EXT. QUAY - CONTINUOUS | Nora shivers. | > Nora: puts on coat',
        'INT. BAR - CONTINUOUS | Nora comes in. | > Nora: takes off apron | > Nora: without scarf',
        'INT. BAR - LATER | Nora waits.',
      ),
    ).toEqual([
      '1: grey dress, apron',
      '1: grey dress (carried), apron (carried), coat (put on)',
      '1: grey dress (carried), apron (taken off), coat (carried), no scarf',
      '1: grey dress (carried), coat (carried), no scarf (carried)',
    ]);
  });

  it('change between scenes with a new number', () => {
    expect(
      noras(
        null,
        'INT. BAR - DAY | > Nora: wears apron, boots | Nora waits.',
        'INT. BAR - LATER | > Nora: changes to red dress, boots | Nora waits.',
        'INT. BAR - NIGHT | Nora waits.',
      ),
    ).toEqual(['1: apron, boots', '2: red dress, boots', '2: red dress (carried), boots (carried)']);
  });

  it('change on camera once the person is in the picture', () => {
    expect(
      noras(
        null,
        'INT. BAR - DAY | > Nora: wears apron, boots | Nora goes behind the screen. | > Nora: changes to red dress, boots',
        'INT. BAR - LATER | Nora waits.',
      ),
    ).toEqual(['1 to 2: apron (taken off), boots, red dress (put on)', '2: red dress (carried), boots (carried)']);
  });

  it('of the first scene of a day waste no number', () => {
    expect(noras(null, 'INT. BAR - DAY | > Nora: changes to apron | Nora waits.')).toEqual(['1: apron']);
  });

  it('that list quite other clothes on the same day are a change, with a message', () => {
    const text = script(
      'INT. BAR - DAY | > Nora: wears apron | Nora waits.',
      'INT. BAR - LATER | > Nora: wears red dress | Nora waits.',
    );
    const { scenes, codes } = breakDown(text);
    expect(clothesOf(scenes, 'NORA')).toEqual(['1: apron', '2: red dress']);
    expect(codes).toEqual(['costume-changed-unsaid']);
  });

  it('of someone unseen hold from the next scene of the day, with a message', () => {
    const text = script('INT. BAR - DAY | > Nora: wears apron | Josef waits.', 'INT. BAR - LATER | Nora waits.');
    const { scenes, codes } = breakDown(text);
    expect(clothesOf(scenes, 'NORA')).toEqual(['-', '1: apron (carried)']);
    expect(codes).toEqual(['costume-note-unseen']);
  });

  it('that take off what is not on say so', () => {
    const { codes, scenes } = breakDown(script('INT. BAR - DAY | Nora waits. | > Nora: takes off gloves'));
    expect(codes).toEqual(['garment-not-worn']);
    expect(clothesOf(scenes, 'NORA')).toEqual(['1: gloves (taken off)']);
  });

  it('before the first scene dress a person for every day', () => {
    const text = script('INT. BAR - DAY', 'INT. BAR - LATER', 'INT. BAR - NEXT MORNING').replace(
      '## 1.',
      '> Nora: wears apron\n\n## 1.',
    );
    expect(clothesOf(breakDown(text).scenes, 'NORA')).toEqual(['1: apron', '1: apron (carried)', '2: apron']);
  });

  it('in a list give a garment to the person in parentheses', () => {
    expect(noras(null, 'INT. BAR - DAY | > costumes: grey coat (Nora), spare hat | Nora waits.')).toEqual([
      '1: grey coat',
    ]);
  });
});

describe('spare clothes', () => {
  it('are got for a person and not worn in the picture', () => {
    const { scenes } = breakDown(
      script('EXT. QUAY - DAY | > costumes: dry costume double (Nora), coat (Nora) | Nora falls into the water.'),
    );
    expect(clothesOf(scenes, 'NORA')).toEqual(['1: coat']);
    expect(elementsOf(scenes[0])['dry costume double']).toMatchObject({
      category: 'costumes',
      by: 'NORA',
      worn: false,
    });
  });
});

describe('garments have a track of their own', () => {
  it('lent: what one takes off and another puts on is one garment', () => {
    const { scenes, breakdown } = breakDown(
      script(
        'EXT. QUAY - DAY | > Josef: wears grey coat | Josef and Nora walk. | > Josef: takes off grey coat | > Nora: puts on grey coat | > grey coat: wet',
        'INT. BAR - CONTINUOUS | Nora drips. Josef laughs.',
      ),
    );
    expect(clothesOf(scenes, 'JOSEF')).toEqual(['1: grey coat (taken off)', '1: ']);
    expect(clothesOf(scenes, 'NORA')).toEqual(['1: grey coat (put on)', '1: grey coat (carried)']);
    expect(breakdown.elements).toMatchObject([{ id: 'grey-coat', by: ['JOSEF', 'NORA'] }]);
    expect(elementsOf(scenes[1])['grey coat']).toMatchObject({
      stateIn: 'wet',
      by: 'NORA',
      carried: true,
      from: 'ext-quay-day',
    });
  });

  it('lent in the words: the coat that one hands over is the coat the other puts on', () => {
    const told: Told = {
      elements: [{ name: 'coat', category: 'costumes', words: 'puts on the coat', by: 'NORA', worn: true }],
      moves: [
        { name: 'coat', kind: 'handed over', words: 'gives the coat to Nora', from: 'JOSEF', to: 'NORA' },
        { name: 'coat', kind: 'put on', words: 'puts on the coat', to: 'NORA' },
      ],
    };
    const { scenes, breakdown, codes } = breakDown(
      script(
        'EXT. QUAY - DAY | > Josef: wears wet coat | Josef gives the coat to Nora. She puts on the coat. | > Josef: takes off coat',
        'INT. BAR - LATER | Nora and Josef.',
      ),
      told,
    );
    expect(clothesOf(scenes, 'JOSEF')).toEqual(['1: wet coat (handed to NORA)', '1: ']);
    expect(clothesOf(scenes, 'NORA')).toEqual(['1: wet coat (put on)', '1: wet coat (carried)']);
    expect(breakdown.elements.map(({ id }) => id)).toEqual(['wet-coat']);
    expect(codes).toEqual([]);
  });

  it('a coat found on someone the day after is not the one that somebody else wore', () => {
    const told: Told = {
      elements: [{ name: 'coat', category: 'costumes', words: 'a coat', by: 'NORA', worn: true }],
    };
    const { breakdown } = breakDown(
      script('EXT. QUAY - DAY | > Josef: wears wet coat | Josef.', 'INT. BAR - NEXT MORNING | Nora in a coat.'),
      told,
    );
    expect(breakdown.elements.map(({ id }) => id)).toEqual(['wet-coat', 'coat']);
  });

  it('one garment is on one person at a time, whoever wore it in a flashback', () => {
    const text = `${script(
      'INT. BAR - DAY | > Nora: wears shawl | Nora.',
      'INT. BAR - DAY (FLASHBACK) | > Josef: wears shawl | Josef. Nora.',
      'INT. BAR - DAY | Nora and Josef. | > Josef: puts on shawl',
    )}\n[shawl]: costume "red"\n`;
    const { scenes } = breakDown(text);
    expect(clothesOf(scenes, 'NORA')).toEqual(['1: shawl', '2: ', '1: ']);
    expect(clothesOf(scenes, 'JOSEF')).toEqual(['-', '1: shawl', '2: shawl (put on)']);
    expect(scenes[2]?.elements.map(({ id }) => id)).toEqual(['shawl']);
  });

  it('two people in boots are two pairs', () => {
    const { breakdown } = breakDown(
      script('INT. BAR - DAY | > Nora: wears boots | > Josef: wears boots | Nora and Josef dance.'),
    );
    expect(breakdown.elements.map(({ id }) => id).toSorted()).toEqual(['boots-josef', 'boots-nora']);
  });

  it('follow the words: put on, taken off, handed over', () => {
    const coat = (
      words: string,
      kind: 'put on' | 'taken off' | 'handed over',
      from: string | null,
      to: string | null,
    ) => ({
      name: 'coat',
      kind,
      words,
      from,
      to,
    });
    const told: Told = {
      elements: [
        { name: 'coat', category: 'costumes', words: 'coat', by: 'NORA', worn: true },
        { name: 'coat', category: 'costumes', words: 'coat#2', by: 'NORA', worn: true },
      ],
      moves: [coat('puts on a coat', 'put on', null, 'NORA'), coat('takes off the coat', 'taken off', 'NORA', null)],
    };
    expect(
      noras(
        told,
        'INT. BAR - DAY | Nora puts on a coat.',
        'EXT. QUAY - CONTINUOUS | Nora walks.',
        'INT. BAR - LATER | Nora takes off the coat.',
        'INT. BAR - LATER | Nora waits.',
      ),
    ).toEqual(['1: coat (put on)', '1: coat (carried)', '1: coat (taken off)', '1: ']);
  });

  it('a found coat on someone in a grey coat is the grey coat', () => {
    const told: Told = {
      elements: [{ name: 'coat', category: 'costumes', words: 'coat#2', by: 'NORA', worn: true, state: 'torn' }],
    };
    const { scenes } = breakDown(
      script(
        'INT. BAR - DAY | > Nora: wears grey coat | Nora waits.',
        'INT. BAR - LATER | Her coat is torn. Nora waits.',
      ),
      told,
    );
    expect(clothesOf(scenes, 'NORA')).toEqual(['1: grey coat', '1: grey coat']);
    expect(elementsOf(scenes[1])['grey coat']).toMatchObject({ stateIn: 'torn', carried: false });
  });

  it('a red dress after a blue one is a change, and asked about', () => {
    const told: Told = {
      elements: [
        { name: 'blue dress', category: 'costumes', words: 'blue dress', by: 'NORA', worn: true },
        { name: 'red dress', category: 'costumes', words: 'red dress', by: 'NORA', worn: true },
      ],
    };
    const scenes = ['INT. BAR - DAY | Nora in a blue dress.', 'INT. BAR - LATER | Nora in a red dress.'];
    expect(noras(told, ...scenes)).toEqual(['1: blue dress', '2: red dress']);
    expect(breakDown(script(...scenes), told).scenes[1]?.questions).toMatchObject([
      { id: 'change-nora-int-bar-later' },
    ]);
  });

  describe('said by the action', () => {
    const changed = (first: string, second: string, ...names: string[]) => {
      const told: Told = {
        elements: names.map((name) => ({ name, category: 'costumes', words: name, by: 'NORA', worn: true })),
      };
      const { scenes } = breakDown(script(`INT. BAR - DAY | ${first}`, `INT. BAR - LATER | ${second}`), told);
      return {
        clothes: clothesOf(scenes, 'NORA')[1],
        asked: scenes[1]?.questions.map(({ id }) => id).filter((id) => id.startsWith('change-')),
      };
    };
    const asked = ['change-nora-int-bar-later'];

    it('`now in` takes everything off that was on before', () => {
      const second = 'Nora sits, now in a blue dress and wellies.';
      expect(changed('Nora in a grey coat.', second, 'grey coat', 'blue dress', 'wellies')).toEqual({
        clothes: '2: blue dress, wellies',
        asked,
      });
    });

    it('`in a fresh shirt` changes the shirt only', () => {
      const second = 'Nora in a fresh linen shirt.';
      expect(changed('Nora in a grey coat and a red shirt.', second, 'grey coat', 'red shirt', 'linen shirt')).toEqual({
        clothes: '2: grey coat (carried), linen shirt',
        asked,
      });
    });

    it('a garment that is only added, or a thing that is now in a coat pocket, changes nothing', () => {
      for (const second of ['Nora in a blue scarf.', 'Her ring is now in the blue scarf pocket. Nora.']) {
        expect(changed('Nora in a grey coat.', second, 'grey coat', 'blue scarf')).toEqual({
          clothes: '1: grey coat (carried), blue scarf',
          asked: [],
        });
      }
    });
  });

  it('a nightdress after day clothes is a change, and asked about', () => {
    const told: Told = {
      elements: [
        { name: 'woollen hat', category: 'costumes', words: 'woollen hat', by: 'NORA', worn: true },
        { name: 'nightdress', category: 'costumes', words: 'nightdress', by: 'NORA', worn: true },
      ],
    };
    const scenes = ['EXT. QUAY - DAY | Nora in a woollen hat.', 'INT. BAR - NIGHT | Nora in her nightdress.'];
    expect(noras(told, ...scenes)).toEqual(['1: woollen hat', '2: nightdress']);
    expect(breakDown(script(...scenes), told).scenes[1]?.questions).toMatchObject([
      { id: 'change-nora-int-bar-night', text: expect.stringContaining('woollen hat') },
    ]);
  });

  it('what a note lists is all that is on: a jacket that the finder reads as worn lies in the scene', () => {
    const told: Told = {
      elements: [{ name: 'jacket', category: 'costumes', words: 'jacket', by: 'NORA', worn: true }],
    };
    const { scenes } = breakDown(
      script('INT. BAR - DAY | > Nora: wears apron | Nora takes a letter from the wet jacket.'),
      told,
    );
    expect(clothesOf(scenes, 'NORA')).toEqual(['1: apron']);
    expect(elementsOf(scenes[0]).jacket).toMatchObject({ worn: false, by: 'NORA' });
  });

  it('thrown to someone are not taken off by who catches them', () => {
    const told: Told = { moves: [{ name: 'socks', kind: 'handed over', words: 'throws her the socks', to: 'NORA' }] };
    expect(
      noras(told, 'INT. BAR - DAY | > Nora: wears thick socks | Josef throws her the socks. Nora laughs.'),
    ).toEqual(['1: thick socks']);
  });

  it('defined as worn by someone are on from their first mention, for the day', () => {
    const text = `${script('INT. BAR - DAY | Nora smooths her [apron].', 'INT. BAR - LATER', 'INT. BAR - NEXT MORNING')}\n[apron]: costume "worn by Nora; blue linen"\n`;
    const { scenes } = breakDown(text);
    expect(clothesOf(scenes, 'NORA')).toEqual(['1: apron', '1: apron (carried)', '2: ']);
    expect(elementsOf(scenes[1]).apron).toMatchObject({
      carried: true,
      from: 'int-bar-day',
      worn: true,
      by: 'NORA',
      words: '',
    });
  });
});

describe('the index of costume changes', () => {
  it('lists each change head to foot, with its day, scenes and states', () => {
    const { breakdown } = breakDown(
      script(
        'INT. BAR - DAY | > Nora: wears apron, without cap | Nora spills the tea. | > apron: stained',
        'INT. BAR - LATER | Nora goes behind the screen. | > Nora: changes to red dress',
        'INT. BAR - LATER | Nora waits.',
      ),
    );
    expect(breakdown.cast[0]?.changes).toMatchObject([
      {
        number: 1,
        storyDay: 'D1',
        scenes: ['int-bar-day', 'int-bar-later'],
        garments: [
          { name: 'cap', absent: true, states: [] },
          { name: 'apron', states: [{ scene: 'int-bar-day', state: 'stained' }] },
        ],
      },
      { number: 2, scenes: ['int-bar-later', 'int-bar-later-2'], garments: [{ name: 'red dress' }] },
    ]);
  });
});
