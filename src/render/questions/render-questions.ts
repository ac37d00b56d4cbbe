import { renderDocument } from '../pdf/render-document.js';
import type { Render } from '../types.js';
import { indexScenes } from '../words/scene-list-words.js';
import { draftWords } from '../words/story-words.js';
import { listOpenQuestions } from './open-questions.js';
import { questionBlocks } from './questions-blocks.js';
import { questionsMarkdown } from './questions-markdown.js';

/** Writes all that is doubtful twice: `questions.md` beside the script's editor, `questions.pdf` for the table. */
export const renderQuestions: Render = async (input) => {
  const { breakdown, script } = input;
  const index = indexScenes(breakdown.scenes);
  const list = listOpenQuestions(breakdown, script.source);
  const pdf = await renderDocument(input, {
    file: 'questions.pdf',
    name: 'Questions',
    key: null,
    blocks: questionBlocks(list, draftWords(breakdown), index),
  });
  const markdown = { name: 'questions.md', content: questionsMarkdown(list, draftWords(breakdown), index) };
  return { files: [markdown, ...pdf.files], messages: pdf.messages };
};
