import type { Mention } from './mentions.js';

/** Words that speak of a thing already named by a narrower one: "the book" after "a new logbook". */
const narrower: Readonly<Record<string, RegExp>> = {
  book: /book$|^(?:diary|ledger|journal|album)$/,
  page: /book$|^(?:diary|ledger|journal|album|newspaper|magazine)$/,
  boat: /^(?:ferry|dinghy|punt|barge|launch|yacht|canoe|kayak|skiff|trawler|raft|rowboat|ship)$|boat$/,
  car: /^(?:taxi|cab|hatchback|saloon|convertible|estate|limousine|jeep)$/,
  van: /^(?:campervan|minivan)$/,
  light: /^(?:lantern|lamp|torch|flashlight|headlamp|candle)$/,
  bag: /^(?:rucksack|backpack|satchel|holdall|suitcase|handbag|tote|duffel)$/,
  case: /^(?:suitcase|briefcase)$/,
  gun: /^(?:pistol|revolver|rifle|shotgun)$/,
  bird: /^(?:parrot|pigeon|crow|raven|gull|seagull|canary|budgie|duck|goose|hen)$/,
  animal: /^(?:dog|cat|goat|horse|pony|donkey|cow|sheep|pig|rabbit|fox)$/,
  kid: /^(?:goat)$/,
  jacket: /^(?:suit|tuxedo)$/,
  trousers: /^(?:suit|tuxedo)$/,
  trouser: /^(?:suit|tuxedo)$/,
  waistcoat: /^(?:suit|tuxedo)$/,
};

/** The mention before it in its scene that a wider word speaks of, when only one thing fits; `before` holds the scene so far. */
export function meantByWider(
  mention: Mention,
  before: readonly Mention[],
  nameOf: (one: Mention) => string,
): string | null {
  const pattern = narrower[mention.name.singular];
  const word = mention.name.singular;
  const isThere = (one: Mention) => one.name.singular === word && nameOf(one).split(' ').at(-1) === word;
  if (!pattern || before.some(isThere)) return null;
  const fits = before.filter(
    (one) => pattern.test(one.name.singular) && one.name.head === one.name.singular && isSameWearer(one, mention),
  );
  const names = new Set(fits.map(nameOf));
  return names.size === 1 ? ([...names][0] as string) : null;
}

function isSameWearer(one: Mention, other: Mention): boolean {
  if (one.category !== 'costumes') return true;
  return one.by === null || other.by === null || one.by === other.by;
}
