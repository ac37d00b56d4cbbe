import type { Area } from './measures.js';
import { type Item, lowerItem, type PageTree } from './page-tree.js';
import { heightOf, type Strip } from './strips.js';

interface OpenPage {
  items: Item[];
  bookmarks: string[];
  /** Height used so far, and by repeated heads alone, in points. */
  used: number;
  head: number;
}

/** The part of a page that must be free for something higher than a page to begin on it. */
const leastStart = 0.25;

/** Places strips on pages from the top. Kept strips move together; what is higher than a page is cut between strips. */
export function paginate(strips: readonly Strip[], area: Area): PageTree[] {
  const pages: OpenPage[] = [];
  let page = newPage(pages);
  const turn = (next: Strip | undefined) => {
    page = newPage(pages);
    for (const head of next?.head ?? []) place(page, head, area);
    page.head = page.used;
  };
  for (const group of groupKept(strips)) {
    if (group[0]?.breakBefore && page.used > 0) turn(undefined);
    const height = heightOf(group);
    const fitsHere = page.used + height <= area.height + 0.01;
    const fitsOne = height <= area.height - heightOf(group[0]?.head ?? []);
    // What is higher than a page is cut anyhow, but not right below its heading.
    const room = fitsOne || area.height - page.used < area.height * leastStart;
    if (!fitsHere && room && page.used > 0) turn(firstInk(group));
    for (const one of group) {
      if (page.used + one.height > area.height + 0.01 && page.used > page.head && !one.white) turn(one);
      if (!(one.white && page.used === page.head)) place(page, one, area);
    }
  }
  return pages.map(({ items, bookmarks }) => ({ width: area.pageWidth, height: area.pageHeight, items, bookmarks }));
}

function firstInk(group: readonly Strip[]): Strip | undefined {
  return group.find((one) => !one.white);
}

function newPage(pages: OpenPage[]): OpenPage {
  const page: OpenPage = { items: [], bookmarks: [], used: 0, head: 0 };
  pages.push(page);
  return page;
}

function place(page: OpenPage, one: Strip, area: Area): void {
  const top = area.y + page.used;
  for (const item of one.items) page.items.push(lowerItem(item, top));
  if (one.bookmark !== null) page.bookmarks.push(one.bookmark);
  page.used += one.height;
}

function groupKept(strips: readonly Strip[]): Strip[][] {
  const groups: Strip[][] = [];
  let open = false;
  for (const one of strips) {
    if (open) groups.at(-1)?.push(one);
    else groups.push([one]);
    open = one.keep;
  }
  return groups;
}
