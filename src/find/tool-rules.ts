import { toolOf } from '../trade/verb-tools.js';
import type { DeedFacts } from './deed-facts.js';
import { any, type EventRule } from './sound-rules.js';

/** How verbs name the thing that they are done with. */
export const toolRules: readonly EventRule[] = [
  {
    category: 'props',
    words: 'the verb names its tool',
    named: (f) => toolOf(f.deed.lemma),
    holds: (f) =>
      f.named('instrument-verbs') &&
      isToolUse(f) &&
      f.doer === 'person' &&
      !f.deed.passive &&
      !any(f.rest, /^(?:with|out|through|away)$/),
  },
  {
    category: 'props',
    words: 'somebody is tied by it',
    named: () => 'rope',
    holds: (f) =>
      /^(?:bind|tie|truss|lash)$/.test(f.deed.lemma) &&
      (f.hit === 'person' || /^gags?$/.test(f.rest[1] ?? '')) &&
      !f.deed.passive &&
      !f.gives &&
      (f.object === null ||
        /^(?:wrist|hand|ankle|foot|leg)$/.test(f.object.head) ||
        !f.object.classes.includes('body')) &&
      !any(f.rest, /^(?:with|up|hair|game|draw)$/),
  },
  {
    category: 'props',
    words: 'somebody is silenced or blinded by it',
    named: (f) => f.deed.lemma,
    holds: (f) => /^(?:gag|blindfold)$/.test(f.deed.lemma) && f.hit === 'person' && !f.deed.passive,
  },
];

/** "sweeps the floor", "tacks it up"; "sweeps the letters off the desk" and "nails the landing" need no tool. */
function isToolUse({ deed, hit, object, rest }: DeedFacts): boolean {
  if (deed.participle && hit !== 'thing') return false;
  if (deed.lemma === 'film') return !any(rest, /^(?:on|through)$/);
  if (deed.lemma === 'stamp')
    return hit === 'thing' && !/^(?:foot|ground|floor)$/.test(object?.head ?? '') && rest[0] !== 'on';
  if (deed.lemma === 'sweep') return swept.test(object?.head ?? '');
  return !/^(?:nail|tack|staple)$/.test(deed.lemma) || any(rest, /^(?:up|to|down|on|onto|over|across|shut)$/);
}
const swept =
  /^(?:floor|step|yard|street|path|hall|room|leaf|glass|snow|stage|deck|porch|hearth|pavement|kitchen|shop|corridor|platform|crumb|ash)$/;
