import { type Cue, noun, phrase, verb } from './implications/cue.js';
import { climbing } from './implications/shared-cues.js';

/** What raises the hazard of height. */
export const cuesOfHeight: Readonly<Record<string, readonly Cue[]>> = {
  H11: [
    phrase('along the rope|along a rope|along the guy rope|along the guy|along the wire|along a wire', {
      subject: 'PERSON',
      notNear: 'hand hands fingers bird',
    }),
    phrase(
      'come over the rail|comes over the rail|hand on the rail|hangs from the rail|hang from the rail|over the gap|across the gap',
      {
        subject: 'PERSON',
      },
    ),
    phrase(
      'storeys down|stories down|floors down|out over nothing|over nothing|third floor|fourth floor|fifth floor|top floor|knotted sheets|porch roof|flat roof|walk the beam',
      {
        notNear: 'lift elevator button flat apartment office lives live neighbour neighbor',
      },
    ),
    phrase('hang over the rail|lean over the rail|over the parapet|over the balustrade', {
      subject: 'PERSON',
      notNear: 'coat towel ship deck boat',
    }),
    noun('pylon gallery', {
      heading: 'only',
      notNext: 'owner opening cafe shop',
      notPrev: 'art picture portrait shooting national press',
    }),
    phrase(
      'on a wire|on wires|on a harness|in a harness|in harness|flying harness|rolling steps|chair on a table|chair on the table',
      {
        notNear: 'bird birds washing horse dog sledge fence barbed guide',
      },
    ),
    noun('banister banisters bannister stairwell', {
      near: 'slide slides slid leg legs over sits leans climbs hangs drop falls edge',
      notNear: 'hand hands coat',
    }),
    phrase('window cleaner|rock face|tree surgeon|steeplejack|roof of the car|on the roof of', { notNear: 'photo' }),
    phrase('high up|far below|a long way down|way below|high above', {
      notNear:
        'dignity traffic hill shelf shelves cupboard sun sky bird birds moon plane star stars cloud clouds window',
    }),
    phrase("do n't look down|don't look down|never look down", { spoken: true }),
    noun('gondola', { near: 'top wheel ski mountain cable', modifier: true }),
    phrase('top gondola|cable car|ski lift|chair lift|lift shaft|elevator shaft', { heading: true }),
    phrase('in the branches|up the tree|up a tree|down the tree|top of the tree|in the treetop', {
      subject: 'PERSON',
      notNear: 'bird birds cat lights light wind owl crow nest lantern lanterns squirrel',
    }),
    verb('lean hang', {
      subject: 'PERSON',
      near: 'upstairs balcony rail railing parapet window',
      next: 'far out over right',
      notNear: 'car van truck lorry cab taxi bus train bar counter table boat ship deck',
    }),
    verb('balance', {
      subject: 'PERSON',
      near: 'wall beam rail railing edge roof ledge rope plank wire parapet fence branch',
    }),
    phrase('along the top of', { near: 'wall roof fence dam scaffold cliff' }),
    noun('hayloft', { near: 'jump jumps edge falls hatch leans ladder climbs' }),
    noun('catwalk', { notNear: 'model models fashion' }),
    noun('battlement battlements rampart ramparts rung rungs', { heading: true }),
    verb('shin shinny', { subject: 'PERSON', next: 'up down' }),
    phrase('leg over', {
      near: 'rim rail railing sill parapet edge wall balcony bridge ledge gondola windowsill',
      notNear: 'horse saddle bike bicycle motorbike chair bed',
    }),
    phrase('upstairs window|attic window|window ledge|bedroom window', {
      near: 'climbs climb drops jumps out leans sheets rope',
    }),
    noun(
      'rooftop ledge scaffold scaffolding precipice parapet cliff clifftop gantry crane quarry ravine gorge chasm crag',
      {
        heading: true,
        modifier: true,
        notNear: 'paper bird',
        notNext: 'office company garden restaurant bar pool',
      },
    ),
    phrase(
      'very edge|the brink|to the drop|over the drop|into the drop|at the drop|the drop below|sheer drop|long drop|steep drop|drop falls away|edge of the cliff|edge of the quay|edge of the pier|edge of the platform|edge of the roof|edge of the quarry|edge of the ravine|edge of the canyon|edge of the bridge|tightrope|high wire|abseil|rappel|fire escape|rope bridge',
      {
        heading: true,
        notPrev: 'under beneath below behind',
        notNext: 'of',
        notNear:
          'bed table desk seat chair bath page crowd field wood woods tears war madness sleep ruin bankruptcy glass pipette sofa',
      },
    ),
    phrase('very edge of|brink of', {
      near: 'cliff roof quay pier platform quarry ravine canyon bridge rock water ledge',
    }),
    noun('roof', {
      heading: true,
      notNear: 'rain car mouth sound convertible sun van leak leaks under collapses caves tunnel pit comes down',
      modifier: true,
      notNext: 'of rack garden tile tiles box light',
    }),
    noun('ladder stepladder', { notNear: 'tights stockings career social', notNext: 'back' }),
    noun('balcony bridge', {
      heading: true,
      notNear: 'nose guitar violin card loan dental club captain',
      notNext: 'of',
    }),
    noun('cliff peak crest mountain mountainside', { heading: 'only' }),
    noun('ridge summit', {
      near: 'along walk walks climb climbs rope roped crest top',
      notNear: 'binoculars telescope talks meeting',
    }),
    noun('ridge summit crevasse viaduct', {
      heading: 'only',
      modifier: true,
      notNear: 'meeting talks leaders nose roof-tile',
      notNext: 'meeting tent talks road street way',
    }),
    phrase(
      'roped together|roped to|climbing rope|climbing harness|safety line|crampons|behind her , roped|behind him , roped',
      {
        notNear: 'wardrobe boat horse mast car',
      },
    ),
    ...climbing,
    phrase('over the edge|edge of the|over the railing|over the balcony|at the top of the tower|out of ~ window', {
      near: 'windowsill sill gutter branch beam rope drainpipe mast cliff quay pier roof platform building ledge drop quarry window railing balcony leans climbs climb jump jumps lean hangs dangles hang dangle bridge sits fall falls',
      notNear:
        'bed table desk seat chair bath bathtub tub sofa couch armchair bench sink counter rug plate bowl box stage lake river look looks stare stares gaze gazes town village field wood woods page crowd frame',
    }),
    phrase('hang from|dangle from', {
      subject: 'PERSON leg legs foot feet',
      near: 'windowsill sill gutter branch beam rope drainpipe mast cliff quay pier roof platform building ledge drop quarry window railing balcony bridge crane ladder',
    }),
    phrase(
      'metres up|meters up|feet up|metres above|feet above|storeys up|stories up|floors up|walk the wire|on the wire|trapeze',
      {
        notNear: 'puts put phone telephone table stool desk sofa barbed bird birds sparrow crow',
      },
    ),
    noun('treehouse lighthouse steeple belfry', { heading: true, near: 'climb climbs top roof ledge ladder ext' }),
  ],
};
