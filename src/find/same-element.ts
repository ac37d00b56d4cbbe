import type { Mention } from './mentions.js';
import { isNarrower, isWider, meantByWider, meantInScript, speaksOf } from './wider-words.js';

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
  const toys = new Map<Mention, Mention>();
  for (const group of groups.values()) {
    const own = takeForToys(group, toys);
    nameGroup(own, names);
  }
  nameByWiderWords(mentions, names);
  return mentions.map((mention) => {
    const meant = toys.get(mention) ?? mention;
    return { mention: meant, name: names.get(meant) as string };
  });
}

/** "The rabbit" is the stuffed rabbit where no live one comes in, "the chicken" the roast one. */
function takeForToys(group: readonly Mention[], toys: Map<Mention, Mention>): readonly Mention[] {
  const toy = group.find(({ category }) => category === 'props' || category === 'costumes' || category === 'food');
  const live = group.filter(({ category }) => category === 'animals');
  if (!toy || live.length === 0 || !live.every((one) => pointsBack(one) && one.name.called === null)) return group;
  return group.map((one) => {
    if (one.category !== 'animals') return one;
    const meant: Mention = { ...one, category: toy.category };
    toys.set(one, meant);
    return meant;
  });
}

/** "She closes the book" after "a new logbook": one thing. */
function nameByWiderWords(mentions: readonly Mention[], names: Map<Mention, string>): void {
  const nameOf = (one: Mention) => names.get(one) as string;
  const known = mentions.filter((one) => isNarrower(one.name.singular));
  let before: Mention[] = [];
  for (const mention of mentions) {
    if (before[0] && before[0].sentence.scene !== mention.sentence.scene) before = [];
    if (isWider(mention.name.singular) && isBare(mention)) {
      const meant =
        meantByWider(mention, before, nameOf) ?? meantInScript(mention, known, () => isNew(mention, mentions), nameOf);
      if (meant !== null) names.set(mention, meant);
    } else if (isNarrower(mention.name.singular)) {
      const told = before.at(-1);
      if (told && isSetBehind(told, mention)) names.set(told, nameOf(mention));
    }
    before.push(mention);
  }
}

/** "Her dog, a fat old spaniel, growls": told by what it is. */
const isSetBehind = (wider: Mention, mention: Mention) =>
  wider.sentence === mention.sentence &&
  /^, an? /.test(wider.sentence.text.slice(wider.end, wider.end + 5)) &&
  mention.part.phrase.start === wider.part.phrase.end + 1 &&
  speaksOf(wider.name.singular, mention.name.singular);

const isBare = (mention: Mention) =>
  mention.name.telling.length === 0 &&
  (pointsBack(mention) || /^(?:every|each)$/.test(mention.part.phrase.determiner?.lower ?? ''));

/** True when the script brings in one under the very word: "a dog". */
const isNew = ({ name }: Mention, mentions: readonly Mention[]) =>
  mentions.some((one) => one.name.singular === name.singular && (!pointsBack(one) || one.name.telling.length > 0));

/** "Biscuit the dog", when all the script's dogs that have a name are that one. */
function calledOf(group: readonly Mention[]): string | null {
  const called = new Set(group.flatMap(({ name }) => name.called ?? []));
  return called.size === 1 ? ([...called][0] as string) : null;
}

/** The name set behind a mention: the Biscuit of "a fat ginger cat, BISCUIT". */
function asideName({ sentence, start, end }: Mention, names: readonly string[]): string | null {
  if (names.length === 0) return null;
  const before = sentence.text.slice(Math.max(0, start - 40), start).toLowerCase();
  const told = names.find((name) => before.endsWith(`${name.toLowerCase()}, `));
  if (told !== undefined) return told;
  const behind = sentence.text.slice(end, end + 40).toLowerCase();
  return (
    names.find((name) => [', ', ' called ', ' named '].some((by) => behind.startsWith(by + name.toLowerCase()))) ?? null
  );
}

/** A mention with the words that tell its thing apart; empty when it has none. */
interface Fronted {
  readonly mention: Mention;
  readonly own: string;
  readonly like: string;
}

/** Names the mentions of one head word, in the order of the script. */
function nameGroup(group: readonly Mention[], names: Map<Mention, string>): void {
  const [only] = group;
  if (only && group.length === 1 && only.name.called === null) names.set(only, nameOfOne(only));
  else nameAlike(group, names);
}

/** The name of a thing that the script mentions once. */
function nameOfOne(mention: Mention): string {
  const { singular, head, telling } = mention.name;
  const own = isPlural(mention) ? head : singular;
  return telling.length === 0 ? own : `${telling.join(' ')} ${own}`;
}

function nameAlike(group: readonly Mention[], names: Map<Mention, string>): void {
  const sized = new Set(group.map(sizeOf).filter((one) => one !== '')).size > 1;
  const fronted = group.map((mention): Fronted => {
    const words = [sized ? sizeOf(mention) : '', ...mention.name.telling].filter((one) => one !== '');
    return { mention, own: words.join(' '), like: likeness(mention) };
  });
  const fuller = learnFuller(fronted);
  const only = onlyFronts(fronted, fuller);
  const anywhere = onlyAnywhere(fronted, fuller);
  const singles = new Set(group.filter((one) => !isPlural(one)).map(({ category }) => category));
  const called = calledOf(group);
  const callings = group.flatMap(({ name }) => name.called ?? []);
  let scene = -1;
  let last = new Map<string, string>();
  for (const { mention, own: words, like } of fronted) {
    if (mention.sentence.scene !== scene) last = new Map();
    scene = mention.sentence.scene;
    const known = last.get(like) ?? (mention.category === 'extras' ? '' : only.get(like) || anywhere(mention));
    const front = words === '' ? (pointsBack(mention) ? known : '') : fuller(words);
    last.set(like, front);
    const several = isPlural(mention) && mention.signals.words.ofContents;
    const head = singles.has(mention.category) && !several ? mention.name.singular : mention.name.head;
    const name = front === '' ? head : `${front} ${head}`;
    const own = mention.name.called ?? asideName(mention, callings);
    const isCalled = own !== null || (called !== null && pointsBack(mention) && !isPlural(mention));
    names.set(mention, isCalled ? `${own ?? called} the ${mention.name.singular}` : name);
  }
}

/** Gives for words the only fuller ones that hold them all: "felt" for a red felt pen; the words themselves when none or several do. */
function learnFuller(fronted: readonly Fronted[]): (own: string) => string {
  const fronts = [...new Set(fronted.map(({ own }) => own).filter((own) => own !== ''))].map((own) => own.split(' '));
  const fuller = new Map<string, string>();
  for (const words of fronts) {
    const holding = fronts.filter((one) => one.length > words.length && words.every((word) => one.includes(word)));
    const widest = holding.find((one) => holding.every((other) => other.every((word) => one.includes(word))));
    if (widest) fuller.set(words.join(' '), widest.join(' '));
  }
  return (own) => fuller.get(own) ?? own;
}

/**
 * The fuller names that are the only ones of their category and number: "the lantern" anywhere is the storm lantern, unless
 * the script has "a lantern" too.
 */
function onlyFronts(fronted: readonly Fronted[], fuller: (own: string) => string): Map<string, string> {
  const only = new Map<string, string>();
  for (const { mention, own, like } of fronted) {
    if (own === '' && pointsBack(mention)) continue;
    const before = only.get(like);
    const front = fuller(own);
    only.set(like, before === undefined || before === front ? front : '');
  }
  return only;
}

/** The only fuller name of a word in the whole script, for a garment that nobody wears where it is named, or that is no garment there. */
function onlyAnywhere(fronted: readonly Fronted[], fuller: (own: string) => string): (mention: Mention) => string {
  const fronts = new Set(
    fronted
      .filter(({ own, mention }) => (own !== '' || !pointsBack(mention)) && mention.kind.letters.includes('c'))
      .map(({ own }) => fuller(own)),
  );
  const garment = fronted.some(({ mention }) => mention.category === 'costumes');
  const [front = ''] = fronts;
  const wearers = new Set(
    fronted.flatMap(({ mention }) => (mention.category === 'costumes' ? (mention.by ?? []) : [])),
  );
  return ({ category, by }) => {
    if (!garment || fronts.size !== 1 || wearers.size > 1) return '';
    return category !== 'costumes' || by === null || wearers.has(by) ? front : '';
  };
}

const sizeOf = (mention: Mention) => mention.name.sizes.join(' ');
const isPlural = ({ name }: Mention) => name.head !== name.singular;

/** One of them is one of the pair. */
const inPairs = /^(?:glove|boot|shoe|sock|slipper|mitten|stocking|sandal|trainer|earring|cufflink|gauntlet|clog)$/;

/** What must agree for two names to mean one thing: two people's jackets are two. */
const likeness = (mention: Mention) =>
  `${/^(?:props|dressing|plants|graphics)$/.test(mention.category) ? 'thing' : mention.category} ${isPlural(mention) && !inPairs.test(mention.name.singular)} ${mention.category === 'costumes' ? (mention.by ?? '') : ''}`;

/** "the lantern", "her lantern", "that lantern" speak of one that is known. */
function pointsBack({ part }: Mention): boolean {
  const determiner = part.phrase.determiner?.lower ?? '';
  return part.phrase.owner !== null || /^(?:the|this|that|these|those|both)$/.test(determiner);
}
