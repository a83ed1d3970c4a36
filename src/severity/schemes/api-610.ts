import { builtIn } from "./built-in";
import { memory, quoted } from "./sources";

const TABLE_9 = /* @__PURE__ */ quoted(
  "API 610",
  "Table 9",
  "https://www.scribd.com/document/603117995/Vibration-Limit-for-Pumps-2",
  "read on a scan of p. 59; the edition is not printed there, layout and date fit the 12th, 2021",
);
const TABLE_8 = /* @__PURE__ */ memory(
  "API 610",
  "Table 8",
  "not checked against a printed copy; the discrete limit is 0.67 times the overall, and higher power or speed uses a figure up to 4.5 mm/s",
);
const HORIZONTAL = ["overhung", "between bearings"] as const;

/** API 610 / ISO 13709, centrifugal pumps in the preferred operating region, shop test. */
// biome-ignore format: a row of a table is a line
export const api610 = /* @__PURE__ */ builtIn({
  id: "api-610",
  kind: "acceptance",
  standard: "API 610 / ISO 13709",
  edition: "12th, 2021; not printed on Table 9",
  title: "Centrifugal pumps for petroleum, petrochemical and natural gas industries: vibration limits",
  status: "current",
  statusNote: "12th edition current (from memory)",
  scope: "shop test at any flow in the preferred operating region",
  machines: ["pump"],
  within: { condition: "new", region: "preferred", test: "works" },
  place: "housing",
  measuredOn: "bearing housing; vertically suspended pumps: thrust-bearing housing or motor mounting flange",
  band: [5, 1000],
  meanings: { class: "the type of pump", content: "overall, or of one discrete frequency; a broadband reading is overall", units: "the column of the contract: the table prints mm/s and in/s side by side and not in ratio 25.4" },
  notes: ["outside the preferred but within the allowable region 30 % more is allowed", "measuring band from memory"],
  classes: [
    { when: { class: "vertically suspended", content: "overall", units: "metric" }, criteria: [{ as: "mm/s rms", limits: { acceptance: 5 }, source: TABLE_9 }] },
    { when: { class: "vertically suspended", content: "discrete", units: "metric" }, criteria: [{ as: "mm/s rms", limits: { acceptance: 3.4 }, source: TABLE_9 }] },
    { when: { class: "vertically suspended", content: "overall", units: "customary" }, criteria: [{ as: "in/s rms", limits: { acceptance: 0.2 }, source: TABLE_9 }] },
    { when: { class: "vertically suspended", content: "discrete", units: "customary" }, criteria: [{ as: "in/s rms", limits: { acceptance: 0.13 }, source: TABLE_9 }] },
    { when: { class: HORIZONTAL, content: "overall", units: "metric", speed: { to: 3600 }, power: { to: 300 } }, note: "power is that of a stage", criteria: [{ as: "mm/s rms", limits: { acceptance: 3 }, source: TABLE_8 }] },
    { when: { class: HORIZONTAL, content: "overall", units: "customary", speed: { to: 3600 }, power: { to: 300 } }, note: "power is that of a stage", criteria: [{ as: "in/s rms", limits: { acceptance: 0.12 }, source: TABLE_8 }] },
  ],
});
