import { builtIn } from "./built-in";
import { memory } from "./sources";

const LAW = /* @__PURE__ */ memory(
  "API 611",
  "shaft vibration, edition not named",
  "the law of speed is not checked against a printed copy and is that of the sister standards; the cap of 50 um was read at https://inertance.tistory.com/165, which prints no law; alone it would be laxer above 3100 r/min",
);

/** API 611, general-purpose steam turbines, displacement of the shaft. */
// biome-ignore format: a row of a table is a line
export const api611Shaft = /* @__PURE__ */ builtIn({
  id: "api-611-shaft",
  kind: "acceptance",
  standard: "API 611",
  edition: "not stated",
  title: "General-purpose steam turbines for petroleum, chemical and gas industry services: vibration of the shaft",
  status: "current",
  statusNote: "edition in force not checked",
  scope: "general-purpose steam turbines with hydrodynamic bearings, mechanical running test",
  machines: ["steam turbine"],
  within: { condition: "new" },
  byContract: true,
  place: "shaft",
  measuredOn: "the shaft against its bearing housing",
  band: null,
  notes: ["25.4 root(12 000/n) um peak-to-peak, at most 50; n in r/min, the maximum continuous speed (from memory)"],
  classes: () => [
    { when: { speed: {} }, criteria: [{ as: "um pp", limits: { acceptance: { rootOf: 7741920, atMost: 50 } }, source: LAW }] },
  ],
});
