/**
 * Work that the danger box of a sheet says already when it has the hazard: the id of the rule, and the hazard's id. The
 * hazard is what stays.
 */
export const saidByDanger: Readonly<Record<string, string>> = {
  child: 'H15',
  climb: 'H11',
  boat: 'H7',
};
