import type { Root } from 'mdast';
import remarkParse from 'remark-parse';
import { unified } from 'unified';

/**
 * Markdown that misreads scripts. Setext underlines, code and autolinks are plain text in a screenplay; tags and comments are
 * taken out or printed as typed before and after the parser; brackets are marks, which are read from the source text.
 */
const switchedOff = [
  'setextUnderline',
  'codeIndented',
  'codeFenced',
  'codeText',
  'autolink',
  'htmlFlow',
  'htmlText',
  'labelStartLink',
  'labelStartImage',
  'labelEnd',
];

const processor = unified()
  .use(remarkParse)
  .data({ micromarkExtensions: [{ disable: { null: switchedOff } }] })
  .freeze();

/** Parses the masked source as CommonMark without what misreads scripts. */
export function parseMarkdown(text: string): Root {
  return processor.parse(text);
}

const references = new Map<string, string>();

/** Decodes a character reference (`&amp;`) as CommonMark does; text that is none comes back as it is. */
export function decodeReference(text: string): string {
  const known = references.get(text);
  if (known !== undefined) return known;
  const block = processor.parse(text).children[0];
  const inline = block?.type === 'paragraph' ? block.children[0] : undefined;
  const decoded = inline?.type === 'text' ? inline.value : text;
  if (references.size < 4096) references.set(text, decoded);
  return decoded;
}
