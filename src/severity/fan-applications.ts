import { frozen, type Source } from "../core/index";
import type { Interval } from "./interval";

/** The category of fans of one application, by the driver power in kW. */
export type CategoriesByPower = readonly (readonly [category: string, power: Interval])[];

/**
 * The categories of fans by application and driver power. To add an application, add its row here and its words in
 * `machine-words.ts`.
 */
// biome-ignore format: a row of a table is a line
export const fanApplications = /* @__PURE__ */ frozen({
  residential:       [["BV-1", { to: 0.15 }], ["BV-2", { above: 0.15 }]],
  HVAC:              [["BV-2", { to: 3.7 }], ["BV-3", { above: 3.7 }]],
  agricultural:      [["BV-2", { to: 3.7 }], ["BV-3", { above: 3.7 }]],
  industrial:        [["BV-3", { to: 298 }], ["BV-4", { above: 298 }]],
  transport:         [["BV-3", { to: 15 }], ["BV-4", { above: 15 }]],
  tunnel:            [["BV-3", { to: 75 }], ["BV-4", { above: 75 }]],
  "tunnel jet fan":  [["BV-4", {}]],
  petrochemical:     [["BV-3", { to: 37 }], ["BV-4", { above: 37 }]],
  "chip making":     [["BV-5", {}]],
} as const satisfies Record<string, CategoriesByPower>);

/** Edges of the table that it prints in horsepower too, where those are a little more than the kilowatts. */
export const edgesInHorsepower: readonly (readonly [horsepower: number, kilowatts: number])[] =
  /* @__PURE__ */ Object.freeze([
    [5, 3.7],
    [50, 37],
    [400, 298],
  ] as const);

/** What a fan is for, as far as it tells its category. */
export type FanApplication =
  | "residential"
  | "HVAC"
  | "agricultural"
  | "industrial"
  | "transport"
  | "tunnel"
  | "tunnel jet fan"
  | "petrochemical"
  | "chip making";

/** The table of applications and driver powers that ANSI/AMCA 204 and ISO 14694 take the category of a fan from. */
export const fanCategoryRule = /* @__PURE__ */ frozen({
  text: "the category of a fan follows from its application and the power of its driver",
  applications: fanApplications,
  source: {
    title: "ANSI/AMCA 204-96",
    where: "Table 4-1",
    provenance: "reported",
    page: "https://es.scribd.com/document/406049291/Balanceo-dinamico",
    note: "three scanned pages on a document site; that the edition of 2005 and ISO 14694:2003 kept the table is from memory",
  },
} as const satisfies { text: string; applications: object; source: Source });
