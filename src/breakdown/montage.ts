import type { Block, Scene } from '../script/types.js';
import { montageWord } from '../trade/story-day-words.js';

/** One image of a montage: how the script counts it, and the stretch of the source it fills. */
export interface MontageImage {
  /** The letter or number written before it, else its place in the row; null for a scene that is an image by itself. */
  readonly label: string | null;
  readonly start: number;
  readonly end: number;
}

/**
 * The images of the montages within a scene, in order: lines with a letter, a number or a list sign before them, else its paragraphs. Each
 * may show another day and other clothes, though all of them are one scene. Empty where there are fewer than two.
 */
export function imagesOf(scene: Scene): readonly MontageImage[] {
  const { qualifiers, placeParts } = scene.heading;
  let open = [...qualifiers, ...placeParts].some((part) => montageWord.test(part));
  const images: MontageImage[] = [];
  let group: Block[] = [];
  for (const block of scene.blocks) {
    const title = titleOf(block);
    const ends = title !== null && endSign.test(title);
    const begins = title !== null && !ends && beginSign.test(title);
    if (!ends && !begins) {
      group.push(block);
      continue;
    }
    if (open) images.push(...splitGroup(group));
    group = [];
    open = begins;
  }
  return open ? [...images, ...splitGroup(group)] : images;
}

const beginSign = /^(?:begin |start |start of )?(?:a )?(?:montage|series of shots)\b/i;
const endSign = /^(?:end|back from|end of)(?: of)?(?: the)? (?:montage|series of shots)\b/i;
const imageSign = /^(?:([A-Z]|\d{1,2})[.)]|[-\u2010-\u2015\u2022*]{1,2})\s+/;

const longestTitle = 60;

function titleOf(block: Block): string | null {
  if (block.kind === 'transition' || block.kind === 'part') return block.line.text;
  const [first, ...others] = block.kind === 'action' ? block.lines : [];
  if (!first || others.length > 0 || first.text.length > longestTitle) return null;
  return /\p{Ll}/u.test(first.text) ? null : first.text;
}

function splitGroup(blocks: readonly Block[]): MontageImage[] {
  const actions = blocks.filter((block) => block.kind === 'action');
  const signed = actions.flatMap((block) => {
    const lines = block.lines.filter((line, index) => imageSign.test(line.text) || (block.item && index === 0));
    return lines.map((line) => ({ start: line.at.start.offset, sign: imageSign.exec(line.text)?.[1] ?? null }));
  });
  const starts = signed.length > 1 ? signed : actions.map(({ at }) => ({ start: at.start.offset, sign: null }));
  const end = blocks.at(-1)?.at.end.offset ?? 0;
  if (starts.length < 2) return [];
  return starts.map(({ start, sign }, index) => ({
    label: sign ?? `${index + 1}`,
    start,
    end: starts[index + 1]?.start ?? end,
  }));
}

/** A whole scene as one image: what it shows on people holds in it alone. */
const wholeScene: MontageImage = { label: null, start: 0, end: Number.POSITIVE_INFINITY };

/** The images of every scene: of a scene between MONTAGE and END MONTAGE, the scene itself. */
export function imagesOfScenes(scenes: readonly Scene[]): (readonly MontageImage[])[] {
  const between = scenesOfMontage(scenes);
  return scenes.map((scene, index) => (between.has(index) ? [wholeScene] : imagesOf(scene)));
}

/** The indexes of the scenes that stand between a line MONTAGE and the END MONTAGE that belongs to it. */
export function scenesOfMontage(scenes: readonly Scene[]): ReadonlySet<number> {
  const within = new Set<number>();
  let open: number[] | null = null;
  scenes.forEach((scene, index) => {
    for (const title of titlesBefore(scene, scenes[index - 1] ?? null)) {
      if (endSign.test(title)) {
        for (const image of open ?? []) within.add(image);
        open = null;
      } else if (beginSign.test(title)) open = [];
    }
    open?.push(index);
  });
  return within;
}

/** Titles, parts and transitions between the text of the scene before and a heading. */
function titlesBefore({ lead }: Scene, previous: Scene | null): string[] {
  const titles = (blocks: readonly Block[]) => blocks.map(titleOf).filter((title) => title !== null);
  const last = previous?.blocks.findLastIndex((block) => titleOf(block) === null) ?? -1;
  return [...titles(previous?.blocks.slice(last + 1) ?? []), ...titles(lead)];
}

/** How a garment is called that is on in some images of a montage only. */
export function onlyInImages(labels: readonly string[]): string {
  return `only in image${labels.length > 1 ? 's' : ''} ${labels.join(', ')}`;
}

/** The labels that `onlyInImages` has put into words; empty for other words. */
export function imagesIn(action: string | null): readonly string[] {
  return /^only in images? (.+)$/.exec(action ?? '')?.[1]?.split(', ') ?? [];
}
