/** A book in which every name that the book knows stands once, as a person would write it. */
export const fullBook = `# yaml-language-server: $schema=book.schema.json
money:
  currency: EUR
  budget: 1200
  contingency: 12%
  tax: 20%
  prices include tax: no
  rates:
    USD: 0.92 on 2027-02-01
    GBP: 1.15
  other costs:
    - what: crew food
      cost: 8
      per: head and day
    - { what: fuel, cost: 60.50, per: once, paid: 20, paid on: 2027-02-03 }
prep:
  starts: 2027-02-22
  hours a day: 3
  drier: yes
working days: Mon-Fri
holidays: [2027-03-26, 2027-03-29]
usual:
  takes: 3
  setups: 2
  rehearsals: 1
  spare: 10%
  call: 8:00
  wrap: 18:30
  rest hours: 11
  golden hour: -4 to 6
  zone: Europe/Copenhagen
days:
  - date: 2027-03-12
    call: 7:30
    wrap: 1:30
    at: [quay, hut]
    scenes: [1, 2A, int-hut-night]
    meal: 12:30
    shot: no
    note: bring torches
locations:
  quay:
    name: The old quay
    address: 3 Quay Lane
    coordinates: 55.61, 12.34
    zone: Europe/Copenhagen
    contact: the harbour office, 555 0100
    permission: until 20 March
    parking: behind the shed
    power: one socket, 10 A
    toilets: in the café
    warm room: the hut
    drying: the boiler room
    phone signal: none below the wall
    hospital: 12 Mill Road
    noise: ferry at 11 and 16
    note: mind the step
  hut:
places:
  boathouse:
    was: [shed]
    at: [quay, hut]
    note: the window is boarded up
people:
  nora:
    was: nell
    played by: an actor
    phone: 555 0101
    email: nora@example.org
    minor: yes
    hours a day: 4.5
    transport: by train
    food: no fish
    sizes: { height: 168 cm, shoe: 38 }
    allergies: [wool, latex]
    owns: [brown boots]
    agreement: signed
helpers:
  sam:
    name: Sam
    does: [props, costume]
    phone: 555 0102
    cash: 150
    allergies: nuts
suppliers:
  paper-shop:
    name: The paper shop
    contact: 555 0103
    delivery: 2-4 days
    delivers: Mon-Sat
    shipping: 4.90
    free from: 50
scenes:
  int-hut-night:
    was: [int-shed-night]
    begin: 20:15
    setups: 4
    takes: 5
    shots: [wide, "hands, close"]
    in charge: sam
    reset: [light the lamp, dry the floor]
    reset minutes: 6
    cold: yes
    note: quiet, please
elements:
  letter:
    was: [note]
    get: make
    from: paper-shop
    second source: the post office
    have: 1
    copies: 12
    used up: yes
    per take: 1
    takes: 4
    setups: 2
    rehearsals: 1
    spare: 20%
    together: 1
    fragile: no
    material: paper
    states:
      torn: { undo: never, make: 5 min, on camera: copy each take }
    piece: 1.2 m
    pack: 5 m
    pool: paper
    batteries: 4 AA
    price: 12.50 USD
    per: pack
    tax included: yes
    tax: 5%
    deposit: 20
    deposit returned: 2027-03-20
    owner: the post office
    collect: 2027-03-10
    back: 2027-03-20
    delivery: 4
    prep:
      - age with tea
      - { task: seal, who: sam, hours: 30 min, days: 1, wait: 1 day }
    materials:
      - { what: cream paper, from: paper-shop, price: 3.20, pieces: 2, delivery: 3 days, ordered: 2027-02-20, received: 2027-02-24, paid: 6.40, paid on: 2027-02-20 }
    fitting: 2027-03-02
    test: 2027-03-03
    rehearsal: 2027-03-04
    ordered: 2027-02-20
    promised: 2027-02-25
    received: 2027-02-24
    checked: 2027-02-25
    ready: 2027-03-01
    paid: 40
    paid on: 2027-02-20
    paid by: sam
    receipt: 17
    refund: 5
    refund on: 2027-03-01
    problem: late
    replaces: card
    box: B2
    label: LETTER
    who: sam
    pictures: [letter-1.jpg]
    words: "Come at once."
    weapon: { kind: soft, blunted by: sam, blunted on: 2027-03-01, key holder: Sam, notice given: no }
    note: cream, not white
  empty:
kit:
  tape:
    name: gaffer tape
    need: 2
    get: buy
    price: 7
refused: [moon]
answers:
  q-1: yes, she keeps it
`;
