/** Words by which a script tells an age. English usage, our own choice. */
export const ageWords = {
  /** From nought to nineteen, in order. */
  small:
    'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen',
  tens: 'twenty thirty forty fifty sixty seventy eighty ninety',
  decades: 'twenties thirties forties fifties sixties seventies eighties nineties',
  /** Nouns for someone who is no adult, whatever stands before. */
  young:
    'baby infant newborn toddler child kid boy girl teen teens teenage teenager teenaged tween preteen pre-teen adolescent youngster schoolboy schoolgirl schoolchild schoolkid preschooler choirboy',
  /** What may stand before a number and leaves it an age. */
  before:
    'aged|age|about|around|nearly|almost|barely|just|only|maybe|perhaps|some|just turned|turning|going on|rising|not yet|not quite|who is|who’s|who turned|in his|in her|in their|early|mid|late',
  /** Parts of a year make a small child of any number. */
  parts: 'month months week weeks day days',
} as const;
