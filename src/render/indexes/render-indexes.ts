import { renderDocument } from '../pdf/render-document.js';
import type { Render } from '../types.js';
import { readBookNotes } from '../words/book-notes.js';
import { indexScenes } from '../words/scene-list-words.js';
import { draftWords } from '../words/story-words.js';
import { elementIndex } from './element-index.js';
import { extrasIndex } from './extras-index.js';
import { peopleIndex } from './people-index.js';
import { placeIndex } from './place-index.js';

/** Writes `indexes.pdf`: where every person, thing and place is needed. */
export const renderIndexes: Render = async (input) => {
  const { breakdown } = input;
  const index = indexScenes(breakdown.scenes);
  return renderDocument(input, {
    file: 'indexes.pdf',
    name: 'Indexes',
    blocks: [
      { kind: 'heading', level: 1, text: `Where everything is needed: ${draftWords(breakdown)}`, bookmark: 'Indexes' },
      ...peopleIndex(breakdown, index),
      ...extrasIndex(breakdown, index),
      ...elementIndex(breakdown, readBookNotes(input.production), index),
      ...placeIndex(breakdown, index),
    ],
  });
};
