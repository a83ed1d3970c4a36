import { builtIn } from "./built-in";
import { memory } from "./sources";

const TABLE = /* @__PURE__ */ memory(
  "ISO 10816-1:1995",
  "Table B.1 (informative)",
  "not checked against a printed copy; ladder and class definitions were read in a motor maker's sheet, the cell borders were not legible",
);

/** ISO 10816-1:1995 Annex B, classes I to IV, for machines that no other part is for. */
// biome-ignore format: a row of a table is a line
export const iso10816Part1AnnexB = /* @__PURE__ */ builtIn({
  id: "iso-10816-1-1995-annexB",
  kind: "zones",
  standard: "ISO 10816-1",
  edition: "1995, Annex B",
  title: "Mechanical vibration - Evaluation of machine vibration by measurements on non-rotating parts - Part 1: General guidelines",
  status: "withdrawn",
  statusNote: "it replaced ISO 2372:1974 and ISO 3945:1985 (read); replaced in turn (from memory)",
  replacedBy: "ISO 20816-1:2016, which no longer has the four classes",
  scope: "typical zone boundaries for small classes of machine, for use until a part for the machine exists",
  machines: ["pump", "fan", "motor", "generator", "compressor", "gear drive", "steam turbine", "gas turbine"],
  within: { speed: { from: 600, to: 12000 } },
  place: "housing",
  measuredOn: "bearing housings, the largest of the measured directions",
  band: [10, 1000],
  notes: ["the lower end of the band is to be chosen so that slow-speed components are included"],
  classes: [
    { named: { class: "I" }, by: { power: { to: 15 } }, criteria: [{ as: "mm/s rms", limits: { "A/B": 0.71, "B/C": 1.8, "C/D": 4.5 }, source: TABLE }] },
    { named: { class: "II" }, by: { power: { above: 15, to: 300 } }, note: "Class II is 15 to 75 kW, and to 300 kW on special foundations; between 75 and 300 kW it is taken here because its limits are the lower ones, unless the class is named", criteria: [{ as: "mm/s rms", limits: { "A/B": 1.12, "B/C": 2.8, "C/D": 7.1 }, source: TABLE }] },
    { named: { class: "III" }, by: { power: { above: 300 }, support: "rigid" }, note: "Class III is large machines on rigid, heavy foundations, without a power; above 300 kW is where Class II ends", criteria: [{ as: "mm/s rms", limits: { "A/B": 1.8, "B/C": 4.5, "C/D": 11.2 }, source: TABLE }] },
    { named: { class: "IV" }, by: { power: { above: 300 }, support: "flexible" }, note: "Class IV is large machines on relatively soft foundations, such as turbogenerators and gas turbines above 10 MW; above 300 kW is where Class II ends", criteria: [{ as: "mm/s rms", limits: { "A/B": 2.8, "B/C": 7.1, "C/D": 18 }, source: TABLE }] },
  ],
});
