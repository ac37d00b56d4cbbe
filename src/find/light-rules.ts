import type { EventRule } from './sound-rules.js';

/** How verbs name what light does in the picture, and what foams or boils over. */
export const lightRules: readonly EventRule[] = [
  {
    category: 'effects',
    words: 'it foams or boils over',
    holds: (f) =>
      /^(?:foam|froth|fizz|boil|bubble)$/.test(f.deed.lemma) &&
      !f.deed.passive &&
      f.doer === 'thing' &&
      f.hit === null &&
      f.rest[0] === 'over',
  },
  {
    category: 'effects',
    words: 'the lights change in the picture',
    bySubject: true,
    holds: (f) =>
      f.subject?.head === 'light' &&
      f.deed.subject?.phrase?.modifiers.length === 0 &&
      f.deed.subject.phrase.determiner?.lower !== 'a' &&
      f.deed.at - f.deed.subject.phrase.end <= 1 &&
      /^(?:go|come|snap|flick|die|blink)$/.test(f.deed.lemma) &&
      /^(?:out|off|on|up|down)$/.test(f.rest[0] ?? ''),
  },
  {
    category: 'effects',
    words: 'a light moves or changes in the picture',
    bySubject: true,
    holds: (f) =>
      f.subject?.head === 'light' &&
      !f.deed.passive &&
      f.subject.source !== 'list' &&
      /^(?:sweep|cross|flash|blink|rake|circle|pulse|flicker|pass|revolve|wink|appear|dim|fade|grow|shine|glow|strobe|show|play|slide)$/.test(
        f.deed.lemma,
      ),
  },
];
