import { describe, expect, it } from 'vitest';
import { compileText } from '../support/compile-text.js';

async function elementsOf(body: string) {
  const { breakdown } = await compileText(`## 1. EXT. QUAY - DAY\n\n${body}\n`);
  return breakdown?.scenes[0]?.elements ?? [];
}

describe('a garment called alone in speech', () => {
  it('is no costume; one in hand is', async () => {
    const called = await elementsOf('NORA waits.\n\nNORA\nBoots.');
    expect(called.map(({ name }) => name)).not.toContain('boots');
    const held = await elementsOf('NORA pulls on her boots.\n\nNORA\nBoots.');
    expect(held.map(({ name }) => name)).toContain('boots');
  });
});

describe('what a person does behind a place', () => {
  it('is no state of the place; what is said of a thing is its state', async () => {
    const boat = (await elementsOf('In the boat, wrapped in a blanket, NORA waits.')).find(
      ({ name }) => name === 'boat',
    );
    expect(boat?.stateOut ?? null).toBeNull();
    const coat = await elementsOf('NORA wears a coat, torn at the sleeve.');
    expect(coat.some(({ stateIn, stateOut }) => `${stateIn} ${stateOut}`.includes('torn'))).toBe(true);
  });
});
