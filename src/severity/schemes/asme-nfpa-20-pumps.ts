import { builtIn } from "./built-in";
import { flatTable } from "./flat-table";
import { reported } from "./sources";

const TABLE = /* @__PURE__ */ reported(
  "ASME B73 and NFPA 20, as ANSI/HI 9.6.4",
  "pump velocities, edition not named",
  "https://inertance.tistory.com/165",
  "read on a consultants' web page that lists the criteria of the main rotating machines: the same in the works and on site; 'below 200 kW' and '200 kW and above' as printed there",
);
const HORIZONTAL = ["overhung", "between bearings"] as const;

/** ASME B73 and NFPA 20 pumps by the velocities of ANSI/HI 9.6.4, in the preferred operating region. */
// biome-ignore format: a row of a table is a line
export const asmeNfpa20Pumps = /* @__PURE__ */ builtIn({
  id: "asme-nfpa-20-pumps",
  kind: "acceptance",
  standard: "ASME B73 and NFPA 20, as ANSI/HI 9.6.4",
  edition: "not stated",
  title: "Rotodynamic pumps: velocity limits in the preferred operating region",
  status: "current",
  statusNote: "edition in force not checked",
  scope: "pumps of ASME B73 and fire pumps of NFPA 20, in the works and on site alike, in the preferred operating region",
  machines: ["pump"],
  within: { condition: "new", region: "preferred" },
  byContract: true,
  place: "housing",
  measuredOn: "bearing housings",
  band: null,
  meanings: { class: "the type of pump" },
  notes: ["in the allowable operating region the limit rises by 30 % (read at https://inertance.tistory.com/62)"],
  classes: () => flatTable({
    machine: ["class", "power"],
    columns: [{ as: "mm/s rms", limits: ["acceptance"], source: TABLE }],
    rows: [
      //                                        mm/s rms
      [HORIZONTAL,             { below: 200 },  3.8],
      [HORIZONTAL,             { from: 200 },   4.8],
      ["vertically suspended", { below: 200 },  3.3],
      ["vertically suspended", { from: 200 },   4.3],
    ],
  }),
});
