import { bulletins, check, type Hazard, sheets } from './hazard.js';
import { milderHazards, ownHazards } from './hazards-further.js';

/** Prints once under every danger box: what the tool does not know. */
export const hazardCaution =
  'General cautions only. Check the current text of every bulletin: numbers and law change. Local codes and licensed people decide. A hazard not listed here may still be there.';

/** Hazards of a shoot, by number. */
export const hazards: readonly Hazard[] = [
  {
    id: 'H1',
    title: 'Firearms and replicas',
    precaution:
      'No live ammunition anywhere near the set. Handle every gun, toy or replica as if it were loaded, and never point one at a person. One named handler keeps it, shows it to everyone and takes it back. Prefer a solid dummy, with sound and flash added later. Blanks can kill at close range. Tell the police beforehand, even for a replica.',
    reading: `${bulletins('bulletins 1 and 2')}; ${sheets('sheet 20')}. ${check}`,
    qualified: 'A trained armourer; permits and insurance as the local law asks.',
    source: 'CSATF bulletins 1 and 2; HSE sheet 20; Metropolitan Police film unit notes',
  },
  {
    id: 'H2',
    title: 'Blades and points',
    precaution:
      'Use a blunted, soft or dummy blade; a sharp one only for a close shot that nothing else will do, away from everyone. One named person hands it out and takes it back. Rehearse slowly, at a distance.',
    reading: `${bulletins('bulletin 30')}; ${sheets('sheet 20')}. ${check}`,
    qualified: 'A property master; a fight coordinator when it is swung, thrown or held to a body.',
    source: 'CSATF bulletin 30; HSE sheet 20',
  },
  {
    id: 'H3',
    title: 'Stunts, fights and falls',
    precaution:
      'Plan, rehearse slowly and brief everyone. Keep distance and cheat the contact by the camera angle. Mats and pads, a floor walked and cleared, few takes. Anyone may say no at any moment. First aid at hand.',
    reading: `${bulletins('bulletins 4, 18 and 37')}; ${sheets('sheet 17')}. ${check}`,
    qualified: 'A competent stunt or fight coordinator, and performers trained for it.',
    source: 'CSATF bulletins 4, 18 and 37; HSE sheet 17',
  },
  {
    id: 'H4',
    title: 'Explosions and fireworks',
    precaution:
      'Do not improvise. Prefer sound, light and a later effect. Otherwise the smallest charge, a cleared zone, radios and phones off near devices, and a plan for a misfire.',
    reading: `${bulletins('bulletin 16')}; ${sheets('sheet 16')}. ${check}`,
    qualified: 'A licensed pyrotechnician; the fire authority.',
    source: 'CSATF bulletin 16; HSE sheet 16; City of Burbank film permit rules',
  },
  {
    id: 'H5',
    title: 'Open flame',
    precaution:
      'Prefer an electric flame. Otherwise extinguisher, fire blanket and water at hand, one named person who only watches the flame, no fuel, loose sleeves, hair or curtains near it, a non-burning base, and a watch after the last take.',
    reading: `${bulletins('bulletin 19')}; ${sheets('sheet 16')}. ${check}`,
    qualified: 'Fire permit and owner’s leave; an effects technician for more than a candle.',
    source: 'CSATF bulletin 19; City of Burbank film permit rules; Florida State University smoke and flame rules',
  },
  {
    id: 'H6',
    title: 'Smoke, fog and dust',
    precaution:
      'Warn cast and crew on the call sheet and ask about asthma. Use only material sold for the purpose, air the room between takes, and arrange the fire alarm with the owner: never disable it alone.',
    reading: `${bulletins('bulletin 10')}; ${sheets('sheet 3')}. ${check}`,
    qualified: 'An effects technician; the person in charge of the building.',
    source: 'CSATF bulletin 10; HSE sheet 3 from memory',
  },
  {
    id: 'H7',
    title: 'Water',
    precaution:
      'Prefer the bank, shallow water or a tub. Learn depth, current, cold and quality beforehand. Life vests and a rescuer in position, short takes, warm dry clothes waiting, all mains power away.',
    reading: `${bulletins('bulletins 7, 15 and 17')}; ${sheets('sheet 17')}. ${check}`,
    qualified: 'A lifeguard or qualified diver; a licensed boat handler.',
    source: 'CSATF bulletins 7, 15 and 17; Florida State University water rules; HSE sheet 17',
  },
  {
    id: 'H8',
    title: 'Animals',
    precaution:
      'The owner or trainer is in charge and present. Nobody else feeds, pets or startles it. Rest, water, shade and a way out. Ask about allergies. Brief everyone, and keep noise and effects away.',
    reading: `${bulletins('bulletins 6, 12 and 31')}; ${sheets('sheet 4')}. ${check}`,
    qualified: 'A handler who knows the animal; licences for animals shown for money, where the law asks.',
    source:
      'CSATF bulletins 6, 12 and 31; IATSE Local 479; gov.uk, animals for exhibition (2024); HSE sheet 4 from memory',
  },
  {
    id: 'H9',
    title: 'Vehicles',
    precaution:
      'Driving comes first and acting second: if the driver must act, tow the car or shoot it standing. Belts on, nobody in the path, engine off for dialogue where the picture allows, and no moving shot on an open road without leave. Leave speed, skids and collisions to professionals or to the cut.',
    reading: `${bulletins('bulletins 8, 8A to 8C, 13, 20, 37, 41 and 42')}; ${sheets('sheet 17')}. ${check}`,
    qualified: 'A licensed and insured driver; a precision driver; police or the road authority.',
    source: 'CSATF bulletins 8, 13, 20, 37, 41 and 42; Florida State University; HSE sheet 17',
  },
  {
    id: 'H10',
    title: 'Railways',
    precaution:
      'Nobody on or beside a track without the railway’s leave and its staff present. The railway’s rules win over the schedule. Prefer a stored carriage, a platform by arrangement, or a set with sound.',
    reading: `${bulletins('bulletin 28')}. ${check}`,
    qualified: 'The railway operator’s representative.',
    source: 'CSATF bulletin 28',
  },
  {
    id: 'H11',
    title: 'Height and edges',
    precaution:
      'Avoid it: shoot low and cheat the drop. Otherwise rails or harness, a second person on every ladder, tools tied, nobody underneath, no work in wind or wet, and a plan for getting someone down.',
    reading: `${bulletins('bulletins 18, 22 and 25')}; ${sheets('sheet 17')}. ${check}`,
    qualified: 'A rigger or lift operator; the owner of the structure.',
    source: 'CSATF bulletin 18; bulletins 22 and 25 from memory; HSE sheet 17',
  },
  {
    id: 'H12',
    title: 'Aircraft',
    precaution:
      'The pilot in command has the last word. A briefing before anyone goes near; keep clear of propellers and rotors, running or not.',
    reading: `${bulletins('bulletins 3, 11, 14 and 29')}. ${check}`,
    qualified: 'A licensed pilot; an aerial coordinator.',
    source: 'CSATF bulletins 3, 11 and 14; bulletin 29 from memory',
  },
  {
    id: 'H13',
    title: 'Drones',
    precaution:
      'Keep it in sight, below the legal ceiling and away from people who are not part of the work. Look up the airspace, the wind and the owner’s leave. A high window may give the shot.',
    reading: `${bulletins('bulletin 36')}; UK Civil Aviation Authority drone code. ${check}`,
    qualified: 'A registered operator with the pilot’s certificate that the country asks.',
    source: 'FirstOption drone notes; CSATF bulletin 36 and US Part 107 from memory',
  },
  {
    id: 'H14',
    title: 'Night and twilight outdoors',
    precaution:
      'Plan extra rest, warm food and a way home for everyone. Nobody works or walks home alone. Light the paths as well as the picture. More care near water, roads and edges. Tell the neighbours and the police.',
    reading: `Bournemouth University, media production safety notes. ${check}`,
    qualified: 'The owner of the place; the local authority where a permit is asked.',
    source: 'Bournemouth University media safety notes; common practice',
  },
  {
    id: 'H15',
    title: 'Children',
    precaution:
      'A licence or permit may be needed weeks ahead. Limited hours, schooling, breaks, and a chaperone or parent who only looks after the child. No smoke, blades, blood or rough talk in the child’s presence. Babies: minutes only, a doll for rehearsals.',
    reading: `${bulletins('bulletin 33')}; your local authority’s child performance rules. ${check}`,
    qualified:
      'The licensing authority; an approved chaperone or studio teacher, as the local law asks; a parent’s consent.',
    source: 'Dorset Council child performance policy; Wales SI 2015/1757; bulletin 33 and California rules from memory',
  },
  {
    id: 'H16',
    title: 'Electricity',
    precaution:
      'Earth-leakage protection on every outdoor or wet circuit, cables off the ground and out of doorways, distance to power lines, nothing opened or rewired by the crew. A generator stands outdoors.',
    reading: `${bulletins('bulletins 23 and 8C')}; UK HSE guidance GS50. ${check}`,
    qualified: 'A qualified electrician.',
    source: 'HSE GS50; CSATF bulletin 8C; bulletin 23 from memory',
  },
  {
    id: 'H17',
    title: 'Heat, cold and storm',
    precaution:
      'Shade and water, or a warm room and dry clothes, and breaks by the clock. Stop for lightning and for wind. Watch one another for signs of cold or heat.',
    reading: `${bulletins('bulletins 34, 35 and 38')}. ${check}`,
    qualified: 'A medic or first-aider; whoever holds the weather forecast may stop the shoot.',
    source: 'CSATF bulletins 34, 35 and 38 from memory',
  },
  {
    id: 'H18',
    title: 'Derelict and confined places',
    precaution:
      'Visit first, with the owner. Ask about asbestos, mould, needles, weak floors, bad air and one-way exits; clean it or choose another place. Never alone, never without light and a phone that works there.',
    reading: `${bulletins('bulletin 26')}; ${sheets('sheet 18')}. ${check}`,
    qualified: 'A competent surveyor; the owner.',
    source: 'HSE sheet 18; CSATF bulletin 26 from memory',
  },
  {
    id: 'H19',
    title: 'Blood, needles and chemicals',
    precaution:
      'Only made-up substitutes, labelled as such, with a skin and allergy test beforehand. No real needle, drug or chemical on set, and no real container that someone could mistake. Stage blood makes floors slippery.',
    reading: `${bulletins('bulletin 24')}. ${check}`,
    qualified: 'A medic or first-aider; a make-up artist for what goes on skin.',
    source: 'CSATF bulletin 24 from memory; common practice',
  },
  {
    id: 'H20',
    title: 'Nudity and intimacy',
    precaution:
      'Talk it through and write the consent down before the day; it can be withdrawn. Closed set, cover garments, the moves agreed like a fight. Never assume how far it goes from the script alone.',
    reading: `Metropolitan Police film unit notes, nudity real or apparent. ${check}`,
    qualified: 'An intimacy coordinator, or a trained person whom both performers choose.',
    source: 'Metropolitan Police film unit notes (2020); common practice',
  },
  {
    id: 'H21',
    title: 'Crime or uniforms in public view',
    precaution:
      'Tell the police and the neighbours beforehand, put up signs, keep one person free to explain. Cover uniforms, badges and weapons between takes. Out of sight of passers-by where you can.',
    reading: `Metropolitan Police film unit notes; Film London code of practice. ${check}`,
    qualified: 'The police film liaison; the owner of the place.',
    source: 'Metropolitan Police film unit notes (2013, 2020); Film London code of practice',
  },
];

const byId = new Map([...hazards, ...ownHazards, ...milderHazards].map((hazard) => [hazard.id, hazard]));

/** The row of a hazard's id (`H5`). Throws for an id that is in no row: that is a fault of ours, not of a script. */
export function hazardOf(id: string): Hazard {
  const hazard = byId.get(id);
  if (hazard === undefined) throw new Error(`No hazard has the id ${id}.`);
  return hazard;
}
