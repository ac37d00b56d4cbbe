import { noun, phrase, verb, voice } from './cue.js';
import { certain, type Implication, implies, likely, question, task } from './implication.js';

const phones = 'phone telephone mobile receiver handset smartphone cell cellphone walkie-talkie';

/** Rows 34, 35, 71, 73 and 78: phones, screens, clocks, knocks, signs. */
export const screensAndSound: readonly Implication[] = [
  implies(
    34,
    'phone-in-hand',
    [
      verb('text phone telephone', { subject: 'PERSON', notNext: 'held out aloft up' }),
      verb('dial redial', { subject: 'PERSON', notNear: 'oven radio safe' }),
      phrase('hangs up|hang up', {
        subject: 'PERSON',
        notObject: 'GARMENT',
        notNext: 'his her the a their',
        notNear: 'coat hook washing',
      }),
      phrase(
        'makes a call|make a call|takes the call|takes a call|answers the call|on the line|swipes the screen|scrolls through|scroll through|leaves a message|leave a voicemail|text message|a text arrives|a message pings',
        { notNear: 'computer laptop washing production' },
      ),
      voice('phone'),
    ],
    {
      elements: [certain('phone', 'props', phones, true)],
      tasks: [task('Phone: dummy or silent, screen made before; who speaks the other side?')],
    },
  ),
  implies(
    34,
    'phone-there',
    [
      noun('phone telephone mobile smartphone', {
        near: 'ring rings buzz buzzes vibrate vibrates answer answers screen picks dials listens hang hangs beep beeps ping pings lights',
      }),
    ],
    {
      tasks: [task('Phone: dummy or silent, screen made before; who speaks the other side?', 'ask')],
    },
  ),
  implies(
    34,
    'message-on-screen',
    [
      verb('text', { subject: 'PERSON' }),
      phrase(
        'text message|a text from|message reads|text reads|the screen reads|message from PERSON|a message appears|message pops up',
      ),
    ],
    {
      elements: [likely('phone screen with the message', 'graphics', 'screenshot', true)],
      tasks: [task('Write the words on the screen, with name, story time and date.', 'certain')],
    },
  ),
  implies(
    35,
    'screen-plays',
    [
      noun('tv television telly monitor', {
        near: 'play plays show shows blare blares flicker flickers drone drones on watch watches watching news glow glows cartoon football mutter mutters',
        notNear: 'baby',
      }),
      phrase(
        'on the news|on the television|on television|watches tv|watch tv|watching tv|watches television|watching television|security footage|cctv footage|on the laptop screen|on the monitor',
      ),
      verb('watch', { subject: 'PERSON', object: 'tv television film movie cartoon news match footage video' }),
    ],
    {
      elements: [
        likely('programme for the screen', 'graphics', 'news film cartoon footage programme video static show', false),
      ],
      tasks: [task('Make what plays on the screen before the shoot; rights; flicker test.')],
    },
  ),
  implies(
    35,
    'radio-plays',
    [
      noun('radio', {
        near: 'play plays blare blares crackle crackles on news song music voice voices mutter mutters announce announces weather',
        notNear: 'police walkie',
      }),
    ],
    {
      tasks: [task('Radio: record the programme, invented or cleared; lay it in later.')],
    },
  ),
  implies(35, 'typing', [verb('type', { subject: 'PERSON', notNear: 'blood phone code pin' })], {
    elements: [
      certain(
        'keyboard',
        'props',
        'keyboard laptop typewriter computer terminal tablet pc till register machine keypad code',
        true,
      ),
    ],
    tasks: [task('What does the screen or page show? Make it before.')],
  }),
  implies(
    71,
    'time-shown',
    [
      noun('clock calendar alarm-clock', { notNear: 'against around biological', notNext: 'tower' }),
      phrase('the date on|clock reads|clock shows|clock says|clock strikes'),
    ],
    {
      tasks: [task('Clock or calendar: set to the story, stopped, set again each set-up.', 'ask')],
    },
  ),
  implies(
    73,
    'knock',
    [
      verb('knock rap', {
        subject: 'PERSON NONE',
        object: 'NONE',
        notNext: 'over down out back off into against the his her',
        notNear: 'glass knees song lyrics over',
      }),
      noun('knock', { near: 'door at window' }),
      phrase(
        'doorbell rings|the doorbell|rings the doorbell|ring the doorbell|bell over the door|door buzzes|the buzzer|buzzer sounds',
        { notNear: 'school church bicycle shop' },
      ),
      voice('off-screen'),
    ],
    {
      tasks: [task('Heard from off: who gives it on cue? Record it apart later.', 'ask')],
    },
  ),
  implies(
    78,
    'lettering',
    [
      noun('logo billboard poster signboard placard hoarding nameplate headline', { notNear: 'bed' }),
      noun('sign signs banner', {
        near: 'read reads reading says above door shop neon hang hangs hanging painted window road says: wooden',
        notNear: 'language vital life',
      }),
      phrase('a sign reads|sign reads|the sign above|for sale sign|neon sign|road sign'),
    ],
    {
      tasks: [task('Lettering: invented names; a fixing that comes off; cover real signs.')],
    },
  ),
  implies(
    78,
    'what-words',
    [noun('poster placard billboard banner signboard', { notNear: 'bed read reads reading says' })],
    {
      questions: [
        question(
          'what-does-it-say',
          'What exactly does the {head} show or say?',
          'read reads reading saying blank faded',
        ),
      ],
    },
  ),
  implies(
    101,
    'applause',
    [phrase('applause breaks out|the audience applauds|crowd applauds|crowd cheers|audience laughs|crowd roars')],
    {
      tasks: [task('Crowd sound: record it apart with those who are there.')],
    },
  ),
];
