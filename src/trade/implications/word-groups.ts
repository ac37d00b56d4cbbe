/** Groups of words that cues name in capitals: base forms divided by spaces. */
export const wordGroups: Readonly<Record<string, string>> = {
  // people beyond names and pronouns; nouns in -man, -woman, -boy, -girl count without standing here
  PEOPLE: `person people man woman boy girl child kid baby toddler infant teenager teen youth lad lass adult couple pair twin crowd group gang
    family mother father mum mom dad parent son daughter brother sister grandmother grandfather grandma grandpa granny uncle aunt cousin
    husband wife bride groom widow widower friend neighbour neighbor stranger guest host hostess customer client shopper visitor passer-by
    passenger driver pilot sailor fisher cook chef waiter waitress bartender barman barmaid baker butcher farmer gardener worker labourer
    builder carpenter electrician plumber mechanic engineer doctor nurse surgeon patient paramedic medic dentist vet teacher pupil student
    professor librarian clerk secretary manager boss owner landlord landlady tenant lawyer judge witness thief robber burglar killer attacker
    intruder prisoner guard officer constable detective inspector cop police soldier captain sergeant priest vicar nun monk singer dancer
    musician actor actress artist painter photographer reporter player runner rider swimmer climber hiker tourist beggar tramp elder
    porter usher conductor courier boyfriend girlfriend lover victim figure queen king prince princess knight servant maid butler duke witch wizard pirate cowboy bandit
    outlaw gunman sniper thug bouncer trainer referee hunter keeper ranger shepherd rabbi imam dealer trader merchant shopkeeper vendor
    assistant intern lodger caretaker janitor cleaner hairdresser barber tailor sculptor writer author poet scientist pharmacist agent spy
    mayor president minister inmate hitchhiker commuter cyclist jogger surfer diver astronaut chief leader member others everyone everybody someone somebody anyone nobody half`,
  BODY: `hand finger thumb arm elbow wrist fist leg knee foot toe heel face cheek chin forehead brow head hair ear eye nose mouth lip tongue
    tooth throat neck shoulder back chest stomach belly hip skin palm temple knuckle nail scalp shin ankle thigh`,
  GARMENT: `coat jacket overcoat raincoat cloak cape shirt blouse t-shirt tee vest waistcoat jumper sweater pullover cardigan hoodie sweatshirt
    fleece dress skirt trousers jeans pants shorts leggings suit tuxedo uniform overalls dungarees apron gown robe bathrobe nightgown
    nightdress pyjamas pajamas socks sock stockings tights shoe shoes boot boots trainer trainers sneaker sneakers slipper slippers sandal
    sandals hat cap helmet hood scarf shawl glove gloves mitten mittens tie belt sleeve sleeves collar hem cuff clothes clothing costume
    outfit tunic kimono sari kilt poncho parka anorak veil`,
  HATS: 'hat cap helmet hood bonnet beret beanie',
  VEHICLE: `car taxi cab van truck lorry bus coach minibus pickup jeep limousine limo hearse ambulance motorcycle motorbike moped scooter
    tractor tram vehicle hatchback convertible campervan`,
  BOAT: 'boat ship ferry canoe kayak dinghy raft yacht barge rowboat rowing-boat lifeboat sailboat punt skiff trawler speedboat motorboat gondola catamaran',
  TRAINS: 'train tram subway underground metro locomotive carriage tube monorail',
  PAPER: `paper letter note page photo photograph picture envelope ticket contract cheque check map poster newspaper book notebook card
    cardboard form document bill receipt cloth sheet dress shirt sleeve skirt fabric curtain ribbon wrapping list cover parcel packet bag
    magazine painting drawing canvas`,
  WRITTEN: `letter note form contract book logbook sketchbook guestbook exercise-book textbook diary notebook card paper list page document cheque check register map wall board blackboard
    whiteboard envelope postcard report ledger name signature autograph message`,
  READABLE: `letter note newspaper paper form card postcard telegram diary page document menu label list report contract book magazine map
    leaflet message text email invitation will sign headline file inscription ticket receipt summons bill manuscript scroll`,
  SEALED: 'envelope letter parcel package packet box seal present gift crate tin jar bottle',
  GLASSY: `glass window vase bottle mirror plate cup mug jar bowl saucer lamp lightbulb bulb lantern pane windscreen windshield dish teapot jug
    ornament figurine chandelier aquarium tile chair table door guitar phone picture frame cabinet radio clock statue pot screen bust
    urn pitcher decanter tumbler light glasses`,
  LIQUID: `water tea coffee milk juice wine beer ale whisky whiskey gin vodka rum brandy champagne cider drink soup sauce paint petrol oil
    liquid cocoa lemonade soda sherry tonic cordial cream syrup broth medicine bucket pint glass cup mug jug kettle bottle`,
  ALCOHOL: `wine beer ale lager whisky whiskey gin vodka rum brandy champagne cider sherry port cocktail bourbon tequila liqueur prosecco pint
    scotch absinthe vermouth martini schnapps grappa ouzo mead sake claret burgundy`,
  VESSEL:
    'glass cup mug bottle can flask beaker tumbler goblet tankard thermos jug bowl straw carton tin pint teacup canteen flute',
  WET: 'water river lake sea pond pool ocean stream canal surf creek tub bath ditch ford moat lagoon tide shallows waves wave',
  WEAPON: 'gun rifle pistol revolver shotgun musket machine-gun handgun firearm carbine',
  BLADE: `knife blade razor axe axes sword dagger machete cleaver hatchet penknife scalpel bayonet scissors shears sickle scythe saw switchblade
    chisel spear arrow dart boathook meathook pitchfork`,
  FLAME:
    'fire candle candles stove lamp lantern bonfire campfire torch match cigarette cigar cigarillo pipe fuse stub lighter incense kindling firework',
  BAG: `suitcase bag rucksack backpack case trunk holdall box duffel satchel briefcase crate basket handbag luggage hamper`,
  BEDS: 'bed bunk cot mattress sofa couch hammock futon',
  PLAYABLE: `piano guitar violin cello flute trumpet drum drums harp accordion fiddle organ keyboard banjo saxophone clarinet harmonica
    ukulele viola recorder trombone mandolin concertina tuba bass`,
  ANIMALS: `dog puppy cat kitten horse pony foal mare stallion cow calf bull sheep lamb goat pig piglet donkey mule chicken hen cockerel rooster
    duck goose swan pigeon parrot budgie canary owl crow raven seagull gull rabbit hare hamster ferret fox badger deer wolf bear lion
    tiger elephant monkey camel hound terrier collie spaniel sheepdog greyhound labrador alsatian hawk falcon eagle tortoise turtle
    lizard frog toad goldfish hedgehog squirrel otter seal animal pet stray mongrel cattle flock herd livestock`,
  VERMIN: `rat mouse mice snake spider insect cockroach beetle bee wasp hornet ant maggot worm fly flies moth scorpion bat locust leech louse
    lice tarantula python viper cobra adder`,
  CROWD: `crowd passenger guest soldier mourner spectator onlooker commuter shopper diner dancer worker protester prisoner villager customer
    pupil student tourist patron bystander passer-by audience congregation congregant mob queue refugee patient rescuer volunteer player
    reveller worshipper pedestrian choir band partygoer wedding-guest neighbour fisherman policeman officer guard nurse child kid schoolchild`,
  GROUND: 'floor ground stairs staircase steps road pavement street deck grass snow mud ice gravel sand rocks wall',
  UNREAL: `toy stuffed porcelain china cartoon knitted plastic inflatable cuddly teddy rocking wooden brass bronze marble clay glass
    cardboard carved painted jade paper clothes sea model ceramic stone ice sugar chocolate gummy`,
  FARAWAY: 'distance distant somewhere offscreen o.s. unseen',
  BLOODY: 'blood bloody bloodied bloodstained wine paint ink lipstick ketchup jam beetroot',
  FOODS: `bread sandwich toast soup stew apple cake biscuit cookie egg cheese meat chicken fish chips rice pasta noodles pie pizza salad cereal
    porridge banana orange chocolate burger meal dinner lunch breakfast supper steak sausage bacon pancake pudding fruit crisps sweets
    ice-cream yoghurt yogurt peach pear plum grape carrot curry bun croissant doughnut roll crust slice piece mouthful bite spoonful`,
};
