import type { Mention } from './mentions.js';

/** A mention with the name of the element that it means over the whole script. */
export interface Named {
  readonly mention: Mention;
  readonly name: string;
}

/** Names every mention: "the lantern" after "a storm lantern" is the storm lantern; a red scarf and a blue one stay two. */
export function nameElements(mentions: readonly Mention[]): Named[] {
  const groups = new Map<string, Mention[]>();
  for (const mention of mentions) {
    const group = groups.get(mention.name.singular);
    if (group) group.push(mention);
    else groups.set(mention.name.singular, [mention]);
  }
  const names = new Map<Mention, string>();
  for (const group of groups.values()) nameGroup(group, names);
  return mentions.map((mention) => ({ mention, name: names.get(mention) as string }));
}

/** Names the mentions of one head word, in the order of the script. */
function nameGroup(group: readonly Mention[], names: Map<Mention, string>): void {
  const coloured = new Set(group.map(colourOf).filter((one) => one !== '')).size > 1;
  const front = (mention: Mention) =>
    [coloured ? colourOf(mention) : '', ...mention.name.telling].filter((one) => one !== '').join(' ');
  const only = onlyFronts(group, front);
  const singular = group.some((one) => !isPlural(one));
  let scene = -1;
  let last = new Map<string, string>();
  for (const mention of group) {
    if (mention.sentence.scene !== scene) last = new Map();
    scene = mention.sentence.scene;
    const like = likeness(mention);
    const known = last.get(like) ?? (mention.category === 'extras' ? '' : (only.get(like) ?? ''));
    const own = front(mention) || (pointsBack(mention) ? known : '');
    last.set(like, own);
    const head = singular ? mention.name.singular : mention.name.head;
    names.set(mention, own === '' ? head : `${own} ${head}`);
  }
}

/**
 * The fuller names that are the only ones of their category and number: "the lantern" anywhere is the storm lantern, unless
 * the script has "a lantern" too.
 */
function onlyFronts(group: readonly Mention[], front: (mention: Mention) => string): Map<string, string> {
  const only = new Map<string, string>();
  for (const mention of group) {
    const own = front(mention);
    if (own === '' && pointsBack(mention)) continue;
    const before = only.get(likeness(mention));
    only.set(likeness(mention), before === undefined || before === own ? own : '');
  }
  return only;
}

const colourOf = (mention: Mention) => mention.name.colours.join(' ');
const isPlural = ({ name }: Mention) => name.head !== name.singular;

/** What must agree for two names to mean one thing: two people's jackets are two. */
const likeness = (mention: Mention) =>
  `${mention.category} ${isPlural(mention)} ${mention.category === 'costumes' ? (mention.by ?? '') : ''}`;

/** "the lantern", "her lantern", "that lantern" speak of one that is known. */
function pointsBack({ part }: Mention): boolean {
  const determiner = part.phrase.determiner?.lower ?? '';
  return part.phrase.owner !== null || /^(?:the|this|that|these|those|both)$/.test(determiner);
}
