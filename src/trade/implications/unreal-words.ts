/**
 * Words after which a thing is only shown, compared or a figure of speech. Base forms divided by spaces; common English
 * usage. Where the words may also mean a thing that is there, they stay out: a caution too many does less harm.
 */
export const unrealWords = {
  /** Pictures of any kind: "a photo of a burning ship" puts no ship there. */
  pictures: `photo photograph picture snapshot portrait painting watercolour watercolor drawing sketch poster postcard mural fresco engraving
    cartoon illustration image footage movie documentary newsreel tattoo carving statue statuette cutout hologram x-ray tapestry map
    story tale legend song poem novel dream nightmare memory`,
  /** What a picture does: "the news shows a bomb". */
  showing: 'show depict portray picture feature',
  /** Who shows: pictures, and these. */
  screens: 'tv television telly news screen monitor channel broadcast bulletin newspaper headline sign',
  /** Where it is shown: "it is raining in the photograph". */
  shownIn:
    'photo photograph picture snapshot portrait painting drawing sketch poster postcard mural cartoon film movie documentary newsreel dream',
  /** What carries words: "a poster: BAKERY BLAST". */
  lettering: `poster sign headline placard banner label notice newspaper board plaque blackboard whiteboard caption title card screen
    ticker graffiti letter note telegram message text email`,
  /** Measures and manners that compare: "the size of a car". */
  measures: 'size colour color shape length height width force strength speed weight',
  /** What befalls someone as a figure of speech: "a wave of panic hits her". */
  feelings: `panic relief grief anger rage fury joy fear terror dread horror shame guilt hope love hatred jealousy envy laughter applause emotion
    nausea dizziness despair pity tenderness pride regret longing nostalgia sadness sorrow loneliness boredom excitement
    realisation realization recognition doubt tear tears exhaustion tiredness fatigue remorse memory silence sleep inspiration`,
  /** What comes in floods, seas and storms without any water or wind: "a sea of faces". */
  masses: `face head hand people umbrella hat paper paperwork letter question word voice sound noise music light colour color sunlight moonlight
    abuse insult protest thought idea confetti petal green gold grass corn`,
} as const;
