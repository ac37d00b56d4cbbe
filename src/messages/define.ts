import type { Diagnostic, DiagnosticSource, Severity } from '../base/diagnostic.js';
import type { Range } from '../base/text-range.js';

/** What a message says, as functions of its parameters. */
export interface MessageText {
  readonly reason: string;
  readonly hint?: string;
  readonly actual?: string;
  readonly expected?: readonly string[];
}

/** One row of the registry: severity, a title for the list of codes, and the text. */
export interface MessageDefinition<P> {
  readonly severity: Severity;
  readonly title: string;
  readonly text: (params: P) => MessageText;
}

// biome-ignore lint/suspicious/noExplicitAny: a table holds rows of different parameters
export type MessageTable = Record<string, MessageDefinition<any>>;

type ParamsOf<D> = D extends MessageDefinition<infer P> ? P : never;

/** Writes one row of a table; only here to infer the parameters. */
export function define<P = void>(
  severity: Severity,
  title: string,
  text: (params: P) => MessageText,
): MessageDefinition<P> {
  return { severity, title, text };
}

/** Makes the function by which one layer speaks: `say('code', params, place)` gives the message. */
export function speaker<T extends MessageTable>(source: DiagnosticSource, table: T) {
  return <C extends keyof T & string>(
    code: C,
    params: ParamsOf<T[C]>,
    place?: Range,
    related?: Diagnostic['related'],
  ): Diagnostic => {
    const row = table[code] as MessageDefinition<ParamsOf<T[C]>>;
    return {
      code,
      source,
      severity: row.severity,
      ...row.text(params),
      ...(place ? { place } : {}),
      ...(related ? { related } : {}),
    };
  };
}
