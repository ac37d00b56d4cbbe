import type { Diagnostic } from '../../src/base/diagnostic.js';
import type { ReadScript } from '../../src/script/read-script.js';
import type { Block, Line, Mark, Note, NoteItem, Scene, Script } from '../../src/script/types.js';

/** One view of a script: only what a rule speaks of, in a form that reads well in a file. */
export type Projection = (script: Script) => unknown;

/** Styles as Markdown writes them, marks in angle brackets. */
function printLine(line: Line): string {
  const styled = line.spans.map((span) => {
    const text = line.text.slice(span.start, span.end);
    const sign = { plain: '', italic: '*', bold: '**', 'bold italic': '***' }[span.style];
    return `${sign}${text}${sign}`;
  });
  return styled.join('');
}

function printBlock(block: Block): string {
  switch (block.kind) {
    case 'action':
      return `${block.item ? 'item' : 'action'}: ${block.lines.map(printLine).join(' / ')}`;
    case 'speech': {
      const lines = block.lines.map((one) => `${one.kind === 'parenthetical' ? '(p) ' : ''}${printLine(one.line)}`);
      return `speech of ${block.cue.text} [${block.cue.voice}]: ${lines.join(' / ')}`;
    }
    case 'transition':
      return `transition: ${printLine(block.line)}`;
    case 'part':
      return `part ${block.depth}: ${printLine(block.line)}`;
    case 'page break':
      return 'page break';
    case 'omitted':
      return `omitted: ${block.number}`;
  }
}

function printHeading({ heading, part }: Scene) {
  const light = heading.lightInherited ? `${heading.light} (carried)` : heading.light;
  return {
    number: heading.number,
    text: heading.text,
    setting: heading.setting,
    placeParts: heading.placeParts,
    time: heading.time,
    light,
    qualifiers: heading.qualifiers,
    ...(part === null ? {} : { part }),
  };
}

export const headings: Projection = (script) => script.scenes.map(printHeading);

export const front: Projection = (script) => ({
  front: script.front,
  people: script.people.map(({ at: _, ...person }) => person),
});

export const blocks: Projection = (script) => ({
  opening: script.opening.map(printBlock),
  scenes: script.scenes.map((scene) => [
    ...scene.lead.map((block) => `(before) ${printBlock(block)}`),
    `scene ${scene.heading.number ?? '-'}: ${scene.heading.text}`,
    ...scene.blocks.map(printBlock),
    ...scene.notes.map((note) => `note: ${note.text}`),
  ]),
  closing: script.closing.map(printBlock),
});

function linesOf(block: Block): readonly Line[] {
  if (block.kind === 'action') return block.lines;
  if (block.kind === 'speech') return block.lines.map((one) => one.line);
  return block.kind === 'transition' || block.kind === 'part' ? [block.line] : [];
}

/** Every printed line of a script, headings included, in order. */
export function allLines(script: Script): Line[] {
  const inScenes = script.scenes.flatMap((scene) => [
    ...scene.lead.flatMap(linesOf),
    scene.heading.line,
    ...scene.blocks.flatMap(linesOf),
  ]);
  return [...script.opening.flatMap(linesOf), ...inScenes, ...script.closing.flatMap(linesOf)];
}

function printMark(mark: Mark, line: Line): string {
  const category = mark.category === null ? '' : `, ${mark.category}`;
  return `“${line.text.slice(mark.start, mark.end)}” is ${mark.name} (${mark.form}${category}) at ${mark.at.start.line}:${mark.at.start.column}`;
}

export const marks: Projection = (script) => ({
  lines: allLines(script).map((line) => line.text),
  marks: allLines(script).flatMap((line) => line.marks.map((mark) => printMark(mark, line))),
  definitions: script.definitions.map(({ at: _, ...definition }) => definition),
});

function printItem(item: NoteItem): string {
  const details = [item.by === null ? '' : `by ${item.by}`, item.description ?? ''].filter((one) => one !== '');
  return `${item.count ?? 'some'} × ${item.name}${details.length > 0 ? ` (${details.join('; ')})` : ''}`;
}

function printNote(note: Note): unknown {
  const { text: _, at: __, ...rest } = note;
  if (rest.kind === 'items') return { ...rest, items: rest.items.map(printItem) };
  if (rest.kind === 'costume') return { ...rest, garments: rest.garments.map(printItem) };
  return rest;
}

export const notes: Projection = (script) => ({
  script: script.notes.map(printNote),
  scenes: script.scenes.map((scene) => scene.notes.map(printNote)),
  people: script.people.map((person) => person.name),
});

/** Messages as `line:column severity code`. */
export function printMessages(messages: readonly Diagnostic[]): string[] {
  return messages.map(
    ({ place, severity, code }) => `${place?.start.line ?? 0}:${place?.start.column ?? 0} ${severity} ${code}`,
  );
}

/** What a case of a rule expects: the rule's view of the script, and every message. */
export function project(read: ReadScript, view: Projection): unknown {
  return { read: read.script === null ? null : view(read.script), messages: printMessages(read.messages) };
}
