import { builtIn } from "./built-in";
import { memory } from "./sources";

const TABLE = /* @__PURE__ */ memory(
  "API 610 11th ed.",
  "table of pumps with hydrodynamic bearings",
  "not checked against a printed copy; the customary form, root(8000/n) mil, is 0.4 % lower than the metric one",
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
  meanings: { content: "overall, or of one discrete frequency; a broadband reading is overall" },
  notes: ["root(5.2e6/n) um peak-to-peak, not over 50; discrete frequencies root(3.9e6/n), not over 38; n in r/min"],
  classes: [
    { when: { content: "overall", speed: {} }, criteria: [{ as: "um pp", limits: { acceptance: { rootOf: 5.2e6, atMost: 50 } }, source: TABLE }] },
    { when: { content: "discrete", speed: {} }, criteria: [{ as: "um pp", limits: { acceptance: { rootOf: 3.9e6, atMost: 38 } }, source: TABLE }] },
  ],
});
