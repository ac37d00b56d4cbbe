import { formatDuration } from '../base/duration.js';
import { formatEighths } from '../base/eighths.js';
import { foldName, slug } from '../base/slug.js';
import type {
  Breakdown,
  BreakdownScene,
  ElementEntry,
  PersonEntry,
  PlaceEntry,
  SceneElement,
} from '../breakdown/types.js';
import type { Finds, Move, Task } from '../find/types.js';
import type { Analysis } from './analyse.js';
import { explainDays, explainExtras, explainFigures, explainStates } from './explain-facts.js';
import { type Explanation, labelOf, quote, sceneName } from './explain-words.js';

/**
 * Says where every element, person, background person, place, scene, story day, state or figure of that name comes from; of a word that
 * is only part of names, where the things of those names do. Empty when nothing has it.
 */
export function explain(name: string, analysis: Analysis): readonly Explanation[] {
  const { breakdown } = analysis;
  const asked = foldName(name).replace(/^(scene|sc\.?)\s+/, '');
  const called = explainNames(asked, analysis);
  const others = [
    ...explainExtras(asked, breakdown),
    ...explainDays(asked, breakdown),
    ...explainStates(asked, breakdown),
    ...explainFigures(asked, breakdown),
  ];
  return called.length + others.length > 0 ? [...called, ...others] : explainParts(asked, analysis);
}

/** Things that have the word in their name: the jam jar for "jar". */
function explainParts(asked: string, { breakdown, finds }: Analysis): Explanation[] {
  const has = ({ names }: ElementEntry) =>
    names.some((one) =>
      foldName(one)
        .split(/[^\p{L}\p{N}]+/u)
        .includes(asked),
    );
  return breakdown.elements.filter(has).map((element) => explainElement(element, breakdown, finds));
}

function explainNames(asked: string, analysis: Analysis): Explanation[] {
  const { breakdown, finds } = analysis;
  return [
    ...breakdown.cast.filter((person) => isCalled(person, asked)).map((person) => explainPerson(person, breakdown)),
    ...breakdown.elements
      .filter((element) => isCalled(element, asked))
      .map((element) => explainElement(element, breakdown, finds)),
    ...breakdown.places
      .filter((place) => isCalled({ ...place, names: [place.name] }, asked))
      .map((place) => explainPlace(place, breakdown)),
    ...breakdown.scenes
      .filter((scene) => isScene(scene, asked, breakdown))
      .map((scene) => explainScene(scene, analysis)),
  ];
}

/** Every name that can be asked for, for the nearest one to a slip. */
export function explainable(breakdown: Breakdown): readonly string[] {
  return [
    ...breakdown.cast.flatMap((person) => person.names),
    ...breakdown.elements.flatMap((element) => element.names),
    ...breakdown.scenes.flatMap((scene) => [...scene.extras.map(({ name }) => name), scene.storyDay.label]),
    ...breakdown.places.map((place) => place.name),
    ...breakdown.scenes.map((scene) => sceneName(scene, breakdown)),
  ];
}

function isCalled(entry: { readonly id: string; readonly names: readonly string[] }, asked: string): boolean {
  return entry.id === slug(asked) || entry.names.some((name) => foldName(name) === asked);
}

function isScene(scene: BreakdownScene, asked: string, breakdown: Breakdown): boolean {
  const spellings = [scene.id, scene.number?.toLowerCase() ?? `${scene.order}`];
  return spellings.includes(asked) || foldName(sceneName(scene, breakdown)) === `scene ${asked}`;
}

function explainPerson(person: PersonEntry, breakdown: Breakdown): Explanation {
  const lines = breakdown.scenes.flatMap((scene) => {
    const here = scene.cast.find((one) => one.id === person.id);
    if (!here) return [];
    const voice = here.voice ? `, ${here.voice}` : here.speaks ? ', speaks' : ', silent';
    const dress = scene.wears.find((worn) => worn.person === person.name);
    return [
      `${sceneName(scene, breakdown)}: ${here.presence}${voice}${dress ? `, change ${dress.change}` : ''}`,
      ...here.mentions.slice(0, 3).map((mention) => `  line ${mention.line}: ${quote(mention.words)}`),
    ];
  });
  const other = person.names.slice(1);
  return { title: `${person.name}, a person${other.length > 0 ? ` (also ${other.join(', ')})` : ''}`, lines };
}

function explainElement(element: ElementEntry, breakdown: Breakdown, finds: Finds): Explanation {
  const lines = breakdown.scenes.flatMap((scene) => {
    const here = scene.elements.find((one) => one.id === element.id);
    return here ? explainInScene(scene, here, breakdown, movesOf(scene, here, finds)) : [];
  });
  const worn = lines.length > 0 ? [] : wornLines(element, breakdown);
  const states = element.states.map(
    (one) => `state "${one.state}" from ${labelOf(one.scene, breakdown)}${one.onCamera ? ', on camera' : ''}`,
  );
  return { title: `${element.name}, ${element.category}, ${element.known}`, lines: [...lines, ...worn, ...states] };
}

function movesOf(scene: BreakdownScene, element: SceneElement, finds: Finds): readonly Move[] {
  return finds.moves.filter((move) => move.scene === scene.order - 1 && foldName(move.name) === foldName(element.name));
}

function wornLines(element: ElementEntry, breakdown: Breakdown): string[] {
  return breakdown.scenes.flatMap((scene) =>
    scene.wears.flatMap((worn) =>
      worn.garments
        .filter((garment) => garment.id === element.id)
        .map(
          (garment) =>
            `${sceneName(scene, breakdown)}: on ${worn.person}, ${garment.known}${garment.from ? `, carried from ${labelOf(garment.from, breakdown)}` : ''}`,
        ),
    ),
  );
}

function explainInScene(
  scene: BreakdownScene,
  element: SceneElement,
  breakdown: Breakdown,
  moves: readonly Move[],
): string[] {
  const how = element.from ? `carried from ${labelOf(element.from, breakdown)}` : element.known;
  const sure = element.confidence === null ? '' : `, confidence ${element.confidence.toFixed(2)}`;
  const strength = element.strength ? ` (${element.strength})` : '';
  const who = element.by ? `, ${element.worn ? 'worn by' : 'with'} ${element.by}` : '';
  const count = element.count === null ? '' : `, ${element.count} of it`;
  return [
    `${sceneName(scene, breakdown)}: ${how}${strength}${who}${count}${sure}`,
    ...element.mentions.map((mention) => `  line ${mention.line}: ${quote(mention.words)}`),
    ...(element.rules.length > 0 ? [`  because: ${element.rules.join('; ')}`] : []),
    ...(element.stateIn ? [`  comes in: ${element.stateIn}`] : []),
    ...(element.stateOut && element.stateOut !== element.stateIn ? [`  goes out: ${element.stateOut}`] : []),
    ...moves.map((move) => `  line ${move.at.start.line}: ${describeMove(move)}: ${quote(move.words)}`),
  ];
}

function describeMove({ kind, from, to }: Move): string {
  const toWhom = kind === 'handed over' ? ` to ${to}` : ` ${to}`;
  return `${kind}${from ? ` from ${from}` : ''}${to ? toWhom : ''}`;
}

function explainPlace(place: PlaceEntry, breakdown: Breakdown): Explanation {
  const scenes = place.scenes.map((id) => labelOf(id, breakdown)).join(', ');
  const dressing = place.dressing.map((one) => `${one.name}, ${one.known}`);
  return { title: `${place.name}, a place (${place.settings.join(', ')})`, lines: [`scenes: ${scenes}`, ...dressing] };
}

function explainScene(scene: BreakdownScene, { pages, finds, breakdown }: Analysis): Explanation {
  const length = pages.scenes[scene.order - 1];
  const { seconds, low, high, pageRule, noted } = scene.screenTime;
  const source = noted
    ? 'from a time note'
    : `${formatDuration(low)} to ${formatDuration(high)}, from what is said and done`;
  return {
    title: `${sceneName(scene, breakdown)}, ${scene.heading}`,
    lines: [
      `line ${scene.at.start.line} of the script, page ${scene.page}`,
      `length: ${formatEighths(scene.eighths)} of a page, ${length?.lines ?? 0} lines counted`,
      `on screen: ${formatDuration(seconds)}, ${source}; a minute a page gives ${formatDuration(pageRule)}`,
      `story day ${scene.storyDay.label}: ${scene.storyDay.reason}${scene.storyDay.sure ? '' : ' (not sure)'}`,
      ...scene.hazards.map(
        (hazard) => `caution, ${hazard.title}: line ${hazard.line}, ${quote(hazard.words)}, ${hazard.because}`,
      ),
      ...finds.tasks.filter((task) => task.scene === scene.order - 1).map(explainTask),
    ],
  };
}

function explainTask(task: Task): string {
  return `${task.kind} (${task.strength}): ${task.text.replace(/\.$/, '')}; line ${task.at.start.line}, ${quote(task.words)}, row ${task.rule}`;
}
