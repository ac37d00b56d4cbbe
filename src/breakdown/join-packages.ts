import type { Find, Finds } from '../find/types.js';
import { coreName, singular } from './same-thing.js';

/** What a thing is sold in: it and its content are one line to get. Cups, plates and vases are got apart from what is in them. */
const packages =
  /^(?:tube|tin|can|bottle|packet|pack|carton|sachet|jar|tub|bar|box|bag|phial|vial|flask|keg|cask|roll|reel|spool|stick|tablet)$/;

/** Of these only what is eaten or drunk: a box of tools is a box and its tools. */
const boxes = /^(?:box|bag|jar|pack|flask)$/;

const joinable = /^(?:props|food|makeup|dressing|effects)$/;

/** A package with what is in it: "a tube of glue". */
interface Package {
  readonly vessel: string;
  readonly content: string;
  readonly name: string;
  readonly category: Find['category'];
  readonly from: number;
}

/** Makes one thing of a package and what is in it, here and where one of the two is spoken of later: "a tube of glue", "the glue", "the tube". */
export function joinPackages(finds: Finds): Finds {
  const packs = findPackages(finds.elements);
  if (packs.length === 0) return finds;
  const byVessel = onlyOnes(packs, ({ vessel }) => vessel);
  const byContent = onlyOnes(packs, ({ content }) => content);
  const meant = (name: string, words: string, offset: number): Package | null => {
    const own = packs.find((one) => one.from === offset && (one.vessel === name || one.content === name));
    if (own) return own;
    const turned = packs.find((one) => `${one.content} ${one.vessel}` === name);
    if (turned) return turned;
    const vessel = byVessel.get(name);
    if (vessel && offset > vessel.from && pointsBack.test(words)) return vessel;
    return byContent.get(name) ?? null;
  };
  return {
    ...finds,
    elements: finds.elements.map((find) => {
      if (!isThing(find)) return find;
      const pack = meant(find.name, find.words, find.at.start.offset);
      return pack ? { ...find, name: pack.name, category: pack.category } : find;
    }),
    moves: finds.moves.map((move) => {
      const pack = byVessel.get(move.name) ?? byContent.get(move.name);
      return pack && move.at.start.offset >= pack.from ? { ...move, name: pack.name } : move;
    }),
  };
}

const pointsBack = /^(?:the|this|that|his|her|their|its|\S+['’]s)\s/i;

const isThing = ({ known, category, worn }: Find) => known === 'found' && !worn && joinable.test(category);

/** Where one find begins with the words of another and goes on with "of": both start at the same place. */
function findPackages(elements: readonly Find[]): Package[] {
  const packs: Package[] = [];
  const vessels = new Map<number, Find>();
  for (const find of elements) {
    if (isThing(find) && packages.test(headIn(find))) vessels.set(find.at.start.offset, find);
  }
  for (const find of elements) {
    const vessel = vessels.get(find.at.start.offset);
    if (!vessel || vessel === find || !isThing(find) || find.category === 'dressing') continue;
    if (!find.words.startsWith(`${vessel.words} of `) || /^(?:the|his|her|their|an?) /i.test(contentOf(find, vessel)))
      continue;
    if (boxes.test(headIn(vessel)) && find.category !== 'food') continue;
    const content = contentOf(find, vessel).toLowerCase();
    const name = `${vessel.name} of ${content}`;
    packs.push({ vessel: vessel.name, content: find.name, name, category: find.category, from: find.at.start.offset });
  }
  return packs;
}

const contentOf = (find: Find, vessel: Find) => find.words.slice(vessel.words.length + ' of '.length);

const headIn = ({ name }: Find) => singular(coreName(name).split(' ').at(-1) ?? '');

/** The packages by a word that stands for one of them only. */
function onlyOnes(packs: readonly Package[], wordOf: (pack: Package) => string): Map<string, Package> {
  const first = new Map<string, Package>();
  const several = new Set<string>();
  for (const pack of packs) {
    const word = wordOf(pack);
    const before = first.get(word);
    if (!before) first.set(word, pack);
    else if (before.name !== pack.name) several.add(word);
  }
  for (const word of several) first.delete(word);
  return first;
}
