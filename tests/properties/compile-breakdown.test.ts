import fs from 'node:fs';
import path from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { categories } from '../../src/trade/categories.js';
import { anyText, scriptLike, tidyScript } from '../support/any-script.js';
import { compileText, jsonOf } from '../support/compile-text.js';
import { standsOnLine } from '../support/plain-source.js';
import { packageRoot } from '../support/test-host.js';

interface Said {
  readonly words: string;
  readonly line: number;
}
interface Element extends Said {
  readonly id: string;
  readonly category: string;
  readonly count: number | null;
  readonly carried: boolean;
  readonly known: string;
  readonly mentions: readonly Said[];
}
interface Json {
  readonly eighths: number;
  readonly pages: number;
  readonly screenTime: { readonly seconds: number };
  readonly scenes: readonly {
    readonly order: number;
    readonly eighths: number;
    readonly screenTime: { readonly seconds: number; readonly low: number; readonly high: number };
    readonly cast: readonly { readonly id: string; readonly mentions: readonly Said[] }[];
    readonly extras: readonly Said[];
    readonly elements: readonly Element[];
    readonly hazards: readonly (Said & { readonly id: string })[];
    readonly tasks: readonly Said[];
  }[];
  readonly cast: readonly { readonly id: string }[];
  readonly elements: readonly { readonly id: string; readonly category: string; readonly count: number | null }[];
}

async function breakDown(text: string): Promise<Json | null> {
  const json = jsonOf(await compileText(text));
  return json === null ? null : JSON.parse(json);
}

/** Holds every breakdown of generated texts to a promise; texts that are refused have none. */
async function always(
  texts: fc.Arbitrary<string>,
  promise: (json: Json, text: string) => void,
  numRuns: number,
): Promise<void> {
  let kept = 0;
  const check = async (text: string) => {
    const json = await breakDown(text);
    if (json === null) return;
    kept += 1;
    promise(json, text);
  };
  await fc.assert(fc.asyncProperty(texts, check), { numRuns });
  expect(kept).toBeGreaterThan(numRuns / 4);
}

const schema = fs.readFileSync(path.join(packageRoot, 'src/render/json/breakdown.schema.json'), 'utf8');
const validate = new Ajv2020({ allErrors: true, allowUnionTypes: true }).compile(JSON.parse(schema));

describe('the breakdown of any text', () => {
  // JSON Schema draft 2020-12 as ajv reads it; the schema demands every field and allows no other.
  it('has every field of the published schema', () =>
    always(
      anyText,
      (json) => {
        validate(json);
        expect(validate.errors).toBeNull();
      },
      60,
    ));

  it('sums its eighths', () =>
    always(
      anyText,
      ({ eighths, scenes }) => {
        expect(eighths).toBe(scenes.reduce((sum, scene) => sum + scene.eighths, 0));
        for (const scene of scenes) expect(scene.eighths).toBeGreaterThanOrEqual(1);
      },
      40,
    ));

  it('counts the most in any one scene, never a sum', () =>
    always(
      tidyScript,
      ({ elements, scenes }) => {
        for (const { id, count } of elements) {
          const counts = scenes.flatMap((scene) => scene.elements).filter((one) => one.id === id);
          const known = counts.map((one) => one.count).filter((one) => one !== null);
          expect(count, id).toBe(known.length > 0 ? Math.max(...known) : null);
        }
      },
      40,
    ));

  it('never lists people among the elements', () =>
    always(
      fc.oneof(scriptLike, tidyScript),
      ({ elements, scenes, cast }) => {
        const things = new Set(categories.map(({ name }) => name).filter((name) => !/^(cast|extras)$/.test(name)));
        const people = new Set(cast.map(({ id }) => id));
        for (const { category, id } of [...elements, ...scenes.flatMap((scene) => scene.elements)]) {
          expect(things).toContain(category);
          expect(people).not.toContain(id);
        }
      },
      40,
    ));

  it('quotes words that stand on the line it names', () =>
    always(
      fc.oneof(scriptLike, tidyScript),
      ({ scenes }, text) => {
        for (const { cast, extras, elements, hazards, tasks } of scenes) {
          const fresh = elements.filter(({ carried }) => !carried);
          const mentions = [...cast, ...elements].flatMap((one) => one.mentions);
          for (const said of [...mentions, ...extras, ...fresh, ...hazards, ...tasks]) {
            expect(standsOnLine(text, said.words, said.line), `"${said.words}" on line ${said.line}`).toBe(true);
          }
        }
      },
      60,
    ));

  it('never has a shorter scene by one more sentence of action', async () => {
    const sentence = fc.constantFrom(
      'She waits.',
      'Ivo lifts the [lantern] and looks at it for a long time, from all sides, before he sets it down again.',
      'A GUNSHOT.',
    );
    await fc.assert(
      fc.asyncProperty(tidyScript, fc.nat(), sentence, async (text, where, more) => {
        const before = await breakDown(text);
        if (before === null) return;
        const starts = [...text.matchAll(/^## .*$/gm)];
        const at = where % starts.length;
        const cut = (starts[at]?.index ?? 0) + (starts[at]?.[0].length ?? 0);
        const after = await breakDown(`${text.slice(0, cut)}\n\n${more}${text.slice(cut)}`);
        expect(after?.scenes).toHaveLength(before.scenes.length);
        expect(after?.scenes[at]?.eighths).toBeGreaterThanOrEqual(before.scenes[at]?.eighths ?? 0);
        expect(after?.scenes[at]?.screenTime.seconds).toBeGreaterThanOrEqual(
          before.scenes[at]?.screenTime.seconds ?? 0,
        );
      }),
      { numRuns: 30 },
    );
  });
});
