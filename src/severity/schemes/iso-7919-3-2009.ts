import { builtIn } from "./built-in";
import { flatTable } from "./flat-table";
import { over4800, over9000, over13200 } from "./shaft-law";
import { memory } from "./sources";

const ANNEX = /* @__PURE__ */ memory(
  "ISO 7919-3:2009",
  "Annex A",
  "not checked against a printed copy: only the scope was read; a book's example at 3600 r/min (Perez and Conkey, Troubleshooting Rotating Machinery, p. 171) and the inverse root of the speed (Turbomachinery International) agree, the coefficients were on neither",
);

/** ISO 7919-3:2009, shaft vibration of coupled industrial machines, 1000 to 30 000 r/min. */
// biome-ignore format: a row of a table is a line
export const iso7919Part3Of2009 = /* @__PURE__ */ builtIn({
  id: "iso-7919-3-2009",
  kind: "zones",
  standard: "ISO 7919-3",
  edition: "2009",
  title: "Mechanical vibration - Evaluation of machine vibration by measurements on rotating shafts - Part 3: Coupled industrial machines",
  status: "withdrawn",
  statusNote: "merged into another standard (from memory); scope read in a catalogue",
  replacedBy: "ISO 20816-3:2022",
  scope: "coupled industrial machines with fluid-film bearings at 1000 to 30 000 r/min, of any size; turbine sets above 50 MW and hydraulic sets of 1 MW or more have their own parts",
  machines: ["pump", "fan", "motor", "generator", "compressor", "gear drive", "steam turbine"],
  exclusions: [{ when: { type: "steam turbine", power: { above: 50000 } }, reason: "a turbine set above 50 MW: ISO 7919-2, not ISO 7919-3" }],
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
