import { describe, expect, it } from 'vitest';
import { compileText, jsonOf } from '../support/compile-text.js';

async function synopsisOf(body: string): Promise<string> {
  const script = `---\ncast: { NORA: {}, JOSEF: {} }\n---\n\n## 1. INT. BAR - NIGHT\n\n${body}\n`;
  return JSON.parse(jsonOf(await compileText(script)) ?? '{}').scenes[0].synopsis;
}

describe('the synopsis of a scene', () => {
  it.each([
    // The turn of a scene is what people are hurt in, wherever it stands.
    ['Nora wipes the bar. Josef punches the guest in the nose.', 'Josef punches the guest in the nose.'],
    // Clothes, a likeness and a sentence without a verb are no event.
    ['Nora wears a cowboy hat. Josef comes in.', 'Josef comes in.'],
    ['Nora in a black coat. Josef lays a wreath on the bar.', 'Josef lays a wreath on the bar.'],
    ['Nora is forty. Josef comes in.', 'Josef comes in.'],
    // Without anything better the first of them stands.
    ['A hat on the bar. Nora wears a red scarf.', 'Nora wears a red scarf.'],
    ['NORA, in a red coat, comes in. Josef waits.', 'NORA, in a red coat, comes in.'],
    ['Nora stands at the bar. Josef comes in.', 'Nora stands at the bar.'],
  ])('of %j is %j', async (body, expected) => {
    expect(await synopsisOf(body)).toBe(expected);
  });
});
