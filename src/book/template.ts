/** A new book: where to begin, in the filmmaker's own words. Every line may be left empty. */
export const bookTemplate = `# yaml-language-server: $schema=book.schema.json
#
# The production book: how this film is got, made, paid and shot.
# Fill in what you know, in any order; what is empty counts as a default and prints as one.
# Lines that begin with # are yours: they are never changed.

money:
  currency:
  budget:

prep:
  starts:

# One entry for each shooting day, scenes in the order they are shot:
#   - date: 2027-03-12
#     call: 7:30
#     wrap: 18:00
#     at: harbour-hut
#     scenes: [int-kitchen-night, ext-quay-dawn]
days:

# Real addresses, each under a short name of your own:
#   harbour-hut:
#     address: 3 Quay Lane
#     coordinates: 55.61, 12.34
#     zone: Europe/Copenhagen
locations:

# Who helps:
#   sam:
#     does: [props, costume]
helpers:

# Where things come from:
#   paper-shop:
#     delivery: 2-4 days
#     shipping: 4.90
suppliers:
`;
