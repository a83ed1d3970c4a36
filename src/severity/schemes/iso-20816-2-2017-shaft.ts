import { builtIn } from "./built-in";
import { flatTable } from "./flat-table";
import { generatorOfSet } from "./generator-of-set";
import { disputed, memory, quoted } from "./sources";

const TABLE = /* @__PURE__ */ memory(
  "ISO 20816-2:2017",
  "annex on rotating shafts",
  "not checked against a printed copy: only the scope was read",
);
const TURBINE = /* @__PURE__ */ quoted(
  "ISO 20816-2:2017",
  "annex on rotating shafts",
  "Harbin Electric, O&M manual SYR2-073-MAN-OM-3625 Rev.00, Table 8-1-1",
  "read in operators' notes on the manual of a 3000 r/min steam turbine, in a public repository of texts: alarm above 165 um, trip above 240 um, by ISO 20816-2, which fits no root of the speed (164.3 and 241.0); peak-to-peak is not printed there",
);
const GAS = /* @__PURE__ */ memory(
  "ISO 20816-2:2017",
  "annex on rotating shafts",
  "not checked against a printed copy; the scope has gas turbines, and ISO 20816-4 leaves them to it; believed carried over from ISO 7919-4",
);
const LOWER = /* @__PURE__ */ disputed(
  GAS,
  "steam turbines of the table have 90, 165 and 240 um at 3000 r/min, ISO 7919-4 has 87.6, 164.3 and 241.0; which the edition has for gas turbines is not known; of each limit the lower is shipped, check against the standard",
);
const STEAM = ["steam turbine", "generator"] as const;
const AT_3000 = { limitSources: { "um pp": { "B/C": TURBINE, "C/D": TURBINE } } };

/** ISO 20816-2:2017, shaft vibration of large steam turbine sets and gas turbines. */
// biome-ignore format: a row of a table is a line
export const iso20816Part2Shaft = /* @__PURE__ */ builtIn({
  id: "iso-20816-2-2017-shaft",
  kind: "zones",
  standard: "ISO 20816-2",
  edition: "2017",
  title: "Mechanical vibration - Measurement and evaluation of machine vibration - Part 2: Land-based gas turbines, steam turbines and generators in excess of 40 MW: shaft vibration",
  status: "current",
  statusNote: "current (from memory); title page read, limits believed carried over from ISO 7919-2:2009",
  scope: "land-based steam turbines and generators above 40 MW, and gas turbines at 3000 and 3600 r/min, on the shaft",
  machines: ["steam turbine", "generator", "gas turbine"],
  within: { power: { above: 40000 } },
  exclusions: [
    /* @__PURE__ */ generatorOfSet("ISO 20816-2"),
  ],
  place: "shaft",
  measuredOn: "the shaft against its bearing housing, the larger of two probes at right angles",
  band: null,
  notes: ["for steam turbines and generators close to but not equal to 4800, 9000 and 13 200 over root n", "run-out of the shaft is in the reading unless it was subtracted"],
  classes: () => flatTable<"zones">({
    machine: ["type", "speed"],
    columns: [{ as: "um pp", limits: ["A/B", "B/C", "C/D"], source: TABLE }],
    rows: [
      // machine       r/min               um peak-to-peak
      [STEAM,          { oneOf: [1500] },  100, 200, 320],
      [STEAM,          { oneOf: [1800] },  95,  185, 290],
      [STEAM,          { oneOf: [3000] },  90,  165, 240,  AT_3000],
      [STEAM,          { oneOf: [3600] },  80,  150, 220],
      ["gas turbine",  { oneOf: [3000] },  87.6, 164.3, 240,  { source: LOWER }],
      ["gas turbine",  { oneOf: [3600] },  80,  150, 220,  { source: GAS }],
    ],
  }),
});
