import { describe, expect, it } from 'vitest';
import { formatDuration } from '../../src/base/duration.js';
import { eighths } from '../../src/base/eighths.js';
import { estimateScreenTime, totalScreenTime } from '../../src/breakdown/screen-time.js';
import { countWords } from '../../src/breakdown/screen-time-speech.js';
import { paginate } from '../../src/page/paginate.js';
import type { Block, Scene } from '../../src/script/types.js';
import { action, item, scene, script, speech } from '../support/script-builder.js';

function timeOf(one: Scene) {
  return estimateScreenTime(one, paginate(script([one])).pages.scenes[0]?.eighths ?? eighths(1));
}

/** Words spoken in a scene. */
function spoken(one: Scene): number {
  return one.blocks
    .flatMap((block) => (block.kind === 'speech' ? block.lines : []))
    .reduce((sum, { line }) => sum + countWords(line.text), 0);
}

const lines = [
  ['The lamp went out at nine and nobody in this house said a word about it.', 'You were asleep.'],
  ['I was lying down. That is another thing.', 'Then lie down, and I will tell you what happened to it.'],
  ['Start with the boat.', 'There was no boat. There was a man who said that there had been one.'],
];

/** Talk with something done between the speeches, as drama is commonly written. */
const drama = scene(
  'INT. KITCHEN - NIGHT',
  lines.flatMap(([first = '', second = '']): Block[] => [
    action('Nora lifts the chimney off the lamp and trims the wick with a pair of nail scissors.'),
    speech('NORA', first),
    speech('IVO', second),
    action('Ivo hangs his wet coat over the stove. It drips on the plate and hisses.'),
  ]),
);

describe('a page a minute', () => {
  // Wikipedia, Screenplay; UNfilmschool: a page is roughly a minute.
  it('E30: the page rule gives a page a minute', () => {
    expect(estimateScreenTime(drama, eighths(8)).pageRule).toBe(60);
  });
  // By arithmetic from E30: 2 3/8 pages are 2 min 22.5 s.
  it('E29: 2 3/8 pages are 142.5 s', () => {
    const { pageRule } = estimateScreenTime(drama, eighths(19));
    expect(pageRule).toBe(142.5);
    expect(formatDuration(pageRule)).toBe('2:23');
  });
  // Follows 2020 (stephenfollows.com): holds roughly in total, predicts single films poorly.
  it('E31: the range of a mixed scene holds the page rule', () => {
    const { low, high, pageRule } = timeOf(drama);
    expect(low).toBeLessThan(pageRule);
    expect(high).toBeGreaterThan(pageRule);
  });
  // Rossio via adelaidescreenwriter.blogspot.com (2011): dialogue plays faster than a minute a page, action slower; disputed.
  it('E32: a page of quick talk plays faster than a page of single actions', () => {
    const talk = scene(
      'INT. A - DAY',
      Array.from({ length: 17 }, () => speech('NORA', 'It was there when I left it.')),
    );
    const deeds = scene(
      'INT. A - DAY',
      Array.from({ length: 26 }, () => action('She climbs one step. She slips.')),
    );
    const [quick, slow] = [timeOf(talk), timeOf(deeds)];
    expect(quick.pageRule).toBe(60);
    expect(slow.pageRule).toBe(60);
    expect(quick.seconds).toBeLessThan(60);
    expect(slow.seconds).toBeGreaterThan(60);
  });
  // Stage32, user post (weak): a fast-talking series ran about two pages a minute.
  it('E33: fast talk comes near two pages a minute', () => {
    const talk = Array.from({ length: 13 }, () => speech('NORA', '(fast)', 'It was there when I left it.'));
    const { low, seconds, pageRule } = timeOf(scene('INT. A - DAY', talk));
    expect(pageRule / seconds).toBeGreaterThan(1.5);
    expect(pageRule / low).toBeGreaterThan(2);
  });
  // RougeWave (rougewave.blogspot.com, 2008): a four-line montage can fill minutes of film.
  it('E34: a montage plays longer than its lines', () => {
    const montage = scene(
      'EXT. COAST - DAY',
      Array.from({ length: 9 }, () => item('- A boat.')),
    );
    const { seconds, pageRule } = timeOf(montage);
    expect(seconds).toBeGreaterThan(60);
    expect(seconds).toBeGreaterThan(2 * pageRule);
  });
  // AnonPA (anonymousproductionassistant.com, 26 Sept 2016): the script is read aloud with a stopwatch.
  it('E36: a time from a stopwatch wins', () => {
    const noted = { ...drama, notes: [{ kind: 'time' as const, seconds: 71, text: 'time: 71 s', at: drama.at }] };
    expect(timeOf(noted)).toMatchObject({ seconds: 71, noted: true });
  });
});

describe('words in a film', () => {
  // NCVS via lisabmarshall.com: conversation about 150 words a minute.
  it('S1: 150 words of talk take a minute', () => {
    const words = Array.from({ length: 150 }, () => 'word').join(' ');
    expect(timeOf(scene('INT. A - DAY', [speech('NORA', words)])).seconds).toBe(60);
  });
  // Pavlik via RedShark: about 9,000 words of dialogue in a film; over 110 minutes 82 words a minute, half of it speech.
  it('S14, S15: a mixed scene has about 82 words for each minute of film', () => {
    const { seconds } = timeOf(drama);
    const rate = spoken(drama) / (seconds / 60);
    expect(rate).toBeGreaterThan(82 * 0.7);
    expect(rate).toBeLessThan(82 * 1.3);
  });
  it('S14, S15: a feature of such scenes has about 9,000 words', () => {
    const { pages } = paginate(script(Array.from({ length: 200 }, () => drama)));
    const total = totalScreenTime(pages.scenes.map((one) => estimateScreenTime(drama, one.eighths)));
    const words = (spoken(drama) * 200 * 110 * 60) / total.seconds;
    expect(words).toBeGreaterThan(6243); // horror, the lowest kind
    expect(words).toBeLessThan(10289); // crime, the highest
  });
});
