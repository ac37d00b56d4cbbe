import { renderDocument } from '../pdf/render-document.js';
import { propPackParts, withFront } from '../plan/pack-blocks.js';
import type { Render } from '../types.js';
import { readBookNotes } from '../words/book-notes.js';
import { readFirstBlocks } from '../words/read-first.js';
import { indexScenes } from '../words/scene-list-words.js';
import { listUsedUp } from '../words/used-up.js';
import { changingBlocks } from './changing-things.js';
import { paperBlocks } from './paper-and-screens.js';
import { placeSheetBlocks } from './place-sheets.js';
import { handledCategories, placeCategories } from './prop-categories.js';
import { runningBlocks } from './running-list.js';
import { weaponBlocks } from './weapons-sheet.js';

const howTo = [
  '1. The list by scene tells the story: what is in hand, who has it, how it looks, and where it goes next.',
  '2. Tick the box when the thing is in your box and looks right. Nothing is thrown away before the last day.',
  '3. A thing that is broken, eaten, torn or wetted on camera is needed again for the next take. Ask how many.',
  '4. Take a picture of each thing before and after each scene.',
];

const dangersStand = 'Who is in charge of each stands on the place sheets.';

/** Writes `props.pdf`, the prop helper's pack: everything in hand in story order, then the dressing by place. */
export const renderProps: Render = async (input) => {
  const { breakdown } = input;
  const index = indexScenes(breakdown.scenes);
  const parts = propPackParts(input);
  const categories = new Set([...handledCategories, ...placeCategories]);
  return renderDocument(input, {
    file: 'props.pdf',
    name: 'Props',
    blocks: [
      ...withFront(
        readFirstBlocks(input, index, { title: 'Props', howTo, categories, reach: categories, dangersStand }),
        parts.front,
      ),
      ...runningBlocks(breakdown, readBookNotes(input.production), listUsedUp(breakdown, input.production), index),
      // With a book the plan says how many, and how each state begins.
      ...(input.production === null ? changingBlocks(breakdown, index) : []),
      ...paperBlocks(input, index),
      ...placeSheetBlocks(input, index),
      ...weaponBlocks(input, index),
      ...parts.back,
    ],
  });
};
