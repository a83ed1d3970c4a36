import { builtIn } from "./built-in";
import { flatTable } from "./flat-table";
import { disputed, memory } from "./sources";

const OVERALL = /* @__PURE__ */ memory(
  "API 610 11th ed.",
  "Table 8, pumps with hydrodynamic bearings",
  "not checked against a printed copy; a table of consultants (inertance.tistory.com/165) prints the 50 um alone; the customary form, root(8000/n) mil, is 0.4 % lower than the metric one",
);
const DISCRETE = /* @__PURE__ */ disputed(
  /* @__PURE__ */ memory("API 610 11th ed.", "Table 8, pumps with hydrodynamic bearings"),
  "memory says 0.33 of the overall below running speed, as a scan of p. 59 prints it for vertically suspended pumps (Table 9, https://www.scribd.com/document/603117995/Vibration-Limit-for-Pumps-2); root(3.9e6/n), not over 38 um, which stood here, is root(6000/n) mil and 1.5 mil of a much older edition; the lower is shipped, check against the standard",
);

/** API 610 11th edition, shaft vibration of pumps with sleeve bearings. */
// biome-ignore format: a row of a table is a line
export const api610Shaft = /* @__PURE__ */ builtIn({
  id: "api-610-11th-shaft",
  kind: "acceptance",
  standard: "API 610",
  edition: "11th",
  title: "Centrifugal pumps for petroleum, petrochemical and natural gas industries: shaft vibration with hydrodynamic bearings",
  status: "withdrawn",
  statusNote: "superseded (from memory)",
  replacedBy: "API 610 12th edition, 2021",
  scope: "pumps with hydrodynamic journal bearings, shop test in the preferred operating region",
  machines: ["pump"],
  within: { condition: "new", region: "preferred", test: "works" },
  place: "shaft",
  measuredOn: "the shaft against its bearing housing",
  band: null,
  ask: ["content"],
  meanings: { content: "overall (unfiltered), or subsynchronous: one discrete frequency below running speed; one at or above running speed has no limit of its own here: judge the overall" },
  notes: [
    "overall: root(5.2e6/n) um peak-to-peak, not over 50, n in r/min; discrete frequencies below running speed: 0.33 of that",
    "run-out: 25 % of the limit or 6.5 um (0.25 mil), whichever is less, as a vector and only in the works test",
    "limits by the formulas are rounded to two significant figures in the standard; above the maximum continuous speed up to trip speed 150 % of the reading at the maximum continuous speed is allowed",
  ],
  classes: () => flatTable<"acceptance">({
    machine: ["content", "speed"],
    columns: [{ as: "um pp", limits: ["acceptance"], source: OVERALL }],
    rows: [
      //                        um peak-to-peak
      ["overall", {},                       { rootOf: 5200000, atMost: 50 }],
      // 0.33 times the overall: 0.33 x 0.33 x 5.2e6, and 0.33 x 50
      ["subsynchronous", {},    { rootOf: 566280, atMost: 16.5 }, { source: DISCRETE }],
    ],
  }),
});
