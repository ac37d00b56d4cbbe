/** A base form that a word may be bent from. */
export type VerbForm = 'base' | 's' | 'ed' | 'ing';

const irregularNouns = new Map<string, string>(
  Object.entries({
    men: 'man',
    women: 'woman',
    children: 'child',
    feet: 'foot',
    teeth: 'tooth',
    mice: 'mouse',
    geese: 'goose',
    oxen: 'ox',
    people: 'people',
    dice: 'dice',
    wolves: 'wolf',
    knives: 'knife',
    lives: 'life',
    wives: 'wife',
    shelves: 'shelf',
    leaves: 'leaf',
    loaves: 'loaf',
    calves: 'calf',
    scarves: 'scarf',
    halves: 'half',
    thieves: 'thief',
    hooves: 'hoof',
    elves: 'elf',
    selves: 'self',
    potatoes: 'potato',
    tomatoes: 'tomato',
    heroes: 'hero',
    echoes: 'echo',
  }),
);

const irregularVerbs = new Map<string, string>(
  `fell:fall took:take taken:take gave:give given:give threw:throw thrown:throw drew:draw drawn:draw held:hold hung:hang tore:tear
  torn:tear wore:wear worn:wear shot:shoot struck:strike lit:light burnt:burn broke:break broken:break bit:bite bitten:bite eaten:eat
  ate:eat sold:sell bought:buy caught:catch sat:sit stood:stand ran:run swung:swing flew:fly stuck:stick laid:lay has:have does:do
  is:be are:be was:be were:be been:be am:be had:have did:do done:do said:say went:go goes:go gone:go left:leave drove:drive
  driven:drive rode:ride ridden:ride bled:bleed saw:see seen:see came:come made:make knew:know known:know felt:feel found:find
  kept:keep spun:spin slept:sleep swept:sweep wept:weep crept:creep leapt:leap knelt:kneel
  woke:wake woken:wake froze:freeze frozen:freeze spoke:speak spoken:speak stole:steal stolen:steal wrote:write written:write
  hid:hide hidden:hide bent:bend built:build sent:send spent:spend lost:lose fought:fight brought:bring thought:think taught:teach
  told:tell paid:pay slid:slide sank:sink sunk:sink drank:drink drunk:drink rang:ring rung:ring sang:sing
  sung:sing swam:swim began:begin dug:dig clung:cling flung:fling slung:sling stung:sting wound:wind bound:bind ground:grind
  sprang:spring rose:rise risen:rise shook:shake shaken:shake sewn:sew hewn:hew woven:weave swollen:swell dying:die lying:lie
  tying:tie strewn:strew met:meet led:lead shone:shine blown:blow blew:blow grown:grow grew:grow dealt:deal swore:swear
  bore:bear borne:bear chose:choose chosen:choose fed:feed fled:flee heard:hear lent:lend meant:mean sought:seek spat:spit`
    .split(/\s+/)
    .map((pair) => pair.split(':') as [string, string]),
);

/** The singulars that a word may be the plural of, and the word itself first. */
export function nounBases(word: string): string[] {
  const bases = [word];
  const irregular = irregularNouns.get(word);
  if (irregular) bases.unshift(irregular);
  if (!word.endsWith('s') || word.length < 3) {
    if (word.endsWith('men') && word.length > 4) bases.push(`${word.slice(0, -3)}man`);
    return bases;
  }
  if (word.endsWith('ies') && word.length > 4) bases.push(`${word.slice(0, -3)}y`);
  if (/(?:s|x|z|ch|sh|o)es$/.test(word)) bases.push(word.slice(0, -2));
  if (!word.endsWith('ss')) bases.push(word.slice(0, -1));
  return bases;
}

/** The infinitives that a word may be a form of, with the form. */
export function verbBases(word: string): (readonly [string, VerbForm])[] {
  const bases: (readonly [string, VerbForm])[] = [];
  const irregular = irregularVerbs.get(word);
  if (irregular)
    bases.push([irregular, word.endsWith('ing') ? 'ing' : /^(?:has|does|is|goes)$/.test(word) ? 's' : 'ed']);
  bases.push([word, 'base']);
  if (word.endsWith('s') && !word.endsWith('ss')) {
    if (word.endsWith('ies')) bases.push([`${word.slice(0, -3)}y`, 's']);
    if (/(?:s|x|z|ch|sh|o)es$/.test(word)) bases.push([word.slice(0, -2), 's']);
    bases.push([word.slice(0, -1), 's']);
  } else if (word.endsWith('ed')) bases.push(...stems(word.slice(0, -2), 'ed'));
  else if (word.endsWith('ing') && word.length > 4) bases.push(...stems(word.slice(0, -3), 'ing'));
  return bases;
}

function stems(stem: string, form: VerbForm): (readonly [string, VerbForm])[] {
  const bases: (readonly [string, VerbForm])[] = [];
  const last = stem.at(-1);
  if (last === stem.at(-2) && !/[aeiou]/.test(last ?? 'a')) bases.push([stem.slice(0, -1), form]);
  bases.push([stem, form], [`${stem}e`, form]);
  if (form === 'ed' && stem.endsWith('i')) bases.push([`${stem.slice(0, -1)}y`, form]);
  return bases;
}
