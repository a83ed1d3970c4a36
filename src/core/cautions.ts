/** What is said of a table that is no standard. */
export const GUIDE = "a guide, not a standard";

/**
 * The cautions that every output about protecting or proving a machine carries: results, sheets, commands and
 * guides alike.
 */
export const cautions: readonly string[] = /* @__PURE__ */ Object.freeze([
  "The limits of the machine's maker, site rules, local codes and licensed practice govern; these are proposals for the person who answers for the machine.",
  "Never defeat a trip. Raising, delaying, bypassing or inhibiting one is the decision of the person who answers for the machine, on the maker's advice and with a record.",
  "Work near rotating parts only under the site's isolation procedure.",
]);
