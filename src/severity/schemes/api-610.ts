import { builtIn } from "./built-in";
import { flatTable } from "./flat-table";
import { memory, reported } from "./sources";

const TABLE_9 = /* @__PURE__ */ reported(
  "API 610",
  "Table 9, p. 59",
  "https://www.scribd.com/document/603117995/Vibration-Limit-for-Pumps-2",
  "read on a scan of p. 59 on a page of unknown making, which bears no edition; layout and date fit the 12th, 2021, for which alone it is counted",
);
const TABLE_8 = /* @__PURE__ */ memory(
  "API 610",
  "Table 8",
  "not checked against a printed copy; the discrete limit is 0.67 times the overall, and higher power or speed uses a figure up to 4.5 mm/s",
);
const TABLE_8_METRIC = /* @__PURE__ */ reported(
  "API 610",
  "Table 8",
  "https://inertance.tistory.com/165",
  "read in a table of consultants: OH and BB pumps 3 mm/s in the preferred region; a data set that quotes Europump's guide has the same up to 300 kW a stage, and 3.9 in the allowable region; neither names the edition",
);

/** The types of pump, and what holds for a row of Table 8. */
const TYPES = {
  "overhung, between bearings": { when: { class: ["overhung", "between bearings"] }, note: "power is that of a stage" },
} as const;

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
  notes: [
    "outside the preferred but within the allowable region 30 % more is allowed",
    "above the maximum continuous speed up to trip speed 150 % of the reading at the maximum continuous speed is allowed",
    "discrete frequencies are read with a Hanning window and at least 400 lines",
    "measuring band from memory",
  ],
  classes: () => flatTable<"acceptance">({
    machine: ["class", "content", "units", "speed", "power"],
    means: { class: TYPES },
    columns: [
      { as: "mm/s rms", limits: ["acceptance"], source: TABLE_9 },
      { as: "in/s rms", limits: ["acceptance"], source: TABLE_9 },
    ],
    rows: [
      //                                                r/min         kW a stage    mm/s rms, in/s rms
      ["vertically suspended",       "overall",  "metric",    null,         null,         5,    null],
      ["vertically suspended",       "discrete", "metric",    null,         null,         3.4,  null],
      ["vertically suspended",       "overall",  "customary", null,         null,         null, 0.2],
      ["vertically suspended",       "discrete", "customary", null,         null,         null, 0.13],
      ["overhung, between bearings", "overall",  "metric",    { to: 3600 }, { to: 300 },  3,    null,  { source: TABLE_8_METRIC }],
      ["overhung, between bearings", "overall",  "customary", { to: 3600 }, { to: 300 },  null, 0.12,  { source: TABLE_8 }],
    ],
  }),
});
