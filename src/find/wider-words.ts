import { keepAnswers } from '../base/keep-answers.js';
import type { Mention } from './mentions.js';

/** Words that speak of a thing already named by a narrower one: "the book" after "a new logbook". */
const narrower = new Map<string, RegExp>(
  Object.entries({
    book: /book$|^(?:diary|ledger|journal|album)$/,
    page: /book$|^(?:diary|ledger|journal|album|newspaper|magazine)$/,
    boat: /^(?:ferry|dinghy|punt|barge|launch|yacht|canoe|kayak|skiff|trawler|raft|rowboat|ship)$|boat$/,
    car: /^(?:taxi|cab|hatchback|saloon|convertible|estate|limousine|jeep)$/,
    van: /^(?:campervan|minivan)$/,
    light: /^(?:lantern|lamp|torch|flashlight|headlamp|candle)$/,
    bag: /^(?:rucksack|backpack|satchel|holdall|suitcase|handbag|tote|duffel)$|bag$/,
    case: /^(?:suitcase|briefcase)$/,
    gun: /^(?:pistol|revolver|rifle|shotgun)$/,
    bird: /^(?:parrot|pigeon|crow|raven|gull|seagull|canary|budgie|duck|goose|hen)$/,
    animal: /^(?:dog|cat|goat|horse|pony|donkey|cow|sheep|pig|rabbit|fox)$/,
    kid: /^(?:goat)$/,
    dog: /^(?:terrier|whippet|spaniel|labrador|poodle|collie|alsatian|dachshund|greyhound|bulldog|mongrel|puppy|pup|hound|retriever|setter|pug|beagle|corgi|rottweiler|husky|sheepdog|lurcher|mutt|foxhound)$/,
    cat: /^(?:kitten|tabby|tomcat)$/,
    horse: /^(?:mare|pony|stallion|foal|gelding|colt|cob|nag|carthorse|racehorse)$/,
    photo: /^photograph$/,
    photograph: /^photo$/,
    picture: /^(?:photograph|photo|painting|portrait)$/,
    blade: /^(?:knife|penknife|sword|dagger|machete|cleaver|scalpel|cutlass|razor|axe)$/,
    loaf: /^baguette$/,
    knife: /^(?:penknife|dagger|switchblade|stiletto|cleaver)$/,
    phone: /^(?:telephone|mobile|smartphone|cellphone)$/,
    chair: /^(?:armchair|wheelchair|deckchair)$/,
    hat: /^(?:bowler|trilby|fedora|boater|stetson|bonnet|beret|panama)$/,
    jacket: /^(?:suit|tuxedo)$/,
    trousers: /^(?:suit|tuxedo)$/,
    trouser: /^(?:suit|tuxedo)$/,
    waistcoat: /^(?:suit|tuxedo)$/,
  }),
);

/** The mention before it in its scene that a wider word speaks of, when only one thing fits; `before` holds the scene so far. */
export function meantByWider(
  mention: Mention,
  before: readonly Mention[],
  nameOf: (one: Mention) => string,
): string | null {
  const pattern = narrower.get(mention.name.singular);
  const word = mention.name.singular;
  const isThere = (one: Mention) => one.name.singular === word && nameOf(one).split(' ').at(-1) === word;
  if (!pattern || before.some(isThere)) return null;
  const fits = before.filter(
    (one) => pattern.test(one.name.singular) && isCountedAlike(one, mention) && isSameWearer(one, mention),
  );
  const names = new Set(fits.map(nameOf));
  return names.size === 1 ? ([...names][0] as string) : null;
}

/** Wider words that speak of the thing of an earlier scene too; "the car" and "the light" may be another there. */
const farReaching = /^(?:dog|cat|horse|case|gun|knife|phone|photo|photograph)$/;

const everyNarrower = [...narrower.values()];

/** True for a word that can speak of a thing named by a narrower one. */
export const isWider = (word: string): boolean => narrower.has(word);

/** True for a word that a wider one can speak of. */
export const isNarrower = keepAnswers((word) => everyNarrower.some((pattern) => pattern.test(word)));

/** The only thing of the earlier scenes that "the dog" can speak of: the terrier; `isNew` tells that the script has "a dog" too. */
export function meantInScript(
  mention: Mention,
  known: readonly Mention[],
  isNew: () => boolean,
  nameOf: (one: Mention) => string,
): string | null {
  const word = mention.name.singular;
  const pattern = narrower.get(word);
  if (!pattern || !farReaching.test(word) || isNew()) return null;
  const fits = known.filter(
    (one) => one.category === mention.category && pattern.test(one.name.singular) && isCountedAlike(one, mention),
  );
  const names = new Set(fits.map(nameOf));
  const [first] = fits;
  return names.size === 1 && first && isBefore(first, mention) ? ([...names][0] as string) : null;
}

const isBefore = (one: Mention, other: Mention) => one.sentence.scene < other.sentence.scene;

/** True when the wider word speaks of the narrower: the terrier is "the dog". */
export const speaksOf = (wider: string, word: string): boolean => narrower.get(wider)?.test(word) ?? false;

function isSameWearer(one: Mention, other: Mention): boolean {
  if (one.category !== 'costumes') return true;
  return one.by === null || other.by === null || one.by === other.by;
}

/** "The dog" is no dogs of before; "the bags" may be, and "the pages" are of one book. */
const isCountedAlike = ({ name: one }: Mention, { name: other }: Mention) =>
  one.head === one.singular || other.head !== other.singular;
