/** What a strict first assistant director says to the implied things and the dangers of a short unmarked script. */
export interface JudgedPages {
  readonly file: string;
  readonly pages: number;
  /** Implied things that are right, by scene (0-based) and name. Any other counts as wrong. */
  readonly right: readonly (readonly [scene: number, name: string])[];
  /** Implied things and questions that must not be missed. */
  readonly must: readonly (readonly [scene: number, name: string])[];
  /** Dangers of each scene that must be raised. */
  readonly dangers: readonly string[];
  /** Dangers that would be false alarms there. */
  readonly notDangers: readonly string[];
}

export const judgedPages: readonly JudgedPages[] = [
  {
    file: 'the-late-shift',
    pages: 1,
    right: [
      [0, 'key'],
      [0, 'matches or lighter'],
      [0, 'pen'],
      [1, 'dry costume double'],
      [1, 'herbal cigarettes'],
      [2, 'song or tune to be cleared'],
      [2, 'mats and body pads'],
      [2, 'stage blood'],
      [2, 'broken pieces'],
    ],
    must: [
      [0, 'matches or lighter'],
      [2, 'stage blood'],
      [0, 'which-side-bruise'],
    ],
    dangers: ['H5 H15', 'H5 H9 H14', 'H3 H15 H19'],
    notDangers: ['H8 H1 H20', 'H8 H11', 'H1 H7'],
  },
  {
    file: 'dry-creek',
    pages: 1,
    right: [
      [0, 'fog machine and fluid'],
      [1, 'broken-down costume double'],
      [1, 'gunshot'],
      [1, 'broken pieces'],
      [2, 'dry costume double'],
      [2, 'fire extinguisher'],
    ],
    must: [
      [1, 'gunshot'],
      [2, 'dry costume double'],
    ],
    dangers: ['H1 H2 H8 H14 H15', 'H1 H3 H5 H19', 'H5 H7 H8 H14'],
    notDangers: ['H9', 'H7 H9 H20', 'H1 H20'],
  },
  {
    file: 'best-man',
    pages: 1,
    right: [
      [1, 'phone'],
      [2, 'pen'],
      [2, 'song or tune to be cleared'],
      [2, 'matches or lighter'],
    ],
    must: [
      [1, 'phone'],
      [2, 'pen'],
    ],
    dangers: ['H2 H15', 'H7 H9 H22', 'H5 H9'],
    notDangers: ['H1 H5 H7', 'H1 H8', 'H1'],
  },
  {
    file: 'cold-store',
    pages: 1,
    right: [
      [2, 'rehearsal doll'],
      [2, 'stage blood'],
      [2, 'song or tune to be cleared'],
    ],
    must: [
      [2, 'stage blood'],
      [0, 'is-it-blood'],
    ],
    dangers: ['H6', 'H2', 'H4 H13 H14 H15 H17 H19'],
    notDangers: ['H1 H15', 'H1 H20', 'H7'],
  },
  {
    file: 'the-glove-box',
    pages: 1,
    right: [
      [0, 'till'],
      [0, 'wrapping paper'],
      [0, 'broken-down costume double'],
      [0, 'broken pieces'],
      [1, 'fog machine and fluid'],
      [1, 'police uniform'],
      [1, 'pen'],
      [2, 'fire extinguisher'],
      [2, 'bedding'],
      [2, 'music for playback'],
    ],
    must: [
      [1, 'police uniform'],
      [1, 'pen'],
    ],
    dangers: ['H15', 'H5 H6 H7 H8 H21', 'H5'],
    notDangers: ['H3 H7', 'H1 H20', 'H20 H1'],
  },
  {
    file: 'probation',
    pages: 1,
    right: [
      [1, 'money or card'],
      [1, 'phone'],
      [1, 'phone screen with the message'],
      [2, 'herbal cigarettes'],
    ],
    must: [
      [1, 'phone'],
      [2, 'herbal cigarettes'],
    ],
    dangers: ['', 'H8', 'H5 H9 H22'],
    notDangers: ['H1 H2 H3 H4 H5 H8 H9 H14 H19', 'H1 H5', 'H1 H3'],
  },
  {
    file: 'tide-table',
    pages: 2,
    right: [
      [0, 'dry costume double'],
      [1, 'dry costume double'],
      [1, 'stage blood'],
      [2, 'fire extinguisher'],
    ],
    must: [
      [0, 'dry costume double'],
      [1, 'which-side-graze'],
    ],
    dangers: ['H7 H9 H14', 'H5 H8', 'H5 H7'],
    notDangers: ['H1', 'H1 H21', 'H3 H1'],
  },
  {
    file: 'sports-day',
    pages: 1,
    right: [],
    must: [],
    dangers: ['H15', 'H15', 'H9 H15'],
    notDangers: ['H3', 'H3 H11 H12', 'H12 H3'],
  },
  {
    file: 'night-desk',
    pages: 2,
    right: [
      [0, 'programme for the screen'],
      [1, 'stage blood'],
      [1, 'broken pieces'],
      [1, 'replica gun'],
      [2, 'fog machine and fluid'],
    ],
    must: [
      [1, 'stage blood'],
      [1, 'replica gun'],
    ],
    dangers: ['', 'H1 H5', 'H5 H9 H14'],
    notDangers: ['H1 H9', 'H9 H20', 'H7'],
  },
  {
    file: 'quiet-house',
    pages: 2,
    right: [
      [2, 'bedding'],
      [2, 'pen'],
      [2, 'song or tune to be cleared'],
    ],
    must: [[2, 'pen']],
    dangers: ['H11', '', '', ''],
    notDangers: ['H21 H1', 'H1', 'H20 H7', 'H3'],
  },
  {
    file: 'the-drop',
    pages: 2,
    right: [
      [1, 'matches or lighter'],
      [1, 'dry costume double'],
      [1, 'crash mat'],
      [2, 'cover garments and a robe'],
    ],
    must: [[1, 'dry costume double']],
    dangers: ['H1 H3 H9 H14', 'H1 H3 H5 H7 H8 H11 H14 H19', 'H20'],
    notDangers: ['H20', 'H10', 'H15'],
  },
  {
    file: 'hollow-hill',
    pages: 1,
    right: [
      [1, 'fire extinguisher'],
      [1, 'music for playback'],
      [1, 'song or tune to be cleared'],
      [2, 'fire extinguisher'],
    ],
    must: [[1, 'fire extinguisher']],
    dangers: ['H8 H14 H15', 'H2 H5 H8 H15', 'H3 H5 H15 H17'],
    notDangers: ['H1', 'H1 H3', 'H1 H9'],
  },
];
