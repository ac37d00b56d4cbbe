/** What stands in parentheses after a speaker's name. */
export interface CueExtension {
  /** As it prints. */
  readonly name: string;
  /** Other ways to type it, in capitals. */
  readonly written: readonly string[];
  /** How the speaker is there; null where it says nothing about that. */
  readonly voice: 'voice-over' | 'off-screen' | 'phone' | null;
  readonly source: string;
}

const academy = 'Academy Nicholl format sample, 1998; IndieFictions, formatting; OC Screenwriters';
const practice = 'common practice';

export const cueExtensions: readonly CueExtension[] = [
  {
    name: 'V.O.',
    written: [
      'VO',
      'V.O',
      'V/O',
      'VOICE OVER',
      'VOICE-OVER',
      'VOICEOVER',
      'NARRATION',
      'NARRATING',
      'PRE-LAP',
      'PRELAP',
    ],
    voice: 'voice-over',
    source: academy,
  },
  { name: 'RECORDED', written: ['RECORDING', 'ON TAPE', 'ON RECORDING'], voice: 'voice-over', source: practice },
  {
    name: 'O.S.',
    written: ['OS', 'O.S', 'O/S', 'OFF SCREEN', 'OFF-SCREEN', 'OFFSCREEN', 'OFF', 'OFFSTAGE'],
    voice: 'off-screen',
    source: academy,
  },
  { name: 'O.C.', written: ['OC', 'O.C', 'O/C', 'OFF CAMERA', 'OFF-CAMERA'], voice: 'off-screen', source: practice },
  {
    name: 'ON THE PHONE',
    written: [
      'ON PHONE',
      'PHONE',
      'OVER PHONE',
      'OVER THE PHONE',
      'THROUGH PHONE',
      'VIA PHONE',
      'BY PHONE',
      'ON TELEPHONE',
      'ON THE TELEPHONE',
      'FROM PHONE',
      'ON SPEAKER',
      'ON SPEAKERPHONE',
      'SPEAKERPHONE',
      'ON THE LINE',
    ],
    voice: 'phone',
    source: practice,
  },
  { name: 'FILTERED', written: ['FILTER', 'FILT'], voice: 'phone', source: academy },
  {
    name: 'ON THE RADIO',
    written: [
      'ON RADIO',
      'RADIO',
      'OVER RADIO',
      'OVER THE RADIO',
      'INTERCOM',
      'OVER INTERCOM',
      'ON INTERCOM',
      'OVER THE INTERCOM',
    ],
    voice: 'phone',
    source: practice,
  },
  { name: "CONT'D", written: ['CONTD', 'CONT', 'CONT.', 'CONTINUED', 'CONTINUING'], voice: null, source: academy },
];

/** Words shortened with a stop that may end a speaker's name. */
export const nameAbbreviations: readonly string[] = [
  'DR',
  'MR',
  'MRS',
  'MS',
  'MX',
  'JR',
  'SR',
  'ST',
  'SGT',
  'CPL',
  'LT',
  'CAPT',
  'COL',
  'GEN',
  'MAJ',
  'INSP',
  'SUPT',
  'PROF',
  'REV',
  'HON',
  'ESQ',
  'NO',
  'BROS',
  'CO',
  'LTD',
  'DEPT',
  'ASST',
];

/** Titles that may stand before a name or be left away; common practice. */
export const nameTitles: readonly string[] = [
  'dr',
  'doctor',
  'mr',
  'mrs',
  'ms',
  'miss',
  'mx',
  'mister',
  'sgt',
  'sergeant',
  'lt',
  'lieutenant',
  'capt',
  'captain',
  'cpl',
  'corporal',
  'col',
  'colonel',
  'inspector',
  'insp',
  'detective',
  'officer',
  'constable',
  'prof',
  'professor',
  'rev',
  'reverend',
  'father',
  'sister',
  'brother',
  'aunt',
  'uncle',
  'nurse',
  'judge',
  'sir',
  'lady',
  'lord',
  'madame',
  'monsieur',
];

/** Titles that scripts write short and in full for one person. Source: common practice. */
export const titlesInFull: readonly { readonly inFull: string; readonly short: string }[] = [
  { inFull: 'doctor', short: 'dr' },
  { inFull: 'mister', short: 'mr' },
  { inFull: 'sergeant', short: 'sgt' },
  { inFull: 'lieutenant', short: 'lt' },
  { inFull: 'captain', short: 'capt' },
];
