/**
 * Words that tell whether a name in the action stands for a person who is there. All rows are common practice: a script
 * supervisor counts who can be seen in the frame, and a name in a frame, on a letter or on the line is nobody to call.
 */

/** What belongs to a body: `Nora's hand` is Nora, seen. */
export const bodyParts: ReadonlySet<string> = new Set(
  `arm arms back body breath brow cheek cheeks chest chin ear ears elbow elbows eye eyes eyebrows face fingers finger fingertips fist
  fists foot feet forehead gaze grip hair hand hands head heel heels hip hips knee knees knuckles lap leg legs lip lips mouth neck nose
  palm palms reflection shadow shoulder shoulders silhouette skin smile step steps stomach tears teeth temple throat thumb toes waist
  wrist wrists`.split(/\s+/),
);

/** What belongs to a person and is heard: `Nora's voice` is Nora, unseen. */
export const voiceWords: ReadonlySet<string> = new Set(
  'voice shout scream laugh laughter cry whisper humming singing'.split(' '),
);

/** What follows `'s` when it means `is`: `Nora's already at the door`. */
export const afterIs: ReadonlySet<string> = new Set(
  'a an the in on at up down out under by behind beside inside outside near not already still here there now asleep awake alone back'.split(
    ' ',
  ),
);

/** A likeness or a message: `a photograph of Nora`, `a letter from Nora` show no Nora. */
export const likenesses: ReadonlySet<string> = new Set(
  `bust caricature drawing footage image likeness memory mention name number painting photo photograph picture poster portrait sign
  sketch snapshot statue story thought thoughts trace video voice`.split(/\s+/),
);

export const messages: ReadonlySet<string> = new Set(
  'call card email e-mail letter message note parcel postcard telegram text voicemail'.split(' '),
);

/** Verbs that reach for someone who is elsewhere, with the word between them and the name (`null`: none). */
export const absenceVerbs: readonly (readonly [verb: string, particle: string | null])[] = [
  ['look', 'for'],
  ['search', 'for'],
  ['wait', 'for'],
  ['ask', 'for'],
  ['call', 'for'],
  ['think', 'of'],
  ['dream', 'of'],
  ['hear', 'from'],
  ['write', 'to'],
  ['dial', null],
  ['phone', null],
  ['telephone', null],
  ['text', null],
  ['email', null],
  ['miss', null],
  ['remember', null],
];

/** Words before a name that say it is not there. */
export const absencePrepositions: ReadonlySet<string> = new Set(['without']);

/** What follows a name on the far end of a line or missing: `Nora is on the line`, `Nora is gone`. */
export const absenceAfter: readonly RegExp[] = [
  /^ (?:is |'s )?on the (?:line|phone|radio|other end)\b/i,
  /^ (?:is|has) (?:gone|left|dead|missing|nowhere|not here|not there)\b/i,
  /^ (?:isn['’]t|is not) (?:here|there|in)\b/i,
];

/** Words that a name of several words must not be cut down to: `Old` is no short form of OLD MAN. */
export const noShortNames: ReadonlySet<string> = new Set(
  `mr mrs ms miss dr doctor prof professor sir lady lord captain sergeant officer nurse father mother sister brother uncle aunt old young
  little big tall fat thin first second third man woman boy girl guard driver waiter clerk child teen kid guy lad lass the a an of and
  no red blue green black white grey north south east west`.split(/\s+/),
);

/** Words by which someone leaves a scene. Common practice of reading entrances and exits. */
export const leavingWords =
  /\b(?:leaves?|left|exits?|departs?|vanish(?:es)?|disappears?|flees?|bolts|(?:goes|walks?|runs?|storms?|slips?|steps?|climbs?|hurries|drives?|rides?|strides?|rushes|marches|stumbles?|crawls?|sneaks?|is led|is carried|is taken|is dragged) (?:out|off|away|outside|upstairs|downstairs|home)|(?:shuts|closes|slams) the door behind)\b/i;
