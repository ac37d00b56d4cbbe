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
  const singular = group.some((one) => one.name.head === one.name.singular);
  const full = new Set(group.map(front).filter((one) => one !== ''));
  group.forEach((mention, at) => {
    const own = front(mention) || (pointsBack(mention) ? fullerName(group, at, front, full) : '');
    const head = singular ? mention.name.singular : mention.name.head;
    names.set(mention, own === '' ? head : `${own} ${head}`);
  });
}

const colourOf = (mention: Mention) => mention.name.colours.join(' ');

/** "the lantern", "her lantern", "that lantern" speak of one that is known. */
function pointsBack({ part }: Mention): boolean {
  const determiner = part.phrase.determiner?.lower ?? '';
  return part.phrase.owner !== null || /^(?:the|this|that|these|those|both)$/.test(determiner);
}

/** The fuller name used last before in the scene, else the only one in the script; empty when it is not clear. */
function fullerName(
  group: readonly Mention[],
  at: number,
  front: (mention: Mention) => string,
  full: ReadonlySet<string>,
): string {
  const mention = group[at] as Mention;
  for (let before = at - 1; before >= 0; before--) {
    const other = group[before] as Mention;
    if (other.sentence.scene !== mention.sentence.scene) break;
    if (front(other) !== '') return front(other);
  }
  return full.size === 1 ? ([...full][0] as string) : '';
}
