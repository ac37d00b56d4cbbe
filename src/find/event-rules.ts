import type { DeedFacts } from './deed-facts.js';
import { lightRules } from './light-rules.js';
import { any, type EventRule, soundRules } from './sound-rules.js';
import { toolRules } from './tool-rules.js';

const itself = /^(?:itself|themselves|unaided|own)$/;
const soft = /^(?:bed|chair|sofa|seat|knees|feet|armchair|bath|line|step|silence|love|place|view|sight|shape)$/;

/** "hangs head": a part of the body without an article is the doer's own. */
const isOwnBody = (f: DeedFacts) => f.object?.head === f.rest[0];

/** What verbs name as events; the first that holds counts. */
export const eventRules: readonly EventRule[] = [
  {
    category: 'effects',
    words: 'loose matter moves by itself',
    bySubject: true,
    holds: (f) => f.subjectIn('matter') && f.named('flowing') && !f.deed.passive,
  },
  ...toolRules,
  {
    category: 'visual-effects',
    words: 'an animal does what only a person can',
    holds: (f) => f.doer === 'animal' && /^(?:speak|say|talk|sing|wink|whisper|reply|laugh)$/.test(f.deed.lemma),
  },
  {
    category: 'visual-effects',
    words: 'a shadow or a reflection has a life of its own',
    bySubject: true,
    holds: (f) =>
      /^(?:shadow|reflection)$/.test(f.subject?.head ?? '') &&
      (any(f.rest, itself) || /^(?:detach|step|wave|smile|turn|walk|speak|move|wink|cross)$/.test(f.deed.lemma)),
  },
  {
    category: 'visual-effects',
    words: 'a thing moves by itself',
    holds: (f) =>
      f.doer === 'thing' &&
      /^(?:rise|float|hover|lift|slide|move|swing|open|walk|detach|fly|turn|rock|cross)$/.test(f.deed.lemma) &&
      any(f.rest, itself),
  },
  {
    category: 'visual-effects',
    words: 'one thing becomes another',
    holds: (f) => f.deed.lemma === 'become' && f.object !== null && /^[av]/.test(f.object.letters),
  },
  {
    category: 'visual-effects',
    words: 'only a changed picture shows it',
    holds: (f) =>
      f.named('picture-verbs') &&
      !(
        /^(?:shrink|grow)$/.test(f.deed.lemma) &&
        !any(f.rest, /^(?:to|smaller|bigger|taller|larger|inch|inches|feet|metres|meters|size)$/)
      ) &&
      f.doer !== 'nobody' &&
      f.hit === null &&
      !(f.subject && /^(?:matter)$/.test(f.subject.head)),
  },
  {
    category: 'visual-effects',
    words: 'somebody lifts what nobody can',
    holds: (f) =>
      f.doer === 'person' &&
      /^(?:lift|hurl|throw|flip|juggle)$/.test(f.deed.lemma) &&
      f.object?.source === 'list' &&
      f.object.letters.startsWith('v') &&
      !/^(?:bicycle|bike|scooter|drone|canoe|tricycle|sled|kayak|sledge)$/.test(f.object.head),
  },
  {
    category: 'stunts',
    words: 'somebody is handled roughly',
    holds: (f) =>
      f.named('rough-verbs') &&
      f.hit === 'person' &&
      !/^(?:wave|surge|pang|stab|flood|rush|jolt|thought|idea|memory)$/.test(
        f.doer === 'thing' ? (f.subject?.head ?? '') : '',
      ) &&
      !f.gives &&
      !f.deed.passive &&
      !(f.object !== null && (any(f.rest.slice(0, 1), /^(?:his|her|their|my|your)$/) || isOwnBody(f))) &&
      !(/^(?:throw|drop|fling|toss|hurl)$/.test(f.deed.lemma) && f.rest[0] === 'them') &&
      f.deed.lemma !== 'run',
  },
  {
    category: 'stunts',
    words: 'somebody is shot or struck',
    holds: (f) =>
      f.deed.passive &&
      f.doer === 'person' &&
      /^(?:shoot|stab|strike|throw|drag|fling|hurl|knock|trample|gore|run)$/.test(f.deed.lemma) &&
      f.hit === null &&
      (f.deed.lemma !== 'run' || f.rest[0] === 'over'),
  },
  {
    category: 'stunts',
    words: 'a fist is driven into somebody',
    holds: (f) =>
      /^(?:drive|swing|sink|crack|ram|smash)$/.test(f.deed.lemma) &&
      /^(?:fist|elbow|knee|tooth|head|boot|skull)$/.test(f.object?.head ?? '') &&
      any(f.rest, /^(?:into|against|over|at|on)$/),
  },
  {
    category: 'stunts',
    words: 'a person falls',
    holds: (f) =>
      f.deed.lemma === 'fall' &&
      f.doer === 'person' &&
      !f.deed.participle &&
      !/^(?:asleep|silent|quiet|in|apart|ill|short|for|still|behind|into|about|open|under)$/.test(f.rest[0] ?? '') &&
      !(f.rest[0] === 'back' && !any(f.rest, /^(?:against|into|on|onto|over|through|off|down)$/)) &&
      !any(f.rest, soft),
  },
  {
    category: 'stunts',
    words: 'a person goes through the air or off a height',
    holds: (f) =>
      /^(?:jump|drop|swing|crash|fall|roll|fly|leap|spring|hurtle|slide)$/.test(f.deed.lemma) &&
      f.doer === 'person' &&
      f.hit === null &&
      any(f.rest, /^(?:through|off|over|from|into|onto|across|overboard|out|to)$/) &&
      !any(f.rest, soft) &&
      !(f.deed.lemma === 'spring' && f.rest[0] === 'up') &&
      !/^(?:in|by|to|out)$/.test(
        f.rest[0] === 'out' && f.deed.lemma === 'swing' && any(f.rest, /^(?:rope|trapeze|vine|chandelier|cable)$/)
          ? ''
          : (f.rest[0] ?? ''),
      ),
  },
  {
    category: 'stunts',
    words: 'a person goes over backwards',
    holds: (f) =>
      f.deed.lemma === 'go' &&
      f.doer === 'person' &&
      /^(?:backward|backwards|headfirst|headlong|flying|sprawling)$/.test(f.rest[0] ?? '') &&
      any(f.rest, /^(?:into|over|off|through|down|onto|out)$/),
  },
  {
    category: 'stunts',
    words: 'a vehicle is driven hard',
    holds: (f) =>
      f.doer === 'vehicle' &&
      f.named('driven-stunts') &&
      !f.deed.passive &&
      !(
        f.deed.lemma === 'drift' &&
        /boat$|^(?:ship|raft|dinghy|punt|canoe|kayak|barge|yacht|skiff|trawler|ferry)$/.test(f.subject?.head ?? '')
      ) &&
      (f.deed.lemma !== 'roll' || any(f.rest.slice(0, 1), /^(?:over|onto|off|into)$/)),
  },
  {
    category: 'stunts',
    words: 'a person does what can hurt',
    holds: (f) =>
      f.named('stunt-verbs') &&
      !f.deed.passive &&
      (f.doer === 'person' || f.doer === 'nobody') &&
      (f.hit !== 'thing' || f.named('object-stunts')) &&
      !(f.deed.lemma === 'plunge' && f.object !== null) &&
      !(f.doer === 'nobody' && f.deed.participle) &&
      !(f.deed.participle && /^(?:sprawl|stumble|slip|bolt)$/.test(f.deed.lemma)) &&
      !(f.deed.lemma === 'slip' && (f.object !== null || !/^(?:on|and|again)?$/.test(f.rest[0] ?? ''))) &&
      !any(f.rest, soft) &&
      !/^(?:away|through)$/.test(f.rest[0] ?? ''),
  },
  {
    category: 'effects',
    words: 'a heavy thing falls',
    holds: (f) =>
      f.doer === 'thing' &&
      /^(?:topple|plummet|cartwheel|hurtle|overturn|collapse|tumble|fall|careen|somersault|keel)$/.test(f.deed.lemma) &&
      f.subject !== null &&
      (f.named('stunt-verbs') || f.subjectIn('breaking')) &&
      /^[pdwv]|^$/.test(f.subject.letters) &&
      f.subject.source !== 'unknown',
  },
  {
    category: 'effects',
    words: 'a thing falls from a height',
    holds: (f) =>
      f.doer === 'thing' &&
      /^(?:fall|drop|crash)$/.test(f.deed.lemma) &&
      /^[pdwv]/.test(f.subject?.letters ?? '') &&
      f.hit === null &&
      any(f.rest, /^(?:from|off)$/) &&
      any(f.rest, /^(?:roof|sky|ceiling|window|balcony|cliff|rafters|scaffolding|crane|plane|flies)$/),
  },
  {
    category: 'sound',
    words: 'a thing is smashed: it is heard',
    holds: (f) => f.deed.lemma === 'smash' && f.doer === 'thing' && f.hit === null,
  },
  {
    category: 'effects',
    words: 'the weather',
    holds: (f) =>
      /^(?:rain|snow|hail|drizzle|sleet)$/.test(f.deed.lemma) &&
      (f.deed.subject?.pronoun === 'it' || f.doer === 'nobody'),
  },
  {
    category: 'effects',
    words: 'a thing does what must be made on set',
    holds: (f) =>
      f.named('effect-verbs') &&
      !f.deed.passive &&
      !/^(?:rain|snow|hail|smash|billow|drizzle|steam|foam|bubble)$/.test(f.deed.lemma) &&
      (f.doer === 'thing' || f.doer === 'vehicle') &&
      f.hit === null &&
      (/^(?:explode|shatter|erupt|detonate|ignite|smoulder|combust|implode|crumble|spark|collapse|burn|smoke|blaze|fizz|disintegrate)$/.test(
        f.deed.lemma,
      ) ||
        f.subjectIn('breaking')) &&
      !/^[esu]/.test(f.subject?.letters ?? '') &&
      ((f.subject?.letters ?? 'x') !== '' || f.subjectIn('breaking')),
  },
  {
    category: 'effects',
    words: 'what carries somebody gives way',
    holds: (f) =>
      /^(?:snap|break|split|crack)$/.test(f.deed.lemma) &&
      !f.deed.passive &&
      f.hit === null &&
      /^(?:branch|bough|plank|board|beam|rung|floorboard)$/.test(f.subject?.head ?? ''),
  },
  {
    category: 'effects',
    words: 'a thing is blown up',
    holds: (f) => f.deed.lemma === 'blow' && f.subjectIn('breaking') && f.hit === null,
  },
  {
    category: 'effects',
    words: 'the ground tilts',
    holds: (f) =>
      /^(?:tilt|pitch|lurch|list|heave|shudder|tremble|quake)$/.test(f.deed.lemma) &&
      /^(?:floor|room|deck|ship|boat|cabin|carriage|plane|ground|building)$/.test(f.subject?.head ?? ''),
  },
  {
    category: 'makeup',
    words: 'somebody bleeds',
    holds: (f) => f.deed.lemma === 'bleed' && (f.doer === 'person' || f.subjectIn('body')),
  },
  {
    category: 'effects',
    words: 'somebody vomits',
    holds: (f) => /^(?:vomit|retch)$/.test(f.deed.lemma) && f.doer === 'person',
  },
  ...lightRules,
  ...soundRules,
];
