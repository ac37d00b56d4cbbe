import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { estimateScreenTime } from '../../src/breakdown/screen-time.js';
import { paginate } from '../../src/page/paginate.js';
import { readScriptText } from '../../src/script/read-script.js';

function measure(text: string) {
  const { script } = readScriptText(text, 'script.md');
  if (!script) throw new Error('no script was read');
  const { pages } = paginate(script);
  return {
    pages,
    seconds: pages.scenes.map((one, at) => {
      const scene = script.scenes[at];
      if (!scene) throw new Error('a length without its scene');
      return estimateScreenTime(scene, one.eighths).seconds;
    }),
  };
}

const sentence = fc.constantFrom(
  'Ivo lifts the [storm lantern] off its hook and sets it on the sill.',
  'She waits for a long time.',
  'Rain.',
  'Nora, in a *very* wet coat, counts the tins on the shelf above the door, one after the other, twice.',
);
const paragraph = fc.oneof(
  fc.array(sentence, { minLength: 1, maxLength: 6 }).map((all) => all.join(' ')),
  fc.array(sentence, { minLength: 1, maxLength: 6 }).map((all) => `NORA\n${all.join(' ')}`),
  fc.array(sentence, { minLength: 1, maxLength: 6 }).map((all) => `IVO (V.O.)\n(low)\n${all.join('\n')}`),
  fc.constantFrom('- A boat.\n- A bell.', '***', 'CUT TO:', '> props: rope, oar', '<!-- later -->'),
);
const written = fc
  .array(fc.array(paragraph, { maxLength: 12 }), { minLength: 1, maxLength: 6 })
  .map((scenes) => scenes.map((all, at) => ['', ...all].join('\n\n').replace('', `## INT. STORE ${at} - DAY`)));

describe('a script as written', () => {
  it('never gets a shorter scene by one more paragraph of action', () => {
    fc.assert(
      fc.property(written, sentence, fc.nat(), (scenes, more, where) => {
        const index = where % scenes.length;
        const before = measure(scenes.join('\n\n'));
        const after = measure(scenes.with(index, `${scenes[index]}\n\n${more}`).join('\n\n'));
        expect(after.pages.scenes).toHaveLength(scenes.length);
        expect(after.pages.scenes[index]?.lines).toBeGreaterThan(before.pages.scenes[index]?.lines ?? 0);
        expect(after.pages.scenes[index]?.eighths).toBeGreaterThanOrEqual(before.pages.scenes[index]?.eighths ?? 0);
        expect(after.seconds[index]).toBeGreaterThanOrEqual(before.seconds[index] ?? 0);
      }),
    );
  });
  it('prints neither brackets of marks, notes nor private text, and does not measure them', () => {
    const marked = '## INT. STORE - DAY\n\nIvo lifts the [lantern](prop).\n\n> props: rope\n\n<!-- private -->\n';
    const bare = '## INT. STORE - DAY\n\nIvo lifts the lantern.\n';
    expect(measure(marked).pages.pages).toEqual(measure(bare).pages.pages);
    expect(measure(marked).pages.scenes).toEqual(measure(bare).pages.scenes);
  });
  it('can be laid out whatever it is', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 400 }), (text) => {
        const { script } = readScriptText(text, 'script.md');
        if (script) expect(paginate(script).pages.scenes).toHaveLength(script.scenes.length);
      }),
    );
  });
});
