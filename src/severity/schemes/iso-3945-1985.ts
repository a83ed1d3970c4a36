import { builtIn } from "./built-in";
import { memory } from "./sources";

const TABLE = /* @__PURE__ */ memory("ISO 3945:1985", "its table of severity grades");
const B_C = /* @__PURE__ */ memory(
  "ISO 3945:1985",
  "its table of severity grades",
  "sources conflict: a secondary table prints 4.60, the preferred-number step is 4.5; the lower is shipped",
);

/** ISO 3945:1985, large machines measured in situ. */
// biome-ignore format: a row of a table is a line
export const iso3945Of1985 = /* @__PURE__ */ builtIn({
  id: "iso-3945-1985",
  kind: "zones",
  standard: "ISO 3945",
  edition: "1985",
  title: "Mechanical vibration of large rotating machines with speed range from 10 to 200 r/s - Measurement and evaluation of vibration severity in situ",
  status: "withdrawn",
  statusNote: "replaced (read in the foreword of ISO 10816-1:1995)",
  replacedBy: "ISO 10816-1:1995",
  scope: "large rotating machines above 300 kW (from memory), 600 to 12 000 r/min, measured in situ",
  machines: ["pump", "fan", "motor", "generator", "compressor", "steam turbine", "gas turbine"],
  within: { power: { above: 300 }, speed: { from: 600, to: 12000 } },
  place: "housing",
  measuredOn: "bearing housings, the largest of the measured directions",
  band: [10, 1000],
  classes: [
    { when: { support: "rigid" }, criteria: [{ as: "mm/s rms", limits: { "A/B": 1.8, "B/C": 4.5, "C/D": 11.2 }, source: TABLE, limitSources: { "B/C": B_C } }] },
    { when: { support: "flexible" }, criteria: [{ as: "mm/s rms", limits: { "A/B": 2.8, "B/C": 7.1, "C/D": 18 }, source: TABLE }] },
  ],
});
