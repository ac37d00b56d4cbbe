import type { CategoryName } from '../trade/categories.js';
import type { DeedFacts } from './deed-facts.js';

/** One way in which a verb names an event. */
export interface EventRule {
  readonly category: CategoryName;
  readonly words: string;
  readonly holds: (facts: DeedFacts) => boolean;
  /** Names the subject, not the verb: "water sprays" is water. */
  readonly bySubject?: true;
  /** What to call it, when neither verb nor subject alone says. */
  readonly named?: (facts: DeedFacts) => string;
}

/** True when one of the words fits the pattern. */
export const any = (words: readonly string[], pattern: RegExp) => words.some((word) => pattern.test(word));

/** How verbs name sounds. */
export const soundRules: readonly EventRule[] = [
  {
    category: 'graphics',
    words: 'a screen shows words',
    named: (f) => `words on the ${f.subject?.head ?? 'screen'}`,
    holds: (f) =>
      f.subjectIn('screens') && /^(?:read|say|flash|spell)$/.test(f.deed.lemma) && !f.deed.passive && f.isQuoted(),
  },
  {
    category: 'music',
    words: 'music is played',
    named: (f) => `${f.subject?.head ?? 'music'} plays`,
    holds: (f) =>
      f.subjectIn('music-players') &&
      !/^[us]/.test(f.subject?.letters ?? '') &&
      (f.deed.lemma === 'play' || (f.deed.lemma === 'strike' && f.rest[0] === 'up')) &&
      (f.doer !== 'person' || f.subjectIn('groups')),
  },
  {
    category: 'music',
    words: 'somebody sings',
    holds: (f) => /^(?:sing|croon|yodel)$/.test(f.deed.lemma) && f.doer === 'person' && !f.deed.passive,
  },
  {
    category: 'sound',
    words: 'what plays is heard',
    holds: (f) => f.deed.lemma === 'play' && f.subjectIn('players') && f.doer !== 'person',
  },
  {
    category: 'sound',
    words: 'somebody or something unseen is heard',
    holds: (f) =>
      /^some(?:thing|one|body)$/.test(f.deed.subject?.pronoun ?? '') &&
      !f.deed.passive &&
      (f.named('sound-verbs') || /^(?:hammer|scratch|knock|rap|crash|tap|scuttle)$/.test(f.deed.lemma)),
  },
  {
    category: 'sound',
    words: 'things crash out of sight',
    holds: (f) =>
      f.deed.lemma === 'crash' &&
      f.doer === 'thing' &&
      any(f.rest, /^(?:somewhere|outside|upstairs|downstairs|offstage|nearby|overhead)$/),
  },
  {
    category: 'sound',
    words: 'a clock or a door is heard',
    holds: (f) =>
      (f.deed.lemma === 'strike' && f.subject?.head === 'clock') ||
      (f.deed.lemma === 'slam' && /^(?:door|shutter|gate|hatch|lid|window)$/.test(f.subject?.head ?? '')) ||
      (f.deed.lemma === 'hammer' && /^(?:typewriter|piano|machine|gun)$/.test(f.subject?.head ?? '')),
  },
  {
    category: 'sound',
    words: 'somebody strikes what sounds',
    holds: (f) =>
      f.doer === 'person' &&
      !f.deed.passive &&
      ((f.deed.lemma === 'ring' && /^(?:bell|doorbell|handbell|gong)$/.test(f.object?.head ?? '')) ||
        (/^(?:bang|beat|drum|clang)$/.test(f.deed.lemma) &&
          any(f.rest, /^(?:saucepan|pan|pot|gong|drum|kettle|bucket|tin|lid|pipe|railing|railings)$/))),
  },
  {
    category: 'sound',
    words: 'a crowd is heard',
    holds: (f) =>
      /^(?:crowd|fan|audience|spectator|mob)$/.test(f.subject?.head ?? '') &&
      /^(?:roar|cheer|applaud|chant|jeer|scream|boo|whoop|clap)$/.test(f.deed.lemma),
  },
  {
    category: 'sound',
    words: 'a thing or an animal is heard',
    holds: (f) =>
      (f.named('sound-verbs') || f.named('sounds')) &&
      !f.deed.passive &&
      f.hit === null &&
      !/^(?:blow|strike|whisper|sing|sound|play|talk|knock|thunder|drip|beat)$/.test(f.deed.lemma) &&
      heard(f),
  },
];

/** A voice, an effect or a passing vehicle is listed as itself; a sound word needs no second one. */
function heard(f: DeedFacts): boolean {
  if (f.deed.subject?.pronoun === 'it')
    return /^(?:ring|buzz|beep|blare|honk|bark|howl|screech|whirr|chime|squeak|creak|crow|growl|quack|meow|purr|hiss|rattle|hum|whistle|wail|snarl|ping|tick|crackle|squeal|moo|bleat|squeak|neigh|hoot|caw|toll|clang|clatter)$/.test(
      f.deed.lemma,
    );
  if (f.doer === 'person')
    return /^(?:baby|infant|child)$/.test(f.subject?.head ?? '') && /^(?:cry|wail|scream)$/.test(f.deed.lemma);
  if (!f.subject || f.doer === 'nobody') return false;
  if (
    f.doer === 'vehicle' &&
    /^(?:past|by|off|away|in|into|onto|towards?|up|down|along|through|across|over|to|around|round)$/.test(
      f.rest[0] ?? '',
    )
  )
    return false;
  if (
    /^(?:cough|yelp|snort|snarl|mutter|whimper)$/.test(f.deed.lemma) &&
    f.doer === 'thing' &&
    !coughing.test(f.subject.head)
  )
    return false;
  if (/^(?:[sue]|[^d]s)/.test(f.subject.letters)) return false;
  return !/^(?:voice|light|sea|desert|wind|breath|rain|stomach|blood|water)$/.test(f.subject.head);
}

/** Things of which only people's and animals' sounds are said: "the engine coughs", "the wireless mutters". */
const coughing =
  /^(?:engine|motor|generator|machine|pump|radio|wireless|television|tv|speaker|loudspeaker|tannoy|boiler|outboard|mower)$/;
