import { frozen } from "../core/index";

/** The rules by which the zone of a reading with an uncertainty is decided; named as those of a check. */
export const zoneRules = /* @__PURE__ */ frozen({
  "guard band":
    "the worst zone that the interval of the reading touches, value plus the expanded uncertainty U (k = 2); at most 2.5 % of better zones are wrong (JCGM 106:2012, 8.3.2; ILAC-G8:09/2019)",
  "simple acceptance":
    "the zone of the best value; at a limit up to half of all better zones are wrong (JCGM 106:2012, 8.2; ILAC-G8:09/2019)",
} as const);

/** The name of a rule: a key of {@link zoneRules}. */
export type ZoneRule = keyof typeof zoneRules;
