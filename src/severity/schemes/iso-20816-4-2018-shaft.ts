import { builtIn } from "./built-in";
import { flatTable } from "./flat-table";
import { generatorOfSet } from "./generator-of-set";
import { over4800, over9000, over13200 } from "./shaft-law";
import { memory } from "./sources";

const ANNEX = /* @__PURE__ */ memory(
  "ISO 20816-4:2018",
  "annex on rotating shafts",
  "not checked against a printed copy: only the scope was read",
);

/** ISO 20816-4:2018, shaft vibration of gas turbines. */
// biome-ignore format: a row of a table is a line
export const iso20816Part4Shaft = /* @__PURE__ */ builtIn({
  id: "iso-20816-4-2018-shaft",
  kind: "zones",
  standard: "ISO 20816-4",
  edition: "2018",
  title: "Mechanical vibration - Measurement and evaluation of machine vibration - Part 4: Gas turbines in excess of 3 MW, with fluid-film bearings: shaft vibration",
  status: "current",
  statusNote: "confirmed in 2023 (read in the ISO catalogue, as is the scope); limits believed carried over from ISO 7919-4:2009",
  scope: "gas turbines above 3 MW with fluid-film bearings at 3000 to 30 000 r/min, on the shaft; not above 40 MW at 1500, 1800, 3000 or 3600 r/min, nor aero-derivatives",
  machines: ["gas turbine"],
  within: { power: { above: 3000 } },
  exclusions: [
    /* @__PURE__ */ generatorOfSet("ISO 20816-4"),
    { when: { type: "gas turbine", power: { above: 40000 }, speed: { oneOf: [1500, 1800, 3000, 3600] } }, reason: "a gas turbine above 40 MW at 1500, 1800, 3000 or 3600 r/min: ISO 20816-2, not ISO 20816-4" },
    { when: { type: "aero-derivative gas turbine" }, reason: "an aero-derivative gas turbine: not within ISO 20816-4; ask its maker" },
  ],
  place: "shaft",
  measuredOn: "the shaft against its bearing housing, the larger of two probes at right angles",
  band: null,
  notes: ["limits fall with the root of the speed: 4800, 9000 and 13 200 over root n, um peak-to-peak, n in r/min", "run-out of the shaft is in the reading unless it was subtracted"],
  classes: () => flatTable<"zones">({
    machine: ["speed"],
    columns: [{ as: "um pp", limits: ["A/B", "B/C", "C/D"], source: ANNEX }],
    rows: [
      // r/min                       um peak-to-peak: over root n
      [{ from: 3000, to: 30000 }, over4800, over9000, over13200],
    ],
  }),
});
