import { builtIn } from "./built-in";
import { flatTable } from "./flat-table";
import { reported } from "./sources";

const TABLES = /* @__PURE__ */ reported(
  "API 619 5th ed., 2010",
  "Tables 1 and 2",
  "https://inertance.tistory.com/51?category=851980",
  "read on a consultants' web page, which sets both kinds of bearings in one cell: 8.0 of the dry compressor with rolling bearings is as the cell was read; mm/s and in/s are rounded (0.3 in/s is 7.62 mm/s); printed as less than",
);
const ROLLING = ["dry with rolling bearings", "oil-flooded with rolling bearings"] as const;

/** API 619 5th edition, rotary screw compressors, velocity on the bearing housing. */
// biome-ignore format: a row of a table is a line
export const api619 = /* @__PURE__ */ builtIn({
  id: "api-619-5th",
  kind: "acceptance",
  standard: "API 619",
  edition: "5th, 2010",
  title: "Rotary-type positive-displacement compressors: vibration limits on the bearing housing",
  status: "current",
  statusNote: "edition in force not checked",
  scope: "screw compressors, dry and oil-flooded, unfiltered vibration in the mechanical running test",
  machines: ["compressor"],
  within: { condition: "new" },
  byContract: true,
  place: "housing",
  measuredOn: "bearing housings",
  band: null,
  meanings: { class: "dry or oil-flooded, and the kind of radial bearings", units: "the column of the contract: the table prints mm/s and in/s side by side and not in ratio 25.4" },
  notes: ["for screw compressors alone: a turbocompressor is none"],
  classes: () => flatTable({
    machine: ["class", "units"],
    columns: [{ as: "mm/s rms", limits: ["acceptance"], source: TABLES }, { as: "in/s rms", limits: ["acceptance"], source: TABLES }],
    rows: [
      //                                                        mm/s rms  in/s rms
      ["dry with hydrodynamic bearings",         "metric",      5,        null],
      ["dry with hydrodynamic bearings",         "customary",   null,     0.2],
      ["oil-flooded with hydrodynamic bearings", "metric",      8,        null],
      ["oil-flooded with hydrodynamic bearings", "customary",   null,     0.3],
      [ROLLING,                                  "metric",      8,        null],
      [ROLLING,                                  "customary",   null,     0.3],
    ],
  }),
});
