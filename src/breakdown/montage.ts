import type { Block, Scene } from '../script/types.js';
import { montageWord } from '../trade/story-day-words.js';

/** One image of a montage: how the script counts it, and the stretch of the source it fills. */
export interface MontageImage {
  /** The letter or number written before it, else its place in the row. */
  readonly label: string;
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

function titleOf(block: Block): string | null {
  if (block.kind === 'transition' || block.kind === 'part') return block.line.text;
  const [first, ...others] = block.kind === 'action' ? block.lines : [];
  return first && others.length === 0 && !/\p{Ll}/u.test(first.text) ? first.text : null;
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

/** How a garment is called that is on in some images of a montage only. */
export function onlyInImages(labels: readonly string[]): string {
  return `only in image${labels.length > 1 ? 's' : ''} ${labels.join(', ')}`;
}

/** The labels that `onlyInImages` has put into words; empty for other words. */
export function imagesIn(action: string | null): readonly string[] {
  return /^only in images? (.+)$/.exec(action ?? '')?.[1]?.split(', ') ?? [];
}
