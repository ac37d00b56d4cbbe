import { type Cue, noun, phrase, state, verb } from './cue.js';

const pictures = 'film scene photo picture video movie footage commercial documentary';
const inFigures = 'face eye eyes screen smile';

/** Someone lights a smoke without a word for it. */
export const lightingUp: readonly Cue[] = [
  phrase('light up', {
    subject: 'PERSON',
    notObject: 'room face eye screen sky street stage house night window',
    notNext: 'at with the when as for in like his her',
    notNear: inFigures,
  }),
];

/** Tobacco that burns, but for pipes. */
export const smoking: readonly Cue[] = [
  verb('smoke', { subject: 'PERSON', notObject: 'fish ham salmon meat bee bees pipe' }),
  verb('light', { object: 'cigarette cigarettes cigar cigarillo smoke joint roll-up fag cheroot' }),
  phrase(
    'drag on ~ joint|drag on ~ cigarette|draw on ~ cigarette|pull on ~ cigarette|take ~ drag|stub out|flick ~ butt|grind out ~ butt|flick ash|tap ash',
  ),
];

/** Blood that is seen. */
export const blood: readonly Cue[] = [
  verb('bleed', { notSubject: 'radiator colour light ink', notNear: 'radiator radiators' }),
  verb('cut slice gash nick', {
    subject: 'PERSON',
    object: 'BODY himself herself',
    notObject: 'hair nail tooth throat',
    notNext: 'off out in',
    notNear: 'free loose slice mutton lamb pork chicken ham beef meat turkey goose fish',
  }),
  phrase("you 're bleeding|he 's bleeding|she 's bleeding|i 'm bleeding|nose is bleeding", { spoken: true }),
  noun('bloodstain blood-stain nosebleed bloodbath gore'),
  state('bleeding', { notObject: 'heart edge obvious' }),
  state('bloody bloodied blood-soaked bloodstained blood-stained blood-spattered blood-smeared blood-covered gory', {
    notObject: 'hell mary fool idiot thing nuisance minded bugger mess sunday',
  }),
  noun('blood', {
    notPrev: 'flesh cold blue',
    notNext: 'relative boil boils rush rushes pound pounds sugar',
    notNear:
      'pressure type bank donor donors test tests boil boils boiling drain drains drained cold transfusion group',
  }),
  noun('blood', { near: 'drain drains drained cold', notNear: 'face cheek cheeks murder run runs ran in' }),
];

/** Shots: verbs that need a gun. */
export const shots: readonly Cue[] = [
  verb('shoot', {
    subject: 'PERSON',
    object: 'PERSON dog horse deer rabbit bird himself herself lock tyre can bottle target NONE',
    notObject: `look glance smile glances looks hoop basket pool arm hand ${pictures}`,
    notNext: 'up out to past down hoops back across off',
    notNear: `camera lens tripod ball goal slingshot catapult bow arrow ${pictures}`,
  }),
  verb('fire', {
    subject: 'PERSON WEAPON',
    object: 'WEAPON shot round bullet NONE arrow flare cannon',
    notObject: 'question email clay pot up starter him her them employee assistant look glance',
    notNext: 'up him her them me you off',
    notNear: 'email question questions kiln pots engine boiler employee job',
  }),
  phrase('shot ring out|a shot ring|pull the trigger|squeeze the trigger|open fire'),
  noun('gunshot gunfire', { notPrev: 'distant', notNear: 'distance' }),
];

/** A shot that is heard. */
export const shotHeard: readonly Cue[] = [
  noun('shot', {
    next: '.',
    notPrev: 'camera close wide establishing aerial drone long tracking single double last',
    notNear:
      'down downs drink drinks whisky tequila vodka glass bar pours orders knocks take takes photo lens ball far off distance',
  }),
];

/** A weapon that is drawn or aimed, without a word for it. */
export const weaponDrawn: readonly Cue[] = [
  verb('draw', {
    subject: 'PERSON',
    object: 'NONE',
    next: '. ,',
    notNear:
      'curtain pencil picture sketch near close back cough coughs smoke breath pipe cigarette card cards board easel bath',
  }),
  phrase('cock the hammer|cock the gun|take aim', { subject: 'PERSON', notNear: 'camera ball dart' }),
  verb('aim', {
    subject: 'PERSON',
    object: 'NONE WEAPON',
    near: 'at',
    notNear: 'camera remote phone kick lens hose punch telescope to for',
  }),
];

/** Closeness that needs consent. */
export const closeness: readonly Cue[] = [
  verb('kiss', {
    subject: 'PERSON',
    notObject:
      'hand cheek forehead ring photo photograph picture letter cross baby head ball ticket knuckles medal trophy ground cup fingers dog cat crucifix hair top crown arm elbow wrist shoulder knee foot nose',
    notNear: 'goodnight good-night baby',
  }),
  noun('kiss', { notNear: 'cheek forehead blow blows hand' }),
  verb('undress caress', { subject: 'PERSON' }),
  verb('strip', {
    subject: 'PERSON',
    object: 'NONE himself herself',
    notNear: 'wallpaper bed beds paint engine wires bark',
  }),
  state('naked nude topless half-naked half-dressed undressed', {
    notObject: 'bulb flame eye tree branch light truth wire branches',
  }),
  phrase(
    'make love|have sex|half dressed|half naked|in ~ underwear|let ~ dress fall|take off her bra|unhook her bra|slip out of ~ dress|step out of ~ dress|unzip ~ dress|unbutton ~ shirt|pull off ~ shirt|tear at ~ clothes|pull at ~ clothes',
  ),
];

/** A fight or a blow. */
export const fights: readonly Cue[] = [
  verb('punch headbutt strangle throttle tackle pummel wrestle grapple brawl', {
    notObject:
      'wheel door steering it controls number code ticket time card air button clock keypad hole numbers pillow cushion ground wall bag machine',
    notNear: 'ticket hole jar lid keypad suitcase',
  }),
  verb('fight', {
    subject: 'PERSON',
    notObject:
      'tear tears sleep urge smile yawn wind laughter cold panic fire impulse nausea exhaustion sneeze cough fatigue current',
    notNext: 'back for off to',
    notNear: 'tears sleep urge zip umbrella laughter panic wind nausea',
  }),
  verb('struggle', { subject: 'they' }),
  phrase('struggle with PERSON|fight with PERSON|come to blows|fight break out|throw a punch|fight each other'),
  noun('fistfight brawl scuffle'),
  noun('struggle', { prev: 'a the', notNear: 'life words power class inner zip lid' }),
  phrase('swing ~ fist|throw ~ fist|exchange blows'),
];

/** A blow, which can be cheated. */
export const blows: readonly Cue[] = [
  verb('kick', {
    subject: 'PERSON',
    object: 'NONE',
    notNext: 'off back in out about around at up',
    notNear: 'ball baby water swimming legs',
  }),
  verb('slap kick hit beat shove strike', {
    subject: 'PERSON',
    object: 'PERSON face cheek shin jaw stomach ribs',
    notObject:
      'button key brake light switch horn ball table desk counter door wall wheel play pause record note road panel dashboard bottle drum nail stone can tyre water snow machine air number time thigh knee back bell gavel floor lid roof window box phone trolley pram cart wheelchair egg bike chair plate',
    notNear: 'wheelchair swing pram trolley chess cards',
  }),
];

/** Climbing that can end in a fall; in and out of a car or onto a chair is none. */
export const climbing: readonly Cue[] = [
  verb('climb scale clamber', {
    subject: 'PERSON',
    notSubject: 'driver trucker',
    notNext: 'into in out aboard back',
    notNear:
      'stairs stair staircase lap hill path horse saddle pony bed bath chair stool sofa settee couch step bench car cab van lorry truck pickup bus wagon tractor',
  }),
  verb('climb clamber', {
    subject: 'PERSON',
    near: 'top roof crane mast ladder tower moving',
    notNext: 'into in out aboard back',
  }),
  verb('climb clamber', {
    subject: 'PERSON',
    next: 'into out in',
    near: 'window duct vent tree loft attic shaft hole crane tower hatch skylight roof',
  }),
];
