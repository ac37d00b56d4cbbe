const words = (text: string): ReadonlySet<string> => new Set(text.trim().split(/\s+/));

/** What is part of a vehicle and of nothing else: it comes and goes with the vehicle. Common practice. */
export const vehicleParts = words(
  `axle bonnet bumper chassis dashboard fender grille headlamp headlight hubcap mudguard odometer radiator-grille
  running-board speedometer steering-wheel tailgate taillight tyre tire windscreen windshield wiper`,
);

/** What is part of a vehicle outdoors, when one is there, and part of a room indoors. Common practice. */
export const partsOutdoors = words('bed boot cab door hood horn mirror radiator roof seat tank trunk wheel window');

/** Places that are the inside of a vehicle: its parts are their dressing. Common practice. */
export const vehiclePlaces =
  /\b(?:ambulance|boat|bus|cab|camper|caravan|car|carriage|coach|cockpit|compartment|ferry|jeep|limousine|lorry|minibus|pick-?up|plane|rv|ship|submarine|taxi|train|tram|truck|van|wagon|yacht)\b/i;
