import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { findElements } from '../../../src/find/find-elements.js';
import { openLexicon } from '../../../src/find/lexicon.js';
import { readScriptText } from '../../../src/script/read-script.js';
import { judgedAction } from './judged-action.js';
import { type JudgedPages, judgedPages } from './judged-pages.js';

const allJudged = [...judgedPages, ...judgedAction];
const lexicon = openLexicon(readFileSync(new URL('../../../src/find/data/lexicon.bin', import.meta.url)));

function read({ file }: JudgedPages) {
  const text = readFileSync(new URL(`../../gold/implied/${file}.md`, import.meta.url), 'utf8');
  const { script } = readScriptText(text, `${file}.md`);
  if (script === null) throw new Error(`${file} was refused`);
  const { finds } = findElements(script, lexicon);
  return { scenes: script.scenes, finds, implied: finds.elements.filter(({ known }) => known === 'implied') };
}

function wrongIn(pages: JudgedPages): string[] {
  const right = new Set(pages.right.map(([scene, name]) => `${scene} ${name}`));
  return read(pages)
    .implied.map(({ scene, name }) => `${scene} ${name}`)
    .filter((one) => !right.has(one));
}

/** A wound found bleeding needs no second entry for its blood. */
function doesItsWork(found: string, implied: string): boolean {
  return implied === 'stage blood' && /\b(?:bleed|blood)/.test(found);
}

describe('implied things on pages judged by hand', () => {
  it('are wrong less than once a page, over all', () => {
    const wrong = allJudged.flatMap((pages) => wrongIn(pages).map((one) => `${pages.file}: ${one}`));
    const pages = allJudged.reduce((sum, one) => sum + one.pages, 0);
    expect(wrong.length / pages, wrong.join('\n')).toBeLessThanOrEqual(1);
  });

  for (const pages of allJudged) {
    describe(pages.file, () => {
      it('is wrong no more than three times a page', () => {
        const wrong = wrongIn(pages);
        expect(wrong.length, wrong.join('\n')).toBeLessThanOrEqual(3 * pages.pages);
      });

      it('misses nothing that must not be missed', () => {
        const { implied, finds } = read(pages);
        for (const [scene, name] of pages.must) {
          const has =
            implied.some((one) => one.scene === scene && one.name === name) ||
            finds.elements.some((one) => one.scene === scene && doesItsWork(one.name, name)) ||
            finds.questions.some((one) => one.scene === scene && one.id.startsWith(name));
          expect(has, `scene ${scene}: ${name}`).toBe(true);
        }
      });

      it('raises its dangers, and no false ones', () => {
        const { scenes, finds } = read(pages);
        scenes.forEach((_, scene) => {
          const raised = finds.hazards.filter((one) => one.scene === scene).map(({ hazard }) => hazard);
          const split = (list: string | undefined) => (list ?? '').split(' ').filter((id) => id !== '');
          expect(raised, `scene ${scene}`).toEqual(expect.arrayContaining(split(pages.dangers[scene])));
          for (const id of split(pages.notDangers[scene])) expect(raised, `scene ${scene}`).not.toContain(id);
        });
      });
    });
  }
});
