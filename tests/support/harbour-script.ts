import type { FrontMatter, Script } from '../../src/script/types.js';
import {
  action,
  heading,
  item,
  line,
  omitted,
  part,
  scene,
  script,
  speech,
  styledLine,
  transition,
} from './script-builder.js';

/** A short script of several pages that shows every kind of line, for tests of the printed page. */
export function harbourScript(settings: Partial<FrontMatter> = {}): Script {
  const opening = [part('ACT ONE'), transition('FADE IN:')];
  const first = scene(heading('EXT. HARBOUR - DAWN', '1'), [
    action(
      'Fog on the water. A rowing boat knocks against the steps. NORA (60), in a yellow oilskin two sizes too big, ties it up with a knot that she has to try twice.',
    ),
    action(styledLine(['On the wall, a painted ', 'plain'], ['NO MOORING', 'bold'], [' sign, half gone.', 'plain'])),
    speech('NORA', '(to the boat)', 'Stay there. I mean it this time.'),
    action('It drifts. She watches it go for a long time.'),
    transition('CUT TO:'),
  ]);
  const talk =
    'You were told to bring two of them. I heard it, the whole quay heard it. Now there is one, and it is wet, and the man who ordered it is standing over there with his hat in his hands.';
  const second = scene(heading('INT. CHANDLERY - DAY', '2'), [
    action('Shelves of rope to the ceiling. IVO (25) counts tins – seven, eight, ½, ⅜, Ж – and loses count.'),
    speech('IVO', talk, '(beat)', talk),
    speech("NORA (CONT'D)", '(not looking up from the ledger that she has been pretending to read)', talk),
    ...Array.from({ length: 9 }, (_, at) => [
      action(`Ivo puts tin number ${at + 1} back on the shelf. It is not where it belongs, and both of them know it.`),
      speech(at % 2 ? 'NORA' : 'IVO', 'That one was empty.'),
    ]).flat(),
    speech('IVO', `${talk} ${talk} ${talk}`),
  ]);
  const third = scene(
    heading('EXT. HARBOUR - NIGHT (MONTAGE)', '4', { qualifiers: ['MONTAGE'] }),
    [item('1. A hand on a wet rope.'), item('2. The lamp turns.'), action('Gulls.'), transition('FADE OUT.')],
    { lead: [omitted('3')] },
  );
  return script([first, second, third], settings, {
    opening,
    closing: [{ ...part('THE END'), line: line('THE END', 'bold') }],
  });
}
