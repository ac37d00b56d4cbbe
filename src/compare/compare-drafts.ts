import { differs } from './change.js';
import { compareDays } from './compare-days.js';
import { compareScenes } from './compare-scenes.js';
import type { Identities } from './compare-things.js';
import { type Matched, matchNames } from './match-names.js';
import type { Change, Changes, DraftFacts } from './types.js';

/** All that differs between an earlier draft and the present one. A draft compared with itself has no changes. */
export function compareDrafts(before: DraftFacts, after: DraftFacts): Changes {
  const people = matchNames(before.people, after.people);
  const things = matchNames(before.things, after.things);
  const names = new Map(people.pairs.map((pair) => [pair.before.name, pair.after.name]));
  const identities: Identities = { people, things, personNow: (name) => names.get(name) ?? name };
  const { pairs, scenes } = compareScenes(before.scenes, after.scenes, identities);
  const daysCompared = before.days !== null && after.days !== null;
  const days = compareDays(before.days ?? [], after.days ?? [], pairs);
  const ofScenes = daysCompared ? days.ofScenes : [];
  return {
    since: { draft: before.draft, date: before.date },
    scenes: scenes
      .map((scene) => ({
        ...scene,
        changes: [...ofScenes.filter((change) => change.scene === scene.scene), ...scene.changes],
      }))
      .filter((scene) => scene.changes.length > 0),
    whole: [...(daysCompared ? days.days : []), ...compareNames(people, 'cast'), ...compareNames(things, null)],
    daysCompared,
  };
}

function compareNames({ pairs }: Matched, category: 'cast' | null): Change[] {
  return pairs.flatMap(({ before, after }) =>
    differs('name', before.name, after.name, { subject: after.name, category }),
  );
}
