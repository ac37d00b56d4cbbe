import { describe, expect, it } from 'vitest';
import type { BreakdownScene } from '../../src/breakdown/types.js';
import { compileText } from '../support/compile-text.js';

/** What is carried into each scene by continuity, read by the finder. */
async function carriedIn(text: string): Promise<string[][]> {
  const { breakdown } = await compileText(`---\ncast: { NORA: {} }\n---\n\n${text}`);
  const names = (scene: BreakdownScene) => scene.elements.filter(({ carried }) => carried).map(({ name }) => name);
  return breakdown?.scenes.map(names) ?? [];
}

describe('dressing that nobody marked', () => {
  it('stands in its room from the first scene on when it is furniture', async () => {
    const text = '## 1. INT. LAB - DAY\n\nNora waits.\n\n## 2. INT. LAB - LATER\n\nNora sits on the bench.';
    expect(await carriedIn(text)).toEqual([['bench'], []]);
  });

  it.each([
    'A hair dryer hangs from the ceiling, blowing.',
    'A bench has been pushed against the door.',
    'A makeshift bench stands by the door.',
  ])('is not there before the deed that brought it: %s', async (line) => {
    const text = `## 1. INT. LAB - DAY\n\nNora waits.\n\n## 2. INT. LAB - LATER\n\n${line}\n\n## 3. INT. LAB - LATER\n\nNora waits.`;
    const [before, , after] = await carriedIn(text);
    expect(before).toEqual([]);
    expect(after?.length).toBe(1);
  });

  it('is part of a vehicle outdoors, and of a room indoors', async () => {
    const road = (line: string) =>
      carriedIn(`## 1. EXT. ROAD - DAY\n\n${line}\n\n## 2. EXT. ROAD - LATER\n\nNora waits.`);
    expect(await road("A truck waits. Steam rolls from the truck's grille.")).toEqual([[], []]);
    expect(await road('A pickup crawls along, Nora in the bed.')).toEqual([[], []]);
    const room = '## 1. INT. MOTEL ROOM - DAY\n\nNora sits on the bed.\n\n## 2. INT. MOTEL ROOM - LATER\n\nNora waits.';
    expect(await carriedIn(room)).toEqual([[], ['bed']]);
  });

  it('is that of the vehicle when the scene plays in it', async () => {
    const text =
      '## 1. INT. VAN - DAY\n\nA doll hangs from the mirror. Dust on the dashboard.\n\n## 2. INT. VAN - LATER\n\nNora waits.';
    expect((await carriedIn(text))[1]).toContain('dashboard');
  });
});
