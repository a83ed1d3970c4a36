import { builtIn } from "./built-in";
import { flatTable } from "./flat-table";
import { reported } from "./sources";

const TABLE_9 = /* @__PURE__ */ reported(
  "API 610",
  "Table 9, vibration at the guide bearing of vertically suspended pumps",
  "https://www.scribd.com/document/603117995/Vibration-Limit-for-Pumps-2",
  "read in the text layer of a scan of p. 59, which bears no edition (layout and date fit the 12th, 2021) and has lost some relation signs; the cap of 100 um stands on a consultants' web page too; 10 000 mil2 is 6.45e6 um2, so the metric limit is 2 % lower; printed as less than",
);

/** API 610 Table 9, shaft vibration of vertically suspended pumps with a hydrodynamic guide bearing. */
// biome-ignore format: a row of a table is a line
export const api610Table9Shaft = /* @__PURE__ */ builtIn({
  id: "api-610-table-9-shaft",
  kind: "acceptance",
  standard: "API 610 / ISO 13709",
  edition: "12th, 2021; not printed on Table 9",
  title: "Centrifugal pumps for petroleum, petrochemical and natural gas industries: shaft vibration of vertically suspended pumps",
  status: "current",
  statusNote: "12th edition current (from memory)",
  scope: "vertically suspended pumps, next to a hydrodynamic guide bearing where the shaft is accessible, in the preferred operating region",
  machines: ["pump"],
  within: { condition: "new", region: "preferred", class: "vertically suspended" },
  byContract: true,
  place: "shaft",
  measuredOn: "the shaft next to the hydrodynamic guide bearing",
  band: null,
  meanings: { content: "overall: a broadband reading", units: "the column of the contract: the table prints um and mil side by side and not in ratio 25.4" },
  notes: [
    "root(6.2e6/n) um, at most 100; root(10 000/n) mil, at most 4.0; n in r/min",
    "a discrete frequency has a limit of 0.33 times the overall on one side of running speed; the sign is lost in the scan, so it is not held here",
    "limits by the formulae are rounded to two significant figures by the print; here they are not rounded",
    "outside the preferred but within the allowable region 30 % more is allowed; from maximum continuous to trip speed at most 150 % of the vibration at maximum continuous speed",
    "run-out may be subtracted as a vector in the factory test, up to 25 % of the limit or 6.5 um, whichever is less",
  ],
  classes: () => flatTable({
    machine: ["content", "units", "speed"],
    columns: [{ as: "um pp", limits: ["acceptance"], source: TABLE_9 }, { as: "mil pp", limits: ["acceptance"], source: TABLE_9 }],
    rows: [
      //                            um pp                            mil pp
      ["overall", "metric",    {},  { rootOf: 6.2e6, atMost: 100 },  null],
      ["overall", "customary", {},  null,                            { rootOf: 10000, atMost: 4 }],
    ],
  }),
});
