import { readPdf } from './pdf-positions.js';

/** The printed lines of a PDF from top to bottom; what stands on one baseline is joined, left to right. */
export async function pdfLines(content: string | Uint8Array | undefined): Promise<string[]> {
  const { texts } = await readPdf(content as Uint8Array);
  const lines = new Map<string, { x: number; text: string }[]>();
  for (const { page, x, y, text } of texts) {
    const key = `${page} ${y.toFixed(1)}`;
    lines.set(key, [...(lines.get(key) ?? []), { x, text }]);
  }
  const place = (key: string) => key.split(' ').map(Number) as [number, number];
  return [...lines]
    .sort(([a], [b]) => place(a)[0] - place(b)[0] || place(a)[1] - place(b)[1])
    .map(([, pieces]) => joinPieces(pieces));
}

function joinPieces(pieces: readonly { x: number; text: string }[]): string {
  return [...pieces]
    .sort((a, b) => a.x - b.x)
    .map(({ text }) => text.trim())
    .join(' ')
    .replace(/ ([,:;.])/g, '$1');
}
