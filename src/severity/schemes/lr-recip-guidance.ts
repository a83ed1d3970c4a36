import { builtIn } from "./built-in";
import { flatTable } from "./flat-table";
import { printed } from "./sources";

const GUIDANCE = /* @__PURE__ */ printed(
  "Lloyd's Register, Ship Vibration and Noise Guidance Notes",
  "chapter 7, section 3.4",
  "https://imorules.com/GUID-BDE557AE-B336-4809-9CD5-4BA082687EE6.html",
  "read on its page in the rules online; printed as plus or minus 0.4 mm, 25 mm/s, 40 m/s2",
);

/** Lloyd's Register guidance for reciprocating machines above 20 kW: displacement, velocity and acceleration, peak. */
// biome-ignore format: a row of a table is a line
export const lrReciprocatingGuidance = /* @__PURE__ */ builtIn({
  id: "lr-recip-guidance",
  kind: "acceptance",
  standard: "Lloyd's Register guidance",
  edition: "2006 rev. 2.1",
  title: "Ship Vibration and Noise Guidance Notes, Chapter 7 Section 3: Reciprocating machines",
  status: "guide",
  statusNote: "guidance, current when it was read",
  scope: "rigidly and flexibly mounted reciprocating machines above 20 kW, not while running up or down",
  machines: ["reciprocating engine", "reciprocating compressor"],
  within: { power: { above: 20 } },
  place: "housing",
  measuredOn: "top of the machine frame, three directions",
  band: [2, 100],
  peakMeans: "open",
  notes: [
    "all three limits must hold; higher levels need an assessment by frequency",
    "an overall is to be more than three times that with the machine stopped, else by narrow bands (chapter 7, 1.3)",
  ],
  classes: () => flatTable({
    machine: [],
    columns: [
      { as: "mm pk", limits: ["acceptance"], source: GUIDANCE },
      { as: "mm/s pk", limits: ["acceptance"], source: GUIDANCE },
      { as: "m/s2 pk", limits: ["acceptance"], source: GUIDANCE },
    ],
    rows: [
      // mm  mm/s m/s2, peak
      [0.4,  25,  40],
    ],
  }),
});
