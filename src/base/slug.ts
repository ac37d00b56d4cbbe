/** Words of ASCII with single spaces between them: nothing to fold but the case. */
const nothingToFold = /^[!-~]+(?: [!-~]+)*$/;

/** Folds a name for comparison: case, white space, quotes and dashes are one (rule E6). */
export function foldName(name: string): string {
  if (nothingToFold.test(name)) return name.toLowerCase();
  return name
    .normalize('NFC')
    .toLowerCase()
    .replace(/[\u2018\u2019\u201b\u02bc]/g, "'")
    .replace(/[\u201c\u201d\u201e]/g, '"')
    .replace(/[\u2010-\u2015\u2212]/g, '-')
    .replace(/\s+/g, ' ')
    .trim();
}

/** Folds the name of a thing: as any name, and an article before it is no part of it. */
export function foldThing(name: string): string {
  return foldName(name).replace(/^(?:an?|the) (?=\S)/, '');
}

/** The name of a thing as lists print it: `a letter` is a letter; `The Harbour Post` keeps its article. */
export function withoutArticle(name: string): string {
  return name.replace(/^(?:[Aa]n?|[Tt]he)\s+(?=\p{Ll})/u, '');
}

/** A name as an id: lower-case letters and digits joined by hyphens; accents fall, other scripts stay. */
export function slug(name: string): string {
  const plain = foldName(name)
    .normalize('NFD')
    .replace(/\p{M}+/gu, '');
  return plain.replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-+|-+$/g, '') || 'unnamed';
}
