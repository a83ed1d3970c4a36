import { builtIn } from "./built-in";
import { reported } from "./sources";

const TABLE = /* @__PURE__ */ reported(
  "API 611",
  "limit of general-purpose steam turbines, edition not named",
  "https://inertance.tistory.com/165",
  "read on a consultants' web page that lists the criteria of the main rotating machines: 3 mm/s RMS",
);

/** API 611, general-purpose steam turbines, velocity on the bearing housing. */
// biome-ignore format: a row of a table is a line
export const api611 = /* @__PURE__ */ builtIn({
  id: "api-611",
  kind: "acceptance",
  standard: "API 611",
  edition: "not stated",
  title: "General-purpose steam turbines for petroleum, chemical and gas industry services: vibration on the housing",
  status: "current",
  statusNote: "edition in force not checked",
  scope: "general-purpose steam turbines, mechanical running test",
  machines: ["steam turbine"],
  within: { condition: "new" },
  byContract: true,
  place: "housing",
  measuredOn: "bearing housings",
  band: null,
  classes: () => [{ criteria: [{ as: "mm/s rms", limits: { acceptance: 3 }, source: TABLE }] }],
});
