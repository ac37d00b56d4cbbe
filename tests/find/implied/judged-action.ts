import type { JudgedPages } from './judged-pages.js';

/** Pages with more fire, water, height and children than most: judged before the finder read them. */
export const judgedAction: readonly JudgedPages[] = [
  {
    file: 'the-last-waltzer',
    pages: 2.5,
    right: [
      [1, 'matches or lighter'],
      [2, 'fire extinguisher'],
      [2, 'dry costume double'],
      [3, 'fan'],
      [3, 'clean costume double'],
      [3, 'phone'],
      [4, 'clean costume double'],
      [5, 'fog machine and fluid'],
      [5, 'pan'],
    ],
    must: [
      [1, 'matches or lighter'],
      [3, 'clean costume double'],
    ],
    dangers: ['H2 H14 H15 H16', 'H5 H6 H14 H15 H19 H25', 'H5', 'H5 H6 H11 H14 H15 H16', 'H11 H14', 'H5 H6 H8 H14 H15'],
    notDangers: ['H3 H7', 'H7', 'H4', 'H7', 'H7', 'H7'],
  },
  {
    file: 'titration',
    pages: 2.25,
    right: [
      [0, 'fire extinguisher'],
      [1, 'mats and body pads'],
      [1, 'dry costume double'],
      [2, 'dry costume double'],
      [2, 'pen'],
      [3, 'broken pieces'],
    ],
    must: [
      [1, 'dry costume double'],
      [3, 'broken pieces'],
    ],
    dangers: ['H5 H15 H19 H24', 'H3 H7 H15', 'H8 H15', 'H3 H6 H15 H19', 'H14 H15 H17'],
    notDangers: ['H1', 'H1 H5', 'H1', 'H5 H9', 'H5 H21'],
  },
  {
    file: 'something-borrowed',
    pages: 1.9,
    right: [
      [0, 'herbal cigarettes'],
      [0, 'pregnancy belly'],
      [0, 'clean costume double'],
      [2, 'clean costume double'],
      [3, 'dry costume double'],
      [5, "paramedic's uniform"],
    ],
    must: [
      [0, 'herbal cigarettes'],
      [0, 'pregnancy belly'],
    ],
    dangers: ['H2 H5 H6', 'H7 H16', 'H3 H7 H8 H15', 'H4 H5 H15 H22', 'H4 H7 H11 H14 H24', 'H8 H9 H14'],
    notDangers: ['H7', 'H20', 'H4', 'H9 H10', 'H9', 'H5'],
  },
  {
    file: 'windfall',
    pages: 1.6,
    right: [
      [0, 'fog machine and fluid'],
      [1, 'song or tune to be cleared'],
      [1, 'tobacco substitute'],
      [1, 'broken pieces'],
    ],
    must: [[1, 'broken pieces']],
    dangers: ['H3 H8 H11 H15 H25', 'H3 H5 H6 H15 H24', 'H3 H5 H7 H8 H14 H15', 'H8 H9 H14 H15', 'H2 H15'],
    notDangers: ['H1 H7', 'H8', 'H1', 'H7', 'H5'],
  },
];
