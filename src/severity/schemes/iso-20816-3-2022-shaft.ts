import { builtIn } from "./built-in";
import { flatTable } from "./flat-table";
import { over4800, over9000, over13200 } from "./shaft-law";
import { memory } from "./sources";

const ANNEX = /* @__PURE__ */ memory(
  "ISO 20816-3:2022",
  "annex on rotating shafts",
  "not checked against a printed copy: only the scope was read",
);

/** ISO 20816-3:2022, shaft vibration of industrial machinery. */
// biome-ignore format: a row of a table is a line
export const iso20816Part3Shaft = /* @__PURE__ */ builtIn({
  id: "iso-20816-3-2022-shaft",
  kind: "zones",
  standard: "ISO 20816-3",
  edition: "2022",
  title: "Mechanical vibration - Measurement and evaluation of machine vibration - Part 3: Industrial machinery: shaft vibration",
  status: "current",
  statusNote: "current (from memory); title page read, limits believed carried over from ISO 7919-3:2009",
  scope: "industrial machinery above 15 kW with fluid-film bearings, on the shaft",
  machines: ["fan", "motor", "generator", "compressor", "steam turbine"],
  within: { power: { above: 15 } },
  exclusions: [{ when: { type: "steam turbine", power: { above: 40000 } }, reason: "a turbine above 40 MW: ISO 20816-2, not ISO 20816-3" }],
  place: "shaft",
  measuredOn: "the shaft against its bearing housing, the larger of two probes at right angles",
  band: null,
  notes: ["limits fall with the root of the speed: 4800, 9000 and 13 200 over root n, um peak-to-peak, n in r/min", "run-out of the shaft is in the reading unless it was subtracted"],
  classes: () => flatTable<"zones">({
    machine: ["speed"],
    columns: [{ as: "um pp", limits: ["A/B", "B/C", "C/D"], source: ANNEX }],
    rows: [
      // r/min                       um peak-to-peak: over root n
      [{ from: 1000, to: 30000 }, over4800, over9000, over13200],
    ],
  }),
});
