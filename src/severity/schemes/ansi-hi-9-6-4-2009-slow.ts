import { builtIn } from "./built-in";
import { flatTable } from "./flat-table";
import { printed } from "./sources";

const TABLE = /* @__PURE__ */ printed(
  "ANSI/HI 9.6.4-2009",
  "Table 9.6.4.2.5.2a, p. 10",
  "https://studylib.net/doc/27733857/ansi-hi9-6-4-2009-rotodynamic-vibraciones",
  "read on p. 10 of the standard; a blog (inertance.tistory.com/62) has the same four; the mils beside them are rounded (3.0 mil is 76.2 um)",
);

/** On site the limits rise with the height of the measuring point above the base. */
const ON_SITE = { above: 1.5, perMetre: 50 };

/** ANSI/HI 9.6.4-2009, additional displacement limits of pumps at 600 r/min and below. */
// biome-ignore format: a row of a table is a line
export const ansiHi964Slow = /* @__PURE__ */ builtIn({
  id: "ansi-hi-9.6.4-2009-slow",
  kind: "acceptance",
  standard: "ANSI/HI 9.6.4",
  edition: "2009",
  title: "Rotodynamic Pumps for Vibration Measurements and Allowable Values",
  status: "withdrawn",
  statusNote: "superseded by later editions",
  replacedBy: "ANSI/HI 9.6.4-2016 and 2022",
  scope: "additional displacement criterion for pumps at 600 r/min and below, in the preferred (POR) or allowable (AOR) operating region",
  machines: ["pump"],
  within: { speed: { to: 600 }, condition: "new" },
  place: "housing",
  measuredOn: "bearing housings",
  band: null,
  notes: [
    "on site, 50 um more is allowed for each metre of height above 1.5 m, if the height is given; 100 um more for slurry pumps and 50 um for solids-handling wet-pit pumps on site, and 50 um for solids-handling pumps at the works, are not taken in",
    "these limits stand beside the velocity tables of the standard, which are not held here; in the allowable region the velocity limit is 30 % higher",
    "readings on a temporary set-up at the works may be up to twice those on site (Hydraulic Institute, question and answer)",
  ],
  classes: () => flatTable<"acceptance">({
    machine: ["region", "test"],
    columns: [{ as: "um pp", limits: ["acceptance"], source: TABLE }],
    rows: [
      // region     test     um peak-to-peak
      ["preferred", "site",  80,  { height: ON_SITE }],
      ["preferred", "works", 100],
      ["allowable", "site",  100, { height: ON_SITE }],
      ["allowable", "works", 125],
    ],
  }),
});
