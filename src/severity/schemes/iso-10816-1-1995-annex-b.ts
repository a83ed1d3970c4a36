import { builtIn } from "./built-in";
import { flatTable } from "./flat-table";
import { memory, reported } from "./sources";

const TABLE = /* @__PURE__ */ memory(
  "ISO 10816-1:1995",
  "Table B.1 (informative)",
  "not checked against a printed copy; ladder and classes were read in a motor maker's sheet, whose cell borders were not legible; the same limits were decoded for ISO 2372:1974",
);
const BLOG = /* @__PURE__ */ reported(
  "ISO 10816-1:1995",
  "Table B.1 (informative)",
  "https://blog.goo.ne.jp/saizo2009/e/8ce58ec781905ca113e4a0728b8b1dcc",
  "read in a private blog, in Japanese, on ISO 10816 and JIS B 0906, which is believed identical to this edition; it does not say which zone owns a limit",
);

/** What each class of machine is. */
// biome-ignore format: a row of a table is a line
const CLASSES = {
  I: { named: { class: "I" }, by: { power: { to: 15 } } },
  II: { named: { class: "II" }, by: { power: { above: 15, to: 300 } }, note: "Class II is 15 to 75 kW, and to 300 kW on special foundations; between 75 and 300 kW it is taken here because its limits are the lower ones, unless the class is named" },
  III: { named: { class: "III" }, by: { power: { above: 300 }, support: "rigid" }, note: "Class III is large machines on rigid, heavy foundations, without a power; above 300 kW is where Class II ends" },
  IV: { named: { class: "IV" }, by: { power: { above: 300 }, support: "flexible" }, note: "Class IV is large machines on relatively soft foundations, such as turbogenerators and gas turbines above 10 MW; above 300 kW is where Class II ends" },
} as const;

/** ISO 10816-1:1995 Annex B, classes I to IV, for machines that no other part is for. */
// biome-ignore format: a row of a table is a line
export const iso10816Part1AnnexB = /* @__PURE__ */ builtIn({
  id: "iso-10816-1-1995-annexB",
  kind: "zones",
  standard: "ISO 10816-1",
  edition: "1995, Annex B",
  title: "Mechanical vibration - Evaluation of machine vibration by measurements on non-rotating parts - Part 1: General guidelines",
  status: "withdrawn",
  statusNote: "on 9 November 2016 (read in the iTeh catalogue record); it replaced ISO 2372:1974 and ISO 3945:1985 (read in its foreword)",
  replacedBy: "ISO 20816-1:2016, which no longer has the four classes",
  scope: "typical zone boundaries for small classes of machine, for use until a part for the machine exists",
  machines: ["pump", "fan", "motor", "generator", "compressor", "gear drive", "steam turbine", "gas turbine"],
  within: { speed: { from: 600, to: 12000 } },
  place: "housing",
  measuredOn: "bearing housings, the largest of the measured directions",
  band: [10, 1000],
  meanings: {
    support: "rigid: natural frequency above the excitation frequency, flexible: below; where it cannot be told, rigid (Lloyd's Register, Ship Vibration and Noise Guidance Notes, chapter 7, 2.6)",
  },
  notes: ["the lower end of the band is to be chosen so that slow-speed components are included"],
  classes: () => flatTable({
    machine: ["class"],
    means: { class: CLASSES },
    columns: [{ as: "mm/s rms", limits: ["A/B", "B/C", "C/D"], source: TABLE }],
    rows: [
      // class  A/B   B/C  C/D, mm/s RMS
      ["I",     0.71, 1.8, 4.5],
      ["II",    1.12, 2.8, 7.1],
      ["III",   1.8,  4.5, 11.2, { source: BLOG }],
      ["IV",    2.8,  7.1, 18],
    ],
  }),
});
