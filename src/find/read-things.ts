import type { Clauses } from './clause-types.js';
import { eventFind, readEvents } from './event-finds.js';
import type { Event } from './events.js';
import type { Lexicon } from './lexicon.js';
import { type Mention, readMentions } from './mentions.js';
import { readsAloud } from './read-aloud.js';
import type { Token } from './reading.js';
import type { Find } from './types.js';
import { type Heard, leaveOutHeard } from './unseen-animals.js';

/** What all sentences name: things, and events with the nameless people who do them. */
export interface Read {
  readonly mentions: readonly Mention[];
  readonly events: readonly { readonly find: Find; readonly stranger: Token | null }[];
}

/** Reads what each sentence names: events first, things where no event stands; `places` are the words for places in the headings. */
export function readThings(clauses: readonly Clauses[], places: ReadonlySet<string>, lexicon: Lexicon): Read {
  const mentions: Mention[] = [];
  const events: { find: Find; stranger: Token | null }[] = [];
  const heard: Heard[] = [];
  const aloud = readsAloud();
  for (const clause of clauses) {
    const said = aloud(clause);
    const isThere = (at: number) => said === null || at < said.from || at >= said.to;
    const all = readEvents(clause, lexicon);
    const found = said === null ? all : all.filter(({ at }) => isThere(at));
    for (const event of found) {
      events.push({ find: eventFind(event, clause), stranger: event.stranger ?? null });
      if (event.heard !== undefined) heard.push({ sentence: clause.sentence, at: event.heard });
    }
    for (const one of readMentions(clause, placesOf(found), lexicon)) {
      if (!isPlace(one, places) && isThere(one.part.phrase.head)) mentions.push(one);
    }
  }
  return { mentions: leaveOutHeard(mentions, heard), events };
}

const nowhere: ReadonlySet<number> = new Set();

/** The words that events stand for, and those that they hide. */
function placesOf(events: readonly Event[]): ReadonlySet<number> {
  if (events.length === 0) return nowhere;
  return new Set(events.flatMap(({ at, hides }) => (hides === null ? [at] : [at, hides])));
}

const isPlace = ({ inHand, category, name }: Mention, places: ReadonlySet<string>) =>
  !inHand && /^(?:extras|dressing|props)$/.test(category) && places.has(name.singular);
