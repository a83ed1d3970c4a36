import { builtIn } from "./built-in";
import { memory } from "./sources";

const GUIDE = /* @__PURE__ */ memory(
  "ISO 20816-8:2018",
  "table of guide values, horizontal compressors",
  "not checked against a printed copy; values as ISO 10816-8:2014",
);

/** ISO 20816-8:2018, horizontal reciprocating compressor systems, part by part. */
// biome-ignore format: a row of a table is a line
export const iso20816Part8Of2018 = /* @__PURE__ */ builtIn({
  id: "iso-20816-8-2018",
  kind: "zones",
  standard: "ISO 20816-8",
  edition: "2018",
  title: "Mechanical vibration - Measurement and evaluation of machine vibration - Part 8: Reciprocating compressor systems",
  status: "current",
  statusNote: "current, replacing ISO 10816-8:2014; scope text read",
  scope: "horizontal reciprocating compressors on rigid foundations, 120 to 1800 r/min, parts judged separately, aimed at fatigue",
  machines: ["reciprocating compressor"],
  within: { speed: { from: 120, to: 1800 }, support: "rigid" },
  place: "housing",
  measuredOn: "foundation, frame, cylinder, dampers or piping",
  band: [2, 1000],
  ask: ["part"],
  notes: ["horizontal compressors only; the standard's displacement and acceleration limits and its table for vertical compressors are not held here"],
  classes: [
    { when: { part: "foundation" }, criteria: [{ as: "mm/s rms", limits: { "A/B": 2, "B/C": 3, "C/D": 4.5 }, source: GUIDE }] },
    { when: { part: "frame" }, note: "frame: its top", criteria: [{ as: "mm/s rms", limits: { "A/B": 5.3, "B/C": 8, "C/D": 12 }, source: GUIDE }] },
    { when: { part: "cylinder lateral" }, criteria: [{ as: "mm/s rms", limits: { "A/B": 8.7, "B/C": 13, "C/D": 19.5 }, source: GUIDE }] },
    { when: { part: "cylinder rod" }, criteria: [{ as: "mm/s rms", limits: { "A/B": 10.7, "B/C": 16, "C/D": 24 }, source: GUIDE }] },
    { when: { part: "dampers" }, criteria: [{ as: "mm/s rms", limits: { "A/B": 12.7, "B/C": 19, "C/D": 28.5 }, source: GUIDE }] },
    { when: { part: "piping" }, criteria: [{ as: "mm/s rms", limits: { "A/B": 12.7, "B/C": 19, "C/D": 28.5 }, source: GUIDE }] },
  ],
});
