import type { OutputName, Renderer } from './types.js';
import { onPaper } from './words/on-paper.js';

/** Every output by its name. The code of each is loaded only when the output is asked for. */
export const renderers: Record<OutputName, Renderer> = {
  json: {
    title: 'the whole breakdown for other programs',
    files: ['breakdown.json'],
    filesOfRevision: ['previous.json'],
    load: async () => (await import('./json/render-json.js')).renderJson,
  },
  changes: {
    title: 'what changed since the draft handed out before',
    files: [],
    filesOfRevision: ['changes.md'],
    load: async () => (await import('./changes/render-changes.js')).renderChanges,
  },
  sheets: {
    title: 'cover, scene list and one sheet a scene',
    files: ['sheets.pdf'],
    load: async () => onPaper((await import('./sheets/render-sheets.js')).renderSheets),
  },
  scenes: {
    title: 'the scene list for a spreadsheet',
    files: ['scenes.csv'],
    load: async () => (await import('./scenes/render-scenes.js')).renderScenes,
  },
  costumes: {
    title: 'the costume helper’s pack',
    files: ['costumes.pdf'],
    load: async () => onPaper((await import('./costumes/render-costumes.js')).renderCostumes),
  },
  props: {
    title: 'the prop helper’s pack',
    files: ['props.pdf'],
    load: async () => onPaper((await import('./props/render-props.js')).renderProps),
  },
  indexes: {
    title: 'indexes by person, thing and place',
    files: ['indexes.pdf'],
    load: async () => onPaper((await import('./indexes/render-indexes.js')).renderIndexes),
  },
  purchases: {
    title: 'the list of what to get',
    files: ['purchases.pdf', 'purchases.csv'],
    load: async () => (await import('./purchases/render-purchases.js')).renderPurchases,
  },
  questions: {
    title: 'all that waits for a yes or a no',
    files: ['questions.md', 'questions.pdf'],
    load: async () => (await import('./questions/render-questions.js')).renderQuestions,
  },
  script: {
    title: 'the script on standard pages',
    files: ['script.pdf'],
    load: async () => (await import('./script/render-script-pages.js')).renderScriptPages,
  },
  plan: {
    title: 'days, tasks, money and continuity',
    files: ['plan.pdf'],
    needsBook: true,
    load: async () => onPaper((await import('./plan/render-plan.js')).renderPlan),
  },
  callsheets: {
    title: 'one side for each shooting day',
    files: ['callsheets.pdf'],
    needsBook: true,
    load: async () => onPaper((await import('./plan/render-callsheets.js')).renderCallSheets),
  },
  calendar: {
    title: 'everything to do, for a phone',
    files: ['tasks.ics'],
    needsBook: true,
    load: async () => (await import('./plan/render-calendar.js')).renderCalendar,
  },
};

/** The names of all outputs, in their usual order. */
export const outputNames = Object.keys(renderers) as readonly OutputName[];
