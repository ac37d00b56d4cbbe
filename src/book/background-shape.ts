import { z } from 'zod';
import * as leaf from './leaf-shapes.js';

const look = z.strictObject(
  {
    look: z.string({ error: 'what they look like' }).describe('What they look like: Sunday clothes, dark, hats.'),
    count: leaf.whole('How many of them.', 1),
  },
  { error: 'look, count' },
);

/** People in the background: one entry for each group of the script. */
export const backgroundShape = z.strictObject(
  {
    was: leaf.lines('Earlier ids of this group.'),
    count: leaf.whole('How many come. Fewer than the script says is for the camera to hide.', 1),
    looks: leaf.listOf(look, 'Who looks how: count by look.', 'a list of looks'),
    bring: leaf.line('What they are told to wear and bring.'),
    minor: leaf.yesNo('Are they under age?'),
    'hours a day': leaf.hoursOfDay('Hours a day they may work, as you were told by who decides it.'),
    with: leaf.line('The grown-up who comes with a child and stays.'),
    note: leaf.line('Anything else.'),
  },
  { error: 'a group: count, looks, bring' },
);
