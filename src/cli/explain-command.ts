import type { Command } from 'commander';
import { analyse, readLexicon } from '../app/analyse.js';
import { explain, explainable } from '../app/explain.js';
import { findNearest } from '../base/nearest.js';
import { sayCommand } from '../messages/command.js';
import { exitCodes } from './exit-codes.js';
import { readInput } from './read-input.js';
import { reportMessages } from './report.js';
import type { Session } from './session.js';

/** Adds `explain FILE NAME`. */
export function addExplainCommand(program: Command, session: Session): void {
  program
    .command('explain')
    .description('say where an element, a person, a place, a scene, a story day, a state or a figure comes from')
    .argument('<file>', 'the script; - reads standard input')
    .argument('<name...>', 'what to explain, as the sheets print it: a name, a scene, D2, wet, 1 3/8, 0:48')
    .addHelpText(
      'after',
      '\nExamples:\n  prepwright explain my-film.md storm lantern\n  prepwright explain my-film.md scene 7\n  prepwright explain my-film.md D2\n',
    )
    .action((file: string, words: string[]) => runExplain(file, words.join(' '), session));
}

async function runExplain(file: string, name: string, session: Session): Promise<void> {
  const { host } = session;
  const input = await readInput(file, session);
  if (!input) return;
  const { analysis, messages } = analyse(input.bytes, input.name, readLexicon(host));
  const show = (shown: typeof messages) =>
    host.error(
      reportMessages(shown, { texts: { [input.name]: input.text }, file: input.name, colour: host.colour.error }),
    );
  if (!analysis) {
    show(messages);
    session.exit(exitCodes.scriptErrors);
    return;
  }
  const explanations = explain(name, analysis);
  if (explanations.length === 0) {
    show([sayCommand('name-unknown', { name, nearest: findNearest(name, explainable(analysis.breakdown)) })]);
    session.exit(exitCodes.usage);
    return;
  }
  host.out(
    explanations.map(({ title, lines }) => `${title}\n${lines.map((line) => `  ${line}\n`).join('')}`).join('\n'),
  );
}
