import { builtIn } from "./built-in";
import { memory } from "./sources";

const CHART = /* @__PURE__ */ memory(
  "General machinery vibration severity chart (descends from Rathbone, 1939)",
  "constant-velocity lines",
  "not checked against a printed copy; each line is twice the one before, 0.314 in/s is 5 mil peak-to-peak at 1200 cycles/min",
);

/** The classical severity chart of general machinery, constant-velocity lines, in/s peak. */
// biome-ignore format: a row of a table is a line
export const generalMachineryChart = /* @__PURE__ */ builtIn({
  id: "general-machinery-chart",
  kind: "grades",
  standard: "General machinery severity chart",
  edition: "as reprinted in textbooks",
  title: "General machinery vibration severity",
  status: "guide",
  statusNote: "a historical guide, not a standard",
  scope: "rigidly mounted machines, filtered readings on bearing cap or structure; not shaft motion",
  place: "housing",
  measuredOn: "bearing caps or structure",
  band: null,
  grades: ["extremely smooth", "very smooth", "smooth", "very good", "good", "fair", "slightly rough", "rough", "very rough"],
  notes: ["machines on isolators: about twice the level, but not at high frequency (gears, rolling bearings)"],
  classes: [
    { criteria: [{ as: "in/s pk", limits: { "extremely smooth": 0.0049, "very smooth": 0.0098, smooth: 0.0196, "very good": 0.0392, good: 0.0785, fair: 0.157, "slightly rough": 0.314, rough: 0.628 }, source: CHART }] },
  ],
});
