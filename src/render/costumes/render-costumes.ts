import type { CategoryName } from '../../trade/categories.js';
import { renderDocument } from '../pdf/render-document.js';
import { costumePackParts, withFront } from '../plan/pack-blocks.js';
import type { Render } from '../types.js';
import { readBookNotes } from '../words/book-notes.js';
import { readFirstBlocks } from '../words/read-first.js';
import { indexScenes } from '../words/scene-list-words.js';
import { changeBlocks } from './costume-changes.js';
import { gridBlocks } from './costume-grid.js';
import { costumeRunningBlocks } from './costume-running.js';

const howTo = [
  '1. Find the person and the day of the story in the first table. It names a change: one set of clothes, head to foot.',
  '2. Look the change up in the lists. Check from head to foot before every scene and tick.',
  '3. NO in front of a thing means that it must not be worn. Check that too.',
  '4. Take pictures of each change before and after each scene: whole, collar, cuffs, feet, hands.',
  '5. Never dye, cut, wet or dirty a thing before it has been tried on, and shot clean if a clean scene is still to come.',
];

const dangersStand = 'Who is in charge of each stands on the scene sheets and the call sheets.';

/** Writes `costumes.pdf`, the costume helper's pack: people by story day, every change head to foot, then scene by scene. */
export const renderCostumes: Render = async (input) => {
  const { breakdown } = input;
  const index = indexScenes(breakdown.scenes);
  const categories = new Set<CategoryName>(['costumes', 'makeup']);
  const reach = new Set<CategoryName>([...categories, 'cast', 'extras']);
  const parts = costumePackParts(input, index);
  return renderDocument(input, {
    file: 'costumes.pdf',
    name: 'Costumes',
    blocks: [
      ...withFront(
        readFirstBlocks(input, index, { title: 'Costumes', howTo, categories, reach, dangersStand }),
        parts.front,
      ),
      ...gridBlocks(breakdown, index),
      ...changeBlocks(breakdown, readBookNotes(input.production), index),
      ...costumeRunningBlocks(breakdown, index),
      ...parts.back,
    ],
  });
};
