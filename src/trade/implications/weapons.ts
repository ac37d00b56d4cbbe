import { noun, verb } from './cue.js';
import { caution, certain, type Implication, implies, likely, task } from './implication.js';
import { shotHeard, shots, weaponDrawn } from './shared-cues.js';

/** Rows 15 to 18: guns and blades. */
export const weapons: readonly Implication[] = [
  implies(
    15,
    'gun',
    [
      noun('WEAPON musket luger derringer', {
        modifier: true,
        notNear: 'glue nail staple hair water radar',
        notNext: 'metal fire dog',
      }),
    ],
    {
      tasks: [task('Weapon: on the weapon list and call sheet, in a locked box, police told.', 'certain')],
    },
  ),
  implies(15, 'weapon-drawn', weaponDrawn, {
    elements: [likely('replica gun', 'props', 'WEAPON BLADE bow crossbow', true)],
    tasks: [task('Drawn or aimed at someone: never at the person; find the angle.', 'certain')],
  }),
  implies(16, 'shot', [...shots, ...shotHeard], {
    elements: [
      certain(
        'replica gun',
        'props',
        'WEAPON bow crossbow catapult cannon flare weapon starter-pistol slingshot gunshot gunshots gunfire shot',
        true,
      ),
      likely('gunshot', 'sound', 'shot gunshot gunfire gunshots shots bang', false),
    ],
    tasks: [task('Shot: no blanks; sound and flash added later; rehearse the reaction.', 'certain')],
  }),
  implies(
    17,
    'blade',
    [
      noun('BLADE', {
        notPrev: 'toy plastic foam rubber cardboard inflatable polystyrene',
        notNear: 'grass shoulder propeller fan wiper ice hedge coat',
        notNext: 'of',
      }),
    ],
    {
      tasks: [task('Blade: a blunted copy for the scene, the sharp one for a close shot only.')],
    },
  ),
  implies(
    17,
    'cutting',
    [
      verb('slice chop carve fillet dice gut', {
        subject: 'PERSON',
        notNear: 'air water hand axe',
        object:
          'FOODS cod mackerel trout herring salmon eel onion onions vegetable vegetables cabbage loaf ham turkey tomato potato potatoes herbs parsley garlic roast lemon',
      }),
      verb('cut', {
        subject: 'PERSON',
        object: 'FOODS rope string tape cord loaf ribbon onion tomato',
        notNear: 'scissors',
      }),
    ],
    {
      elements: [likely('knife', 'props', 'BLADE', true)],
      tasks: [caution('Cutting with a real blade: who cuts, and near whom?')],
    },
  ),
  implies(
    18,
    'stabbing',
    [
      verb('stab knife', {
        subject: 'PERSON',
        notObject: 'finger button food air key egg sausage steak cigarette potato fork screen',
        notNear: 'fork button',
      }),
      verb('slit slash', { subject: 'PERSON', object: 'throat PERSON wrist face arm' }),
    ],
    {
      elements: [
        certain('soft knife', 'props', '', true),
        certain('stage blood', 'makeup', 'blood', true),
        likely('clean costume double', 'costumes', 'costume-double', false),
      ],
      tasks: [caution('Passers-by may take it for real: police told, signs up.')],
    },
  ),
];
