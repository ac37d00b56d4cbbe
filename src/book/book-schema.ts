import { z } from 'zod';
import { bookShape } from './book-shape.js';

/** The JSON Schema (draft 2020-12) of the production book, for editors that complete and check YAML. */
export function makeBookSchema(): Record<string, unknown> {
  const { $schema, ...schema } = z.toJSONSchema(bookShape, { io: 'input', target: 'draft-2020-12', reused: 'ref' });
  return { $schema, title: 'Production book', ...allowEmpty(schema) };
}

/** The schema as the text of its file. */
export function printBookSchema(): string {
  return `${JSON.stringify(makeBookSchema(), null, 2)}\n`;
}

/** An empty file is a book too. */
function allowEmpty(schema: Record<string, unknown>): Record<string, unknown> {
  return { ...schema, type: ['object', 'null'] };
}
