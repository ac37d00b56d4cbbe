import { readFileSync } from 'node:fs';
import type { GoldElement, GoldItem } from './gold-script.js';

/** What the finder said, as far as scoring needs it. */
export interface Said {
  readonly name: string;
  readonly category: string;
  readonly by: string | null;
  readonly words: string;
}

/** Counts over a set of gold. */
export interface Tally {
  hits: number;
  extras: number;
  misses: number;
  strict: number;
  lenient: number;
  who: number;
  whoOf: number;
  clean: number;
  cleanOf: number;
  readonly errors: string[];
  readonly perCategory: Map<string, { hits: number; extras: number; misses: number }>;
}

/** An empty count. */
export function newTally(): Tally {
  return {
    hits: 0, extras: 0, misses: 0, strict: 0, lenient: 0, who: 0, whoOf: 0, clean: 0, cleanOf: 0, errors: [], perCategory: new Map(),
  };
}

/** Reads a gold file of one item a line. */
export function readGold(file: string): GoldItem[] {
  return readFileSync(file, 'utf8')
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line) as GoldItem);
}

function singular(word: string): string {
  if (word.length > 4 && word.endsWith('ies')) return `${word.slice(0, -3)}y`;
  if (word.length > 4 && /(?:ches|shes|sses|xes|zes)$/.test(word)) return word.slice(0, -2);
  if (word.length > 3 && word.endsWith('ves')) return `${word.slice(0, -3)}f`;
  return word.length > 3 && word.endsWith('s') && !/(?:ss|us|is)$/.test(word) ? word.slice(0, -1) : word;
}

const wordsOf = (text: string) =>
  text.toLowerCase().normalize('NFC').replace(/[’']s\b/g, '').match(/[\p{L}\p{N}]+(?:[-'’][\p{L}\p{N}]+)*/gu) ?? [];

/** The word that a name is about: the last before "of", "with", a comma …, after a hyphen, in the singular. */
export function headWord(name: string): string {
  const main = name.toLowerCase().split(/\s(?:of|with|in|on|from|for|at)\s|[,(]/)[0] as string;
  return singular((wordsOf(main).at(-1) ?? '').split('-').at(-1) as string);
}

function sameHead(a: string, b: string): boolean {
  if (a === b) return true;
  return a.length > 3 && b.length > 3 && (a.startsWith(b) || b.startsWith(a)) && Math.abs(a.length - b.length) <= 3;
}

/** Finer categories of the product that the gold counts under a wider one: all music is sound, all greenery is dressing. */
const wider: Readonly<Record<string, string>> = { music: 'sound', plants: 'dressing' };

const isCategory = (gold: string, said: string) => gold === said || gold === wider[said];

/** Compares what was said of one item with its gold. A hit has the same head; optional gold counts neither way. */
export function tallyItem(tally: Tally, id: string, text: string, gold: readonly GoldElement[], said: readonly Said[]): void {
  const used = new Set<GoldElement>();
  let wrong = 0;
  for (const one of said) {
    const near = (g: GoldElement) => sameHead(headWord(g.name), headWord(one.name)) || wordsOf(g.name).some((word) => word === one.name.toLowerCase());
    const free = gold.filter((g) => !used.has(g) && near(g));
    const hit = free.find((g) => [g.category, ...(g.also ?? [])].some((own) => isCategory(own, one.category))) ?? free[0];
    if (!hit) {
      if (gold.some((g) => used.has(g) && near(g))) continue;
      wrong++;
      countExtra(tally, one, `${id}  ${one.name} (${one.category})  | ${text}`);
      continue;
    }
    used.add(hit);
    if (!hit.optional) countHit(tally, hit, one, `${id}  ${hit.name}: ${hit.category}, not ${one.category}  | ${text}`, text);
  }
  const wanted = gold.filter((g) => !g.optional);
  for (const g of wanted) if (!used.has(g)) countMiss(tally, g, `${id}  ${g.name} (${g.category})  | ${text}`);
  if (wanted.length > 0) return;
  tally.cleanOf++;
  if (wrong === 0) tally.clean++;
}

function cell(tally: Tally, category: string) {
  const made = tally.perCategory.get(category) ?? { hits: 0, extras: 0, misses: 0 };
  tally.perCategory.set(category, made);
  return made;
}

function countExtra(tally: Tally, said: Said, line: string): void {
  tally.extras++;
  cell(tally, said.category).extras++;
  tally.errors.push(`extra   ${line}`);
}

function countMiss(tally: Tally, gold: GoldElement, line: string): void {
  tally.misses++;
  cell(tally, gold.category).misses++;
  tally.errors.push(`missed  ${line}`);
}

function countHit(tally: Tally, gold: GoldElement, said: Said, line: string, text: string): void {
  tally.hits++;
  cell(tally, gold.category).hits++;
  if (isCategory(gold.category, said.category)) tally.strict++;
  else tally.errors.push(`class   ${line}`);
  if ([gold.category, ...(gold.also ?? [])].some((own) => isCategory(own, said.category))) tally.lenient++;
  if (!gold.who) return;
  tally.whoOf++;
  if ((said.by ?? '').toUpperCase() === gold.who.toUpperCase()) tally.who++;
  else tally.errors.push(`who     ${gold.name}: ${gold.who}, not ${said.by}  | ${text}`);
}

const ratio = (a: number, b: number) => (b === 0 ? 0 : a / b);

/** Precision, recall, F1, category accuracy and "who" of a count. */
export function figures(tally: Tally) {
  const precision = ratio(tally.hits, tally.hits + tally.extras);
  const recall = ratio(tally.hits, tally.hits + tally.misses);
  return {
    precision,
    recall,
    f1: ratio(2 * precision * recall, precision + recall),
    strict: ratio(tally.strict, tally.hits),
    lenient: ratio(tally.lenient, tally.hits),
    who: ratio(tally.who, tally.whoOf),
    clean: `${tally.clean}/${tally.cleanOf}`,
  };
}

/** The tables of a count, a line a category. */
export function printTally(title: string, tally: Tally): string {
  const { precision, recall, f1, strict, lenient, who, clean } = figures(tally);
  const three = (n: number) => n.toFixed(3);
  const rows = [...tally.perCategory].sort(([a], [b]) => (a < b ? -1 : 1)).map(([name, c]) => {
    const f = ratio(2 * c.hits, 2 * c.hits + c.extras + c.misses);
    return `  ${name.padEnd(15)} found ${String(c.hits).padStart(4)}  missed ${String(c.misses).padStart(4)}  extra ${String(c.extras).padStart(4)}  F1 ${three(f)}`;
  });
  return [
    title,
    ...rows,
    `  precision ${three(precision)}  recall ${three(recall)}  category strict ${three(strict)} lenient ${three(lenient)}  who ${three(who)}  clean ${clean}`,
    `  F1 ${three(f1)} on ${tally.hits + tally.misses} elements`,
  ].join('\n');
}
