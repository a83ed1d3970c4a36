import { builtIn } from "./built-in";
import { flatTable } from "./flat-table";
import { reported } from "./sources";

const TABLE = /* @__PURE__ */ reported(
  "ISO 2372:1974",
  "Table 2",
  "http://vibratechnica.com/vibrationseverity.html",
  'decoded from the order of the cells of a page, "Vibration Severity Standard", Table 1, which says it is based on ISO 2372 and prints no limits by class; it starts classes III and IV at 75 kW; a private blog prints those of class III outright, and they agree',
);

/** What each class of machine is. */
// biome-ignore format: a row of a table is a line
const CLASSES = {
  I: { named: { class: "I" }, by: { power: { to: 15 } } },
  II: { named: { class: "II" }, by: { power: { above: 15, to: 300 } }, note: "Class II is 15 to 75 kW, and to 300 kW on special foundations; between 75 and 300 kW it is taken here because its limits are the lower ones, unless the class is named" },
  III: { named: { class: "III" }, by: { power: { above: 300 }, support: "rigid" }, note: "Class III is large machines on rigid, heavy foundations, without a power; above 300 kW is where Class II ends" },
  IV: { named: { class: "IV" }, by: { power: { above: 300 }, support: "flexible" }, note: "Class IV is large machines on relatively soft foundations, such as turbogenerators and gas turbines above 10 MW; above 300 kW is where Class II ends" },
} as const;

/** ISO 2372:1974, four example classes of machine, 600 to 12 000 r/min. */
// biome-ignore format: a row of a table is a line
export const iso2372Of1974 = /* @__PURE__ */ builtIn({
  id: "iso-2372-1974",
  kind: "zones",
  standard: "ISO 2372",
  edition: "1974",
  title: "Mechanical vibration of machines with operating speeds from 10 to 200 rev/s - Basis for specifying evaluation standards",
  status: "withdrawn",
  statusNote: "on 13 December 1995 (read in the iTeh catalogue record and the foreword of ISO 10816-1:1995)",
  replacedBy: "ISO 10816-1:1995",
  scope: "four example classes of machine, 600 to 12 000 r/min, judged by broad-band RMS velocity on bearings or mounting points",
  machines: ["pump", "fan", "motor", "generator", "compressor", "gear drive", "steam turbine", "gas turbine"],
  within: { speed: { from: 600, to: 12000 } },
  place: "housing",
  measuredOn: "bearings or mounting points, the largest of the measured directions",
  band: [10, 1000],
  meanings: {
    support: "rigid: natural frequency above the excitation frequency, flexible: below; where it cannot be told, rigid (Lloyd's Register, Ship Vibration and Noise Guidance Notes, chapter 7, 2.6)",
  },
  notes: ["VDI 2056:1964 groups K, M, G, T and BS 4675-1:1976 carry the same boundaries"],
  classes: () => flatTable({
    machine: ["class"],
    means: { class: CLASSES },
    columns: [{ as: "mm/s rms", limits: ["A/B", "B/C", "C/D"], source: TABLE }],
    rows: [
      // class  A/B   B/C  C/D, mm/s RMS
      ["I",     0.71, 1.8, 4.5],
      ["II",    1.12, 2.8, 7.1],
      ["III",   1.8,  4.5, 11.2],
      ["IV",    2.8,  7.1, 18],
    ],
  }),
});
