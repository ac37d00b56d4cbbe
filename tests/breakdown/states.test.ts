import { describe, expect, it } from 'vitest';
import { breakDown, elementsOf, statesOf, type Told } from '../support/break-down.js';

function script(...scenes: string[]): string {
  const body = scenes.map((scene, index) => {
    const [heading, ...lines] = scene.split(' | ');
    return `## ${index + 1}. ${heading}\n\n${lines.join('\n\n') || 'Nora waits.'}`;
  });
  return `---\ncast: { NORA: {}, JOSEF: {} }\n---\n\n${body.join('\n\n')}\n\n[letter]: prop\n`;
}

function letters(...scenes: string[]): string[] {
  return statesOf(breakDown(script(...scenes)).scenes, 'letter');
}

const isOfStates = (code: string) => code.startsWith('state-');

describe('states', () => {
  it('noted before the thing is seen are how it comes in; after, a change on camera', () => {
    expect(letters('INT. BAR - DAY | > letter: sealed | Nora takes the [letter].')).toEqual(['sealed > sealed']);
    expect(letters('INT. BAR - DAY | Nora takes the [letter]. | > letter: torn, wet')).toEqual([' > torn, wet']);
    expect(
      letters(
        'INT. BAR - DAY | > letter: sealed | Nora takes the [letter]. | > letter: torn | Nora cries. | > letter: burnt',
      ),
    ).toEqual(['sealed > burnt']);
  });

  it('of a thing that only notes name come in, and change from the second on', () => {
    expect(letters('INT. BAR - DAY | Nora waits. | > letter: sealed')).toEqual(['sealed > sealed']);
    expect(letters('INT. BAR - DAY | > letter: sealed | Nora waits. | > letter: torn')).toEqual(['sealed > torn']);
  });

  it('are kept until they change, and equal text is the same state', () => {
    const scenes = [
      'INT. BAR - DAY | Nora takes the [letter]. | > letter: torn',
      'EXT. QUAY - CONTINUOUS | The [letter].',
      'EXT. QUAY - LATER | > letter: Torn | The [letter].',
      'INT. BAR - NIGHT | The [letter] burns. | > letter: burnt',
    ];
    expect(letters(...scenes)).toEqual([' > torn', 'torn > torn', 'torn > torn', 'torn > burnt']);
    const { breakdown } = breakDown(script(...scenes));
    expect(breakdown.elements[0]?.states).toEqual([
      { state: 'torn', scene: 'int-bar-day', onCamera: true },
      { state: 'burnt', scene: 'int-bar-night', onCamera: true },
    ]);
  });

  it('are kept over a night and asked about once', () => {
    const { scenes } = breakDown(
      script(
        'INT. BAR - DAY | > letter: wet | The [letter].',
        'INT. BAR - NEXT MORNING | The [letter].',
        'INT. BAR - LATER | The [letter].',
      ),
    );
    expect(statesOf(scenes, 'letter')).toEqual(['wet > wet', 'wet > wet', 'wet > wet']);
    const questions = scenes.map((scene) =>
      scene.questions.filter(({ id }) => id.startsWith('state-')).map(({ id }) => id),
    );
    expect(questions).toEqual([[], ['state-letter-int-bar-next-morning'], []]);
    expect(scenes[1]?.questions[0]?.settle).toContain('> letter: wet');
  });

  it('said for the new day need no question', () => {
    const { scenes } = breakDown(
      script(
        'INT. BAR - DAY | > letter: wet | The [letter].',
        'INT. BAR - NEXT MORNING | > letter: wet | The [letter].',
      ),
    );
    expect(scenes[1]?.questions).toEqual([]);
  });

  it('answered are quiet', () => {
    const { scenes } = breakDown(
      script(
        'INT. BAR - DAY | > letter: wet | The [letter].',
        'INT. BAR - NEXT MORNING | > answer: state-letter-int-bar-next-morning still wet | The [letter].',
      ),
    );
    expect(scenes[1]?.questions).toEqual([]);
    expect(scenes[1]?.notes).toEqual([
      { kind: 'answer', text: 'state of letter: still wet', line: expect.any(Number) },
    ]);
  });

  it('start from none in a flashback, and give none back', () => {
    expect(
      letters(
        'INT. BAR - DAY | > letter: torn | The [letter].',
        'INT. ATTIC - DAY (FLASHBACK) | The [letter]. | > letter: new',
        'INT. ATTIC - LATER (FLASHBACK) | The [letter].',
        'INT. BAR - DAY | The [letter].',
      ),
    ).toEqual(['torn > torn', ' > new', 'new > new', 'torn > torn']);
  });

  it('run in story order when a note sets an earlier day', () => {
    expect(
      letters(
        'INT. BAR - DAY | > letter: sealed | The [letter].',
        'INT. BAR - NEXT MORNING | > letter: torn | The [letter].',
        'INT. HALL - DAY | > day: 1 | The [letter].',
      ),
    ).toEqual(['sealed > sealed', 'torn > torn', 'sealed > sealed']);
  });

  it('make a thing nobody named before', () => {
    const { scenes } = breakDown(script('INT. BAR - DAY | > front door: kicked in | Nora waits.'));
    expect(elementsOf(scenes[0])['front door']).toMatchObject({
      known: 'noted',
      category: 'props',
      stateIn: 'kicked in',
    });
  });

  it('meant for the only thing they can mean go to it, with an info', () => {
    const { scenes, codes } = breakDown(
      script('INT. BAR - DAY | Nora lights the [storm lantern](prop). | > lantern: lit'),
    );
    expect(elementsOf(scenes[0])['storm lantern']).toMatchObject({ stateIn: null, stateOut: 'lit' });
    expect(codes.filter(isOfStates)).toEqual(['state-read-as']);
  });

  it('of a garment change on camera once its wearer is in the picture', () => {
    const { scenes } = breakDown(
      script(
        'INT. BAR - DAY | > Nora: wears apron | > apron: clean | Nora spills the tea. | > apron: stained',
        'INT. BAR - LATER | Nora waits. | > apron: scrubbed',
      ),
    );
    expect(statesOf(scenes, 'apron')).toEqual(['clean > stained', 'stained > scrubbed']);
    expect(scenes[1]?.wears[0]?.garments[0]).toMatchObject({ name: 'apron', stateIn: 'stained', stateOut: 'scrubbed' });
  });

  it('of a garment by a shorter name, or of one that hangs to dry, reach it', () => {
    const { scenes, codes } = breakDown(
      script(
        'INT. BAR - DAY | > Nora: wears new grey suit, boots | Nora falls into the sink. | > suit: soaked',
        'INT. ATTIC - LATER | > Nora: changes to robe | Nora sits by the stove. | > new grey suit: damp',
        'INT. BAR - NEXT MORNING | > Nora: wears new grey suit | > suit: dry, creased | Nora waits.',
      ),
    );
    expect(statesOf(scenes, 'new grey suit')).toEqual([' > soaked', 'damp > damp', 'dry, creased > dry, creased']);
    expect(elementsOf(scenes[0])['new grey suit']).toMatchObject({ carried: false, worn: true, by: 'NORA' });
    expect(elementsOf(scenes[1])['new grey suit']).toMatchObject({ carried: false, worn: false, by: null });
    expect(codes.filter(isOfStates)).toEqual(['state-read-as', 'state-read-as']);
  });

  it('of a garment that two people have on go to both, with a message', () => {
    const { scenes, codes } = breakDown(
      script('INT. BAR - DAY | > Nora: wears boots | > Josef: wears boots | Nora and Josef dance. | > boots: muddy'),
    );
    const states = scenes[0]?.wears.map(({ garments }) => garments[0]?.stateOut);
    expect(states).toEqual(['muddy', 'muddy']);
    expect(codes.filter(isOfStates)).toEqual(['state-names-many']);
  });

  it('of dressing change on camera once the place is in the picture', () => {
    const { scenes } = breakDown(
      script(
        'INT. BAR - DAY | > dressing: mirror | > mirror: whole | Nora waits. | > mirror: cracked',
        'INT. BAR - LATER | Nora waits.',
      ),
    );
    expect(statesOf(scenes, 'mirror')).toEqual(['whole > cracked', 'cracked > cracked']);
  });
});

describe('found states', () => {
  const wet = (nth: number, state: string): NonNullable<Told['elements']>[number] => ({
    name: 'letter',
    category: 'props',
    words: `letter#${nth}`,
    state,
  });

  it('fill in where no note speaks', () => {
    const { scenes } = breakDown(
      script('INT. BAR - DAY | The soaked letter. Then the letter, torn.', 'INT. BAR - LATER | The letter.'),
      {
        elements: [wet(1, 'soaked'), wet(2, 'torn'), { name: 'letter', category: 'props', words: 'letter#3' }],
      },
    );
    expect(statesOf(scenes, 'letter')).toEqual(['soaked > torn', 'torn > torn']);
  });

  it('in the words that first name a garment tell how it comes in, even on someone seen before', () => {
    const { scenes } = breakDown(script('INT. BAR - DAY | NORA comes in, in a patched coat. The coat is soaked.'), {
      elements: [
        { name: 'coat', category: 'costumes', words: 'a patched coat', by: 'NORA', worn: true, state: 'patched' },
        { name: 'coat', category: 'costumes', words: 'The coat', by: 'NORA', worn: true, state: 'soaked' },
      ],
    });
    expect(statesOf(scenes, 'coat')).toEqual(['patched > soaked']);
  });

  it('never overrule a note; a difference is asked about', () => {
    const { scenes } = breakDown(
      script('INT. BAR - DAY | > letter: sealed | The letter.', 'INT. BAR - LATER | The torn letter.'),
      {
        elements: [wet(2, 'sealed'), wet(3, 'torn')],
      },
    );
    expect(statesOf(scenes, 'letter')).toEqual(['sealed > sealed', 'sealed > sealed']);
    expect(scenes[1]?.questions).toMatchObject([
      { id: 'state-letter-int-bar-later', settle: expect.stringContaining('> letter: torn') },
    ]);
  });

  it('of clothes in water are asked about, and never given silently', () => {
    const wet = (...lines: string[]) => {
      const { scenes } = breakDown(
        `---\ncast: { NORA: {}, JOSEF: {} }\n---\n\n## 1. EXT. QUAY - DAY\n\n> Nora: wears coat, boots\n\n${lines.join('\n\n')}\n`,
      );
      const asked = scenes[0]?.questions.filter(({ id }) => id.startsWith('wet-nora')).map(({ text }) => text);
      return {
        asked,
        states: scenes[0]?.wears.find(({ person }) => person === 'NORA')?.garments.map(({ stateOut }) => stateOut),
      };
    };
    for (const line of ['Josef shouts. Nora slips and falls into the cold river.', 'Nora, soaked, stands there.']) {
      expect(wet(line)).toEqual({ asked: [expect.stringMatching(/^NORA .*\(coat, boots\)/)], states: [null, null] });
    }
    const noted = wet('Nora falls into the river.', '> coat: wet', '> boots: wet');
    expect(noted).toEqual({ asked: [], states: ['wet', 'wet'] });
    expect(wet('Nora looks at the river.').asked).toEqual([]);
    expect(wet('Nora. Josef falls into the river.').asked).toEqual([]);
  });
});
