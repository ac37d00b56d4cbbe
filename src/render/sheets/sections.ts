import type { SectionName } from './fold-steps.js';
import { writeContinuity } from './sections/continuity.js';
import { writeDanger } from './sections/danger.js';
import { writeEffects } from './sections/effects.js';
import { writeHappens } from './sections/happens.js';
import { writeIdentity } from './sections/identity.js';
import { writeInHand } from './sections/in-hand.js';
import { writeNotes } from './sections/notes.js';
import { writeOnBody } from './sections/on-body.js';
import { writePeople } from './sections/people.js';
import { writePlace } from './sections/place.js';
import { writeQuestions } from './sections/questions.js';
import { writeSound } from './sections/sound.js';
import { writeTasks } from './sections/tasks.js';
import type { Section } from './sheet-context.js';

/** The writer of each section of a scene's sheet. */
export const sections: Record<SectionName, Section> = {
  identity: writeIdentity,
  happens: writeHappens,
  danger: writeDanger,
  people: writePeople,
  'in-hand': writeInHand,
  'on-body': writeOnBody,
  effects: writeEffects,
  continuity: writeContinuity,
  sound: writeSound,
  place: writePlace,
  questions: writeQuestions,
  tasks: writeTasks,
  notes: writeNotes,
};
