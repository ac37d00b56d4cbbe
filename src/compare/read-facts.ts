import { z } from 'zod';
import { labelScenes } from '../breakdown/scene-label.js';
import { categories } from '../trade/categories.js';
import { distinct, isNoQuestion } from './draft-facts.js';
import type { DraftFacts } from './types.js';

/** The version of `breakdown.json` that can be compared. */
const version = 1;

const text = z.string();
const maybe = z.string().nullable();
const count = z.number().nullable();
const categoryNames = categories.map((category) => category.name);
const category = z.enum(categoryNames);
const known = { known: text, strength: maybe };
const states = { stateIn: maybe, stateOut: maybe };
const named = { id: text, name: text, names: z.array(text) };

const sceneShape = z.object({
  id: text,
  number: maybe,
  order: z.number(),
  setting: text,
  place: text,
  placeId: maybe.default(null),
  time: maybe,
  light: maybe,
  storyDay: text,
  eighths: z.number(),
  synopsis: text,
  cast: z.array(z.object({ name: text, presence: z.enum(['seen', 'heard']) })),
  extras: z.array(z.object({ name: text, count })),
  elements: z.array(z.object({ id: text, name: text, category, by: maybe, count, ...states, ...known })),
  wears: z.array(
    z.object({
      person: text,
      change: z.number(),
      garments: z.array(z.object({ id: text, name: text, absent: z.boolean(), ...states })),
    }),
  ),
  hazards: z.array(z.object({ title: text })),
});

const dayShape = z.object({
  number: z.number(),
  date: z.iso.date(),
  call: text,
  places: z.array(text),
  scenes: z.array(text),
});

const draftShape = z.object({
  title: text,
  draft: maybe,
  date: maybe,
  scenes: z.array(sceneShape),
  cast: z.array(z.object(named)),
  elements: z.array(z.object({ ...named, ...known })),
  // Files written before days were kept have none.
  shootingDays: z.array(dayShape).nullable().default(null),
});

/** Reads a `breakdown.json` of an earlier run; a reason in words when it cannot be compared. Never throws. */
export function readFacts(json: string): DraftFacts | { readonly why: string } {
  let value: unknown;
  try {
    value = JSON.parse(json);
  } catch {
    return { why: 'it is no JSON' };
  }
  const found = z.object({ version: z.unknown() }).safeParse(value);
  if (!found.success) return { why: 'it is no breakdown' };
  if (found.data.version !== version)
    return { why: `expected version ${version} of the format, found ${JSON.stringify(found.data.version)}` };
  const read = draftShape.safeParse(value);
  if (read.success) return toFacts(read.data);
  const [issue] = read.error.issues;
  return { why: `${issue?.path.map(String).join('.') || 'the whole'} is not as expected` };
}

function toFacts({ cast, elements, shootingDays, scenes, title, draft, date }: z.infer<typeof draftShape>): DraftFacts {
  const labels = labelScenes(scenes);
  return {
    title,
    draft,
    date,
    scenes: scenes.map((scene) => ({
      ...scene,
      label: labels.get(scene.id) ?? scene.id,
      things: scene.elements.filter(isNoQuestion),
      dangers: distinct(scene.hazards.map((hazard) => hazard.title)),
    })),
    people: cast,
    things: elements.filter(isNoQuestion),
    days: shootingDays,
  };
}
