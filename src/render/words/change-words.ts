import type { Change, Changes, Comparison } from '../../compare/types.js';
import { placeWords } from '../sheets/sheet-words.js';

/** `draft B`; without a label the date, without either `the earlier draft`. */
export function sinceWords({ since: { draft, date } }: Changes): string {
  if (draft !== null) return `draft ${draft}`;
  return date === null ? 'the earlier draft' : `the draft of ${date}`;
}

/** Why nothing was compared and what to do about it, for paper. */
export function notComparedWords({ why }: Extract<Comparison, { kind: 'not compared' }>): string {
  const ask = 'If you hold older paper, ask what changed.';
  if (why === 'not readable') return `Not compared: the earlier draft could not be read. ${ask}`;
  const first =
    why === 'no label'
      ? 'Not compared: this draft has no letter.'
      : 'This is the first draft given: nothing earlier was there to compare.';
  return `${first} ${ask} Each draft given out needs its own letter in the script (draft: B); then the next paper says it here.`;
}

/** What changed, in plain words that stand behind a scene's name or a day's: `crate: 6 (was 2)`. */
export function changeWords(change: Change): string {
  const { kind, before, after } = change;
  switch (kind) {
    case 'scene':
      return after === null ? 'this scene is cut' : 'new scene';
    case 'label':
      return `was scene ${before}`;
    case 'position':
      return `moved in the story: ${after} (was ${before})`;
    case 'setting':
    case 'place':
    case 'light':
      return `now ${placeOrTime(change)}`;
    case 'story day':
    case 'length':
      return `${kind} ${valueWords(change)}`;
    case 'danger':
      return after === null
        ? `no longer raised by the script: ${change.subject}. Ask before you drop any care`
        : `NEW DANGER: ${change.subject}`;
    case 'shooting day':
      return after === null
        ? `on no shooting day now (was ${before})`
        : `to be shot on ${after} (was ${before ?? 'on no day'})`;
    case 'shooting order':
      return `${change.subject}: to be shot as ${after} (was ${before})`;
    case 'name':
      return `${change.subject}: was called ${before}`;
    default:
      return kind.startsWith('day') ? dayWords(change) : insideWords(change);
  }
}

function placeOrTime(change: Change): string {
  return valueWords({ ...change, before: quiet(change.kind, change.before), after: quiet(change.kind, change.after) });
}

function quiet(kind: Change['kind'], text: string | null): string | null {
  if (text === null) return null;
  if (kind === 'place') return placeWords([text]);
  return kind === 'setting' ? (settings[text] ?? text) : text.toLowerCase();
}

const settings: Readonly<Record<string, string>> = { INT: 'inside', EXT: 'outside', 'INT/EXT': 'inside and outside' };

/** Where a scene plays, as people write it: `inside, Pell's Shed, day`, from `INT PELL'S SHED, DAY`. */
export function sceneHeadWords(head: string | null): string {
  const [setting = '', ...place] = (head ?? '').split(' ');
  const parts = place.join(' ').split(', ');
  const time = parts.length > 1 ? parts.slice(-1).map((part) => part.toLowerCase()) : [];
  return [settings[setting] ?? setting, placeWords(parts.slice(0, parts.length - time.length)), ...time].join(', ');
}

function valueWords({ before, after }: Change): string {
  return `${after ?? 'not told'} (was ${before ?? 'not told'})`;
}

function dayWords(change: Change): string {
  const { kind, before, after, subject } = change;
  const day = `Shooting ${subject}`;
  if (kind === 'day') return after === null ? `${day}: dropped` : `${day}: new`;
  if (kind === 'day date') return `${day} (was ${before})`;
  return kind === 'day call' ? `${day}: call ${after} (was ${before})` : `${day}: at ${valueWords(change)}`;
}

function insideWords(change: Change): string {
  const { kind, before, after } = change;
  const subject = subjectWords(change);
  switch (kind) {
    case 'person':
      return presenceWords(change);
    case 'extra':
    case 'thing':
      return after === null ? `${subject}: no longer here` : `${subject}: new here`;
    case 'garment':
      return garmentWords(change);
    case 'count':
      return `${subject}: ${after ?? 'how many is open'} (was ${before ?? 'open'})`;
    case 'state':
      return `${subject}: ${stateValue(after)} (was ${stateValue(before)})`;
    case 'state in':
      return `${subject}: at the beginning ${stateValue(after)} (was ${stateValue(before)})`;
    case 'state out':
      return `${subject}: at the end ${stateValue(after)} (was ${stateValue(before)})`;
    case 'holder':
      return `${subject}: ${after === null ? 'in nobody’s hands' : `${after} has it`} (was ${before ?? 'nobody'})`;
    default:
      return `${subject}: costume change ${after} (was ${before})`;
  }
}

/** A thing with its amount or its wearer: `6 × crate`, `yellow oilskin (IDA)`. */
export function subjectWords({ subject, wearer, before, after, kind }: Change): string {
  const name = subject ?? '';
  if (wearer !== null && wearer !== subject) return `${name} (${wearer})`;
  const amount = kind === 'thing' || kind === 'extra' ? (after ?? before) : null;
  return amount === null || amount === '1' || amount === '?' ? name : `${amount} × ${name}`;
}

function presenceWords({ subject, before, after }: Change): string {
  if (before === null) return `${subject}: new here${after === 'heard' ? ', only heard' : ''}`;
  if (after === null) return `${subject}: no longer here`;
  return after === 'heard' ? `${subject}: now only heard` : `${subject}: now seen`;
}

function garmentWords({ subject, wearer, before, after }: Change): string {
  if (after === 'not worn') return `${wearer}: now without ${subject}`;
  if (after === null && before === 'not worn') return `${wearer}: may wear ${subject} again`;
  return after === null ? `${wearer}: no longer wears ${subject}` : `${wearer}: now wears ${subject}`;
}

function stateValue(state: string | null): string {
  return state ?? 'as it is';
}
