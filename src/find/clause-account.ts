import type { Reading } from './choose-tag.js';
import type { Tag } from './reading.js';
import { type Draft, isNominative } from './word-neighbours.js';

/** Keeps account of whether the clause has its subject and its verb, and of the noun phrase under way. */
export function follow(reading: Reading, tag: Tag, draft: Draft, before: Tag | null): void {
  switch (tag) {
    case 'punctuation':
      followSign(reading, draft.text);
      return;
    case 'conjunction':
      reading.phrase = 'none';
      reading.inPreposition = false;
      if (/^(?:and|but|then|or|nor|yet|so)$/.test(draft.lower)) {
        reading.joined = draft.lower === 'and' && !reading.finite && (before === 'noun' || before === 'name');
      } else reading.subject = false;
      reading.finite = false;
      return;
    case 'noun':
    case 'name':
      // "Behind the glass Anna eats": a person right behind the noun is out of the preposition's reach.
      if (draft.person !== null && before === 'noun' && reading.phrase === 'headed') reading.inPreposition = false;
      reading.phrase = 'headed';
      if (!reading.finite && !reading.inPreposition) {
        reading.plural = reading.joined || (tag === 'noun' && (draft.uses.noun?.plural ?? false));
        reading.subject = true;
      }
      return;
    case 'pronoun':
      followPronoun(reading, draft.lower);
      return;
    case 'verb':
    case 'auxiliary':
      reading.phrase = 'none';
      if (reading.finite) reading.owed = false;
      // "Draws gun, stands at the door": the subject is left out, and stands for all that follows.
      if (before === null && draft.uses.verb?.form === 's') reading.subject = true;
      reading.finite = true;
      reading.joined = false;
      reading.inPreposition = false;
      return;
    case 'participle':
    case 'preposition':
    case 'particle':
      // "One of the robbers stands": the number is the subject.
      if (draft.lower === 'of' && !reading.finite && (before === 'number' || before === 'determiner')) {
        reading.subject = true;
        reading.plural = true;
      }
      reading.phrase = 'none';
      reading.inPreposition = tag === 'preposition';
      return;
    case 'adverb':
    case 'other':
      return;
    default:
      // A new noun phrase after "in the pit" is no longer in the preposition's reach.
      if (reading.phrase === 'headed') reading.inPreposition = false;
      reading.phrase = 'open';
  }
}

function followPronoun(reading: Reading, lower: string): void {
  reading.phrase = 'headed';
  if (/^(?:who|which|that)$/.test(lower)) reading.owed ||= reading.subject && !reading.finite;
  if (isNominative(lower)) reading.finite = false;
  if (reading.finite) return;
  reading.subject = true;
  reading.plural = /^(?:they|we|you|i|both|who|which)$/.test(lower);
}

function followSign(reading: Reading, text: string): void {
  // Marks that set a word apart leave the phrase open: the "signal block".
  if (/^["“”]$/.test(text) && reading.phrase === 'open') return;
  reading.phrase = 'none';
  reading.inPreposition = false;
  if (/[.;:!?—–-]/.test(text)) {
    reading.subject = false;
    reading.owed = false;
  }
  if (text !== '"') reading.finite = false;
}
